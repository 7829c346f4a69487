package turnalike.web.wood;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.sse.SseClient;
import java.util.List;
import java.util.Optional;
import turnalike.job.edit.ShopTable;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.ShopLog;
import turnalike.sheets.CutSheet;
import turnalike.stock.boards.CuttingPlan;
import turnalike.web.job.PlanCache;
import turnalike.web.kit.Attachment;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Papers;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;
import turnalike.web.kit.Spoken;

/** An order's wood: what to saw, boards in hand and how they are cut, weighed blanks; and what it all takes and comes to. */
public final class WoodFeature implements Feature {
    private static final String WOOD = JobAddress.JOB + "/wood";

    /** How long the answer to a press waits for a search that is soon done. */
    private static final int WAITED_MS = 1_800;

    private static final int LONGEST_S = 600;

    private final JobStore store;
    private final Pages pages;
    private final PlanCache plans;
    private final CutSearches searches;
    private final List<Feature> parts;

    public WoodFeature(JobStore store, Pages pages, PlanCache plans) {
        this.store = store;
        this.pages = pages;
        this.plans = plans;
        this.searches = new CutSearches(store);
        PriceFeature price = new PriceFeature(store, pages);
        this.parts = List.of(
                new TableFeature(store, (ctx, status, typed) -> {
                    if (typed.table().filter(ShopTable.TIMES::equals).isPresent()) {
                        price.show(ctx, status, typed);
                    } else {
                        show(ctx, status, typed);
                    }
                }),
                price);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(WOOD, ctx -> show(ctx, 200, TypedRow.NONE));
        routes.get(WOOD + "/cut", this::cut);
        routes.post(WOOD + "/cut", this::begin);
        routes.post(WOOD + "/stop", this::stop);
        routes.get(WOOD + "/{file}.pdf", this::sheet);
        routes.sse(WOOD + "/progress", this::progress);
        parts.forEach(part -> part.addTo(routes));
    }

    @Override
    public void close() {
        searches.close();
    }

    private void show(Context ctx, int status, TypedRow typed) {
        WoodView view = view(ctx, typed);
        pages.show(ctx, status, "wood/page.jte", view.title() + ", wood", view);
    }

    private WoodView view(Context ctx, TypedRow typed) {
        KeptJob kept = JobAddress.job(ctx, store);
        return new WoodView(
                kept,
                plans.now(kept.id(), kept.text()),
                ShopLog.of(kept, store.done(kept.id())).blanks(),
                searches.find(kept),
                CutState.of(store, kept),
                typed);
    }

    /** How the boards are cut, to take the place of the search. */
    private void cut(Context ctx) {
        WoodView view = view(ctx, TypedRow.NONE);
        pages.show(ctx, 200, Pages.isPart(ctx) ? "wood/cut.jte" : "wood/page.jte", view.title() + ", wood", view);
    }

    private void begin(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        int seconds = RequestInput.number(RequestInput.field(ctx, "seconds")).orElse(0);
        if (!kept.text().job().shop().boards().isEmpty()) {
            List<String> with = ctx.formParams("with").stream()
                    .filter(id -> !id.equals(kept.id().text()))
                    .distinct()
                    .toList();
            searches.begin(kept, with, Math.max(0, Math.min(LONGEST_S, seconds)))
                    .await(seconds == 0 ? WAITED_MS : 50);
        }
        back(ctx, kept);
    }

    private void stop(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        searches.find(kept).ifPresent(search -> {
            search.stop();
            search.await(WAITED_MS);
        });
        back(ctx, kept);
    }

    private static void back(Context ctx, KeptJob kept) {
        ctx.redirect(JobAddress.address(kept.id()) + "/wood#cut-h", HttpStatus.SEE_OTHER);
    }

    /** What to saw, as it stands on the page. */
    private void sheet(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        String name = ctx.pathParam("file");
        CutState state = CutState.of(store, kept);
        CuttingPlan plan = state.plan().orElseThrow(() -> Refusal.notFound("a cutting of these boards"));
        Attachment.send(ctx, name, paper -> CutSheet.of(state.jobs(), plan, Papers.today(), paper));
    }

    /** Tells a page how far the search has come, twice a second, until it is done or nobody listens. */
    private void progress(SseClient client) {
        KeptJob kept = JobAddress.job(client.ctx(), store);
        Optional<CutSearch> search = searches.find(kept);
        while (search.isPresent() && !search.get().isDone() && !client.terminated()) {
            client.sendEvent(
                    "progress", Spoken.by(client.ctx()).say(search.get().progress()));
            search.get().await(500);
        }
        client.sendEvent("done", "done");
        client.close();
    }
}
