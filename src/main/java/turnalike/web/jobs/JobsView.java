package turnalike.web.jobs;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.job.kept.JobCard;
import turnalike.units.Problem;

/**
 * The list of jobs.
 *
 * @param jobs the one changed last first
 * @param sought part of a title; empty for all jobs
 * @param notes what went wrong beside the point since the store was opened
 * @param inBin how many are in the bin
 * @param gone the one that was put there just now, if any
 */
public record JobsView(List<JobCard> jobs, List<Problem> notes, String sought, int inBin, Optional<JobCard> gone) {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMM uuuu, HH:mm", Locale.ENGLISH);

    public JobsView {
        jobs = List.copyOf(jobs);
        notes = List.copyOf(notes);
    }

    /** When it was changed last, where this machine stands. */
    public String changed(JobCard job) {
        return TIME.withZone(ZoneId.systemDefault()).format(job.times().changed());
    }
}
