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

    /** Goes on by one step; {@link IllegalArgumentException} when it undoes or redoes what is not next. */
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

    public Optional<Integer> nextUndo() {
        return Optional.ofNullable(back.peek());
    }

    public Optional<Integer> nextRedo() {
        return Optional.ofNullable(forth.peek());
    }
}
