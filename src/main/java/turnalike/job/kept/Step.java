package turnalike.job.kept;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One thing done to a job, with its time. Undoing is a step too: nothing ever leaves the history.
 *
 * @param number from 1, without a gap
 * @param at when
 * @param did what sort of step
 * @param of the step that was undone or redone; empty for an edit
 * @param what in the user's words; an undo has the words of what it undid
 * @param changes what each subject is after it
 * @param who took it: a device's name, or a person's as his machine knows him; one line; empty where nobody was named
 */
public record Step(
        int number, Instant at, Did did, OptionalInt of, String what, List<Change> changes, Optional<String> who) {
    /**
     * A step of nobody named.
     *
     * @param number from 1, without a gap
     * @param at when
     * @param did what sort of step
     * @param of the step that was undone or redone; empty for an edit
     * @param what in the user's words
     * @param changes what each subject is after it
     */
    public Step(int number, Instant at, Did did, OptionalInt of, String what, List<Change> changes) {
        this(number, at, did, of, what, changes, Optional.empty());
    }

    /**
     * {@return the same step, taken by that one}
     *
     * @param whose a name of one line; empty for nobody named
     */
    public Step by(Optional<String> whose) {
        return new Step(number, at, did, of, what, changes, whose);
    }

    /** The sorts of step, with the word each is written as. */
    public enum Did {
        /** Something was changed. */
        EDIT("edit"),
        /** An edit was taken back. */
        UNDO("undo"),
        /** An edit taken back was brought again. */
        REDO("redo");

        private final String word;

        Did(String word) {
            this.word = word;
        }

        /** {@return the word it is written as} */
        public String word() {
            return word;
        }

        /**
         * {@return the sort written so; {@link IllegalArgumentException} when there is none}
         *
         * @param word as {@link #word} gives it
         */
        public static Did of(String word) {
            for (Did did : values()) {
                if (did.word.equals(word)) {
                    return did;
                }
            }
            throw new IllegalArgumentException("nothing is done by '%s'".formatted(word));
        }
    }

    public Step {
        changes = List.copyOf(changes);
        if (who.filter(name -> name.isBlank() || name.chars().anyMatch(Character::isISOControl))
                .isPresent()) {
            throw new IllegalArgumentException("who took a step is said in one line");
        }
        if (number < 1 || (did == Did.EDIT) != of.isEmpty()) {
            throw new IllegalArgumentException("step %d cannot %s of %s".formatted(number, did.word(), of));
        }
    }
}
