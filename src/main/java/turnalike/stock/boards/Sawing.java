package turnalike.stock.boards;

import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What sawing takes.
 *
 * @param kerf the width of each saw cut; zero or more
 * @param edge taken off each long edge of a board, once; zero or more
 * @param end trimmed off each end of a board; zero or more
 */
public record Sawing(Length kerf, Length edge, Length end) {
    public Sawing {
        if (kerf.mm() < 0 || edge.mm() < 0 || end.mm() < 0) {
            throw new IllegalArgumentException("sawing must not take less than nothing, was %s, %s, %s mm"
                    .formatted(kerf.mm(), edge.mm(), end.mm()));
        }
    }

    /**
     * 1/8 in of kerf, 1/4 in off an edge and 1/2 in off an end, or 3, 6 and 12 mm. Common practice, no source: a full-kerf blade, one pass
     * to straighten an edge, and an end cut back past its checks; boards that are split or waney need more.
     *
     * @param units which of the two is meant
     * @return what sawing takes, in round figures of those units
     */
    public static Sawing usual(UnitSystem units) {
        return units == UnitSystem.INCH
                ? new Sawing(Length.ofInches(1 / 8.0), Length.ofInches(1 / 4.0), Length.ofInches(1 / 2.0))
                : new Sawing(Length.ofMm(3), Length.ofMm(6), Length.ofMm(12));
    }

    /**
     * {@return the greater of each, for what is sawn in one go for both}
     *
     * @param other what it takes elsewhere
     */
    public Sawing atLeast(Sawing other) {
        return new Sawing(most(kerf, other.kerf), most(edge, other.edge), most(end, other.end));
    }

    private static Length most(Length a, Length b) {
        return a.compareTo(b) >= 0 ? a : b;
    }
}
