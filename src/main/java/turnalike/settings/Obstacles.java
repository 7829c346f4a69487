package turnalike.settings;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * Finds what stands in the way of any sound plan, and what would free it. That an opening is wider than the dividers open to stands in
 * the way of none: the stick gives the mark then.
 */
final class Obstacles {
    private static final String WHERE = "divider settings";

    private final DividerProblem problem;
    private final List<Problem> found = new ArrayList<>();

    private Obstacles(DividerProblem problem) {
        this.problem = problem;
    }

    /** Every obstacle, wishes that contradict one another first, then each mark that cannot be reached; none if a sound plan exists. */
    static List<Problem> list(DividerProblem problem) {
        Obstacles obstacles = new Obstacles(problem.withAnyOpening());
        obstacles.checkWishes();
        if (obstacles.found.isEmpty()) {
            obstacles.checkStick();
            obstacles.checkReach();
        }
        return List.copyOf(obstacles.found);
    }

    private void checkWishes() {
        for (Length pin : problem.pinned()) {
            notPositive("pinned", pin);
            for (Length forbidden : problem.forbidden()) {
                if (pin.minus(forbidden).abs().mm() <= problem.matchTolerance().mm() + Spans.SLACK_MM) {
                    add(
                            "the pinned opening %s is also forbidden, as %s".formatted(text(pin), text(forbidden)),
                            "take back one of the two");
                }
            }
        }
        problem.forbidden().forEach(forbidden -> notPositive("forbidden", forbidden));
        for (int i = 0; i < problem.pinned().size(); i++) {
            for (int j = 0; j < i; j++) {
                Length pin = problem.pinned().get(i);
                if (pin.minus(problem.pinned().get(j)).abs().mm() <= Spans.SLACK_MM) {
                    add("the opening %s is pinned twice".formatted(text(pin)), "pin it once");
                }
            }
        }
    }

    private void notPositive(String wish, Length opening) {
        if (!opening.isPositive()) {
            add("the %s opening %s is no opening".formatted(wish, text(opening)), "give one greater than zero");
        }
    }

    private void checkStick() {
        if (problem.mostSteps() < 1 && problem.marks().size() > 2) {
            for (int mark : problem.onTheStick().stream().sorted().toList()) {
                found.add(new Problem(
                        where(mark), "even a mark from the stick errs by one mark error, " + pastLimit(1), raise(1)));
            }
        }
    }

    private void checkReach() {
        List<Integer> unreached = unreached(problem.mostSteps(), problem.forbidden());
        if (unreached.isEmpty()) {
            return;
        }
        int inner = problem.marks().size() - 2;
        StepCount free = count(inner, problem.forbidden());
        List<List<Integer>> freed = problem.forbidden().stream()
                .map(forbidden -> unreached(problem.mostSteps(), without(forbidden)))
                .toList();
        for (int mark : unreached) {
            found.add(reach(mark, free.steps(mark), freed));
        }
    }

    private Problem reach(int mark, int steps, List<List<Integer>> stillUnreached) {
        if (problem.mostSteps() < 1) {
            return new Problem(
                    where(mark), "cannot be reached: one step errs by one mark error, " + pastLimit(1), raise(1));
        }
        List<String> mends = new ArrayList<>();
        for (int i = 0; i < stillUnreached.size(); i++) {
            if (!stillUnreached.get(i).contains(mark)) {
                mends.add("allow the opening " + text(problem.forbidden().get(i)));
            }
        }
        String what = "cannot be reached with the openings allowed";
        if (steps < Integer.MAX_VALUE) {
            what = "cannot be reached in fewer than %d steps, ".formatted(steps) + pastLimit(steps);
            mends.add(raise(steps));
        } else if (mends.isEmpty()) {
            mends.add("allow more than one of the forbidden openings");
        }
        mends.add("lay it out from the stick");
        return new Problem(where(mark), what, String.join(", or ", mends));
    }

    private List<Length> without(Length forbidden) {
        List<Length> rest = new ArrayList<>(problem.forbidden());
        rest.remove(forbidden);
        return rest;
    }

    private List<Integer> unreached(int mostSteps, List<Length> forbidden) {
        StepCount count = count(mostSteps, forbidden);
        List<Integer> unreached = new ArrayList<>();
        for (int mark = 1; mark < problem.marks().size() - 1; mark++) {
            if (count.steps(mark) == Integer.MAX_VALUE) {
                unreached.add(mark);
            }
        }
        return unreached;
    }

    private StepCount count(int mostSteps, List<Length> forbidden) {
        Spans spans = problem.spans(mostSteps, forbidden);
        int[] all = new int[spans.openings.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = i;
        }
        StepCount count = new StepCount(spans);
        count.count(all, all.length);
        return count;
    }

    private String where(int mark) {
        return "%s: mark %d at %s".formatted(WHERE, mark, text(problem.marks().get(mark)));
    }

    private String pastLimit(int steps) {
        return "%s worst case, past the limit of %s"
                .formatted(fine(problem.markError().times(steps)), fine(problem.mostByStepsAlone()));
    }

    /** To a limit which, typed as it stands here, allows that many steps: what is rounded off is not lost but added. */
    private String raise(int steps) {
        Length needed = problem.markError().times(steps);
        String told = fine(needed);
        if (Length.parse(told, problem.units()).get().compareTo(needed) < 0) {
            told = fine(
                    needed.plus(problem.units() == UnitSystem.METRIC ? Length.ofMm(0.0005) : Length.ofInches(0.00005)));
        }
        return "raise the limit to %s".formatted(told);
    }

    private void add(String what, String mend) {
        found.add(new Problem(WHERE, what, mend));
    }

    /** Errors are too small for fractions of an inch or tenths of a millimetre to tell them apart. */
    private String fine(Length error) {
        return error.formatFinest(problem.units());
    }

    private String text(Length length) {
        return length.format(problem.units());
    }
}
