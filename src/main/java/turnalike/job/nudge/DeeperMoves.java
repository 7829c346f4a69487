package turnalike.job.nudge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import turnalike.effort.Effort;
import turnalike.job.edit.NudgeEdit.Shift;
import turnalike.settings.DividerPlan;
import turnalike.settings.DividerProblem;
import turnalike.settings.DividerSetting;
import turnalike.units.Length;

/**
 * Moves of three and four boundaries at once, of which there are too many to try each with the divider search. A move is the more promising the
 * fewer marks are left unreached once one of the plan's openings is put away and the others step as they did. From the most promising
 * moves, each with every single one more, the most promising go on: a fixed count of steps. Where no mark is left unreached, one opening
 * fewer does. What is found so is true; what is not found may be there all the same.
 */
final class DeeperMoves {
    /** More lines moved at once than this nobody follows. */
    static final int MOST_MOVES = 4;

    /** So many go on from each size to the next. */
    private static final int WIDTH = 40;

    private static final double SLACK_MM = 1e-9;

    private final DividerProblem problem;
    private final double[] openings;
    private final Set<Integer> given;
    private final double tolerance;
    private final double markTolerance;

    /** A move and how many marks it leaves unreached with one opening fewer. */
    private record Promise(MovedLines moved, int unreached) {
        static final Comparator<Promise> BEST = Comparator.comparingInt(Promise::unreached)
                .thenComparing(each -> each.moved().cost());
    }

    /**
     * @param problem of the job as it stands
     * @param plan its settings, of which one is to be saved
     * @param mark how far any mark may move
     */
    DeeperMoves(DividerProblem problem, DividerPlan plan, Length mark) {
        this.problem = problem;
        this.openings = plan.settings().stream()
                .map(DividerSetting::opening)
                .mapToDouble(Length::mm)
                .toArray();
        this.given = new HashSet<>(Set.of(0, problem.marks().size() - 1));
        given.addAll(plan.listOnTheStick());
        problem.squares().forEach(each -> given.addAll(Set.of(each, each + 1)));
        this.tolerance = problem.matchTolerance().mm() + SLACK_MM;
        this.markTolerance = mark.mm() + SLACK_MM;
    }

    /** {@return moves of three and four that save an opening as far as is seen here, the cheapest first} */
    List<MovedLines> of(List<MovedLines> singles, Effort effort) {
        List<MovedLines> out = new ArrayList<>();
        List<Promise> beam = promising(singles);
        for (int moves = 2; moves <= MOST_MOVES && !effort.spent(); moves++) {
            List<MovedLines> next = new ArrayList<>();
            Set<String> seen = new HashSet<>();
            for (Promise from : beam) {
                for (MovedLines single : singles) {
                    Shift more = single.shifts().get(0);
                    MovedLines both = from.moved().and(single);
                    if (!from.moved().moves(more.number()) && isAllowed(both) && seen.add(key(both))) {
                        next.add(both);
                    }
                }
            }
            beam = promising(next);
            if (moves > 2) {
                beam.stream()
                        .filter(each -> each.unreached() == 0)
                        .map(Promise::moved)
                        .forEach(out::add);
            }
            // What saves already is not made better by one move more.
            beam = beam.stream().filter(each -> each.unreached() > 0).toList();
        }
        out.sort(Comparator.comparingDouble(MovedLines::cost));
        return out;
    }

    private List<Promise> promising(List<MovedLines> all) {
        return all.stream()
                .map(each -> new Promise(each, unreached(each)))
                .sorted(Promise.BEST)
                .limit(WIDTH)
                .toList();
    }

    private static String key(MovedLines moved) {
        return moved.shifts().stream()
                .map(each -> each.number() + ":" + each.by().mm())
                .sorted()
                .collect(Collectors.joining(" "));
    }

    private boolean isAllowed(MovedLines moved) {
        return moved.offMm().stream().allMatch(off -> Math.abs(off) <= markTolerance);
    }

    /** The fewest marks left unreached over every opening that might be put away; pinned ones stand, but no plan is made worse by trying. */
    private int unreached(MovedLines moved) {
        double[] at = new double[problem.marks().size()];
        for (int i = 0; i < at.length; i++) {
            at[i] = problem.marks().get(i).mm() + moved.offMm().get(i);
        }
        return IntStream.range(0, openings.length)
                .map(away -> unreached(at, away))
                .min()
                .orElse(0);
    }

    private int unreached(double[] at, int away) {
        boolean[] stands = new boolean[at.length];
        given.forEach(mark -> stands[mark] = true);
        for (int round = 0; round < problem.mostSteps(); round++) {
            boolean[] before = stands.clone();
            for (int from = 0; from < at.length; from++) {
                for (int to = 0; before[from] && to < at.length; to++) {
                    stands[to] |= !stands[to] && isStepped(at, from, to, away);
                }
            }
        }
        int out = 0;
        for (boolean each : stands) {
            out += each ? 0 : 1;
        }
        return out;
    }

    private boolean isStepped(double[] at, int from, int to, int away) {
        double apart = Math.abs(at[to] - at[from]);
        for (int i = 0; i < openings.length; i++) {
            if (i != away && Math.abs(apart - openings[i]) <= tolerance) {
                return !isOverSquare(Math.min(from, to), Math.max(from, to));
            }
        }
        return false;
    }

    private boolean isOverSquare(int first, int last) {
        return problem.squares().stream().anyMatch(square -> first <= square && square < last);
    }
}
