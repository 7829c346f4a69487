package turnalike.web.copy;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.job.edit.AgainstEntry;
import turnalike.job.edit.OriginalEntry;
import turnalike.job.edit.TracedJob;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPhoto;
import turnalike.job.original.OriginalTrace;
import turnalike.job.pieces.AgainstReport;
import turnalike.photo.PhotoCopy;
import turnalike.photo.PhotoTrace;
import turnalike.pieces.Piece;
import turnalike.sheets.Paper;
import turnalike.sheets.PhotoSheets;
import turnalike.trace.Traced;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.web.kit.Attachment;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Papers;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** An original copied into a new job or into one that is there, and a finished piece checked. */
public final class CopyFeature implements Feature {
    /** How long an answer is waited for before the page shows that it is being worked on. */
    private static final int WAITED_MS = 1_200;

    /** As many as the command prints unless told otherwise: some 850 mm in a row. */
    private static final int SHEET_PAGES = 3;

    private final JobStore store;
    private final Pages pages;
    private final CopyRuns runs = new CopyRuns();

    public CopyFeature(JobStore store, Pages pages) {
        this.store = store;
        this.pages = pages;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        add(routes, "/copy", CopyPurpose.NEW_JOB);
        add(routes, JobAddress.JOB + "/copy", CopyPurpose.PATTERN);
        add(routes, JobAddress.JOB + "/check", CopyPurpose.CHECK);
        routes.get("/photo-sheet/{paper}", CopyFeature::sheet);
    }

    @Override
    public void close() {
        runs.close();
    }

    private void add(RoutesConfig routes, String base, CopyPurpose purpose) {
        String run = base + "/{run}";
        routes.get(base, ctx -> form(ctx, purpose));
        routes.post(base, ctx -> begin(ctx, purpose));
        routes.get(run, ctx -> show(ctx, purpose, run(ctx), List.of()));
        routes.post(run + "/stop", ctx -> stop(ctx, purpose));
        routes.post(run + "/again", ctx -> again(ctx, purpose));
        routes.get(run + "/picture.jpg", this::picture);
        switch (purpose) {
            case NEW_JOB -> routes.post(run + "/take", this::takeNew);
            case PATTERN -> routes.post(run + "/take", this::takeInto);
            case CHECK -> routes.post(run + "/log", this::log);
        }
    }

    private static void sheet(Context ctx) {
        Paper paper = Papers.at(ctx);
        Attachment.send(ctx, () -> PhotoSheets.of(SHEET_PAGES, paper));
    }

    private Optional<KeptJob> job(Context ctx, CopyPurpose purpose) {
        return purpose == CopyPurpose.NEW_JOB ? Optional.empty() : Optional.of(JobAddress.job(ctx, store));
    }

    private CopyRun run(Context ctx) {
        return runs.find(ctx.pathParam("run"))
                .orElseThrow(() -> Refusal.of(
                        404, "original", "is not remembered any more", "go back to the job and choose it again"));
    }

    private void form(Context ctx, CopyPurpose purpose) {
        Optional<KeptJob> job = job(ctx, purpose);
        UnitSystem units = job.map(each -> each.text().job().units())
                .or(() -> RequestInput.query(ctx, "units").flatMap(UnitSystem::find))
                .orElse(UnitSystem.METRIC);
        String piece = RequestInput.query(ctx, "piece")
                .or(() -> job.map(KeptJob::nextLabel))
                .orElse("");
        form(ctx, 200, purpose, OriginalForm.blank(units, piece), List.of());
    }

    private void form(Context ctx, int status, CopyPurpose purpose, OriginalForm form, List<Problem> problems) {
        CopyView view = new CopyView(purpose, job(ctx, purpose), form, Optional.empty(), problems);
        pages.show(ctx, status, "copy/form.jte", view.title(), view);
    }

    private void begin(Context ctx, CopyPurpose purpose) {
        Optional<KeptJob> job = job(ctx, purpose);
        OriginalForm form = OriginalForm.of(ctx);
        try {
            checkLabel(purpose, form);
            SentOriginal sent = OriginalUpload.read(
                    ctx,
                    form,
                    job.filter(each -> purpose == CopyPurpose.CHECK)
                            .map(each -> each.text().job().pattern().length()));
            begun(ctx, purpose, job, sent, form.forAnother());
        } catch (Refusal refused) {
            form(ctx, refused.status(), purpose, form, refused.problems());
        }
    }

    private static void checkLabel(CopyPurpose purpose, OriginalForm form) {
        if (purpose == CopyPurpose.CHECK) {
            Piece.label(form.piece()).fold(label -> label, (what, mend) -> {
                throw Refusal.of(422, "Piece", what, mend);
            });
        }
    }

    /** The same original with other words or ends. */
    private void again(Context ctx, CopyPurpose purpose) {
        CopyRun before = run(ctx);
        Optional<KeptJob> job = job(ctx, purpose);
        OriginalForm form = OriginalForm.of(ctx);
        List<Problem> problems = new ArrayList<>();
        SentOriginal sent = before.sent()
                .with(form.wish(
                        before.sent().kind(),
                        job.filter(each -> purpose == CopyPurpose.CHECK)
                                .map(each -> each.text().job().pattern().length()),
                        problems));
        try {
            checkLabel(purpose, form);
        } catch (Refusal refused) {
            problems.addAll(refused.problems());
        }
        if (problems.isEmpty()) {
            begun(ctx, purpose, job, sent, form);
        } else {
            show(ctx, purpose, before, problems);
        }
    }

