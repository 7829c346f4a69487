package turnalike.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Function;
import turnalike.job.Plan;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.StepSummary;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** What was done to a job, to be read, looked into and laid over how it stands now. */
public final class HistoryFeature implements Feature {
    private static final String HISTORY = JobAddress.JOB + "/history";

    private final JobStore store;
    private final Pages pages;
    private final PlanCache plans;

    public HistoryFeature(JobStore store, Pages pages, PlanCache plans) {
        this.store = store;
        this.pages = pages;
        this.plans = plans;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HISTORY, this::list);
        routes.get(HISTORY + "/{step}", ctx -> {
            // The drawing first; what a search of a second finds follows.
            MomentView view = view(ctx, then -> plans.glimpse(then), false);
            pages.show(ctx, 200, "job/moment.jte", view.title(), view);
        });
        routes.get(HISTORY + "/{step}/settings", ctx -> {
            MomentView view = view(ctx, then -> plans.then(then), true);
            pages.show(ctx, 200, "job/momentsettings.jte", view.title(), view);
        });
    }

    private void list(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        HistoryView view = new HistoryView(kept, store.done(kept.id()), ZoneId.systemDefault());
        pages.show(ctx, 200, "job/history.jte", view.title() + ": what was done", view);
    }

    /** @param settled whether that plan's settings are searched for no longer */
    private MomentView view(Context ctx, Function<JobText, Plan> found, boolean settled) {
        KeptJob kept = JobAddress.job(ctx, store);
        int step = RequestInput.pathNumber(ctx, "step");
        List<StepSummary> done = store.done(kept.id());
        JobText then = text(kept, step);
        int last = kept.times().steps();
        int with = RequestInput.number(RequestInput.query(ctx, "with")).orElse(last);
        HistoryView history = new HistoryView(kept, done, ZoneId.systemDefault());
        Plan plan = found.apply(then);
        return new MomentView(
                history,
                new MomentView.Moment(step, then),
                new MomentView.Moment(with, with == last ? kept.text() : text(kept, with)),
                plan,
                settled || plans.isFinal(plan));
    }

    private JobText text(KeptJob kept, int step) {
        return store.textAfter(kept.id(), step).orElseThrow(() -> Refusal.notFound("that step of the history"));
    }
}
