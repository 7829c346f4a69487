package turnalike.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import turnalike.effort.Effort;
import turnalike.units.Problem;
import turnalike.units.Working;

/** Chooses a set for a row and orders it so that neighbours differ least. */
public final class RowMatch {
    /** So many kicks in a row without gain and no more is hoped for. */
    private static final int PATIENCE = 2000;

    private RowMatch() {}

    /**
     * Fills the row. Up to 16 pieces the answer is exact whatever the effort; beyond, it is a good one with a bound beside it.
     *
     * @param problem the pieces, how unlike they are, and the row
     * @param effort what improving may spend
     * @return the set in its order, with what is proven of it; where no set passes, the one most alike in mass, with a warning
     * @throws IllegalArgumentException when {@link RowProblem#problems()} is not empty, or a difference is negative or not finite
     */
    public static RowPlacement solve(RowProblem problem, Effort effort) {
        if (!problem.problems().isEmpty()) {
            throw new IllegalArgumentException(problem.problems().get(0).line());
        }
        int pieces = problem.masses().size();
        int places = problem.places();
        Differences difference = Differences.of(problem.unlikeness(), pieces);
        SetRule rule = new SetRule(
                problem.masses().stream().mapToDouble(m -> m.grams()).toArray(), places, problem.tolerancePct() / 100);
        RowSearch search = new RowSearch(difference, rule);
        if (pieces <= ExactRow.MOST_PIECES) {
            int[] order = new ExactRow(difference, places).solve(rule);
            return placement(problem, rule, order, search.total(order), search.total(order));
        }
        double reached = search.total(search.solve(0, 0, Effort.ofAsks(0)));
        double bound = pieces == places ? RowBound.ofAll(difference, reached) : RowBound.ofSome(difference, places);
        int[] order = search.solve(bound * (1 + 1e-9), PATIENCE, effort);
        return placement(problem, rule, order, search.total(order), bound);
    }

