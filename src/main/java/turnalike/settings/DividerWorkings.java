package turnalike.settings;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/** How the figures of a plan were found, in words. */
final class DividerWorkings {
    private DividerWorkings() {}

    /** @param lowerBound no sound plan with as few marks from the stick has fewer settings */
    static List<Working> of(DividerProblem problem, GivenMarks given, int settings, int lowerBound) {
        List<Working> out = new ArrayList<>();
        if (!given.outOfReach().isEmpty()) {
            out.add(stick(problem, given));
        }
        out.add(fewest(given, settings, lowerBound));
        out.add(error(problem));
        return out;
    }

    private static Working stick(DividerProblem problem, GivenMarks given) {
        int marks = given.outOfReach().size();
        UnitSystem units = problem.units();
        return new Working(
                "fewest marks from the stick for want of an opening",
                "%d; with openings up to %s and at most %d steps from a given mark no sound plan has fewer than %d"
                        .formatted(
                                marks,
                                problem.largest()
                                        .orElse(DividerProblem.usualLargest(units))
                                        .format(units),
                                problem.mostSteps(),
                                given.leastOutOfReach()),
                Working.DERIVED + ": the fewest that cover every mark out of reach, by branch and bound",
                given.fewestProven()
                        ? "proven"
                        : "best found; between %d and %d is not decided".formatted(given.leastOutOfReach(), marks));
    }

    private static Working fewest(GivenMarks given, int settings, int lowerBound) {
        boolean some = !given.outOfReach().isEmpty();
        return new Working(
                "fewest divider settings",
                "%d settings; no sound plan%s has fewer than %d"
                        .formatted(settings, some ? " with as few marks from the stick" : "", lowerBound),
                Working.DERIVED
                        + ": a labelling spanning tree with a depth limit (Chang and Leu, Information Processing Letters 63, 1997; "
                        + "from memory), by annealing and then branch and bound over all choices of openings",
                lowerBound == settings
                        ? "proven"
                        : "best found; between %d and %d is not decided".formatted(lowerBound, settings));
    }

    private static Working error(DividerProblem problem) {
        return new Working(
                "error of a mark",
                ("k steps of %s each from a given mark (an end, a shoulder line, one from the stick): k times that at worst, √k times that"
                                + " as root-sum-square; limit %s, so at most %d steps")
                        .formatted(
                                problem.markError().formatFinest(problem.units()),
                                problem.limit().formatFinest(problem.units()),
                                problem.mostSteps()),
                "F. Scholz, Tolerance Stack Analysis Methods, Boeing, December 1995",
                "the root-sum-square figure assumes that the steps err independently; a line from the stick errs by one more, which what is"
                        + " struck from it shares and which is not in these figures");
    }
}
