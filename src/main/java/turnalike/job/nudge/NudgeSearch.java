package turnalike.job.nudge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import turnalike.effort.Effort;
import turnalike.effort.Progress;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.edit.NudgeEdit;
import turnalike.job.edit.NudgeEdit.Shift;
import turnalike.job.kept.JobText;
import turnalike.job.nudge.Nudge.Saving;
import turnalike.pattern.Mark;
import turnalike.settings.DividerPlan;

/**
 * Finds nudges: every single move of a boundary, then pairs of them, the cheapest to the eye first, then the promising of three and four,
 * each by the divider search itself.
 */
public final class NudgeSearch {
    /** More than this nobody reads; the cheapest are kept. */
    private static final int MOST = 6;

    /** No one candidate may spend more than this share of what is left: one hard to prove must not hide the others. */
    private static final double SHARE = 0.1;

    private static final double PAIRS_SHARE = 0.7;

    private final JobText text;
    private final Plan plan;
    private final Effort effort;
    private final List<Nudge> found = new ArrayList<>();
    private int tried;
    private int left;

    private NudgeSearch(JobText text, Plan plan, Effort effort) {
        this.text = text;
        this.plan = plan;
        this.effort = effort;
    }

    /** A change made on the text. */
    private record Made(NudgeEdit edit, JobText text, double cost) {
        Job job() {
            return text.job();
        }
    }

    /**
     * {@return the cheapest changes that save a divider opening, at most six, and the cheapest that saves a caliper} A change of the dividers
     * that is the same as a cheaper one and something more is left out. Each was made on the text and planned anew: a plan with as few
     * openings as it claims was found, with no more marks from the stick than before.
     *
     * @param text of the job
     * @param plan of the same job, whose settings are to be undercut; the better it was searched, the truer the saving
     * @param effort what all searches together may spend; progress tells the fewest openings found and how many changes were tried
     */
    public static Nudges of(JobText text, Plan plan, Effort effort) {
        return new NudgeSearch(text, plan, effort).run();
    }

    private Nudges run() {
        Optional<Nudge> calipers = calipers();
        if (!dividers().settings().isEmpty()) {
            List<MovedLines> singles = singles();
            int pairs = singles.size() * (singles.size() - 1) / 2;
            left = singles.size() + pairs;
            singles.forEach(this::look);
            if (!isOver()) {
                // Something is kept for three and four at once: of many lines the pairs alone would take all.
                Effort most = effort.share(PAIRS_SHARE);
                pairs(singles).forEach(each -> {
                    if (!most.spent()) {
                        look(each);
                    }
                });
            }
            if (!isOver()) {
                List<MovedLines> deeper = new DeeperMoves(
                                plan.dividerProblem(),
                                dividers(),
                                plan.job().tolerances().mark())
                        .of(singles, effort);
                left += deeper.size();
                deeper.forEach(this::look);
            }
        }
        boolean stopped = left > 0 && found.size() < MOST;
        calipers.ifPresent(found::add);
        found.sort(Comparator.comparingDouble(Nudge::cost));
        return new Nudges(found, tried, left, stopped, dividers().fewestProven());
    }

    private DividerPlan dividers() {
        return plan.settings().dividers();
    }

    private boolean isOver() {
        return found.size() >= MOST || effort.spent();
    }

    private List<MovedLines> singles() {
        List<MovedLines> out = new ArrayList<>();
        for (Shift shift : new Moves(plan.job()).boundaries()) {
            made(List.of(shift)).ifPresent(made -> out.add(new MovedLines(List.of(shift), made.cost(), off(made))));
        }
        out.sort(Comparator.comparingDouble(MovedLines::cost));
        return out;
    }

    /** How far each mark has moved; a change of their number is no change that {@link #made} makes. */
    private List<Double> off(Made made) {
        List<Mark> before = plan.job().pattern().marks();
        List<Mark> after = made.job().pattern().marks();
        return IntStream.range(0, before.size())
                .mapToObj(i -> after.get(i).place().minus(before.get(i).place()).mm())
                .toList();
    }

    private static List<MovedLines> pairs(List<MovedLines> singles) {
        List<MovedLines> out = new ArrayList<>();
        for (int i = 0; i < singles.size(); i++) {
            for (int k = i + 1; k < singles.size(); k++) {
                out.add(singles.get(i).and(singles.get(k)));
            }
        }
        out.sort(Comparator.comparingDouble(MovedLines::cost));
        return out;
    }

    /** Tries it unless the search is over, or something cheaper that it contains saves already. */
    private void look(MovedLines candidate) {
        if (isOver()) {
            return;
        }
        left--;
        if (isOneBoundaryTwice(candidate) || found.stream().anyMatch(each -> isIn(each, candidate))) {
            return;
        }
        tried++;
        made(candidate.shifts()).flatMap(this::saving).ifPresent(found::add);
        int fewest = found.stream()
                .mapToInt(Nudge::after)
                .min()
                .orElse(dividers().settings().size());
        effort.report(
                new Progress("divider openings with a nudge, %d tried, %d left".formatted(tried, left), fewest, 0));
    }

    private static boolean isOneBoundaryTwice(MovedLines candidate) {
        return candidate.shifts().stream().map(Shift::number).distinct().count()
                < candidate.shifts().size();
    }

    /** Whether each move of the nudge is one of the candidate's, or a smaller one the same way. */
    private static boolean isIn(Nudge nudge, MovedLines candidate) {
        return nudge.edit().shifts().stream().allMatch(small -> candidate.shifts().stream()
                .anyMatch(large -> large.number() == small.number()
                        && large.by().mm() * small.by().mm() > 0
                        && large.by().abs().compareTo(small.by().abs()) >= 0));
    }

    private Optional<Nudge> saving(Made made) {
        int before = dividers().settings().size();
        Plan after = Plan.of(made.job(), new Undercut(effort.share(SHARE), before));
        DividerPlan now = after.settings().dividers();
        boolean saves = now.settings().size() < before
                && now.listOnTheStick().size() <= dividers().listOnTheStick().size()
                && after.settings().calipers().size()
                        <= plan.settings().calipers().size();
        return saves
                ? Optional.of(
                        nudge(made, Saving.DIVIDERS, before, now.settings().size()))
                : Optional.empty();
    }

    private Optional<Nudge> calipers() {
        int before = plan.settings().calipers().size();
        return CaliperMerge.find(plan.job(), before).flatMap(this::made).flatMap(made -> {
            // Diameters leave the marks where they are, so the dividers need no search for it.
            int after = Plan.of(made.job(), () -> true).settings().calipers().size();
            return after < before ? Optional.of(nudge(made, Saving.CALIPERS, before, after)) : Optional.empty();
        });
    }

    /** Empty when no member can have these sizes, or something else would move too far with them. */
    private Optional<Made> made(List<Shift> shifts) {
        if (shifts.isEmpty()) {
            return Optional.empty();
        }
        NudgeEdit edit = new NudgeEdit(shifts);
        return edit.on(text).text().flatMap(after -> EyeCost.between(plan.job(), after.job())
                .map(cost -> new Made(edit, after, cost)));
    }

    private Nudge nudge(Made made, Saving saves, int before, int after) {
        String words = NudgeWords.of(plan.job(), made.edit(), saves, before, after);
        return new Nudge(made.edit(), saves, before, after, made.cost(), words, made.text());
    }
}
