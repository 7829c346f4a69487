package turnalike.web.turning;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.web.job.Plans;
import turnalike.web.kit.Addressed;
import turnalike.web.kit.Feature;
import turnalike.web.kit.Pages;

/** The page that says how a job's piece is turned. */
public final class TurningFeature implements Feature {
    private final JobStore store;
    private final Pages pages;
    private final Plans plans;

    public TurningFeature(JobStore store, Pages pages, Plans plans) {
        this.store = store;
        this.pages = pages;
        this.plans = plans;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(Addressed.JOB + "/turning", this::show);
    }

    private void show(Context ctx) {
        KeptJob kept = Addressed.job(ctx, store);
        TurningView view = new TurningView(Addressed.address(kept.id()), plans.patient(kept.text()));
        pages.show(ctx, 200, "turning/page.jte", view.title() + ", turning", view);
    }
}
