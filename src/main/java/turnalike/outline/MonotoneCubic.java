package turnalike.outline;

import java.util.ArrayList;
import java.util.List;
import turnalike.units.Length;

/**
 * A smooth curve through measured points that never overshoots them: between two points it rises or falls as they do, so a station
 * table with a flat stretch stays flat.
 *
 * <p>Cubic Hermite pieces with the slopes of SciPy's {@code PchipInterpolator}: inside, the weighted harmonic mean of the chords'
 * slopes (0 where they change sign), weights 2hₖ+hₖ₋₁ and hₖ+2hₖ₋₁; at the ends the three-point formula, cut so that the shape is kept.
 * Source: Fritsch &amp; Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300–304, and Moler, Numerical Computing with MATLAB (2004), ch. 3
 * (both from memory). Fritsch &amp; Carlson (1980) allow a range of slopes; these lie inside it.
 */
public final class MonotoneCubic {
    private MonotoneCubic() {}

    /**
     * A measured point.
     *
     * @param place from the curve's start
     * @param radius there
     */
    public record Point(Length place, Length radius) {}

    /**
     * {@return one cubic between each two neighbours; the places must rise strictly and there must be two points or more}
     *
     * @param points in the order of their places, along the axis
     */
    public static List<Polynomial> through(List<Point> points) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("a curve needs two points, had %d".formatted(points.size()));
        }
        double[] slopes = slopes(points);
        List<Polynomial> out = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i++) {
            Length length = points.get(i + 1).place().minus(points.get(i).place());
            out.add(Polynomial.hermite(
                    length, points.get(i).radius(), slopes[i], points.get(i + 1).radius(), slopes[i + 1]));
        }
        return out;
    }

    private static double[] slopes(List<Point> points) {
        int chords = points.size() - 1;
        double[] h = new double[chords];
        double[] chord = new double[chords];
        for (int i = 0; i < chords; i++) {
            h[i] = points.get(i + 1).place().minus(points.get(i).place()).mm();
            chord[i] = points.get(i + 1).radius().minus(points.get(i).radius()).mm() / h[i];
        }
        double[] out = new double[chords + 1];
        if (chords == 1) {
            out[0] = chord[0];
            out[1] = chord[0];
            return out;
        }
        out[0] = endSlope(h[0], h[1], chord[0], chord[1]);
        out[chords] = endSlope(h[chords - 1], h[chords - 2], chord[chords - 1], chord[chords - 2]);
        for (int k = 1; k < chords; k++) {
            out[k] = innerSlope(h[k - 1], h[k], chord[k - 1], chord[k]);
        }
        return out;
    }

    private static double innerSlope(double before, double after, double chordBefore, double chordAfter) {
        if (chordBefore * chordAfter <= 0) {
            return 0;
        }
        double w1 = 2 * after + before;
        double w2 = after + 2 * before;
        return (w1 + w2) / (w1 / chordBefore + w2 / chordAfter);
    }

    private static double endSlope(double nearH, double farH, double nearChord, double farChord) {
        double slope = ((2 * nearH + farH) * nearChord - nearH * farChord) / (nearH + farH);
        if (slope * nearChord <= 0) {
            return 0;
        }
        return nearChord * farChord < 0 && Math.abs(slope) > 3 * Math.abs(nearChord) ? 3 * nearChord : slope;
    }
}
