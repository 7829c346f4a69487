package turnalike.outline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import turnalike.units.Length;

/**
 * r = Σ cₖ uᵏ with u = x / length, so every coefficient is a radius in millimetres.
 *
 * @param length along the axis, above zero
 * @param coefficientsMm c₀, c₁, …, of degree 3 at most, so that its drawing as a Bézier curve is exact; the radius must be nowhere
 *     below zero
 */
public record Polynomial(Length length, List<Double> coefficientsMm) implements Curve {
    private static final int HIGHEST_DEGREE = 3;

    public Polynomial {
        CurveChecks.positive("polynomial length", length);
        coefficientsMm = List.copyOf(coefficientsMm);
        if (coefficientsMm.isEmpty() || coefficientsMm.size() > HIGHEST_DEGREE + 1) {
            throw new IllegalArgumentException(
                    "polynomial degree must be 0 to 3, had %d coefficients".formatted(coefficientsMm.size()));
        }
        CurveChecks.notNegative("polynomial's least radius", leastMm(length, coefficientsMm));
    }

    /**
     * {@return the quadratic through the start, middle and end radii (Lagrange's form, gathered by powers of u)}
     *
     * @param length along the axis, above zero
     * @param start radius at the start
     * @param middle radius half way
     * @param end radius at the end
     */
    public static Polynomial quadraticThrough(Length length, Length start, Length middle, Length end) {
        return new Polynomial(length, quadratic(start.mm(), middle.mm(), end.mm()));
    }

    /**
     * {@return the least radius of the quadratic through three radii; may be below zero, which is why one asks before making it}
     *
     * @param start radius at the start
     * @param middle radius half way
     * @param end radius at the end
     */
    public static Length leastOfQuadratic(Length start, Length middle, Length end) {
        return Length.ofMm(leastMm(Length.ofMm(1), quadratic(start.mm(), middle.mm(), end.mm())));
    }

    /**
     * {@return the cubic with given end radii and end slopes dr/dx (Hermite's form)}
     *
     * @param length along the axis, above zero
     * @param start radius at the start
     * @param startSlope dr/dx at the start
     * @param end radius at the end
     * @param endSlope dr/dx at the end
     */
    public static Polynomial hermite(Length length, Length start, double startSlope, Length end, double endSlope) {
        double rise = end.minus(start).mm();
        double first = startSlope * length.mm();
        double last = endSlope * length.mm();
        return new Polynomial(length, List.of(start.mm(), first, 3 * rise - 2 * first - last, first + last - 2 * rise));
    }

    private static List<Double> quadratic(double start, double middle, double end) {
        return List.of(start, 4 * middle - 3 * start - end, 2 * start - 4 * middle + 2 * end);
    }

    private static double leastMm(Length length, List<Double> coefficients) {
        double least = Math.min(valueAt(coefficients, 0), valueAt(coefficients, 1));
        for (double place : levelPlaces(coefficients)) {
            least = Math.min(least, valueAt(coefficients, place));
        }
        // Rounding may leave a curve that touches the axis a hair below it.
        return least < 0 && least > -1e-9 * length.mm() ? 0 : least;
    }

    private static double valueAt(List<Double> coefficients, double u) {
        double sum = 0;
        for (int k = coefficients.size() - 1; k >= 0; k--) {
            sum = sum * u + coefficients.get(k);
        }
        return sum;
    }

    /** Where the derivative c₁ + 2c₂u + 3c₃u² is zero strictly inside (0, 1); a double root counts once. */
    private static List<Double> levelPlaces(List<Double> c) {
        double c1 = c.size() > 1 ? c.get(1) : 0;
        double c2 = c.size() > 2 ? c.get(2) : 0;
        double c3 = c.size() > 3 ? c.get(3) : 0;
        List<Double> roots = new ArrayList<>();
        double discriminant = c2 * c2 - 3 * c1 * c3;
        if (discriminant >= 0 && (c2 != 0 || c3 != 0)) {
            // The form that adds numbers of one sign, so that neither root loses its digits.
            double q = -(c2 + Math.copySign(Math.sqrt(discriminant), c2));
            addInside(roots, q == 0 ? 0 : c1 / q);
            addInside(roots, c3 == 0 ? Double.NaN : q / (3 * c3));
        }
        Collections.sort(roots);
        return roots;
    }

    private static void addInside(List<Double> roots, double u) {
        if (u > 0 && u < 1 && !roots.contains(u)) {
            roots.add(u);
        }
    }

    @Override
    public double radiusMm(double xMm) {
        return Math.max(0, valueAt(coefficientsMm, CurveChecks.within(xMm, length) / length.mm()));
    }

