package turnalike.job.set;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import turnalike.effort.Effort;
import turnalike.frame.Moment;
import turnalike.match.Candidate;
import turnalike.match.ExpectedSearch;
import turnalike.match.Seat;
import turnalike.match.WheelMatch;
import turnalike.match.WheelPlacement;
import turnalike.match.WheelProblem;
import turnalike.pieces.Piece;

/**
 * The set to be placed, and its order. What counts is the unbalance to be expected: where some balance points were measured and others not, a set of
 * measured pieces that leaves a little more over may be expected to be the better balanced; where the unmeasured are known to differ from the
 * pattern, another order. It is then taken, unless strict. The search ({@link ExpectedSearch}) makes the mean square least over sets and orders,
 * from the best balanced set of all pieces, from that of the measured pieces filled up with as few others as make a set, and from the sets that
 * pass whose moments scatter least ({@link SteadySets}).
 *
 * @param all every piece there is to choose from
 * @param problem the pieces that the set was chosen from
 * @param best the set in its best order
 * @param expectedGMm its expected unbalance where that decided; without bound where it did not
 * @param notes what to know of it
 */
record SurerSet(WheelProblem all, WheelProblem problem, WheelPlacement best, double expectedGMm, List<String> notes) {
    static final String CHOSEN = "pieces whose balance point was measured were chosen before the others";

    static final String CHOSEN_ORDER = "the pieces and their order were chosen by what is known of how they scatter";

    /** Whether a note says that what is expected decided. */
    static boolean isSaidIn(String note) {
        return note.startsWith(CHOSEN) || note.startsWith(CHOSEN_ORDER);
    }

    /** What is expected to be less by no more than this share is as good (common practice, no source). */
    private static final double AS_GOOD = 0.05;

    /** So many of the steadiest sets are placed and compared, each in so many steps: which costs little beside the search before. */
    private static final int MOST_TRIED = 4;

    private static final int TRIED_ASKS = 60;

    static SurerSet of(WheelProblem all, List<Piece> pieces, WheelScatter scatter, boolean outward, Effort effort) {
        if (all.strict()) {
            return new SurerSet(all, all, WheelMatch.solve(all, effort), Double.POSITIVE_INFINITY, List.of());
        }
        Optional<WheelProblem> fewer = measured(all, pieces);
        WheelPlacement any = WheelMatch.solve(all, fewer.isPresent() ? effort.share(0.5) : effort);
        Choice choice = new Choice(all, scatter, outward, any);
        if (fewer.isPresent()) {
            choice.offer(WheelMatch.solve(fewer.get(), effort), fewer.get(), 0);
        }
        if (any.warnings().isEmpty()) {
            if (fewer.isPresent()) {
                for (Set<Candidate> steady : SteadySets.list(all, scatter::variance, MOST_TRIED)) {
                    choice.offer(WheelMatch.solve(all.of(steady), tried(effort)), all.of(steady), AS_GOOD);
                }
            }
            choice.search(any);
            choice.search(choice.surer);
        }
        return choice.settled(pieces);
    }

    /** Of the placements that are offered the one expected to be balanced best, beside the best balanced one. */
    private static final class Choice {
        private final WheelProblem all;
        private final WheelScatter scatter;
        private final boolean outward;
        private final WheelPlacement any;
        private final double anyGMm;
        private WheelPlacement surer;
        private WheelProblem from;
        private double surerGMm;

        Choice(WheelProblem all, WheelScatter scatter, boolean outward, WheelPlacement any) {
            this.all = all;
            this.scatter = scatter;
            this.outward = outward;
            this.any = any;
            anyGMm = scatter.expectedGMm(any, outward);
            surer = any;
            from = all;
            surerGMm = anyGMm;
        }

        /** A set that does not pass is no choice, however sure. */
        void offer(WheelPlacement placed, WheelProblem pool, double gain) {
            if (placed.warnings().equals(any.warnings())) {
                double expectedGMm = scatter.expectedGMm(placed, outward);
                if (expectedGMm < surerGMm * (1 - gain)) {
                    surer = placed;
                    surerGMm = expectedGMm;
                    from = pool;
                }
            }
        }

        void search(WheelPlacement start) {
            WheelPlacement found = ExpectedSearch.from(all, scatter.pieceByPiece(outward), start);
            offer(found, all.of(found.seats().stream().map(Seat::piece).toList()), 0);
        }

        SurerSet settled(List<Piece> pieces) {
            if (surerGMm > anyGMm * (1 - AS_GOOD)) {
                return new SurerSet(all, all, any, Double.POSITIVE_INFINITY, List.of());
            }
            boolean least = surer.bestProven()
                    && any.bestProven()
                    && surer.unbalance().gMm() <= any.unbalance().gMm();
            String note = String.format(
                    Locale.ROOT,
                    "%s: so the unbalance to be expected is %s g·mm instead of %s",
                    measuredIn(surer, pieces) > measuredIn(any, pieces) ? CHOSEN : CHOSEN_ORDER,
                    Moment.figure(surerGMm),
                    Moment.figure(anyGMm));
            return new SurerSet(all, from, least ? surer : surer.unproven(), surerGMm, List.of(note));
        }
    }

    private static long measuredIn(WheelPlacement placement, List<Piece> pieces) {
        Set<String> labels = new HashSet<>();
        placement.seats().forEach(seat -> labels.add(seat.piece().label()));
        return pieces.stream()
                .filter(piece ->
                        labels.contains(piece.label()) && piece.balance().isPresent())
                .count();
    }

    /** Whether a placement may take the place of the best for another's sake: where the expected unbalance decided it must be as good. */
    boolean keeps(double otherGMm) {
        return otherGMm <= expectedGMm * (1 + AS_GOOD);
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
