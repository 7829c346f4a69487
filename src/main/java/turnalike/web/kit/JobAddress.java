package turnalike.web.kit;

import io.javalin.http.Context;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;

/** The job an address names: {@code /jobs/{job}/…}. */
public final class JobAddress {
    /** How the address of one job's pages begins. */
    public static final String JOB = "/jobs/{job}";

    private JobAddress() {}

    /** Its id; an address that names none leads nowhere. */
    public static JobId id(Context ctx) {
        return JobId.parse(ctx.pathParam("job")).fold(id -> id, (what, mend) -> {
            throw Refusal.notFound("that job");
        });
    }

    /** The job as it stands. */
    public static KeptJob job(Context ctx, JobStore store) {
        return store.find(id(ctx)).orElseThrow(() -> Refusal.notFound("that job"));
    }

    /** Where its pages are. */
    public static String address(JobId id) {
        return "/jobs/" + id.text();
    }
}
