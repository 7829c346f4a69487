package turnalike.job.kept;

import java.util.List;
import java.util.Optional;
import turnalike.units.Problem;

/** Jobs that are kept, to be read. Every call may throw {@link StoreException}. May be used by several threads. */
public interface KeptJobs extends AutoCloseable {
    /** All jobs, the one changed last first. */
    List<JobCard> list();

    /** The job as it stands; empty when there is none of that id. */
    Optional<KeptJob> find(JobId id);

    /** What was done to the job, in order, without what it changed; empty when there is none of that id. */
    List<StepSummary> done(JobId id);

    /** The job's text as it stood after that step; empty when there is no such step. */
    Optional<JobText> textAfter(JobId id, int step);

    /** The whole job with its history, to be carried away; empty when there is none of that id. */
    Optional<GivenJob> give(JobId id);

    /** What went wrong beside the point since the store was opened: a backup that could not be made, a history that could not be read. */
    List<Problem> notes();

    /** Gives the file back. Nothing is lost without it: whatever was answered is on disk. */
    @Override
    void close();
}