    @Override
    public double slope(double xMm) {
        double u = CurveChecks.within(xMm, length) / length.mm();
        double sum = 0;
        for (int k = coefficientsMm.size() - 1; k >= 1; k--) {
            sum = sum * u + k * coefficientsMm.get(k);
        }
        return sum / length.mm();
    }

    @Override
    public double integral(int xPower, int rPower) {
        double[] coefficients = new double[coefficientsMm.size()];
        for (int k = 0; k < coefficients.length; k++) {
            coefficients[k] = coefficientsMm.get(k);
        }
        return integral(coefficients, length.mm(), xPower, rPower);
    }

    /**
     * {@return the greatest |r(x) − (atZeroMm + slope·x)| for x between two places, in millimetres} Exact but for rounding.
     *
     * @param fromMm the first place, from the curve's start and inside it
     * @param toMm the last
     * @param atZeroMm the straight line's radius at the curve's start
     * @param slope the straight line's dr/dx
     */
    double furthestMm(double fromMm, double toMm, double atZeroMm, double slope) {
        List<Double> difference = new ArrayList<>(coefficientsMm);
        difference.set(0, difference.get(0) - atZeroMm);
        if (difference.size() == 1) {
            difference.add(0.0);
        }
        difference.set(1, difference.get(1) - slope * length.mm());
        double from = fromMm / length.mm();
        double to = toMm / length.mm();
        double most = Math.max(Math.abs(valueAt(difference, from)), Math.abs(valueAt(difference, to)));
        for (double u : levelPlaces(difference)) {
            if (from < u && u < to) {
                most = Math.max(most, Math.abs(valueAt(difference, u)));
            }
        }
        return most;
    }

    /** ∫ xᵏ (Σ cᵢ uⁱ)ᵖ dx = Lᵏ⁺¹ Σ dⱼ / (j + k + 1), with dⱼ the coefficients of the p-th power. */
    static double integral(double[] coefficients, double lengthMm, int xPower, int rPower) {
        double[] power = {1};
        for (int i = 0; i < rPower; i++) {
            power = product(power, coefficients);
        }
        double sum = 0;
        for (int k = 0; k < power.length; k++) {
            sum += power[k] / (k + xPower + 1);
        }
        return sum * Math.pow(lengthMm, xPower + 1);
    }

    private static double[] product(double[] one, double[] other) {
        double[] out = new double[one.length + other.length - 1];
        for (int i = 0; i < one.length; i++) {
            for (int k = 0; k < other.length; k++) {
                out[i + k] += one[i] * other[k];
            }
        }
        return out;
    }

    @Override
    public List<Double> levelPlacesMm() {
        return levelPlaces(coefficientsMm).stream().map(u -> u * length.mm()).toList();
    }

    @Override
    public List<Double> placesOfSlopeMm(double slope) {
        if (coefficientsMm.size() < 2) {
            return List.of();
        }
        List<Double> tilted = new ArrayList<>(coefficientsMm);
        tilted.set(1, tilted.get(1) - slope * length.mm());
        return levelPlaces(tilted).stream().map(u -> u * length.mm()).toList();
    }

    /** A chord of width h strays by h²·max|r″|/8 at most, and r″ of a cubic is greatest at an end. */
    @Override
    public List<Double> chordPlacesMm(double strayMm) {
        double c2 = coefficientsMm.size() > 2 ? coefficientsMm.get(2) : 0;
        double c3 = coefficientsMm.size() > 3 ? coefficientsMm.get(3) : 0;
        double bend = Math.max(Math.abs(2 * c2), Math.abs(2 * c2 + 6 * c3)) / (length.mm() * length.mm());
        List<Double> stops = new ArrayList<>(levelPlacesMm());
        stops.add(length.mm());
        List<Double> out = new ArrayList<>(List.of(0.0));
        double from = 0;
        for (double to : stops) {
            int chords = (int) Math.ceil((to - from) * Math.sqrt(bend / (8 * strayMm)));
            for (int i = 1; i < chords; i++) {
                out.add(from + (to - from) * i / chords);
            }
            out.add(to);
            from = to;
        }
        return out;
    }

    /** Σ cₖ (1−u)ᵏ gathered by powers of u, by Horner's rule on polynomials. */
    @Override
    public Polynomial reversed() {
        int degree = coefficientsMm.size() - 1;
        double[] out = new double[degree + 1];
        for (int k = degree; k >= 0; k--) {
            for (int i = degree; i >= 1; i--) {
                out[i] = out[i] - out[i - 1];
            }
            out[0] += coefficientsMm.get(k);
        }
        List<Double> turned = new ArrayList<>();
        for (double each : out) {
            turned.add(each);
        }
        return new Polynomial(length, turned);
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.polynomial(this);
    }
}
