package turnalike.web.match;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.sse.SseClient;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.job.Job;
import turnalike.job.answer.SetTable;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.pieces.MatchJob;
import turnalike.job.set.SetMatch;
import turnalike.sheets.SetSheets;
import turnalike.units.Problem;
import turnalike.web.kit.Attachment;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Papers;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;
import turnalike.web.kit.Spoken;

/** The set chosen and placed. */
public final class MatchFeature implements Feature {
    private static final String MATCH = JobAddress.JOB + "/match";

    /** How long the first look takes, and how much longer its answer is waited for. */
    private static final int FIRST_S = 5;

    private static final int WAITED_MS = 1_800;
    private static final int LONGEST_S = 600;

    private final JobStore store;
    private final Pages pages;
    private final SetSearches searches = new SetSearches();

    public MatchFeature(JobStore store, Pages pages) {
        this.store = store;
        this.pages = pages;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(MATCH, this::show);
        routes.post(MATCH, this::longer);
        routes.post(MATCH + "/stop", this::stop);
        new HandDeeds(store, pages, searches).addTo(routes);
        routes.get(MATCH + "/{file}.pdf", this::record);
        routes.get(MATCH + "/" + SetTable.FILE, this::table);
        routes.get(MATCH + "/frame.svg", this::frame);
        routes.sse(MATCH + "/progress", this::progress);
    }

    @Override
    public void close() {
        searches.close();
    }

    private void show(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        List<Problem> problems = MatchJob.problems(
                kept.text().job(), kept.pieces().stream().map(KeptPiece::piece).toList());
        Optional<SetSearch> search = problems.isEmpty()
                ? searches.find(kept).or(() -> Optional.of(searches.first(kept, FIRST_S)))
                : Optional.empty();
        search.filter(each -> each.seconds() == FIRST_S).ifPresent(each -> each.await(WAITED_MS));
        MatchView view = new MatchView(
                kept,
                problems,
                search,
                searches.findRest(kept),
                RequestInput.number(RequestInput.query(ctx, "left")).orElse(1));
        String template = Pages.isPart(ctx) ? "match/set.jte" : "match/page.jte";
        pages.show(ctx, 200, template, view.title(), view);
    }

    /** The record of the set that was found, as it stands on the page. */
    private void record(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        String name = ctx.pathParam("file");
        SetMatch set = searches.find(kept)
                .flatMap(SetSearch::found)
                .orElseThrow(() -> Refusal.notFound("a set of these pieces"));
        Job job = kept.text().job();
        Attachment.send(ctx, name, paper -> SetSheets.record(job.title(), Papers.today(), set, job.pattern(), paper));
    }

    /** The same set for a spreadsheet. */
    private void table(Context ctx) {
        SetMatch set = searches.find(JobAddress.job(ctx, store))
                .flatMap(SetSearch::found)
                .orElseThrow(() -> Refusal.notFound("a set of these pieces"));
        Attachment.send(ctx, SetTable.FILE, "text/csv; charset=utf-8", SetTable.csv(set));
    }

    /** Shaded, it is far longer than the rest of the page: fetched when it is looked at. */
    private void frame(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        String svg = searches.find(kept)
                .flatMap(SetSearch::found)
                .flatMap(set -> new MatchView(kept, List.of(), Optional.empty(), Optional.empty(), 1)
                        .frame(set, RequestInput.query(ctx, "narrow").isPresent()))
                .orElseThrow(() -> Refusal.notFound("a set of these pieces"));
        ctx.contentType("image/svg+xml").result(svg);
    }

    private void longer(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        int seconds = RequestInput.number(RequestInput.field(ctx, "seconds")).orElse(10);
        boolean strict =
                RequestInput.field(ctx, "strict").filter("true"::equals).isPresent();
        boolean possible = MatchJob.problems(
                        kept.text().job(),
                        kept.pieces().stream().map(KeptPiece::piece).toList())
                .isEmpty();
        if (possible) {
            searches.begin(kept, Math.max(FIRST_S, Math.min(LONGEST_S, seconds)), strict)
                    .await(50);
        }
        ctx.redirect(JobAddress.address(kept.id()) + "/match", HttpStatus.SEE_OTHER);
    }

    private void stop(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        Stream.of(searches.find(kept), searches.findRest(kept))
                .flatMap(Optional::stream)
                .forEach(search -> {
                    search.stop();
                    search.await(WAITED_MS);
                });
        ctx.redirect(JobAddress.address(kept.id()) + "/match", HttpStatus.SEE_OTHER);
    }

    /** Tells a page how far the search has come, twice a second, until it is done or nobody listens. */
    private void progress(SseClient client) {
        KeptJob kept = JobAddress.job(client.ctx(), store);
        Optional<SetSearch> search =
                searches.find(kept).filter(each -> !each.isDone()).or(() -> searches.findRest(kept));
        while (search.isPresent() && !search.get().isDone() && !client.terminated()) {
            client.sendEvent(
                    "progress", Spoken.by(client.ctx()).say(search.get().progress()));
            search.get().await(500);
        }
        client.sendEvent("done", "done");
        client.close();
    }
}
