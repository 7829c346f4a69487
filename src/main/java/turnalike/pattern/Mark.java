package turnalike.pattern;

import turnalike.units.Length;

/**
 * A layout line's place along the piece.
 *
 * @param place from the datum end
 * @param label what stands there: {@code 2 cove | 3 bead}, {@code 3 bead crest}
 * @param kind why there is a mark
 */
public record Mark(Length place, String label, Kind kind) {
    /** What a mark is for. */
    public enum Kind {
        /** An end of the piece: given, since the blank is cut to length. */
        END,
        /** Where one member ends and the next begins. */
        BOUNDARY,
        /** Where a square begins or ends: struck with square and knife before the blank is mounted, and given from then on. */
        SHOULDER,
        /** A highest or deepest point of a member, or another place inside it where it is sized. */
        CREST
    }
}
