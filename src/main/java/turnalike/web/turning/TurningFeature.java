package turnalike.web.turning;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.web.job.PlanCache;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.JobSteps;
import turnalike.web.kit.Pages;

/** The page that says how a job's piece is turned. */
public final class TurningFeature implements Feature {
    private final JobStore store;
    private final Pages pages;
    private final PlanCache plans;

    public TurningFeature(JobStore store, Pages pages, PlanCache plans) {
        this.store = store;
        this.pages = pages;
        this.plans = plans;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(JobAddress.JOB + "/turning", this::show);
    }

    private void show(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        TurningView view = new TurningView(
                JobAddress.address(kept.id()), plans.patient(kept.id(), kept.text()), JobSteps.of(kept));
        pages.show(ctx, 200, "turning/page.jte", view.title() + ", turning", view);
    }
}
