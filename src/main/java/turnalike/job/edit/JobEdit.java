package turnalike.job.edit;

import java.util.Map;
import turnalike.job.kept.JobText;

/** One thing a person does to a job's text. Members are numbered from 1, from the datum end. */
public sealed interface JobEdit
        permits MemberEdit,
                JobFields,
                UnitsChange,
                RunMirrored,
                NudgeEdit,
                TableEdit,
                CutEdit,
                GoneBack,
                HandEdit,
                ScaleEdit,
                StretchEdit {
    /**
     * {@return what is done, in the user's words and one line, for the history: {@code mirror member 3 (hub bead)}}
     *
     * @param before the text it is done to, which knows what its members are called
     */
    String what(JobText before);

    /**
     * {@return the text after it, or every problem in what it would be}
     *
     * @param text to change; itself it stays as it is
     */
    JobText.Read on(JobText text);

    /**
     * {@return the same edit without the fields that were sent but say what they said when the form was made}
     *
     * @param base the text that the form was made from
     */
    default JobEdit narrowed(JobText base) {
        return this;
    }

    /**
     * {@return whether the text after it says the same as the one before, however it is spelled over lines}
     *
     * @param before the text it was done to
     * @param after what came of it
     */
    default boolean isNothing(JobText before, JobText after) {
        return JobTree.of(before).root().equals(JobTree.of(after).root());
    }

    /**
     * {@return an edit that sets fields of the job outside the run} A wood's species and its density take each other's place, and another
     * kind of frame starts from sizes that can be.
     *
     * @param values as typed, by their path: {@code wood.moisture_pct}; an empty value takes the field out
     */
    static JobEdit fields(Map<String, String> values) {
        return new JobFields(values);
    }
}
