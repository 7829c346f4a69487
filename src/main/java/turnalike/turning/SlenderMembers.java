package turnalike.turning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import turnalike.outline.Outline;
import turnalike.outline.Segment;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/**
 * Tells which members are slender: those whose cutting costs the piece its stiffness, so that they are cut after the rest. A member is
 * slender when its diameter of equal volume is below two thirds of the thickest turned one; or when it is below nine tenths of it and the
 * member gives a tenth or more (usually; {@link SlenderRules}) of all the limberness that cutting the roughed cylinder to the finished
 * shape adds, ∫ sin²(πx/L) (1/I − 1/I₀) dx: the bowing of a piece between centres, where the middle counts most. Squares are not cut,
 * tenons have their own turn. The shares are common practice, no source; the measure is derived.
 */
final class SlenderMembers {
    private static final int PARTS = 16;

    private SlenderMembers() {}

    /** Indices of the slender members. */
    static Set<Integer> of(TurningProblem work) {
        List<PlacedMember> run = work.pattern().placed();
        SlenderRules rules = work.lathe().rules().slender();
        double rough = work.roughed().mm() / 2;
        double length = work.pattern().length().mm();
        double thickest = 2 * work.thickestRound().mm();
        double[] added = new double[run.size()];
        double all = 0;
        for (int i = 0; i < run.size(); i++) {
            added[i] = run.get(i).member().isShaped() ? Math.max(0, limberness(run.get(i), rough, length)) : 0;
            all += added[i];
        }
        Set<Integer> out = new TreeSet<>();
        for (int i = 0; i < run.size(); i++) {
            double share = meanDiameterMm(run.get(i).outline()) / thickest;
            boolean limber = share < rules.notThick() && all > 0 && added[i] >= rules.limber() * all;
            if (run.get(i).member().isShaped() && (share < rules.thin() || limber)) {
                out.add(i);
            }
        }
        return out;
    }

    private static double meanDiameterMm(Outline outline) {
        double square = 0;
        for (Segment segment : outline.segments()) {
            square += segment.curve().integral(0, 2);
        }
        return 2 * Math.sqrt(square / outline.length().mm());
    }

    private static double limberness(PlacedMember placed, double roughRadiusMm, double lengthMm) {
        double rough = Math.pow(roughRadiusMm, -4);
        double sum = 0;
        for (Segment segment : placed.outline().segments()) {
            double h = segment.curve().length().mm() / PARTS;
            for (int part = 0; part < PARTS; part++) {
                for (int i = 0; i < GaussLegendre.COUNT; i++) {
                    double x = (part + GaussLegendre.at(i)) * h;
                    double bow = Math.sin(Math.PI * (segment.start().mm() + x) / lengthMm);
                    double r = Math.max(segment.curve().radiusMm(x), BeamMesh.THINNEST * roughRadiusMm);
                    sum += h * GaussLegendre.whole(i) * bow * bow * (Math.pow(r, -4) - rough);
                }
            }
        }
        return sum;
    }

    /**
     * In the order in which they are cut: from the middle out to the tail end, then from the middle out to the drive end. The middle, where
     * the piece gives most, is cut while the rest is still stout; the drive end, through which every cut is driven, last.
     */
    static List<Integer> order(TurningProblem work, Set<Integer> slender) {
        List<PlacedMember> run = work.pattern().placed();
        double middle = run.get(run.size() - 1).end().mm() / 2;
        boolean driven = work.held().at() == Held.At.START;
        List<Integer> out = new ArrayList<>();
        List<Integer> drive = new ArrayList<>();
        // From the drive end on: those before the middle are turned round, those from it on stand as they come.
        List<Integer> fromDrive = new ArrayList<>(work.towardTheHeadstock());
        Collections.reverse(fromDrive);
        for (int index : fromDrive) {
            PlacedMember placed = run.get(index);
            boolean beyond = driven ? centre(placed) >= middle : centre(placed) <= middle;
            if (!slender.contains(index)) {
                continue;
            }
            // Whichever stretch lies across the middle begins; it is the first of the tail's, being the nearest.
            if (beyond || reaches(placed, middle)) {
                out.add(index);
            } else {
                drive.add(0, index);
            }
        }
        out.addAll(drive);
        return out;
    }

    private static double centre(PlacedMember placed) {
        return placed.start().plus(placed.end()).mm() / 2;
    }

    private static boolean reaches(PlacedMember placed, double middleMm) {
        return placed.start().compareTo(Length.ofMm(middleMm)) < 0
                && placed.end().compareTo(Length.ofMm(middleMm)) > 0;
    }
}
