package turnalike.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.stream.Collectors;
import turnalike.job.edit.JobEdit;
import turnalike.job.edit.MemberEdit;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.pattern.MemberKey;
import turnalike.units.Problem;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;
import turnalike.web.kit.Spoken;

/**
 * What a job would be with one size changed: the drawing, the weight, what warns and what touches while a handle is dragged. Nothing is
 * kept. A size that cannot be is answered with 422 and why, in a line: there the drag stops.
 */
public final class DragFeature implements Feature {
    private final JobStore store;
    private final Pages pages;
    private final PlanCache plans;
    private final JobShow show;

    public DragFeature(JobStore store, Pages pages, PlanCache plans) {
        this.store = store;
        this.pages = pages;
        this.plans = plans;
        this.show = new JobShow(pages, plans);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(JobAddress.JOB + "/member/{number}/drag", this::drag);
    }

    private void drag(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        int number = RequestInput.pathNumber(ctx, "number");
        JobText.Read read = edit(ctx, number).on(kept.text());
        if (read.text().isEmpty()) {
            Spoken.text(ctx, 422, lines(read));
            return;
        }
        JobText text = read.text().orElseThrow();
        KeptJob after = kept.edited(text, "", kept.times().changed());
        JobView view = show.dragged(ctx, after, plans.glimpse(text), number);
        pages.show(ctx, 200, "job/drag.jte", view.title(), view);
    }

    private static JobEdit edit(Context ctx, int number) {
        String key = RequestInput.query(ctx, "key").orElse("");
        String value = RequestInput.query(ctx, "value").orElse("");
        if (!MemberForm.FIELDS.contains(key)) {
            throw Refusal.of(422, "key", "is no size of a member", "drag one of the handles");
        }
        return new MemberEdit(
                number,
                key.equals(MemberKey.LENGTH)
                        ? new MemberEdit.Boundary(value)
                        : new MemberEdit.Sizes(Map.of(key, value)));
    }

    private static String lines(JobText.Read read) {
        return read.problems().stream().map(Problem::line).collect(Collectors.joining("\n"));
    }
}
