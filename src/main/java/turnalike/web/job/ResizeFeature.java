package turnalike.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import turnalike.job.edit.JobEdit;
import turnalike.job.edit.RebasedEdit;
import turnalike.job.edit.ScaleEdit;
import turnalike.job.edit.StretchEdit;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** The whole pattern scaled, or stretched to another length, and laid over the one before. */
public final class ResizeFeature implements Feature {
    private static final String RESIZE = JobAddress.JOB + "/resize";

    /** So many steps back the pattern before is looked for: weights are logged in between. */
    private static final int MOST_STEPS = 60;

    private static final double LEAST_PCT = 10;
    private static final double MOST_PCT = 1000;

    private final JobStore store;
    private final Pages pages;

    public ResizeFeature(JobStore store, Pages pages) {
        this.store = store;
        this.pages = pages;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(RESIZE, this::show);
        routes.post(RESIZE + "/scale", ctx -> edit(ctx, scale(ctx)));
        routes.post(RESIZE + "/stretch", ctx -> edit(ctx, stretch(ctx, JobAddress.job(ctx, store))));
    }

    private void show(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        ResizeView view = new ResizeView(kept, before(kept));
        pages.show(ctx, 200, Pages.isPart(ctx) ? "job/resize.jte" : "job/resizepage.jte", view.title(), view);
    }

    private Optional<JobText> before(KeptJob kept) {
        int last = kept.times().steps();
        for (int step = last - 1; step >= Math.max(1, last - MOST_STEPS); step--) {
            Optional<JobText> text = store.textAfter(kept.id(), step);
            if (text.isPresent()
                    && !text.get().job().pattern().equals(kept.text().job().pattern())) {
                return text;
            }
        }
        return Optional.empty();
    }

    private static ScaleEdit scale(Context ctx) {
        ScaleEdit.What what = RequestInput.field(ctx, "what")
                .flatMap(ScaleEdit.What::find)
                .orElseThrow(() -> Refusal.of(422, "scale", "does not say what", "choose all, lengths or diameters"));
        String typed = RequestInput.field(ctx, "pct").orElse("").strip().replace(',', '.');
        Optional<Double> pct =
                typed.matches("\\d{1,4}(\\.\\d{1,6})?") ? Optional.of(Double.valueOf(typed)) : Optional.empty();
        double share = pct.filter(each -> each >= LEAST_PCT && each <= MOST_PCT)
                .orElseThrow(
                        () -> Refusal.of(422, "scale", "to '%s' %% cannot be".formatted(typed), "give 10 to 1000"));
        return new ScaleEdit(what, share, RequestInput.field(ctx, "tenons").isPresent());
    }

    private static StretchEdit stretch(Context ctx, KeptJob kept) {
        String typed = RequestInput.field(ctx, "length").orElse("");
        Length whole = Length.parse(typed, kept.text().job().units()).fold(length -> length, (what, mend) -> {
            throw Refusal.of(422, "length", what, mend);
        });
        NavigableSet<Integer> members = new TreeSet<>();
        for (String each : ctx.formParams("member")) {
            RequestInput.number(Optional.of(each)).ifPresent(members::add);
        }
        return new StretchEdit(whole, members);
    }

    private void edit(Context ctx, JobEdit edit) {
        KeptJob before = JobAddress.job(ctx, store);
        int version = RequestInput.number(RequestInput.field(ctx, "version"))
                .orElse(before.times().steps());
        JobText seen = version >= before.times().steps()
                ? before.text()
                : store.textAfter(before.id(), version).orElse(before.text());
        store.edit(before.id(), kept -> {
            RebasedEdit carried = RebasedEdit.over(edit, seen, kept.text());
            JobEdit now = carried.edit().orElseThrow(() -> new Refusal(409, carried.problems()));
            JobText.Read read = now.on(kept.text());
            JobText text = read.text().orElseThrow(() -> new Refusal(422, read.problems()));
            if (now.isNothing(kept.text(), text)) {
                throw new Refusal(
                        422, java.util.List.of(new Problem("pattern", "comes out as it was", "give another size")));
            }
            return Edit.of(now.what(kept.text()), Change.of(text));
        });
        ctx.redirect(JobAddress.address(before.id()) + "/resize", HttpStatus.SEE_OTHER);
    }
}
