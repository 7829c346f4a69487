package turnalike.frame;

import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * The mass that ends an unbalance: added at one side or, just as well, taken off at the other at the same radius.
 *
 * @param radius from the axle to the balance point of what is added or taken off
 * @param at where to add it
 * @param mass how much
 * @param removeAt where the same mass may be taken off instead
 */
public record Counterweight(Length radius, Angle at, Mass mass, Angle removeAt) {}
