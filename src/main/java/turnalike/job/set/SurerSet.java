package turnalike.job.set;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import turnalike.effort.Effort;
import turnalike.match.Candidate;
import turnalike.match.WheelMatch;
import turnalike.match.WheelPlacement;
import turnalike.match.WheelProblem;
import turnalike.pieces.Piece;

/**
 * The set to be placed where some pieces' balance points were measured and others' were not. What counts is the unbalance to be expected: a set of
 * measured pieces that leaves a little more over may be expected to be the better balanced, and is then taken, unless strict. Compared are the
 * best balanced set of all pieces, that of the measured pieces filled up with as few others as make a set, and the sets that pass whose moments
 * scatter least ({@link SteadySets}); nothing says that no other set is expected to do better.
 *
 * @param all every piece there is to choose from
 * @param problem the pieces that the set was chosen from
 * @param best the set in its best balanced order
 * @param notes what to know of it
 */
record SurerSet(WheelProblem all, WheelProblem problem, WheelPlacement best, List<String> notes) {
    static final String CHOSEN = "pieces whose balance point was measured were chosen before the others";

    /** What is expected to be less by no more than this share is as good (common practice, no source). */
    private static final double AS_GOOD = 0.05;

    /** So many of the steadiest sets are placed and compared, each in so many steps: which costs little beside the search before. */
    private static final int MOST_TRIED = 4;

    private static final int TRIED_ASKS = 60;

    static SurerSet of(WheelProblem all, List<Piece> pieces, WheelScatter scatter, boolean outward, Effort effort) {
        Optional<WheelProblem> fewer = all.strict() ? Optional.empty() : measured(all, pieces);
        if (fewer.isEmpty()) {
            return new SurerSet(all, all, WheelMatch.solve(all, effort), List.of());
        }
        WheelPlacement any = WheelMatch.solve(all, effort.share(0.5));
        double anyGMm = scatter.expectedGMm(any, outward);
        WheelPlacement surer = WheelMatch.solve(fewer.get(), effort);
        WheelProblem from = fewer.get();
        // A set that does not pass is no choice, however sure.
        double surerGMm = surer.warnings().equals(any.warnings())
                ? scatter.expectedGMm(surer, outward)
                : Double.POSITIVE_INFINITY;
        if (any.warnings().isEmpty()) {
            for (Set<Candidate> steady : SteadySets.list(all, scatter::variance, MOST_TRIED)) {
                WheelPlacement placed = WheelMatch.solve(all.of(steady), tried(effort));
                double expectedGMm = scatter.expectedGMm(placed, outward);
                if (expectedGMm < surerGMm * (1 - AS_GOOD)) {
                    surer = placed;
                    surerGMm = expectedGMm;
                    from = all.of(steady);
                }
            }
        }
        if (surerGMm > anyGMm * (1 - AS_GOOD)) {
            return new SurerSet(all, all, any, List.of());
        }
        boolean least = surer.bestProven()
                && any.bestProven()
                && surer.unbalance().gMm() <= any.unbalance().gMm();
        String note = String.format(
                Locale.ROOT,
                CHOSEN + ": so the unbalance to be expected is %s g mm instead of %s",
                ExpectedWords.figure(surerGMm),
                ExpectedWords.figure(anyGMm));
        return new SurerSet(all, from, least ? surer : surer.unproven(), List.of(note));
    }

    /** A try among several: its own few steps, counted from the whole. */
    private static Effort tried(Effort effort) {
        Effort few = Effort.ofAsks(TRIED_ASKS);
        return new Effort() {
            @Override
            public boolean spent() {
                return few.spent() || effort.spent();
            }
        };
    }

    /**
     * All pieces that were measured with as few others as make a set, those nearest in mass to the measured ones; empty where that is all
     * pieces or none was measured.
     */
    private static Optional<WheelProblem> measured(WheelProblem all, List<Piece> pieces) {
        Set<String> labels = new HashSet<>();
        double massG = 0;
        for (Piece piece : pieces) {
            if (piece.balance().isPresent()) {
                labels.add(piece.label());
                massG += piece.mass().orElseThrow().grams();
            }
        }
        int others = Math.max(0, all.wheel().places() - labels.size());
        if (labels.isEmpty() || labels.size() + others >= pieces.size()) {
            return Optional.empty();
        }
        double meanG = massG / labels.size();
        List<Candidate> rest = new ArrayList<>(all.pieces());
        rest.removeIf(piece -> labels.contains(piece.label()));
        rest.sort(Comparator.comparingDouble(piece -> Math.abs(piece.mass().grams() - meanG)));
        rest.subList(0, others).forEach(piece -> labels.add(piece.label()));
        List<Candidate> kept = new ArrayList<>(all.pieces());
        kept.removeIf(piece -> !labels.contains(piece.label()));
        return Optional.of(new WheelProblem(
                kept, all.wheel(), all.tolerancePct(), all.scale(), all.given(), false, all.seatDepths()));
    }

    /** The placement with every piece that is left over, those that were not among the choice too. */
    WheelPlacement withAllSpares(WheelPlacement placement) {
        Set<Candidate> placed = new HashSet<>();
        placement.seats().forEach(seat -> placed.add(seat.piece()));
        return placement.withSpares(
                all.pieces().stream().filter(piece -> !placed.contains(piece)).toList());
    }
}
