package turnalike.web.job;

import java.util.List;
import java.util.Locale;
import turnalike.job.nudge.Nudge;
import turnalike.job.nudge.Nudges;
import turnalike.web.kit.PutTogether;

/** The nudges of a job as the page lists them, each with the button that takes it. */
public record NudgeView(JobView job, Nudges nudges) implements PutTogether {
    @Override
    public byte[] onto(String page) {
        return job.onto(page);
    }

    public List<Nudge> list() {
        return nudges.nudges();
    }

    /** What the change costs the eye, to two decimals. */
    public String cost(Nudge nudge) {
        return String.format(Locale.ROOT, "%.2f", nudge.cost());
    }

    /** What was and was not looked at, in a sentence. */
    public String summary() {
        String found = list().isEmpty()
                ? "No change within your tolerances was found to save an opening."
                : "Each stands for itself; the cost is the weight of lengths or diameters times the change by its tolerance.";
        String untried =
                nudges.stopped() ? " %d changes were not tried for want of time.".formatted(nudges.left()) : "";
        String unproven = nudges.fewestProven() ? "" : " That no fewer divider openings do without one is not proven.";
        return found + " " + Nudges.LOOKED_FOR + untried + unproven;
    }
}
