package turnalike.trace;

import java.util.Optional;
import turnalike.units.Length;

/**
 * Why a member found in a table of measured points is not sure.
 *
 * @param member its number, from 1
 * @param why the reason
 * @param rival what else it may be, where that is the reason
 */
public record Doubt(int member, Why why, Optional<Rival> rival) {
    /** Reasons, the gravest first. */
    public enum Why {
        /** Another form explains its rows as well. */
        RIVAL,
        /** It has hardly more rows than sizes. */
        FEW,
        /** Where it begins or ends nobody measured, and the rows there lie far apart for so short a member. */
        ENDS
    }

    /**
     * Another form that explains the same rows.
     *
     * @param word the kind's
     * @param rows how many there are
     * @param at the place where a reading tells one from the other best
     */
    public record Rival(String word, int rows, Length at) {}
}
