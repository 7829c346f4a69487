package turnalike.trace.fit;

import java.util.List;

/**
 * A stretch with the form found for it, before it has a member's name. All in millimetres, places from the piece's start end.
 *
 * @param form what it was fitted as; of a curve through points not asked
 * @param sizes the form's radii
 * @param isSquare whether it was told to be square
 * @param points of a curve: place and radius, the first at {@code fromMm}; else none
 * @param isDoubtful whether another form explains what a picture shows nearly as well
 */
record Part(
        Form form,
        double fromMm,
        double toMm,
        List<Double> sizes,
        boolean isSquare,
        List<double[]> points,
        boolean isDoubtful) {
    Part {
        sizes = List.copyOf(sizes);
        points = List.copyOf(points);
    }

    static Part of(Form form, double fromMm, double toMm, List<Double> sizes) {
        return new Part(form, fromMm, toMm, sizes, false, List.of(), false);
    }

    static Part curve(List<double[]> points) {
        return new Part(
                Form.BELLY, points.get(0)[0], points.get(points.size() - 1)[0], List.of(), false, points, false);
    }

    /** The same form between other ends; of no curve. */
    Part between(double from, double to) {
        return new Part(form, from, to, sizes, isSquare, points, isDoubtful);
    }

    /** The same, with another form that explains nearly as well what is seen. */
    Part doubtful() {
        return new Part(form, fromMm, toMm, sizes, isSquare, points, true);
    }

    boolean isCurve() {
        return !points.isEmpty();
    }

    double lengthMm() {
        return toMm - fromMm;
    }

    double startRadius() {
        return isCurve() ? points.get(0)[1] : sizes.get(0);
    }

    double endRadius() {
        return isCurve() ? points.get(points.size() - 1)[1] : sizes.get(form.endSize());
    }

    boolean isLevel() {
        return !isCurve() && form == Form.LEVEL;
    }
}
