package turnalike.web.job;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import turnalike.job.fields.KeySection;

/**
 * The fields of a job's page, by where they stand.
 *
 * @param groups of what is outside the run
 * @param member the selected member's
 */
public record Panels(List<JobForm.Group> groups, List<FieldView> member) {
    private static final Set<KeySection> OPEN = Set.of(KeySection.ORDER, KeySection.STOCK);

    public Panels {
        groups = List.copyOf(groups);
        member = List.copyOf(member);
    }

    /** What is wanted and what it is made of: these stand open beside the run. */
    public List<JobForm.Group> open() {
        return groups.stream().filter(group -> OPEN.contains(group.section())).toList();
    }

    /** The others, folded until one is wanted. */
    public List<JobForm.Group> folded() {
        return groups.stream().filter(group -> !OPEN.contains(group.section())).toList();
    }

    /** What was just kept, for a screen reader; empty when nothing was. */
    public String said() {
        return Stream.concat(member.stream(), groups.stream().flatMap(group -> group.fields().stream()))
                .filter(FieldView::isKept)
                .map(field -> field.label() + ": kept")
                .findFirst()
                .orElse("");
    }
}
