package turnalike.store;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.job.kept.Step;
import turnalike.job.kept.UndoOrder;

/**
 * Whether the steps of one job follow from each other: by their seals, and played over the digests of the texts, as
 * {@link turnalike.job.kept.Replay} plays the texts. Fed step by step; what it holds at once is a few names and digests for each change.
 */
final class HistoryCheck implements StepRow.Taker {
    /** What a subject is called in the rows. */
    record Named(String kind, String name) {}

    private final boolean withTexts;
    private final UndoOrder order = new UndoOrder();
    private final Map<Named, Optional<String>> standing = new LinkedHashMap<>();
    private final Map<Integer, List<StepRow.ChangeRow>> edits = new HashMap<>();
    private Optional<String> fault = Optional.empty();
    private String seal = "";
    private String made = "";
    private int steps;

    /** @param withTexts whether each step comes with its texts, to be looked at too */
    HistoryCheck(boolean withTexts) {
        this.withTexts = withTexts;
    }

    @Override
    public void take(StepRow step) {
        if (fault.isPresent()) {
            return;
        }
        fault = faultOf(step);
        steps++;
        seal = step.seal();
        if (steps == 1) {
            made = step.at();
        }
    }

    private Optional<String> faultOf(StepRow step) {
        if (step.number() != steps + 1) {
            return Optional.of("step %d is missing".formatted(steps + 1));
        }
        if (!step.isSealedAfter(seal) || (withTexts && !step.hasItsTexts())) {
            return Optional.of("step %d is not as it was written".formatted(step.number()));
        }
        try {
            Instant.parse(step.at());
            order.take(step.number(), Step.Did.of(step.did()), step.of());
            return follows(step)
                    ? Optional.empty()
                    : Optional.of("step %d does not follow from the steps before it".formatted(step.number()));
        } catch (IllegalArgumentException | DateTimeException broken) {
            return Optional.of(String.valueOf(broken.getMessage()));
        }
    }

    private boolean follows(StepRow step) {
        if (step.changes().isEmpty() || !madeOf(step).equals(wanted(step))) {
            return false;
        }
        if (step.of().isEmpty()) {
            edits.put(step.number(), step.changes());
        }
        for (StepRow.ChangeRow each : step.changes()) {
            Named subject = new Named(each.kind(), each.name());
            if (!standing.getOrDefault(subject, Optional.empty()).equals(each.before())) {
                return false;
            }
            standing.put(subject, each.after());
        }
        return true;
    }

    /** What an undo or redo must bring about; an edit may do anything. */
    private List<Map.Entry<Named, Optional<String>>> wanted(StepRow step) {
        OptionalInt of = step.of();
        if (of.isEmpty()) {
            return madeOf(step);
        }
        boolean undo = step.did().equals(Step.Did.UNDO.word());
        return edits.getOrDefault(of.getAsInt(), List.of()).stream()
                .map(each -> Map.entry(new Named(each.kind(), each.name()), undo ? each.before() : each.after()))
                .toList();
    }

    private static List<Map.Entry<Named, Optional<String>>> madeOf(StepRow step) {
        return step.changes().stream()
                .map(each -> Map.entry(new Named(each.kind(), each.name()), each.after()))
                .toList();
    }

    /** The first thing wrong; empty when all of it follows. */
    Optional<String> fault() {
        return fault.or(() -> steps == 0 ? Optional.of("its steps are missing") : Optional.empty());
    }

    /** How many steps there were. */
    int steps() {
        return steps;
    }

    /** The time of the first step, as written. */
    String made() {
        return made;
    }

    /** What the history comes to: each subject in the order they first came, with its digest. */
    List<Map.Entry<Named, Optional<String>>> standing() {
        return new ArrayList<>(standing.entrySet());
    }
}
