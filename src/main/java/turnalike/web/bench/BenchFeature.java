package turnalike.web.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import turnalike.job.Plan;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.web.job.PlanCache;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;

/** The bench view of a job: its cuts one at a time, and a form for each piece, whose script sends what is entered as a program does. */
public final class BenchFeature implements Feature {
    private static final String BENCH = JobAddress.JOB + "/bench";
    private static final String WORKER = "/turnalike/web/bench-worker.js";

    private final JobStore store;
    private final Pages pages;
    private final PlanCache plans;

    public BenchFeature(JobStore store, Pages pages, PlanCache plans) {
        this.store = store;
        this.pages = pages;
        this.plans = plans;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(BENCH, this::show);
        routes.get(BENCH + "/worker.js", BenchFeature::worker);
        routes.post(BENCH + "/log", BenchFeature::old);
        routes.post(BENCH + "/undo", BenchFeature::old);
    }

    private void show(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        Plan plan = plans.patient(kept.id(), kept.text());
        pages.show(ctx, 200, "bench/page.jte", kept.text().job().title() + ", at the bench", new BenchView(kept, plan));
    }

    /** A worker may only mind pages below its own address unless it is told that it may mind more. */
    private static void worker(Context ctx) {
        try (InputStream in = BenchFeature.class.getResourceAsStream(WORKER)) {
            ctx.header("Service-Worker-Allowed", "/jobs/")
                    .contentType("text/javascript; charset=utf-8")
                    .result(Objects.requireNonNull(in, WORKER).readAllBytes());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * Where the script of an older release sent entries to. A view that has stood open since keeps what is refused so, and tells to load it again;
     * loaded again it sends all of it where it is taken now.
     */
    private static void old(Context ctx) {
        throw Refusal.of(403, "page", "it was opened too long ago to change anything", "load the page again");
    }
}
