package turnalike.job.edit;

import java.util.Map;
import turnalike.job.kept.JobText;

/** One thing a person does to a job's text. Members are numbered from 1, from the datum end. */
public sealed interface JobEdit permits MemberEdit, JobFields, UnitsChange, RunMirrored {
    /** What is done, in the user's words and one line, for the history: {@code mirror member 3 (hub bead)}. */
    String what(JobText before);

    /** The text after it, or every problem in what it would be. */
    JobText.Read on(JobText text);

    /** The same edit without the fields that were sent but say what they said when the form was made. */
    default JobEdit narrowed(JobText base) {
        return this;
    }

    /** Whether the text after it says the same as the one before, however it is spelled over lines. */
    default boolean isNothing(JobText before, JobText after) {
        return JobTree.of(before).root().equals(JobTree.of(after).root());
    }

    /** Sets fields of the job by their path: {@code wood.moisture_pct}; an empty value takes the field out. */
    static JobEdit fields(Map<String, String> values) {
        return new JobFields(values);
    }
}
