package turnalike.outline;

import java.util.List;
import turnalike.units.Length;

/**
 * A straight stretch: a cylinder when both radii agree, else a cone.
 *
 * @param length along the axis, above zero
 * @param from radius at the start, not below zero
 * @param to radius at the end, not below zero
 */
public record Line(Length length, Length from, Length to) implements Curve {
    public Line {
        CurveChecks.positive("line length", length);
        CurveChecks.notNegative("line start radius", from.mm());
        CurveChecks.notNegative("line end radius", to.mm());
    }

    /**
     * {@return a stretch of one radius}
     *
     * @param length along the axis, above zero
     * @param radius the same all along, not below zero
     */
    public static Line level(Length length, Length radius) {
        return new Line(length, radius, radius);
    }

    @Override
    public double radiusMm(double xMm) {
        double u = CurveChecks.within(xMm, length) / length.mm();
        return from.mm() * (1 - u) + to.mm() * u;
    }

    @Override
    public double slope(double xMm) {
        return (to.mm() - from.mm()) / length.mm();
    }

    @Override
    public double integral(int xPower, int rPower) {
        double[] coefficients = {from.mm(), to.mm() - from.mm()};
        return Polynomial.integral(coefficients, length.mm(), xPower, rPower);
    }

    @Override
    public List<Double> levelPlacesMm() {
        return List.of();
    }

    @Override
    public List<Double> placesOfSlopeMm(double slope) {
        return List.of();
    }

    @Override
    public List<Double> chordPlacesMm(double strayMm) {
        return List.of(0.0, length.mm());
    }

    @Override
    public Line reversed() {
        return new Line(length, to, from);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.line(this);
    }
}
