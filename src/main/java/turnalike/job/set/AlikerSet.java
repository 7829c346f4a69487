package turnalike.job.set;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import turnalike.effort.Effort;
import turnalike.match.Candidate;
import turnalike.match.Unlikeness;
import turnalike.match.WheelMatch;
import turnalike.match.WheelPlacement;
import turnalike.match.WheelProblem;

/**
 * The set to be placed where the scale cannot tell sets apart in balance and no lengths say how round they are: the one whose pieces look most
 * alike, over what was measured on them; of those equally alike the one found first, then by the order in which the pieces are listed. It is placed
 * in its own best balanced order.
 */
final class AlikerSet {
    static final String CHOSEN = "the scale cannot tell these sets apart in balance, so the one most alike was placed";

    /** As many sets are all looked at; beyond, those that gather round the pieces. */
    private static final int EVERY_SET = 20_000;

    /** Of the sets that gather round each piece, so many of the most alike are made more alike still: the others will hardly be. */
    private static final int MOST_GATHERED = 200;

    /** So many of the sets most alike are placed, each in so many steps, until one is balanced as well as the scale can tell. */
    private static final int MOST_TRIED = 24;

    private static final int TRIED_ASKS = 60;

    /** Unlikeness is told apart no finer than this share, which adding it up may get wrong. */
    private static final double ALIKE_SHARE = 1e-9;

    /** What scatters more by no more than this share is as sure (common practice, no source). */
    private static final double AS_SURE = 0.05;

    private final WheelProblem problem;
    private final WheelPlacement best;
    private final Unlikeness unlike;
    private final Map<Candidate, Integer> numbers = new HashMap<>();

    private AlikerSet(WheelProblem problem, WheelPlacement best, Unlikeness unlikeness) {
        this.problem = problem;
        this.best = best;
        unlike = unlikeness;
        for (int i = 0; i < problem.pieces().size(); i++) {
            numbers.put(problem.pieces().get(i), i);
        }
    }

    /** Pieces by their numbers, and how unlike they are, added up over all pairs. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Alike(int[] pieces, double unlike) {}

    /**
     * Another set than the best balanced one; empty where that is the one to place.
     *
     * @param unlikeness of any two pieces of the problem, by number from 0
     * @param scatterGMm by how much the unbalance of a placement may be off, its standard deviation
     */
    static Optional<WheelPlacement> of(
            WheelProblem problem,
            WheelPlacement best,
            Unlikeness unlikeness,
            ToDoubleFunction<WheelPlacement> scatterGMm,
            Effort effort) {
        boolean tied = best.unbalance().gMm() <= best.noiseFloorGMm()
                && best.warnings().isEmpty();
        return problem.strict() || !tied || best.spares().isEmpty()
                ? Optional.empty()
                : new AlikerSet(problem, best, unlikeness).search(scatterGMm, effort);
    }

    private Optional<WheelPlacement> search(ToDoubleFunction<WheelPlacement> scatterGMm, Effort effort) {
        double now = sum(placed(best));
        double most = scatterGMm.applyAsDouble(best) * (1 + AS_SURE);
        List<Alike> sets = mostAlike(everySet().orElseGet(this::gathered).stream()
                .map(set -> new Alike(set, sum(set)))
                .filter(set -> set.unlike < now * (1 - ALIKE_SHARE) && problem.passes(candidates(set.pieces))));
        for (Alike set : sets.subList(0, Math.min(MOST_TRIED, sets.size()))) {
            Effort few = Effort.ofAsks(TRIED_ASKS);
            WheelPlacement placed =
                    WheelMatch.solve(problem.of(candidates(set.pieces)), () -> few.spent() || effort.spent());
            boolean within = placed.unbalance().gMm() <= placed.noiseFloorGMm();
            if (within && scatterGMm.applyAsDouble(placed) <= most) {
                return Optional.of(placed.withSpares(spares(placed)).unproven());
            }
        }
        return Optional.empty();
    }

    /** In order, the most alike first; those equally alike keep theirs. */
    private static List<Alike> mostAlike(Stream<Alike> sets) {
        return sets.sorted(Comparator.comparingDouble(Alike::unlike)).toList();
    }

