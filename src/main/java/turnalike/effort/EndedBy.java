package turnalike.effort;

import java.util.Locale;

/** Why a search ended. Ended by {@link #PROOF} or {@link #STEPS}, the same input gives the same answer. */
public enum EndedBy {
    /** Nothing better can be. */
    PROOF,
    /** Its fixed count of steps was spent. */
    STEPS,
    /** The time it was given was up. */
    SECONDS,
    /** Whoever waited took what there was. */
    STOPPED;

    /** {@return the word an answer uses: {@code proof}} */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
