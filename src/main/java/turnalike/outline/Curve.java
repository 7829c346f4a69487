package turnalike.outline;

import java.util.List;
import turnalike.units.Length;

/**
 * A stretch of outline: the radius r(x) for x from 0 to {@link #length()}, both in millimetres, x from the curve's own start. Every
 * curve is smooth inside, has a positive length and a radius that is nowhere below zero.
 */
public sealed interface Curve permits Line, EllipseArc, Polynomial {
    /** How far the curve reaches along the axis; above zero. */
    Length length();

    /** The radius at {@code xMm}, which is between 0 and the length; a place outside is taken as the nearer end. */
    double radiusMm(double xMm);

    /** dr/dx at {@code xMm}; infinite, with its sign, where an ellipse arc stands upright. */
    double slope(double xMm);

    /**
     * ∫ xᵏ rᵖ dx over the curve, in closed form.
     *
     * @param xPower k: 0, 1 or 2
     * @param rPower p: 0 to 4
     * @return in mm to the power k + p + 1; relative error about 10⁻¹⁴
     */
    double integral(int xPower, int rPower);

    /** The places strictly inside where the curve is level, in order; empty for a line, even a level one. */
    List<Double> levelPlacesMm();

    /** The same curve run from the other end. */
    Curve reversed();

    <R> R match(Cases<R> cases);

    interface Cases<R> {
        R line(Line line);

        R ellipseArc(EllipseArc arc);

        R polynomial(Polynomial polynomial);
    }

    default double startRadiusMm() {
        return radiusMm(0);
    }

    default double endRadiusMm() {
        return radiusMm(length().mm());
    }
}
