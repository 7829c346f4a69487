package turnalike.api;

import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * What one finished piece weighs and where. Closed forms of the drawn shape, with a relative error of about 10⁻¹³; what is unsure is the
 * wood's density.
 *
 * @param volumeMm3 cubic millimetres
 * @param mass in the order's wood at its moisture
 * @param balance balance point, from the start end
 * @param spinInertiaGMm2 about the long axis, g·mm²
 * @param swingInertiaGMm2 about an axis across the piece through the balance point, g·mm²
 */
public record SolidFigures(
        double volumeMm3, Mass mass, Length balance, double spinInertiaGMm2, double swingInertiaGMm2) {}
