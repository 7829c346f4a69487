package turnalike.job.kept;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A step as text, its documents not read any further: what is written when a job is carried away, however long its history.
 *
 * @param at its time, as {@link java.time.Instant} is written
 * @param did what sort of step
 * @param of the step that was undone or redone; empty for an edit
 * @param what in the user's words
 * @param changes in order
 * @param who took it; empty where nobody was named
 */
public record StepText(
        String at, Step.Did did, OptionalInt of, String what, List<ChangeText> changes, Optional<String> who) {
    /**
     * A change as text.
     *
     * @param subject what is changed
     * @param document what it is after it; empty when it is taken out
     */
    public record ChangeText(Subject subject, Optional<String> document) {}

    public StepText {
        changes = List.copyOf(changes);
    }

    /** {@return the step as text} */
    static StepText of(Step step) {
        return new StepText(
                step.at().toString(),
                step.did(),
                step.of(),
                step.what(),
                step.changes().stream()
                        .map(each -> new ChangeText(each.subject(), each.document()))
                        .toList(),
                step.who());
    }
}
