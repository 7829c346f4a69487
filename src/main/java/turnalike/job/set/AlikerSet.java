package turnalike.job.set;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
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

    /** As many sets are all looked at; beyond, those that gather round each piece. */
    private static final int EVERY_SET = 20_000;

    /** So many of the sets most alike are placed, each in so many steps, until one is balanced as well as the scale can tell. */
    private static final int MOST_TRIED = 24;

    private static final int TRIED_ASKS = 60;

    /** Unlikeness is told apart no finer than this share, which adding it up may get wrong. */
    private static final double ALIKE_SHARE = 1e-9;

    /** What scatters more by no more than this share is as sure (common practice, no source). */
    private static final double AS_SURE = 0.05;

    private final WheelProblem problem;
    private final WheelPlacement best;
    private final double[][] unlike;
    private final Map<Candidate, Integer> numbers = new HashMap<>();

    private AlikerSet(WheelProblem problem, WheelPlacement best, Unlikeness unlikeness) {
        this.problem = problem;
        this.best = best;
        int count = problem.pieces().size();
        unlike = new double[count][count];
        for (int i = 0; i < count; i++) {
            numbers.put(problem.pieces().get(i), i);
            for (int j = 0; j < i; j++) {
                unlike[i][j] = unlikeness.between(i, j);
                unlike[j][i] = unlike[i][j];
            }
        }
    }

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
        List<int[]> sets = everySet().orElseGet(this::gathered);
        sets.removeIf(set -> sum(set) >= now * (1 - ALIKE_SHARE) || !problem.passes(candidates(set)));
        sets.sort(Comparator.comparingDouble(this::sum)); // keeps the listed order of those equally alike
        for (int[] set : sets.subList(0, Math.min(MOST_TRIED, sets.size()))) {
            Effort few = Effort.ofAsks(TRIED_ASKS);
            WheelPlacement placed = WheelMatch.solve(problem.of(candidates(set)), () -> few.spent() || effort.spent());
            boolean within = placed.unbalance().gMm() <= placed.noiseFloorGMm();
            if (within && scatterGMm.applyAsDouble(placed) <= most) {
                return Optional.of(placed.withSpares(spares(placed)).unproven());
            }
        }
        return Optional.empty();
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
                sum += unlike[set[i]][set[j]];
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
        for (int piece = from; piece + set.length - filled <= unlike.length; piece++) {
            set[filled] = piece;
            extend(set, filled + 1, piece + 1, out);
        }
    }

    /** Round each piece those most like it, exchanged with others as long as the set gets more alike and passes. */
    private List<int[]> gathered() {
        Set<List<Integer>> out = new HashSet<>();
        for (int middle = 0; middle < unlike.length; middle++) {
            int centre = middle;
            List<Integer> near = new ArrayList<>();
            for (int piece = 0; piece < unlike.length; piece++) {
                near.add(piece);
            }
            near.sort(Comparator.comparingDouble(piece -> unlike[centre][piece]));
            int[] set = near.subList(0, problem.wheel().places()).stream()
                    .mapToInt(piece -> piece)
                    .toArray();
            out.add(improved(set).stream().sorted().toList());
        }
        return out.stream()
                .sorted(Comparator.comparing(set -> String.format(Locale.ROOT, "%s", padded(set))))
                .map(set -> set.stream().mapToInt(piece -> piece).toArray())
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private static List<String> padded(List<Integer> set) {
        return set.stream()
                .map(piece -> String.format(Locale.ROOT, "%05d", piece))
                .toList();
    }

    private List<Integer> improved(int[] start) {
        List<Integer> set = new ArrayList<>();
        for (int piece : start) {
            set.add(piece);
        }
        boolean moved = true;
        while (moved) {
            moved = false;
            for (int i = 0; i < set.size(); i++) {
                int held = set.get(i);
                double now = toOthers(held, set, i);
                for (int piece = 0; piece < unlike.length; piece++) {
                    if (!set.contains(piece) && toOthers(piece, set, i) < now * (1 - ALIKE_SHARE)) {
                        set.set(i, piece);
                        now = toOthers(piece, set, i);
                        moved = true;
                    }
                }
            }
        }
        return set;
    }

    private double toOthers(int piece, List<Integer> set, int leftOut) {
        double sum = 0;
        for (int i = 0; i < set.size(); i++) {
            sum += i == leftOut ? 0 : unlike[piece][set.get(i)];
        }
        return sum;
    }
}
