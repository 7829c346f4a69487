package turnalike.job.set;

import java.util.List;
import turnalike.units.SentenceCase;

/**
 * Something about a frame that cannot be built, or that leaves little.
 *
 * @param forbids whether it cannot be built so; else it is thin and can
 * @param where in the frame: the hub, the neighbours, a rail
 * @param what is wrong, with its figures
 * @param mend what would mend it, worked out; empty where nothing is known to
 */
public record Misfit(boolean forbids, String where, String what, String mend) {
    private static final String FORBIDS = "cannot be built: ";

    /** Several changes, each of which alone would mend it. */
    static String ways(List<String> ways) {
        return "what would do: " + String.join(", or ", ways);
    }

    /** Whether a set's warning, {@code where: said}, is of what cannot be built. */
    static boolean isForbidding(String warning) {
        return warning.contains(": " + FORBIDS);
    }

    /** {@return what is wrong and what mends it, in words that follow where} */
    public String said() {
        String told = forbids ? FORBIDS + what : what;
        return mend.isEmpty() ? told : told + "; " + mend;
    }

    /** {@return it as a sentence of its own} */
    public String sentence() {
        return SentenceCase.capital(where + ": " + said()) + ".";
    }
}
