package turnalike.job.kept;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Which edit the next undo takes back and which the next redo brings again. An edit after an undo ends the way forward: what was undone
 * stays in the history and can no longer be redone. The first step made the job and is not undone.
 */
public final class UndoOrder {
    private final Deque<Integer> back = new ArrayDeque<>();
    private final Deque<Integer> forth = new ArrayDeque<>();

    /** Nothing to undo and nothing to redo. */
    public UndoOrder() {}

    /**
     * Goes on by one step.
     *
     * @param number the step's, from 1, one more than that of the step before
     * @param did what sort of step
     * @param of the edit that is undone or redone, which must be the next one, else {@link IllegalArgumentException}; empty for an edit
     */
    public void take(int number, Step.Did did, OptionalInt of) {
        switch (did) {
            case EDIT -> {
                forth.clear();
                if (number > 1) {
                    back.push(number);
                }
            }
            case UNDO -> forth.push(next(back, number, did, of));
            case REDO -> back.push(next(forth, number, did, of));
        }
    }

    private static int next(Deque<Integer> from, int number, Step.Did did, OptionalInt of) {
        Integer next = from.peek();
        if (next == null || of.isEmpty() || next != of.getAsInt()) {
            throw new IllegalArgumentException("step %d cannot %s %s".formatted(number, did.word(), of));
        }
        return from.pop();
    }

    /** {@return the number of the edit that the next undo takes back; empty when there is none} */
    public Optional<Integer> nextUndo() {
        return Optional.ofNullable(back.peek());
    }

    /** {@return the number of the edit that the next redo brings again; empty when there is none} */
    public Optional<Integer> nextRedo() {
        return Optional.ofNullable(forth.peek());
    }
}
