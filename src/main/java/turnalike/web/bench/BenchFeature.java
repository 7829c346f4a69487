package turnalike.web.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import turnalike.job.Plan;
import turnalike.job.kept.EditAnd;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.Step;
import turnalike.job.kept.StepSummary;
import turnalike.pieces.Column;
import turnalike.pieces.Slip;
import turnalike.units.Problem;
import turnalike.web.job.PlanCache;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;
import turnalike.web.kit.Spoken;

/** The bench view of a job: its cuts one at a time, and the entry of each piece, kept once however often it is sent. */
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
        routes.post(BENCH + "/log", this::log);
        routes.post(BENCH + "/undo", this::undo);
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

    private void log(Context ctx) {
        JobId id = JobAddress.id(ctx);
        BenchEntry entry = entry(ctx);
        try {
            Optional<String> asked = store.editAnd(id, kept -> edit(kept, entry))
                    .map(done -> done.found().questions().stream()
                            .map(Slip::question)
                            .collect(Collectors.joining(" ")));
            String kept = "Piece %s is kept. %s".formatted(entry.label(), asked.orElse(""));
            answer(
                    ctx,
                    asked.isPresent() ? 200 : 404,
                    asked.isPresent() ? kept.strip() : "That job is not here any more.");
        } catch (KeptAlready sentTwice) {
            answer(ctx, 200, "Piece %s was kept already.".formatted(entry.label()));
        } catch (Refusal refused) {
            answer(ctx, refused.status(), lines(refused.problems()));
        }
    }

    /** The entry is in the history: its first sending arrived, only its answer did not. */
    private static final class KeptAlready extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    // Looked for within the edit's turn: two sendings of one entry that cross must not both find it missing.
    private EditAnd<BenchEntry.Kept> edit(KeptJob kept, BenchEntry entry) {
        if (store.hasStepEnding(kept.id(), entry.mark())) {
            throw new KeptAlready();
        }
        BenchEntry.Read read = entry.read(kept);
        BenchEntry.Kept now = read.kept().orElseThrow(() -> new Refusal(422, read.problems()));
        return new EditAnd<>(now.edit(), now);
    }

    private static BenchEntry entry(Context ctx) {
        String serial = serial(ctx);
        Map<String, String> figures = new LinkedHashMap<>();
        for (String name : ctx.formParamMap().keySet()) {
            if (Column.find(name).isPresent()) {
                RequestInput.field(ctx, name).ifPresent(value -> figures.put(name, value));
            }
        }
        return new BenchEntry(
                serial,
                RequestInput.field(ctx, "piece").orElse("").strip(),
                figures,
                RequestInput.field(ctx, "minutes"));
    }

    private static String serial(Context ctx) {
        return RequestInput.field(ctx, "entry")
                .filter(text -> text.matches("[0-9a-f]{16,32}"))
                .orElseThrow(() -> Refusal.of(422, "entry", "has no number of its own", "load the page again"));
    }

    /** Takes an entry back as long as nothing else was done since. */
    private void undo(Context ctx) {
        JobId id = JobAddress.job(ctx, store).id();
        String serial = serial(ctx);
        Optional<Step> undone = store.undo(id, kept -> isLast(kept, serial));
        answer(
                ctx,
                undone.isPresent() ? 200 : 409,
                undone.isPresent()
                        ? "Taken back."
                        : "Something else was done since: take it back in the office, or enter the piece again.");
    }

    private static void answer(Context ctx, int status, String text) {
        Spoken.text(ctx, status, text);
    }

    private static String lines(List<Problem> problems) {
        return problems.stream().map(Problem::line).collect(Collectors.joining(" "));
    }

    private boolean isLast(KeptJob kept, String serial) {
        List<StepSummary> done = store.done(kept.id());
        StepSummary last = done.get(done.size() - 1); // every job begins with a step
        return last.did() == Step.Did.EDIT && BenchEntry.isOf(last.what(), serial);
    }
}
