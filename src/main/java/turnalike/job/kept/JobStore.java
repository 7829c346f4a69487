package turnalike.job.kept;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Jobs that are kept for good. When a method that changes something returns, the change is on disk and outlives the program, however it
 * ends; when it throws, nothing is changed.
 */
public interface JobStore extends KeptJobs {
    /**
     * {@return the same store, in which each step bears a name} What it is asked for is the same; closing either closes both.
     *
     * @param who asked at each step, on the thread that takes it; where he is nobody, whoever the store named before
     */
    JobStore signedBy(Supplier<Optional<String>> who);

    /**
     * Keeps a new job.
     *
     * @param text its job file, kept to the letter
     * @return the id it got
     */
    JobId keep(JobText text);

    /**
     * Takes a job back that was carried away. A job that is here already is brought up to the given one when its history goes on from ours;
     * a job that is here to the letter stays as it is.
     *
     * @param given the job with its whole history
     * @return its id, the one it was given away with
     * @throws StoreException when the job here has gone another way since: nothing is overwritten
     */
    JobId keep(GivenJob given);

    /**
     * Keeps a given job as one of its own, under a new id, whatever else is here.
     *
     * @param given the job with its whole history
     * @return the new id
     */
    JobId keepBeside(GivenJob given);

    /**
     * Puts a job into the bin: it is listed there and no longer among the jobs, and stays as it is.
     *
     * @param id the job's
     * @return false when there is none of that id, or it is there already
     */
    boolean bin(JobId id);

    /**
     * Takes a job out of the bin again, also one that was there when it was emptied.
     *
     * @param id the job's
     * @return false when it is not in the bin
     */
    boolean restore(JobId id);

    /**
     * Empties the bin: its jobs are listed nowhere any more. What is kept is only ever added to, so the store's file still has them, each under
     * its id.
     *
     * @return how many
     */
    int emptyBin();

    /**
     * Changes a job. The function is handed the job as it stands and nobody else changes it meanwhile; it may read the store, on the thread
     * it is called on. It is called once more where a server was lost before the edit was kept. What it throws is thrown on, with nothing
     * changed.
     *
     * @param id the job's
     * @param edit makes the edit out of the job as it stands
     * @return the step that is now kept; empty when there is no job of that id
     */
    Optional<Step> edit(JobId id, Function<KeptJob, Edit> edit);

    /**
     * Changes a job, and tells what the function found beside its edit: of the call whose edit is kept, however often it was called.
     *
     * @param <T> what is found
     * @param id the job's
     * @param edit makes the edit out of the job as it stands, as above
     * @return the step that is now kept; empty when there is no job of that id
     */
    default <T> Optional<StepAnd<T>> editAnd(JobId id, Function<KeptJob, EditAnd<T>> edit) {
        List<T> found = new ArrayList<>(1);
        return edit(id, kept -> {
                    EditAnd<T> made = edit.apply(kept);
                    found.clear();
                    found.add(made.found());
                    return made.edit();
                })
                .map(step -> new StepAnd<>(step, found.get(0)));
    }

    /**
     * Takes the last edit back, all of it.
     *
     * @param id the job's
     * @return the step that is now kept; empty when there is nothing to undo or no such job
     */
    Optional<Step> undo(JobId id);

    /**
     * Takes the last edit back if that is what is meant.
     *
     * @param id the job's
     * @param meant asked of the job as it stands, while nobody else changes it; it may read the store, on the thread it is called on
     * @return the step that is now kept; empty when it was not meant, there is nothing to undo or no such job
     */
    Optional<Step> undo(JobId id, Predicate<KeptJob> meant);

    /**
     * Brings the edit undone last again.
     *
     * @param id the job's
     * @return the step that is now kept; empty when there is nothing to redo or no such job
     */
    Optional<Step> redo(JobId id);

    /**
     * Brings the edit undone last again if that is what is meant.
     *
     * @param id the job's
     * @param meant asked of the job as it stands, while nobody else changes it; it may read the store, on the thread it is called on
     * @return the step that is now kept; empty when it was not meant, there is nothing to redo or no such job
     */
    Optional<Step> redo(JobId id, Predicate<KeptJob> meant);
}
