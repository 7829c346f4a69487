package turnalike.web.jobs;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import turnalike.drawing.piece.ShadedSpindle;
import turnalike.job.edit.JobEdit;
import turnalike.job.edit.NewJob;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.JobCard;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** The list of jobs, a new job, the demo again, and a job brought back from a file. */
public final class JobsFeature implements Feature {
    private final JobStore store;
    private final Pages pages;

    private static final Length PICTURE_WIDTH = Length.ofMm(120);
    private static final Length PICTURE_TALLEST = Length.ofMm(16);

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
        routes.post(JobAddress.JOB + "/double", this::doubled);
        routes.get(JobAddress.JOB + "/picture.svg", this::picture);
        routes.post(JobAddress.JOB + "/rename", this::rename);
        routes.post(JobAddress.JOB + "/bin", this::bin);
        routes.post(JobAddress.JOB + "/restore", this::restore);
        routes.get("/bin", this::binned);
        routes.post("/bin/empty", this::empty);
    }

    private void list(Context ctx) {
        String sought = RequestInput.query(ctx, "sought").orElse("").strip();
        List<JobCard> found = store.list().stream()
                .filter(card -> card.title().toLowerCase(Locale.ROOT).contains(sought.toLowerCase(Locale.ROOT)))
                .toList();
        pages.show(
                ctx,
                200,
                "jobs/list.jte",
                "Jobs",
                new JobsView(found, store.notes(), sought, store.binned().size(), gone(ctx)));
    }

    /** The same pattern and settings as a job of its own, without pieces or history. */
    private void doubled(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        String title = kept.text().job().title() + " (copy)";
        JobText.Read read = JobEdit.fields(Map.of("title", title)).on(kept.text());
        open(ctx, store.keep(read.text().orElse(kept.text())));
    }

    /** The job that was just put into the bin, so that it can be taken back on the spot. */
    private Optional<JobCard> gone(Context ctx) {
        Optional<String> id = RequestInput.query(ctx, "gone");
        return id.flatMap(text -> store.binned().stream()
                .filter(card -> card.id().text().equals(text))
                .findFirst());
    }

    private void rename(Context ctx) {
        String title = RequestInput.field(ctx, "title").orElse("").strip();
        if (title.isEmpty()) {
            throw Refusal.of(422, "title", "is empty", "give the job a name");
        }
        KeptJob before = JobAddress.job(ctx, store);
        if (!before.text().job().title().equals(title)) {
            JobEdit edit = JobEdit.fields(Map.of("title", title));
            store.edit(before.id(), kept -> {
                JobText.Read read = edit.on(kept.text());
                JobText text = read.text().orElseThrow(() -> refused(read.problems()));
                return Edit.of(edit.what(kept.text()), Change.of(text));
            });
        }
        ctx.redirect("/", HttpStatus.SEE_OTHER);
    }

    private void bin(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        store.bin(kept.id());
        ctx.redirect("/?gone=" + kept.id().text(), HttpStatus.SEE_OTHER);
    }

    private void restore(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        store.restore(kept.id());
        ctx.redirect("/", HttpStatus.SEE_OTHER);
    }

    private void binned(Context ctx) {
        JobsView view =
                new JobsView(store.binned(), store.notes(), "", store.binned().size(), Optional.empty());
        pages.show(ctx, 200, "jobs/bin.jte", "The bin", view);
    }

    private void empty(Context ctx) {
        store.emptyBin();
        ctx.redirect("/", HttpStatus.SEE_OTHER);
    }

    /** The piece as it will look, small. */
    private void picture(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        String svg = ShadedSpindle.small(kept.text().job().pattern(), PICTURE_WIDTH, PICTURE_TALLEST)
                .file();
        ctx.header("Cache-Control", "no-cache").contentType("image/svg+xml").result(svg);
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
