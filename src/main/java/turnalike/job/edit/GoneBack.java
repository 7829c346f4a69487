package turnalike.job.edit;

import turnalike.job.kept.JobText;

/**
 * The job as it once stood, taken up again; what was done since stays in the history.
 *
 * @param then the text as it stood after the step
 * @param step its number, from 1
 */
public record GoneBack(JobText then, int step) implements JobEdit {
    @Override
    public String what(JobText before) {
        return "go back to how it stood after step " + step;
    }

    @Override
    public JobText.Read on(JobText text) {
        return JobText.read(then.text());
    }
}
