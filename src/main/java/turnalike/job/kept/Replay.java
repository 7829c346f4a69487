package turnalike.job.kept;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** A job's history from its first step, played step by step: each step's changes, and what stands after all of them. Not for two threads. */
public final class Replay {
    private final List<Step> steps = new ArrayList<>();
    private final Map<Subject, Change> standing = new LinkedHashMap<>();
    private final Map<Integer, List<Change>> before = new HashMap<>();
    private final UndoOrder order = new UndoOrder();

    /** A history without a step. */
    public Replay() {}

    /**
     * {@return a whole history, played; {@link IllegalArgumentException} says which step does not follow from those before it}
     *
     * @param history every step from the first, in order
     */
    public static Replay of(List<Step> history) {
        Replay replay = new Replay();
        for (Step each : history) {
            Step played =
                    switch (each.did()) {
                        case EDIT -> replay.edit(each.at(), new Edit(each.what(), each.changes()), each.who());
                        case UNDO -> replay.undo(each.at(), each.who()).orElse(each);
                        case REDO -> replay.redo(each.at(), each.who()).orElse(each);
                    };
            if (!played.equals(each) || replay.steps.size() != each.number()) {
                throw new IllegalArgumentException(
                        "step %d does not follow from the steps before it".formatted(each.number()));
            }
        }
        return replay;
    }

    /**
     * Makes an edit.
     *
     * @param at when
     * @param edit what to change; the first one must give the job's text, else {@link IllegalArgumentException}
     * @return the step that the history now ends in
     */
    public Step edit(Instant at, Edit edit) {
        return edit(at, edit, Optional.empty());
    }

    /**
     * Makes an edit of somebody's.
     *
     * @param at when
     * @param edit what to change
     * @param who makes it; empty for nobody named
     * @return the step that the history now ends in
     */
    Step edit(Instant at, Edit edit, Optional<String> who) {
        if (steps.isEmpty()
                && edit.changes().stream().noneMatch(each -> each.subject().equals(Subject.JOB))) {
            throw new IllegalArgumentException("the first step gives the job's text");
        }
        int number = steps.size() + 1;
        before.put(number, edit.changes().stream().map(this::current).toList());
        return take(new Step(number, at, Step.Did.EDIT, OptionalInt.empty(), edit.what(), edit.changes(), who));
    }

    /**
     * Takes the last standing edit back.
     *
     * @param at when
     * @return the step that the history now ends in; empty when there is nothing to undo
     */
    public Optional<Step> undo(Instant at) {
        return undo(at, Optional.empty());
    }

    Optional<Step> undo(Instant at, Optional<String> who) {
        return order.nextUndo()
                .map(number -> again(number, at, Step.Did.UNDO, before.getOrDefault(number, List.of()), who));
    }

    /**
     * Brings the edit undone last again.
     *
     * @param at when
     * @return the step that the history now ends in; empty when there is nothing to redo
     */
    public Optional<Step> redo(Instant at) {
        return redo(at, Optional.empty());
    }

    Optional<Step> redo(Instant at, Optional<String> who) {
        return order.nextRedo()
                .map(number ->
                        again(number, at, Step.Did.REDO, steps.get(number - 1).changes(), who));
    }

    private Step again(int number, Instant at, Step.Did did, List<Change> changes, Optional<String> who) {
        String what = steps.get(number - 1).what();
        return take(new Step(steps.size() + 1, at, did, OptionalInt.of(number), what, changes, who));
    }

    private Change current(Change change) {
        Change now = standing.get(change.subject());
        // The first step has nothing before it and is never undone: what stands for it is itself.
        return now != null ? now : steps.isEmpty() ? change : Change.without(change.subject());
    }

    private Step take(Step step) {
        order.take(step.number(), step.did(), step.of());
        steps.add(step);
        step.changes().forEach(change -> standing.put(change.subject(), change));
        return step;
    }

    /** {@return every step so far, from the first} */
    public List<Step> history() {
        return List.copyOf(steps);
    }

    /** {@return what stands now, subject by subject in the order they first came; those taken out are still there, without a document} */
    public List<Change> standing() {
        return List.copyOf(standing.values());
    }

    /**
     * {@return the job as it stands now; {@link IllegalStateException} before the first step}
     *
     * @param id the store's name for it
     */
    public KeptJob kept(JobId id) {
        if (steps.isEmpty()) {
            throw new IllegalStateException("there is no job before its first step");
        }
        return KeptJob.of(
                id,
                standing(),
                new KeptJob.Times(steps.get(0).at(), steps.get(steps.size() - 1).at(), steps.size()),
                order.nextUndo().map(number -> steps.get(number - 1).what()),
                order.nextRedo().map(number -> steps.get(number - 1).what()));
    }
}
