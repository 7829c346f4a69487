package turnalike.match;

import java.util.Arrays;

/**
 * Pieces kept for a set that others are to complete, as far as the rule asks: the set passes when (heaviest − lightest) / mean is at most a share.
 *
 * @param lightestG of those kept
 * @param heaviestG of those kept
 * @param sumG of those kept
 * @param missing how many more the set takes, one or more
 * @param places how many it has in all
 */
record KeptSet(double lightestG, double heaviestG, double sumG, int missing, int places) {
    /** Of the masses of those kept, at least one. */
    static KeptSet of(double[] keptG, int missing) {
        return new KeptSet(
                Arrays.stream(keptG).min().orElseThrow(),
                Arrays.stream(keptG).max().orElseThrow(),
                Arrays.stream(keptG).sum(),
                missing,
                keptG.length + missing);
    }
}
