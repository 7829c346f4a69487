package turnalike.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
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
        double[][] difference = Unlikeness.table(problem.unlikeness(), pieces);
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
        double[][] difference = Unlikeness.table(problem.unlikeness(), pieces);
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
                Math.min(bound, total),
                proven,
                warnings,
                List.of(new Working(
                        "total difference",
                        "Σ of the differences of neighbours",
                        Working.DERIVED,
                        proven
                                ? "no other choice or order that passes has a smaller one"
                                : String.format(Locale.ROOT, "the best found; none can be below %.6g", bound))));
    }
}
