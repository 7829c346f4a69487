package turnalike.web.job;

import java.util.List;
import turnalike.language.Language;
import turnalike.web.job.FinishedParts.Shown;
import turnalike.web.job.FinishedParts.Worked;

/**
 * What each part of a job's page shows beside the plan. A part that shows more than is told here would be sent as it was once: whoever adds
 * to a template adds here too. Fields count as they were typed, with what was wrong with them; two spellings of one length give one plan.
 */
final class ShownOnPage {
    private ShownOnPage() {}

    /** @param id of the part, as in {@code work.jte} */
    static Shown of(JobView view, Language language, String id, Panels panels) {
        List<Object> also =
                switch (id) {
                    case "drawing" -> drawing(view);
                    case "run" -> List.of(view.address(), view.selected());
                    case "member" -> List.of(view.address(), view.selected(), panels.member());
                    case "wanted" -> List.of(view.address(), fields(panels.open()));
                    case "order" -> List.of(view.address(), fields(panels.folded()));
                    case "settings" -> List.of(view.address(), view.widthPx(), view.isFinal());
                    case "misfits", "figures", "stock", "before-turning", "found" -> List.of();
                    default -> throw new IllegalArgumentException("no part of a job's page: " + id);
                };
        return new Shown(id, view.parts().isWhole(), language, Worked.of(view.plan()), also);
    }

    /** A group has no more to show than its section, which its fields are of. */
    private static List<FieldView> fields(List<JobForm.Group> groups) {
        return groups.stream().flatMap(each -> each.fields().stream()).toList();
    }

    private static List<Object> drawing(JobView view) {
        return List.of(
                view.selected(),
                view.glance().widthMm(),
                view.glance().scale(),
                view.photo().map(photo -> List.of(view.photoAddress(photo), photo)));
    }
}
