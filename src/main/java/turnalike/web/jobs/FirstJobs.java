package turnalike.web.jobs;

import turnalike.job.edit.NewJob;
import turnalike.job.kept.JobStore;
import turnalike.units.UnitSystem;

/** What a new store begins with: an empty job to start on, and the demo to look at. */
public final class FirstJobs {
    private FirstJobs() {}

    public static void keep(JobStore store) {
        store.keep(NewJob.in(UnitSystem.INCH));
        DemoJob.keep(store);
    }
}
