package turnalike.outline;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Length;

/**
 * r = level + rise · √(1 − t²) with t = (x − centre) / halfWidth: an arc of an ellipse whose axes lie along and across the piece.
 * Beads rise from their level, coves sink from it (a negative rise).
 *
 * @param length along the axis, above zero
 * @param centre place of the ellipse's centre, from the arc's own start; may lie outside the arc
 * @param halfWidth half axis along the piece, above zero; the arc must lie within it
 * @param level radius at which the ellipse's centre stands
 * @param rise half axis across the piece, with its sign
 */
public record EllipseArc(Length length, Length centre, Length halfWidth, Length level, Length rise) implements Curve {
    public EllipseArc {
        CurveChecks.positive("arc length", length);
        CurveChecks.positive("arc half width", halfWidth);
        double slack = 1e-12 * halfWidth.mm();
        if (centre.mm() - halfWidth.mm() > slack || length.mm() - centre.mm() - halfWidth.mm() > slack) {
            throw new IllegalArgumentException("arc of %s mm leaves its ellipse, centre %s mm, half width %s mm"
                    .formatted(length.mm(), centre.mm(), halfWidth.mm()));
        }
        double least = Math.min(
                radius(0, centre, halfWidth, level, rise), radius(length.mm(), centre, halfWidth, level, rise));
        boolean levelInside = centre.mm() > 0 && centre.mm() < length.mm();
        CurveChecks.notNegative("arc's least radius", levelInside ? Math.min(least, level.mm() + rise.mm()) : least);
    }

    private static double radius(double xMm, Length centre, Length halfWidth, Length level, Length rise) {
        double t = (xMm - centre.mm()) / halfWidth.mm();
        return level.mm() + rise.mm() * Math.sqrt(Math.max(0, (1 - t) * (1 + t)));
    }

    private double t(double xMm) {
        return Math.min(1, Math.max(-1, (CurveChecks.within(xMm, length) - centre.mm()) / halfWidth.mm()));
    }

    @Override
    public double radiusMm(double xMm) {
        return radius(CurveChecks.within(xMm, length), centre, halfWidth, level, rise);
    }

    @Override
    public double slope(double xMm) {
        double t = t(xMm);
        return -rise.mm() * t / (halfWidth.mm() * Math.sqrt((1 - t) * (1 + t)));
    }

    /**
     * With q = √(1−t²) the integrand is a sum of tⁱqʲ, each of which has a closed form (derived here):
     * ∫qʲ = (t qʲ + j ∫qʲ⁻²)/(j+1) down to ∫1 = t and ∫q⁻¹ = arcsin t; ∫t qʲ = −qʲ⁺²/(j+2); ∫t²qʲ = ∫qʲ − ∫qʲ⁺².
     */
    @Override
    public double integral(int xPower, int rPower) {
        double from = t(0);
        double to = t(length.mm());
        double sum = 0;
        for (int i = 0; i <= xPower; i++) {
            double alongMm = binomial(xPower, i) * Math.pow(centre.mm(), xPower - i) * Math.pow(halfWidth.mm(), i);
            for (int j = 0; j <= rPower; j++) {
                double acrossMm = binomial(rPower, j) * Math.pow(level.mm(), rPower - j) * Math.pow(rise.mm(), j);
                sum += alongMm * acrossMm * (primitive(i, j, to) - primitive(i, j, from));
            }
        }
        return sum * halfWidth.mm();
    }

    private static double primitive(int i, int j, double t) {
        double q = Math.sqrt((1 - t) * (1 + t));
        return switch (i) {
            case 0 -> primitive(j, t, q);
            case 1 -> -Math.pow(q, j + 2) / (j + 2);
            case 2 -> primitive(j, t, q) - primitive(j + 2, t, q);
            default -> throw new IllegalArgumentException("power of x must be 0 to 2, was %d".formatted(i));
        };
    }

    private static double primitive(int j, double t, double q) {
        if (j <= 0) {
            return j == 0 ? t : Math.asin(t);
        }
        return (t * Math.pow(q, j) + j * primitive(j - 2, t, q)) / (j + 1);
    }

    private static double binomial(int n, int k) {
        double out = 1;
        for (int i = 0; i < k; i++) {
            out = out * (n - i) / (i + 1);
        }
        return out;
    }

    @Override
    public List<Double> levelPlacesMm() {
        return centre.mm() > 0 && centre.mm() < length.mm() && rise.mm() != 0 ? List.of(centre.mm()) : List.of();
    }

    /** −rise · t / (halfWidth · √(1 − t²)) takes each slope once. */
    @Override
    public List<Double> placesOfSlopeMm(double slope) {
        if (rise.mm() == 0) {
            return List.of();
        }
        double along = slope * halfWidth.mm();
        double t = -along * Math.signum(rise.mm()) / Math.hypot(rise.mm(), along);
        double x = centre.mm() + t * halfWidth.mm();
        return x > 0 && x < length.mm() ? List.of(x) : List.of();
    }

    /** With t = sin φ the arc is a circle stretched, so a chord of Δφ strays by no more than one of the circle of its larger half axis. */
    @Override
    public List<Double> chordPlacesMm(double strayMm) {
        double largest = Math.max(halfWidth.mm(), Math.abs(rise.mm()));
        double widest = 2 * Math.acos(Math.max(0, 1 - strayMm / largest));
        List<Double> stops = new ArrayList<>(levelPlacesMm());
        stops.add(length.mm());
        List<Double> out = new ArrayList<>(List.of(0.0));
        double from = Math.asin(t(0));
        for (double stop : stops) {
            double to = Math.asin(t(stop));
            int chords = (int) Math.ceil((to - from) / widest);
            for (int i = 1; i < chords; i++) {
                out.add(centre.mm() + halfWidth.mm() * Math.sin(from + (to - from) * i / chords));
            }
            out.add(stop);
            from = to;
        }
        return out;
    }

    @Override
    public EllipseArc reversed() {
        return new EllipseArc(length, length.minus(centre), halfWidth, level, rise);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.ellipseArc(this);
    }
}
