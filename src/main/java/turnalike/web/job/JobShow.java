package turnalike.web.job;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import turnalike.job.Plan;
import turnalike.job.kept.KeptJob;
import turnalike.units.Length;
import turnalike.web.kit.PageWork;
import turnalike.web.kit.Pages;
import turnalike.web.kit.RequestInput;
import turnalike.web.kit.Shell;

/** How one job's page is shown: which member is selected, how wide the drawing is, the page or its changed part. */
final class JobShow {
    /** What a page without a script is drawn for; narrower screens scroll the drawing. */
    private static final double USUAL_WIDTH_PX = 1120;

    private static final String PART = "job/work.jte";

    private static final double NARROWEST_PX = 620;
    private static final double WIDEST_PX = 9600;

    private final Pages pages;
    private final PlanCache plans;
    private final PageWork work;

    JobShow(Pages pages, PlanCache plans) {
        this.pages = pages;
        this.plans = plans;
        this.work = pages.work();
    }

    /** After an edit: the page anew for a browser, the changed part for a script. */
    void done(Context ctx, KeptJob kept, int selected) {
        if (Pages.isPart(ctx)) {
            page(ctx, 200, kept, RefusedEdit.NONE, selected);
        } else {
            ctx.redirect("/jobs/%s?member=%d#member".formatted(kept.id().text(), selected), HttpStatus.SEE_OTHER);
        }
    }

    /** Begins on the part of the page that an edit changes, on another thread: while the edit is written to disk. */
    CompletableFuture<byte[]> ahead(Context ctx, KeptJob after, RefusedEdit beside, int selected) {
        Shell shell = pages.shell(ctx, after.text().job().title());
        Wanted wanted = wanted(ctx);
        return plans.ahead(after.id(), after.text())
                .thenApplyAsync(
                        plan -> pages.made(shell, PART, view(after, plan, beside, selected, wanted)), work.beside());
    }

    /** How wide the drawing may be, in millimetres, and what of the page is asked for. */
    private record Wanted(double widthMm, Parts parts) {}

    private Wanted wanted(Context ctx) {
        return new Wanted(widthMm(ctx), Parts.lackedBy(ctx, plans.parts()));
    }

    /** The part of the page that an edit changes, for a script that shows nothing of it yet. */
    byte[] part(Shell shell, KeptJob after, int selected) {
        Wanted parts = new Wanted(room(USUAL_WIDTH_PX), Parts.lackedBy(Optional.of(""), plans.parts()));
        Plan plan = plans.now(after.id(), after.text());
        return work.inTurn(() -> pages.made(shell, PART, view(after, plan, RefusedEdit.NONE, selected, parts)));
    }

    /** After an edit that {@link #ahead} was told of. */
    void done(Context ctx, CompletableFuture<byte[]> part) {
        pages.answer(ctx, 200, part.join());
    }

    void page(Context ctx, int status, KeptJob kept, RefusedEdit attempt, int selected) {
        Plan plan = plans.now(kept.id(), kept.text());
        JobView view = view(kept, plan, attempt, selected, wanted(ctx));
        pages.show(ctx, status, Pages.isPart(ctx) ? PART : "job/page.jte", view.title(), view);
    }

    JobView view(Context ctx, KeptJob kept, Plan plan) {
        return view(kept, plan, RefusedEdit.NONE, member(ctx), wanted(ctx));
    }

    /** As it would be after an edit that nobody has made yet, at the scale that the query tells. */
    JobView dragged(Context ctx, KeptJob after, Plan plan, int selected) {
        OptionalDouble scale =
                RequestInput.query(ctx, "scale").map(JobShow::scale).orElse(OptionalDouble.empty());
        JobView.Glance glance = new JobView.Glance(selected, widthMm(ctx), scale, Parts.whole());
        return new JobView(after, plan, true, glance, RefusedEdit.NONE);
    }

    private static OptionalDouble scale(String text) {
        try {
            double scale = Double.parseDouble(text);
            return scale > 0.01 && scale < 20 ? OptionalDouble.of(scale) : OptionalDouble.empty();
        } catch (NumberFormatException notOne) {
            return OptionalDouble.empty();
        }
    }

    private JobView view(KeptJob kept, Plan plan, RefusedEdit attempt, int selected, Wanted wanted) {
        int last = plan.job().pattern().members().size();
        JobView.Glance glance = new JobView.Glance(
                Math.max(1, Math.min(last, selected)), wanted.widthMm(), OptionalDouble.empty(), wanted.parts());
        return new JobView(kept, plan, plans.isFinal(plan), glance, attempt);
    }

    private static double widthMm(Context ctx) {
        Optional<String> told = RequestInput.query(ctx, "w")
                .or(() -> RequestInput.field(ctx, "w"))
                .or(() -> Optional.ofNullable(ctx.cookie("turnalike-room")));
        return room(RequestInput.number(told).map(Integer::doubleValue).orElse(USUAL_WIDTH_PX));
    }

    private static double room(double px) {
        return Math.max(NARROWEST_PX, Math.min(WIDEST_PX, px)) * Length.MM_PER_INCH / 96;
    }

    /** The member that is asked for, from 1; the first when none is. */
    static int member(Context ctx) {
        return RequestInput.number(RequestInput.query(ctx, "member").or(() -> RequestInput.field(ctx, "member")))
                .orElse(1);
    }
}
