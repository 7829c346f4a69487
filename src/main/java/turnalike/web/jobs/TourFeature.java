package turnalike.web.jobs;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.web.kit.Cookies;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;
import turnalike.web.kit.Tour;

/** The first walk: begun on a demo of its own, so that nothing anybody works on is touched; gone on with, left and taken up. */
public final class TourFeature implements Feature {

    private final JobStore store;

    public TourFeature(JobStore store) {
        this.store = store;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post("/tour", ctx -> go(ctx, new Tour(1, demo().text(), false)));
        routes.post(JobAddress.JOB + "/tour", this::step);
    }

    private JobId demo() {
        return store.list().stream()
                .filter(card -> card.title().startsWith("Harrowmead fair wheel"))
                .findFirst()
                .map(card -> card.id())
                .orElseGet(() -> DemoJob.keep(store));
    }

    private void step(Context ctx) {
        JobId job = JobAddress.job(ctx, store).id();
        int step = RequestInput.number(RequestInput.field(ctx, "step"))
                .filter(each -> each >= 1 && each <= Tour.steps())
                .orElseThrow(() -> Refusal.of(422, "step", "is none of the walk", "begin it again from the jobs"));
        boolean left = RequestInput.field(ctx, "leave").isPresent();
        go(ctx, new Tour(step, job.text(), left));
    }

    private static void go(Context ctx, Tour tour) {
        Cookies.choice(ctx, Tour.COOKIE, tour.kept());
        ctx.redirect(tour.left() ? "/" : tour.address(), HttpStatus.SEE_OTHER);
    }
}
