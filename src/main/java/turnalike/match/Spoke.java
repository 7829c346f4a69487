package turnalike.match;

import turnalike.units.Length;

/**
 * A piece of the set with what it does to the rim.
 *
 * @param piece the piece with its mass and reach
 * @param length from the shoulder of its hub tenon to where it meets the rim; positive
 */
public record Spoke(Candidate piece, Length length) {}
