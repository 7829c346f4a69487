package turnalike.match;

import turnalike.units.Angle;
import turnalike.units.Length;

/**
 * One place of the wheel with its piece.
 *
 * @param place from 1, as people count
 * @param angle where it stands
 * @param piece the piece that stands there
 * @param depth how much deeper than meant the place's seat lies once all that is advised is done; negative where it is shallow
 */
public record Seat(int place, Angle angle, Candidate piece, Length depth) {
    /**
     * In a seat as deep as meant.
     *
     * @param place from 1, as people count
     * @param angle where it stands
     * @param piece the piece that stands there
     */
    public Seat(int place, Angle angle, Candidate piece) {
        this(place, angle, piece, Length.ZERO);
    }

    /** {@return how far from the axle the piece's balance point comes to stand in this seat} */
    public Length reach() {
        return piece.reach().minus(depth);
    }
}
