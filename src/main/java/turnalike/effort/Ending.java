package turnalike.effort;

import java.util.Locale;

/** What ended a search. Ended by proof or by steps, the same input gives the same answer on any machine; in order of how much that is. */
public enum Ending {
    /** Nothing better can be, or nothing was left to look at. */
    PROOF("by proof"),
    /** A fixed count of steps was made. */
    STEPS("after a fixed count of steps"),
    /** Its time was over. */
    SECONDS("when its time was over"),
    /** Somebody stopped it. */
    STOPPED("as it was stopped");

    private final String words;

    Ending(String words) {
        this.words = words;
    }

    /** {@return its word in an answer: {@code proof}} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** {@return how a search ended, to stand after "ended"} */
    public String words() {
        return words;
    }

    /**
     * {@return the one of the two that promises less}
     *
     * @param other of another search for the same answer
     */
    public Ending and(Ending other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
