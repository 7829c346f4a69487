package turnalike.outline;

import java.util.List;
import turnalike.units.Length;

/**
 * A stretch of outline: the radius r(x) for x from 0 to {@link #length()}, both in millimetres, x from the curve's own start. Every
 * curve is smooth inside, has a positive length and a radius that is nowhere below zero.
 */
public sealed interface Curve permits Line, EllipseArc, Polynomial {
    /** {@return how far the curve reaches along the axis; above zero} */
    Length length();

    /**
     * {@return the radius at {@code xMm}, which is between 0 and the length; a place outside is taken as the nearer end}
     *
     * @param xMm place from the curve's start
     */
    double radiusMm(double xMm);

    /**
     * dr/dx at {@code xMm}; infinite, with its sign, where an ellipse arc stands upright.
     *
     * @param xMm place from the curve's start; outside the curve the nearer end counts
     * @return millimetres of radius gained per millimetre along the axis
     */
    double slope(double xMm);

    /**
     * ∫ xᵏ rᵖ dx over the curve, in closed form.
     *
     * @param xPower k: 0, 1 or 2
     * @param rPower p: 0 to 4
     * @return in mm to the power k + p + 1; relative error about 10⁻¹⁴
     */
    double integral(int xPower, int rPower);

    /** {@return the places strictly inside where the curve is level, in order; empty for a line, even a level one} */
    List<Double> levelPlacesMm();

    /**
     * {@return the places strictly inside where dr/dx is {@code slope}, in order; empty for a line, even one of that slope all along}
     *
     * @param slope finite
     */
    List<Double> placesOfSlopeMm(double slope);

    /**
     * {@return places from 0 to the length, in order, between which straight lines stray from the curve by no more than that; where it is
     * level among them, so that its greatest and least radius are true}
     *
     * @param strayMm measured at right angles to the line or less closely, in millimetres, above zero
     */
    List<Double> chordPlacesMm(double strayMm);

    /** {@return the same curve run from the other end} */
    Curve reversed();

    /**
     * {@return what the case for this one makes of it}
     *
     * @param <R> what becomes of it
     * @param cases one answer for each case
     */
    <R> R match(Cases<R> cases);

    /**
     * What an outer layer makes of each case.
     *
     * @param <R> what it makes
     */
    interface Cases<R> {
        /**
         * {@return what a straight stretch becomes}
         *
         * @param line the curve
         */
        R line(Line line);

        /**
         * {@return what an ellipse arc becomes}
         *
         * @param arc the curve
         */
        R ellipseArc(EllipseArc arc);

        /**
         * {@return what a polynomial becomes}
         *
         * @param polynomial the curve
         */
        R polynomial(Polynomial polynomial);
    }

    /** {@return the radius where the curve begins, in millimetres} */
    default double startRadiusMm() {
        return radiusMm(0);
    }

    /** {@return the radius where the curve ends, in millimetres} */
    default double endRadiusMm() {
        return radiusMm(length().mm());
    }
}
