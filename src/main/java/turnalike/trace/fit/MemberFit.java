package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Outline;
import turnalike.pattern.Member;
import turnalike.trace.Original;
import turnalike.trace.Profile;
import turnalike.trace.Snap;
import turnalike.trace.TracedMember;
import turnalike.trace.TracedRun;
import turnalike.units.Length;

/**
 * From a profile to the members that explain it, one way for all sources: the fewest whose sizes explain the stations within their
 * uncertainty, by Schwarz's criterion (see {@link JointFit}). First the cheapest run of forms among fixed places, exactly, by dynamic
 * programming ({@link CheapestRun}); then the places are bettered ({@link Refinement}); what no forms explain becomes a curve through points
 * ({@link CurveWindows}); last each form gets its name ({@link Naming}).
 */
public final class MemberFit {
    private static final double SHOULDER_SIGMAS = 3;
    private static final double LEAST_SHOULDER_MM = 0.25;

    /**
     * Schwarz's criterion holds for many stations. Of a dozen rows ln n lets a size be had for little more than its own chance, and a tenon
     * measured twice becomes a taper; so a size costs no less than of so many rows. A choice of ours, tried on tables drawn at random.
     */
    private static final int FEW_ROWS = 400;

    private static final List<String> NOT_RADII = List.of("length", "chamfer");

    private MemberFit() {}

    /**
     * {@return the members of an original}
     *
     * @param original as it was read
     * @param snap what sizes are rounded to
     */
    public static TracedRun of(Original original, Snap snap) {
        return found(original, snap, false).run();
    }

    /**
     * {@return the members of a table of measured points, and which of them its rows do not bear out}
     *
     * @param original as it was read
     * @param snap what sizes are rounded to
     */
    public static TracedRows ofRows(Original original, Snap snap) {
        Found found = found(original, snap, true);
        return new TracedRows(
                found.run(),
                RowDoubts.of(found.data(), found.parts(), perSize(found.data())),
                RowDoubts.stray(found.data(), found.parts()));
    }

    private record Found(Data data, List<Part> parts, TracedRun run) {}

    private static Found found(Original original, Snap snap, boolean ofRows) {
        Data data = data(original, ofRows);
        List<Part> parts = parts(data, original);
        double pixelMm = original.pixel().mm();
        List<Profile.Stretch> walls = pixelMm > 0 ? Walls.of(parts, pixelMm) : List.of();
        if (walls.isEmpty()) {
            return named(data, original, parts, snap);
        }
        Original seen = Walls.hidden(original, walls);
        Data rest = data(seen, ofRows);
        return named(rest, seen, Walls.without(parts(rest, seen), pixelMm), snap);
    }

    private static Data data(Original original, boolean ofRows) {
        return Data.of(
                original.fitted(), original.surest().mm(), original.pixel().mm(), ofRows);
    }

    private static List<Part> parts(Data data, Original original) {
        double perSize = perSize(data);
        List<Part> parts = new ArrayList<>();
        for (Block block : Block.of(data, original)) {
            parts.addAll(block.isSquare() ? List.of(block.square(data)) : round(data, block, perSize));
        }
        return parts;
    }

    private static double perSize(Data data) {
        return Math.log(Math.max(data.swept ? 3 : FEW_ROWS, data.size()));
    }

    private static Found named(Data data, Original original, List<Part> parts, Snap snap) {
        double shoulder = Math.max(LEAST_SHOULDER_MM, SHOULDER_SIGMAS * data.sigma / 2);
        Chamfers chamfers = Chamfers.of(data, parts, shoulder, perSize(data));
        Grid grid = new Grid(snap.step().mm());
        List<Member> members = Naming.of(chamfers.parts(), shoulder, grid, chamfers.sizes());
        List<List<Integer>> guessed = ToldSizes.guessed(data, chamfers.parts());
        return new Found(data, chamfers.parts(), run(data, original, members, guessed, chamfers.parts()));
    }

    private static List<Part> round(Data data, Block block, double perSize) {
        List<Seam> seams = Seams.of(data, block.first(), block.last(), block.fromMm(), block.toMm());
        Run run = CheapestRun.of(data, seams, perSize);
        Refinement refinement = new Refinement(data, perSize);
        JointFit fit = refinement.of(run);
        List<Part> parts = CurveWindows.of(data, fit, perSize);
        return data.isOfPicture() ? doubted(parts, fit, refinement) : parts;
    }

    /** Those marked that a picture tells from another form by little. */
    private static List<Part> doubted(List<Part> parts, JointFit fit, Refinement refinement) {
        List<Part> out = new ArrayList<>(parts);
        for (int i = 0; i < fit.run().size(); i++) {
            double from = fit.run().seams().get(i).placeMm();
            double to = fit.run().seams().get(i + 1).placeMm();
            for (int k = 0; k < out.size(); k++) {
                Part part = out.get(k);
                if (!part.isCurve() && part.fromMm() == from && part.toMm() == to && refinement.isDoubtful(fit, i)) {
                    out.set(k, part.doubtful());
                }
            }
        }
        return out;
    }

    /** The keys of those sizes, in the order a kind tells them. */
    private static List<String> keys(Member member, List<Integer> sizes) {
        List<String> keys = member.sizes().lengths().keySet().stream()
                .filter(each -> !NOT_RADII.contains(each))
                .toList();
        return sizes.stream().filter(each -> each < keys.size()).map(keys::get).toList();
    }

    private static TracedRun run(
            Data data, Original original, List<Member> members, List<List<Integer>> guessed, List<Part> parts) {
        Profile profile = original.fitted();
        Length scatter = Length.ofMm(data.sigma);
        boolean coarse = original.isCoarse(scatter);
        List<Outline> outlines = new ArrayList<>();
        Length at = Length.ZERO;
        for (int i = 0; i < members.size(); i++) {
            Member.Ends ends = new Member.Ends(i == 0, i + 1 == members.size());
            Outline outline =
                    Outline.of(at, members.get(i).curves(ends), members.get(i).section());
            outlines.add(outline);
            at = outline.end();
        }
        Outline whole = Outline.join(outlines);
        Misses misses = new Misses(whole);
        List<TracedMember.Miss> miss = new ArrayList<>();
        boolean[] unseen = new boolean[members.size()];
        boolean[] unsure = new boolean[members.size()];
        for (int i = 0; i < members.size(); i++) {
            double from = outlines.get(i).start().mm();
            double to = outlines.get(i).end().mm();
            miss.add(misses.between(data, from, to));
            unseen[i] = coarse
                    || !guessed.get(i).isEmpty()
                    || Hidden.restsOn(profile, from, to, miss.get(i).stations());
            unsure[i] = unseen[i] || parts.get(i).isDoubtful();
        }
        if (data.isOfPicture()) {
            EndNames.mark(parts, members, unsure);
        }
        List<TracedMember> out = new ArrayList<>();
        for (int i = 0; i < members.size(); i++) {
            Member member = members.get(i);
            List<String> keys = keys(member, guessed.get(i));
            out.add(new TracedMember(
                    member, outlines.get(i).start(), miss.get(i), unsure[i], unsure[i] && !unseen[i], keys));
        }
        return new TracedRun(out, whole, misses.between(data, -1, at.mm() + 1), scatter);
    }
}
