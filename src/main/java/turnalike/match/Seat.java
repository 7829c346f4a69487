package turnalike.match;

import turnalike.units.Angle;

/**
 * One place of the wheel with its piece.
 *
 * @param place from 1, as people count
 * @param angle where it stands
 * @param piece the piece that stands there
 */
public record Seat(int place, Angle angle, Candidate piece) {}
