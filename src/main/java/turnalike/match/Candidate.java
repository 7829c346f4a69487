package turnalike.match;

import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * One piece that may go into the set.
 *
 * @param label the piece's number as the turner wrote it
 * @param mass as weighed; positive
 * @param reach how far from the axle its balance point would stand, see {@link turnalike.frame.Wheel#reach}; not negative
 */
public record Candidate(String label, Mass mass, Length reach) {}