    private List<Candidate> spares(WheelPlacement placed) {
        Set<Candidate> seated = new HashSet<>(candidates(placed(placed)));
        return problem.pieces().stream()
                .filter(piece -> !seated.contains(piece))
                .toList();
    }

    private int[] placed(WheelPlacement placement) {
        return placement.seats().stream()
                .mapToInt(seat -> numbers.get(seat.piece()))
                .toArray();
    }

    private List<Candidate> candidates(int[] set) {
        List<Candidate> out = new ArrayList<>();
        for (int piece : set) {
            out.add(problem.pieces().get(piece));
        }
        return out;
    }

    private double sum(int[] set) {
        double sum = 0;
        for (int i = 0; i < set.length; i++) {
            for (int j = 0; j < i; j++) {
                sum += unlike.between(set[i], set[j]);
            }
        }
        return sum;
    }

    /** Every set of as many pieces as places, if there are few enough; by the order listed. */
    private Optional<List<int[]>> everySet() {
        int places = problem.wheel().places();
        double count = 1;
        for (int i = 1; i <= places; i++) {
            count *= (problem.pieces().size() - places + i) / (double) i;
        }
        if (count > EVERY_SET) {
            return Optional.empty();
        }
        List<int[]> out = new ArrayList<>();
        extend(new int[places], 0, 0, out);
        return Optional.of(out);
    }

    private void extend(int[] set, int filled, int from, List<int[]> out) {
        if (filled == set.length) {
            out.add(set.clone());
            return;
        }
        for (int piece = from; piece + set.length - filled <= problem.pieces().size(); piece++) {
            set[filled] = piece;
            extend(set, filled + 1, piece + 1, out);
        }
    }

    /** Round each piece those most like it, exchanged with others as long as the set gets more alike and passes; by the order listed. */
    private List<int[]> gathered() {
        List<Alike> round = mostAlike(IntStream.range(0, problem.pieces().size())
                .mapToObj(this::nearest)
                .map(set -> new Alike(set, sum(set))));
        return round.subList(0, Math.min(MOST_GATHERED, round.size())).stream()
                .map(set -> improved(set.pieces))
                .collect(Collectors.toCollection(() -> new TreeSet<>(Arrays::compare)))
                .stream()
                .toList();
    }

    /** As many as there are places, the most like that one first; those equally like it by the order listed. */
    private int[] nearest(int middle) {
        int[] near = new int[problem.wheel().places()];
        double[] apart = new double[near.length];
        Arrays.fill(apart, Double.POSITIVE_INFINITY);
        for (int piece = 0; piece < problem.pieces().size(); piece++) {
            double off = unlike.between(middle, piece);
            if (off < apart[near.length - 1]) {
                int at = near.length - 1;
                for (; at > 0 && off < apart[at - 1]; at--) {
                    apart[at] = apart[at - 1];
                    near[at] = near[at - 1];
                }
                apart[at] = off;
                near[at] = piece;
            }
        }
        return near;
    }

    private int[] improved(int[] set) {
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int i = 0; i < set.length; i++) {
                double now = toOthers(set[i], set, i, Double.POSITIVE_INFINITY);
                for (int piece = 0; piece < problem.pieces().size(); piece++) {
                    double to = toOthers(piece, set, i, now * (1 - ALIKE_SHARE));
                    if (to < now * (1 - ALIKE_SHARE) && !contains(set, piece)) {
                        set[i] = piece;
                        now = to;
                        moved = true;
                    }
                }
            }
        }
        Arrays.sort(set);
        return set;
    }

    private static boolean contains(int[] set, int piece) {
        for (int each : set) {
            if (each == piece) {
                return true;
            }
        }
        return false;
    }

    /** How unlike those of the set but one a piece is, or some of it from {@code enough} on: most pieces are out after two of them. */
    private double toOthers(int piece, int[] set, int leftOut, double enough) {
        double sum = 0;
        for (int i = 0; i < set.length && sum < enough; i++) {
            sum += i == leftOut ? 0 : unlike.between(piece, set[i]);
        }
        return sum;
    }
}
