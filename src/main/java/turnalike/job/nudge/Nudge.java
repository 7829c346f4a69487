package turnalike.job.nudge;

import turnalike.job.edit.NudgeEdit;
import turnalike.job.kept.JobText;

/**
 * A change so small that it is within the turner's tolerance, and what it saves.
 *
 * @param edit that makes it
 * @param saves what there is less of
 * @param before how many of these the job needs, or as few as were found for it
 * @param after how many it needs with the change, or as few as were found; below {@code before}
 * @param cost to the eye: for each mark that moves the weight of lengths times its move by the tolerance of marks, for each diameter that
 *     changes the weight of diameters times the change by its tolerance; not negative
 * @param words the whole of it in a sentence, without a full stop
 * @param text the job's text after it
 */
public record Nudge(NudgeEdit edit, Saving saves, int before, int after, double cost, String words, JobText text) {
    /** What a nudge saves. */
    public enum Saving {
        /** A divider opening. */
        DIVIDERS("divider opening"),
        /** A caliper opening. */
        CALIPERS("caliper opening");

        private final String word;

        Saving(String word) {
            this.word = word;
        }

        /**
         * {@return so many of it, in words: {@code 5 divider openings}}
         *
         * @param count zero or more
         */
        public String count(int count) {
            return "%d %s%s".formatted(count, word, count == 1 ? "" : "s");
        }
    }
}