    /**
     * Fills a row whose places want sorts. A set passes when its pieces of each sort pass among themselves. Up to 16 pieces the answer is exact
     * whatever the effort; beyond, it is a good one with a bound beside it.
     *
     * @param problem the pieces, how unlike they are, and the row
     * @param sorts of its pieces and places
     * @param names of the sorts, as a person knows them
     * @param effort what improving may spend
     * @return the set in its order, with what is proven of it
     * @throws IllegalArgumentException when {@link RowProblem#problems()} or {@link RowSorts#problems} is not empty, or a difference is
     *     negative or not finite
     */
    public static RowPlacement solve(RowProblem problem, RowSorts sorts, List<String> names, Effort effort) {
        List<Problem> problems = new ArrayList<>(problem.problems());
        problems.addAll(sorts.problems(names));
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException(problems.get(0).line());
        }
        int pieces = problem.masses().size();
        Differences difference = Differences.of(problem.unlikeness(), pieces);
        SortRules rules = new SortRules(
                problem.masses().stream().mapToDouble(m -> m.grams()).toArray(), sorts, problem.tolerancePct() / 100);
        List<String> warnings = rules.warnings(problem.tolerancePct(), names);
        SortedRowSearch search = new SortedRowSearch(difference, sorts, rules);
        if (pieces <= ExactRow.MOST_PIECES) {
            int[] order = new ExactRow(difference, problem.places()).solve(rules, sorts);
            return placement(problem, warnings, order, search.total(order), search.total(order));
        }
        double bound = RowBound.ofSorts(difference, sorts);
        int[] order = search.solve(bound * (1 + 1e-9), PATIENCE, effort);
        return placement(problem, warnings, order, search.total(order), bound);
    }

    /**
     * Fills a row of which a person settled some or all.
     *
     * @param problem the pieces, how unlike they are, and the row
     * @param sorts of its pieces and places; empty where every piece may stand anywhere
     * @param names of the sorts, as a person knows them
     * @param hand what is settled; each held piece of the sort that its place wants
     * @param effort what searching the rest may spend
     * @return the set in its order
     * @throws IllegalArgumentException when {@link RowProblem#problems()} or {@link RowSorts#problems} is not empty, or a difference is
     *     negative or not finite
     */
    public static ByHand byHand(
            RowProblem problem, Optional<RowSorts> sorts, List<String> names, HandPlaces hand, Effort effort) {
        List<Problem> problems = new ArrayList<>(problem.problems());
        sorts.ifPresent(each -> problems.addAll(each.problems(names)));
        if (!problems.isEmpty()) {
            throw new IllegalArgumentException(problems.get(0).line());
        }
        int pieces = problem.masses().size();
        Differences difference = Differences.of(problem.unlikeness(), pieces);
        double wanted = problem.tolerancePct() / 100;
        double[] massesG = problem.masses().stream().mapToDouble(m -> m.grams()).toArray();
        SetRule rule = new SetRule(massesG, problem.places(), wanted);
        HandSearch.Fits fits = (piece, place) -> sorts.map(each ->
                        each.ofPieces().get(piece).equals(each.ofPlaces().get(place)))
                .orElse(true);
        ToDoubleFunction<int[]> misses = order -> sorts.map(each -> each.misses(massesG, order, wanted))
                .orElseGet(() -> SetRule.misses(rule.share(order), wanted));
        ToDoubleFunction<int[]> total = order -> total(difference, order);
        int[] start = hand.start(problem.places(), WheelMatch.preferred(rule, pieces), fits);
        HandSearch search = new HandSearch(pieces, start, hand, fits, new HandSearch.Judge(misses, total, order -> 0));
        if (!hand.stands()) {
            search.run(effort);
        }
        int[] order = search.pieceAt();
        List<String> warnings = misses.applyAsDouble(order) == 0
                ? List.of()
                : List.of(
                        "the pieces placed are farther from one another in mass than the tolerance for a set's weights");
        double bound = total.applyAsDouble(order) == 0 ? 0 : -1;
        RowPlacement placed = placement(problem, warnings, order, total.applyAsDouble(order), bound);
        return new ByHand(placed, !hand.stands() && search.proven);
    }

    /**
     * A row that a person had a hand in.
     *
     * @param placement which piece stands where; nothing is proven of it unless neighbours do not differ at all
     * @param leastOfRest whether no other choice or order that keeps what is held has a smaller total
     */
    public record ByHand(RowPlacement placement, boolean leastOfRest) {}

    private static double total(Differences difference, int[] order) {
        double sum = 0;
        for (int i = 1; i < order.length; i++) {
            sum += difference.between(order[i - 1], order[i]);
        }
        return sum;
    }

    private static RowPlacement placement(RowProblem problem, SetRule rule, int[] order, double total, double bound) {
        return placement(problem, rule.warnings(problem.tolerancePct()), order, total, bound);
    }

    private static RowPlacement placement(
            RowProblem problem, List<String> warnings, int[] order, double total, double bound) {
        boolean[] placed = new boolean[problem.masses().size()];
        for (int piece : order) {
            placed[piece] = true;
        }
        List<Integer> spares = new ArrayList<>();
        for (int piece = 0; piece < placed.length; piece++) {
            if (!placed[piece]) {
                spares.add(piece);
            }
        }
        boolean proven = total <= bound * (1 + 1e-9);
        return new RowPlacement(
                Arrays.stream(order).boxed().toList(),
                spares,
                total,
                Math.max(0, Math.min(bound, total)),
                proven,
                warnings,
                List.of(new Working(
                        "total difference",
                        "Σ of the differences of neighbours",
                        Working.DERIVED,
                        proven
                                ? "no other choice or order that passes has a smaller one"
                                : String.format(
                                        Locale.ROOT, "the best found; none can be below %.6g", Math.max(0, bound)))));
    }
}
