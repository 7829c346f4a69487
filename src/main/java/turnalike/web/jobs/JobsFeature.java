package turnalike.web.jobs;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import turnalike.job.edit.NewJob;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.web.kit.Feature;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** The list of jobs, a new job, the demo again, and a job brought back from a file. */
public final class JobsFeature implements Feature {
    private final JobStore store;
    private final Pages pages;

    public JobsFeature(JobStore store, Pages pages) {
        this.store = store;
        this.pages = pages;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/", this::list);
        routes.post("/jobs", this::begin);
        routes.post("/jobs/demo", ctx -> open(ctx, DemoJob.keep(store)));
        routes.post("/jobs/file", this::bring);
    }

    private void list(Context ctx) {
        pages.show(ctx, 200, "jobs/list.jte", "Jobs", new JobsView(store.list(), store.notes()));
    }

    private void begin(Context ctx) {
        UnitSystem units =
                RequestInput.field(ctx, "units").flatMap(UnitSystem::find).orElse(UnitSystem.METRIC);
        open(ctx, store.keep(NewJob.in(units)));
    }

    /** Takes a job file or a whole job as it was carried away. */
    private void bring(Context ctx) {
        String text = RequestInput.upload(ctx, "file")
                .orElseThrow(() -> Refusal.of(422, "file", "none was chosen", "choose a job file"));
        if (GivenJob.claims(text)) {
            GivenJob.Read read = GivenJob.read(text);
            open(ctx, store.keepBeside(read.job().orElseThrow(() -> refused(read.problems()))));
        } else {
            JobText.Read read = JobText.read(text);
            open(ctx, store.keep(read.text().orElseThrow(() -> refused(read.problems()))));
        }
    }

    private static Refusal refused(List<Problem> problems) {
        return new Refusal(422, problems);
    }

    private static void open(Context ctx, JobId id) {
        ctx.redirect("/jobs/" + id.text(), HttpStatus.SEE_OTHER);
    }
}
