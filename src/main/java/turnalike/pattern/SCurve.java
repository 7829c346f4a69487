package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Polynomial;
import turnalike.units.Length;

/** The two S shapes, each of two quadratic halves that meet halfway in length and in radius. */
final class SCurve {
    private SCurve() {}

    static List<Curve> levelAtEnds(Length length, Length from, Length to) {
        double half = to.minus(from).mm() / 2;
        return halves(length, List.of(from.mm(), 0.0, half), List.of(from.mm() + half, 2 * half, -half));
    }

    static List<Curve> levelAtMiddle(Length length, Length from, Length to) {
        double half = to.minus(from).mm() / 2;
        return halves(length, List.of(from.mm(), 2 * half, -half), List.of(from.mm() + half, 0.0, half));
    }

    private static List<Curve> halves(Length length, List<Double> first, List<Double> second) {
        Length half = length.times(0.5);
        return List.of(new Polynomial(half, first), new Polynomial(half, second));
    }
}
