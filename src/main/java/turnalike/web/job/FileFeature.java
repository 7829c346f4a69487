package turnalike.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.units.Problem;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** The job file itself, to be changed as text: whatever has no field of its own is written there. */
public final class FileFeature implements Feature {
    private static final String FILE = JobAddress.JOB + "/file";

    private final JobStore store;
    private final Pages pages;

    public FileFeature(JobStore store, Pages pages) {
        this.store = store;
        this.pages = pages;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(FILE, ctx -> {
            KeptJob kept = JobAddress.job(ctx, store);
            show(ctx, 200, kept, kept.text().text(), version(kept), List.of());
        });
        routes.post(FILE, this::keep);
    }

    /**
     * What the page shows.
     *
     * @param version the history's length when the text was read, by which somebody else's edit since is noticed
     */
    public record View(String address, String title, String text, int version, List<Problem> problems) {
        public View {
            problems = List.copyOf(problems);
        }
    }

    private static int version(KeptJob kept) {
        return kept.times().steps();
    }

    private void show(Context ctx, int status, KeptJob kept, String text, int version, List<Problem> problems) {
        String title = kept.text().job().title();
        View view = new View(JobAddress.address(kept.id()), title, text, version, problems);
        pages.show(ctx, status, "job/file.jte", title + ", job file", view);
    }

    private void keep(Context ctx) {
        KeptJob before = JobAddress.job(ctx, store);
        String typed = RequestInput.field(ctx, "text")
                .map(text -> text.replace("\r\n", "\n"))
                .orElseThrow(() -> Refusal.of(422, "job file", "is too long or missing", "send a shorter one"));
        int seen = RequestInput.number(RequestInput.field(ctx, "version")).orElse(-1);
        JobText.Read read = JobText.read(typed);
        if (read.text().isEmpty()) {
            show(ctx, 422, before, typed, seen, read.problems());
            return;
        }
        try {
            store.edit(before.id(), kept -> edit(kept, read.text().get(), seen));
            ctx.redirect(JobAddress.address(before.id()), HttpStatus.SEE_OTHER);
        } catch (Refusal crossed) {
            show(ctx, crossed.status(), before, typed, version(before), crossed.problems());
        }
    }

    private static Edit edit(KeptJob kept, JobText text, int seen) {
        if (version(kept) != seen) {
            throw Refusal.of(
                    409,
                    "job file",
                    "the job was changed since this text was read, last by '%s'"
                            .formatted(kept.undo().orElse("an undo")),
                    "look at the job in another window, bring that change into this text, and keep again");
        }
        return Edit.of("change the job file", Change.of(text));
    }
}
