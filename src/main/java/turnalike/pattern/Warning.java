package turnalike.pattern;

import turnalike.units.SentenceCase;

/**
 * Something unwise that can still be turned. The plan comes out all the same.
 *
 * @param where the member, as every message names it
 * @param what what may go wrong, with the figures, and what turners do about it
 */
public record Warning(String where, String what) {
    /** {@return the warning as a sentence of its own, from a capital letter to a full stop} */
    public String sentence() {
        return SentenceCase.capital(where) + ": " + what + ".";
    }
}
