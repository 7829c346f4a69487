package turnalike.job.kept;

/**
 * One line of a list of jobs.
 *
 * @param id the store's name for the job
 * @param title the turner's own
 * @param times when it was made and last changed
 * @param pieces how many are logged
 */
public record JobCard(JobId id, String title, KeptJob.Times times, int pieces) {}
