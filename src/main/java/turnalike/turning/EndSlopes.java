package turnalike.turning;

import turnalike.units.Length;

/**
 * Ends that are cut on a slope once the piece is turned: how much further than its axis the longer side of each reaches, which the blank keeps
 * until then.
 *
 * @param start at the datum end; zero where it is cut square
 * @param end at the far end, likewise
 */
public record EndSlopes(Length start, Length end) {
    /** Both ends square. */
    public static final EndSlopes NONE = new EndSlopes(Length.ZERO, Length.ZERO);

    /** How much at one of the two. */
    Length at(Held.At which) {
        return which == Held.At.START ? start : end;
    }
}
