package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.Job;
import turnalike.job.OneLength;
import turnalike.job.set.LengthsOfPieces;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.pieces.Likeness;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.mend.CutRange;
import turnalike.pieces.mend.LightPieceOptions;
import turnalike.pieces.mend.Mend;
import turnalike.pieces.mend.MendCut;
import turnalike.pieces.mend.MendOrder;
import turnalike.pieces.mend.MendPlan;
import turnalike.pieces.mend.Mendable;
import turnalike.solid.Solid;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;
import turnalike.units.Working;

/**
 * How one piece of a job is brought to weight.
 *
 * @param piece the piece
 * @param mass as weighed
 * @param target what it should weigh
 * @param weighing how its masses are told
 * @param plan what to do
 * @param lightWays what can be done about it in words, should it be light
 * @param sizes how it differs from the pattern, for each member that may be cut
 * @param balanceAfter where its balance point will lie once cut, from the start end; as it is without cuts
 */
public record MendJob(
        Piece piece,
        Mass mass,
        Mass target,
        WeighingScale weighing,
        MendPlan plan,
        List<String> lightWays,
        List<Size> sizes,
        Length balanceAfter) {
    /** The smallest cut worth setting the caliper for: a quarter of a 64th (common practice, no source). */
    private static final Length SMALLEST_INCH = Length.ofInches(1.0 / 256);
    /** The same in millimetres, a tenth (common practice, no source). */
    private static final Length SMALLEST_MM = Length.ofMm(0.1);
    /** A measured diameter thinner than the pattern by more of the tolerance than this is not cut (common practice, no source). */
    private static final double THIN_SHARE = 0.25;

    /**
     * How one member of the piece differs from the pattern.
     *
     * @param member its index in the run
     * @param name as its cuts name it
     * @param offMm how much thicker than the pattern it is, likely; negative when thinner
     * @param deviationMm how far off that it may be, as a standard deviation; 0 when it was measured
     * @param measured whether a check place within it was measured
     */
    public record Size(int member, String name, double offMm, double deviationMm, boolean measured) {}

    public MendJob {
        sizes = List.copyOf(sizes);
        lightWays = List.copyOf(lightWays);
    }

    /** What is lacking where a piece cannot be mended. */
    public enum Lack {
        /** No piece has that label. */
        PIECE,
        /** The piece has not been weighed. */
        MASS,
        /** No target is given, and no other piece has been weighed to take one from. */
        TARGET,
        /** Nothing says in which of the job's lengths it is made. */
        LENGTH
    }

    /**
     * A job as it is of one piece.
     *
     * @param job the order of its own length
     * @param pieces all of the job's as they would measure were they of that length, itself as it is
     */
    private record Own(Job job, List<Piece> pieces) {
        static Optional<Own> of(Job job, List<Piece> pieces, Piece piece) {
            LengthsOfPieces lengths = ColumnTargets.lengths(job);
            return lengths.isOne()
                    ? Optional.of(new Own(job, pieces))
                    : lengths.of(piece)
                            .map(index -> new Own(OneLength.of(job).get(index).job(), lengths.allAs(index, pieces)));
        }
    }

    /**
     * What keeps the piece from being mended.
     *
     * @param job whose pieces they are
     * @param pieces every piece of the job
     * @param label of the piece, to the letter
     * @param target what it should weigh; empty for the median of the other pieces
     * @return the first thing lacking; empty when it can be mended
     */
    public static Optional<Lack> lack(Job job, List<Piece> pieces, String label, Optional<Mass> target) {
        Optional<Piece> piece = find(pieces, label);
        if (piece.isEmpty()) {
            return Optional.of(Lack.PIECE);
        }
        if (piece.get().mass().isEmpty()) {
            return Optional.of(Lack.MASS);
        }
        Optional<Own> own = Own.of(job, pieces, piece.get());
        if (own.isEmpty()) {
            return Optional.of(Lack.LENGTH);
        }
        return target.or(() -> median(own.get().pieces(), label)).isEmpty()
                ? Optional.of(Lack.TARGET)
                : Optional.empty();
    }

    /**
     * The least visible way to the target. What the job's scale cannot tell from the target is left as it is; no cut goes beyond the
     * diameter tolerance, nor deeper than a tenth of its member's thinnest diameter (common practice, no source).
     *
     * @param job gives the pattern, the density and the tolerances; where it has several lengths, those of the piece's own count, and the
     *     other pieces as they would measure were they of that length
     * @param pieces every piece of the job
     * @param label of the piece, to the letter
     * @param target what it should weigh, above zero; empty for the median of the other pieces
     * @return what to do
     * @throws IllegalArgumentException when there is a {@link #lack}
     */
    public static MendJob of(Job job, List<Piece> pieces, String label, Optional<Mass> target) {
        Piece piece = find(pieces, label).orElseThrow(() -> new IllegalArgumentException("no piece " + label));
        Own own = Own.of(job, pieces, piece)
                .orElseThrow(() -> new IllegalArgumentException("no length of piece " + label));
        return ofOne(own.job(), own.pieces(), label, target);
    }

    private static MendJob ofOne(Job job, List<Piece> pieces, String label, Optional<Mass> target) {
        Piece piece = find(pieces, label).orElseThrow(() -> new IllegalArgumentException("no piece " + label));
        Mass mass = piece.mass().orElseThrow(() -> new IllegalArgumentException("no mass of piece " + label));
        Mass aim = target.or(() -> median(pieces, label)).orElseThrow(() -> new IllegalArgumentException("no target"));
        List<Piece> others =
                pieces.stream().filter(each -> !each.label().equals(label)).toList();
        OwnSizes own = OwnSizes.of(job, piece, others);
        List<Mendable> mendable = mendable(job, own);
        // What the scale cannot tell apart is left; a cut, once made, meets the aim itself.
        MendOrder order = new MendOrder(
                label,
                mass,
                aim,
                job.tolerances().scale(),
                job.tolerances().diameter(),
                job.units() == UnitSystem.INCH ? SMALLEST_INCH : SMALLEST_MM,
                mendable);
        MendPlan plan = Mend.plan(order);
        List<Size> sizes = mendable.stream()
                .map(each -> new Size(
                        each.member(),
                        each.name(),
                        own.offMm(each.member()),
                        own.deviationMm(each.member()),
                        own.isMeasured(each.member())))
                .toList();
        return new MendJob(
                piece,
                mass,
                aim,
                job.tolerances().weighing(),
                plan,
                lightWays(job, pieces, piece, aim),
                sizes,
                balanceAfter(job, piece, own, plan));
    }

    private static Length balanceAfter(Job job, Piece piece, OwnSizes own, MendPlan plan) {
        double before = piece.balance()
                .orElseGet(() ->
                        Solid.of(job.pattern().outline(), job.wood().density()).balance())
                .mm();
        double grams = piece.mass().orElseThrow().grams();
        double moment = grams * before;
        if (plan instanceof MendPlan.Cuts cuts) {
            for (MendCut cut : cuts.cuts()) {
                double off = own.removal(cut.member()).off(cut.takeOff()).grams();
                grams -= off;
                moment -= off * own.centreMm(cut.member());
            }
        }
        return Length.ofMm(moment / grams);
    }

    /** A set of two at the least, of the frame's size where there is a frame; without a tolerance of mass every set passes. */
    private static List<String> lightWays(Job job, List<Piece> pieces, Piece piece, Mass aim) {
        double massPct = job.tolerances().massPct();
        if (!(massPct > 0 && massPct < 100)) {
            return List.of();
        }
        return LightPieceOptions.of(piece, pieces, Math.max(2, job.count()), massPct, aim)
                .words(job.tolerances().weighing());
    }

    private static Optional<Piece> find(List<Piece> pieces, String label) {
        return pieces.stream().filter(piece -> piece.label().equals(label)).findFirst();
    }

    private static Optional<Mass> median(List<Piece> pieces, String label) {
        List<Piece> others =
                pieces.stream().filter(piece -> !piece.label().equals(label)).toList();
        return others.isEmpty()
                ? Optional.empty()
                : Likeness.reference(Measures.NONE, others).mass();
    }

    private static List<Mendable> mendable(Job job, OwnSizes own) {
        List<Mendable> out = new ArrayList<>();
        for (PlacedMember placed : job.pattern().placed()) {
            Member member = placed.member();
            int index = placed.number() - 1;
            if (member.isShaped()) {
                out.add(new Mendable(
                        index,
                        "%s between marks %d and %d"
                                .formatted(member.title(), mark(job, placed.start()), mark(job, placed.end())),
                        own.start(index),
                        own.end(index),
                        own.removal(index),
                        room(placed, own, job.tolerances().diameter().mm()),
                        job.likeness().diameter()));
            }
        }
        return out;
    }

    /**
     * How deep a member may be cut. Measured: down to the tolerance's lower end, half the tolerance below the pattern unseen, and not at all where
     * it is thin already. Not measured: as deep as two deviations of what is inferred leave, so that it hardly leaves the tolerance; beyond, at
     * a risk that is told. Never deeper than a tenth of the member's thinnest diameter.
     */
    private static CutRange room(PlacedMember placed, OwnSizes own, double tolerance) {
        int member = placed.number() - 1;
        double off = own.offMm(member);
        double spread = own.isMeasured(member) ? 0 : 2 * own.deviationMm(member);
        double tenth = 0.2 * placed.outline().smallestRadius().mm();
        if (own.isMeasured(member) && off < -THIN_SHARE * tolerance) {
            return CutRange.NONE;
        }
        double most = within(off + tolerance - spread, tenth);
        double gentle = off < 0 && own.isMeasured(member) ? 0 : within(off + tolerance / 2 - spread / 2, most);
        // Nothing says that an unmeasured member is thick enough to go below the tolerance of the pattern itself.
        double risked = Math.max(most, within(Math.min(off, 0) + tolerance, tenth));
        return new CutRange(
                Length.ofMm(Math.max(0, off - spread)),
                Length.ofMm(gentle),
                Length.ofMm(most),
                Length.ofMm(own.isMeasured(member) ? most : risked));
    }

    private static double within(double value, double most) {
        return Math.max(0, Math.min(value, most));
    }

    private static int mark(Job job, Length place) {
        return job.pattern()
                .markAt(place)
                .orElseThrow(() -> new IllegalStateException("no mark at %s mm".formatted(place.mm())));
    }

    /**
     * What to do, in words.
     *
     * @param units that lengths are told in; masses are in grams
     * @return the words, their decimal sign a point whatever the locale
     */
    public MendWords words(UnitSystem units) {
        return MendWords.of(this, units);
    }

    /** {@return how it was found, and what is assumed of the wood} */
    public List<Working> workings() {
        return List.of(
                Mend.working(),
                OwnSizes.working(),
                new Working(
                        "what a cut takes off",
                        "δ off a member's diameter takes ρ(π∫r dx · δ − πL/4 · δ²)",
                        Working.DERIVED,
                        "with the piece's own density and diameter, as far as they are known: weigh between cuts"));
    }
}