    /** What is done soon is answered at once, with what is wrong if anything is. */
    private void begun(Context ctx, CopyPurpose purpose, Optional<KeptJob> job, SentOriginal sent, OriginalForm form) {
        CopyRun run = runs.begin(sent, form, job.filter(each -> purpose == CopyPurpose.CHECK));
        boolean failed = run.await(WAITED_MS) && run.traced().isEmpty();
        if (failed) {
            show(ctx, purpose, run, List.of());
        } else {
            ctx.redirect(CopyView.address(purpose, job) + "/" + run.id(), HttpStatus.SEE_OTHER);
        }
    }

    private void show(Context ctx, CopyPurpose purpose, CopyRun run, List<Problem> problems) {
        boolean failed = !problems.isEmpty() || (run.isDone() && run.traced().isEmpty());
        CopyView view = new CopyView(purpose, job(ctx, purpose), run.form(), Optional.of(run), problems);
        String template = Pages.isPart(ctx) ? "copy/run.jte" : "copy/page.jte";
        pages.show(ctx, failed ? 422 : 200, template, view.title(), view);
    }

    private void stop(Context ctx, CopyPurpose purpose) {
        CopyRun run = run(ctx);
        run.stop();
        run.await(WAITED_MS);
        ctx.redirect(CopyView.address(purpose, job(ctx, purpose)), HttpStatus.SEE_OTHER);
    }

    private void picture(Context ctx) {
        PhotoCopy copy = run(ctx).copy().orElseThrow(() -> Refusal.notFound("that picture"));
        PhotoFeature.send(ctx, copy.jpeg());
    }

    // ---- taken

    private static Traced traced(CopyRun run) {
        return run.traced()
                .orElseThrow(() -> Refusal.of(422, "original", "nothing was found of it yet", "trace it first"));
    }

    private static Optional<KeptPhoto> photo(Context ctx, CopyRun run) {
        boolean keep = RequestInput.field(ctx, "photo").filter("yes"::equals).isPresent();
        Optional<PhotoTrace.Overlay> overlay = run.trace().flatMap(OriginalTrace::overlay);
        if (!keep || overlay.isEmpty()) {
            return Optional.empty();
        }
        PhotoTrace.Overlay lies = overlay.get();
        return run.copy().map(copy -> {
            double shrink = (double) copy.width() / lies.widthPixels();
            KeptPhoto.Axis axis = new KeptPhoto.Axis(
                    shrink * lies.start().x(),
                    shrink * lies.start().y(),
                    shrink * lies.end().x(),
                    shrink * lies.end().y(),
                    traced(run).original().profile().length());
            return KeptPhoto.of(run.sent().name(), copy.width(), copy.height(), axis, copy.jpeg());
        });
    }

    private void takeNew(Context ctx) {
        CopyRun run = run(ctx);
        String title = RequestInput.field(ctx, "title").orElse("").strip();
        JobText.Read read = TracedJob.of(
                traced(run).run(),
                run.form().system(),
                title.isEmpty() ? withoutEnding(run.sent().name()) : title);
        if (read.text().isEmpty()) {
            show(ctx, CopyPurpose.NEW_JOB, run, read.problems());
            return;
        }
        JobId id = store.keepBeside(OriginalEntry.begun(
                Clock.systemUTC().instant(), read.text().get(), run.sent().name(), photo(ctx, run)));
        ctx.redirect(JobAddress.address(id), HttpStatus.SEE_OTHER);
    }

    static String withoutEnding(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    private void takeInto(Context ctx) {
        CopyRun run = run(ctx);
        Traced traced = traced(run);
        Optional<KeptPhoto> photo = photo(ctx, run);
        try {
            store.edit(JobAddress.id(ctx), kept -> {
                JobText.Read read = TracedJob.into(kept.text(), traced.run());
                JobText text = read.text().orElseThrow(() -> new Refusal(422, read.problems()));
                return OriginalEntry.into(kept, text, run.sent().name(), photo);
            });
            ctx.redirect(JobAddress.address(JobAddress.id(ctx)), HttpStatus.SEE_OTHER);
        } catch (Refusal refused) {
            show(ctx, CopyPurpose.PATTERN, run, refused.problems());
        }
    }

    private void log(Context ctx) {
        CopyRun run = run(ctx);
        traced(run);
        AgainstReport report = run.report().orElseThrow(() -> Refusal.notFound("that check"));
        Optional<String> photo =
                run.sent().isPhotograph() ? Optional.of(run.sent().name()) : Optional.empty();
        try {
            store.edit(JobAddress.id(ctx), kept -> {
                refuseOther(run, kept, report);
                return AgainstEntry.log(kept, run.form().piece(), report, photo);
            });
            ctx.redirect(JobAddress.address(JobAddress.id(ctx)) + "/pieces", HttpStatus.SEE_OTHER);
        } catch (Refusal refused) {
            show(ctx, CopyPurpose.CHECK, run, refused.problems());
        }
    }

    private static void refuseOther(CopyRun run, KeptJob kept, AgainstReport report) {
        if (!run.against().map(KeptJob::text).equals(Optional.of(kept.text()))) {
            throw Refusal.of(409, "job", "its pattern was changed since the piece was checked", "check it again");
        }
        report.unlike().ifPresent(why -> {
            throw Refusal.of(422, "piece", why, "hold it against its own job");
        });
        if (report.figures().isEmpty()) {
            throw Refusal.of(422, "piece", "nothing was seen surely enough to keep", "measure the piece closer");
        }
    }
}
