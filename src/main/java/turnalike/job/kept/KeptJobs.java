package turnalike.job.kept;

import java.io.Writer;
import java.util.List;
import java.util.Optional;
import turnalike.units.Problem;

/** Jobs that are kept, to be read. Every call may throw {@link StoreException}. May be used by several threads. */
public interface KeptJobs extends AutoCloseable {
    /** {@return all jobs that are not in the bin, the one changed last first} */
    List<JobCard> list();

    /** {@return the jobs in the bin, the one changed last first; none that were there when it was emptied} */
    List<JobCard> binned();

    /**
     * {@return the job as it stands; empty when there is none of that id}
     *
     * @param id the job's
     */
    Optional<KeptJob> find(JobId id);

    /**
     * {@return what was done to the job, in order, without what it changed; empty when there is none of that id}
     *
     * @param id the job's
     */
    List<StepSummary> done(JobId id);

    /**
     * {@return whether the words of any of the job's steps end so} Other than {@link #done} it reads no step that does not.
     *
     * @param id the job's
     * @param ending letter by letter, at least one
     */
    boolean hasStepEnding(JobId id, String ending);

    /**
     * {@return the job's text as it stood after a step; empty when there is no such step}
     *
     * @param id the job's
     * @param step its number, from 1
     */
    Optional<JobText> textAfter(JobId id, int step);

    /**
     * {@return the whole job with its history, to be carried away; empty when there is none of that id}
     *
     * @param id the job's
     */
    Optional<GivenJob> give(JobId id);

    /**
     * Writes the whole job with its history as {@link GivenJob#format} has it, step by step: a history of any length takes little room, and
     * while whoever reads is slow others may write.
     *
     * @param id the job's
     * @param out stays open; what it throws is thrown on as {@link java.io.UncheckedIOException}
     * @return false, with nothing written, when there is none of that id
     */
    boolean give(JobId id, Writer out);

    /**
     * {@return what went wrong beside the point since the store was opened: a backup that could not be made, a history that could not be
     * read}
     */
    List<Problem> notes();

    /** Something watched, until it is closed. */
    interface Watch extends AutoCloseable {
        @Override
        void close();
    }

    /**
     * {@return the watching, to be closed} Tells whenever something may have been written, here, by another program or at another bench:
     * within half a second, and rather once too often.
     *
     * @param changed run by a thread of its own
     */
    Watch watch(Runnable changed);

    /** Gives the file back. Nothing is lost without it: whatever was answered is on disk. */
    @Override
    void close();
}
