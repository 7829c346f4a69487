package turnalike.settings;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Article;
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
        out.add(openings());
        return out;
    }

    private static Working stick(DividerProblem problem, GivenMarks given) {
        int marks = given.outOfReach().size();
        UnitSystem units = problem.units();
        return new Working(
                "fewest marks from the stick for want of an opening",
                "%d; with openings from %s to %s and at most %d steps from a given mark no sound plan has fewer than %d"
                        .formatted(
                                marks,
                                problem.smallest()
                                        .orElse(DividerProblem.usualSmallest(units))
                                        .format(units),
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
                "%s; no sound plan%s has fewer than %d"
                        .formatted(
                                Article.count(settings, "setting"),
                                some ? " with as few marks from the stick" : "",
                                lowerBound),
                Working.DERIVED
                        + ": a labelling spanning tree with a depth limit (Chang and Leu, Information Processing Letters 63, 1997; "
                        + "from memory), by annealing and then branch and bound over all choices of openings",
                lowerBound == settings
                        ? "proven"
                        : "best found; between %d and %d is not decided".formatted(lowerBound, settings));
    }

    private static Working error(DividerProblem problem) {
        UnitSystem units = problem.units();
        String steps = problem.mostSteps() == 1 ? "1 step" : problem.mostSteps() + " steps";
        String sound = problem.limit()
                .map(limit -> "limit %s for all of it, so at most %s".formatted(limit.formatFinest(units), steps))
                .orElse("at most " + steps);
        return new Working(
                "error of a mark",
                ("what the openings on its path miss, each up to %s, added up with their signs, and k steps of %s each from a given mark"
                                + " (an end, a shoulder line, one from the stick): that miss and k times that at worst, that miss and √k times"
                                + " that as root-sum-square; %s")
                        .formatted(
                                problem.matchTolerance().formatFinest(units),
                                problem.markError().formatFinest(units),
                                sound),
                "F. Scholz, Tolerance Stack Analysis Methods, Boeing, December 1995",
                "the root-sum-square figure assumes that the steps err independently, either that the dividers are set to the opening told; a"
                        + " line from the stick errs by one more, which what is struck from it shares and which is not in these figures");
    }

    private static Working openings() {
        return new Working(
                "what each opening is set to",
                "within the match tolerance of every distance it serves, where the greatest error of a mark is least, and then the sum of what"
                        + " the marks miss by",
                Working.DERIVED + ": a linear programme, by the simplex method (Dantzig, 1947; from memory)",
                "least for these steps, up to %d marks; beyond that the middle of the distances"
                        .formatted(PlanBuilder.MOST_FOR_LEAST_MISSES));
    }
}
