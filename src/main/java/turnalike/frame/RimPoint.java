package turnalike.frame;

import turnalike.units.Angle;
import turnalike.units.Length;

/**
 * One point of the rim as measured from the axle.
 *
 * @param at its direction
 * @param radius its distance from the axle; not negative
 */
public record RimPoint(Angle at, Length radius) {}
