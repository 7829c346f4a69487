package turnalike.photo;

import java.util.Arrays;
import java.util.List;

/**
 * What the squares of a piece, once they are seen, say of how it is seen. Their edges are not mirror images of one another, and their ends bulge as no
 * round's do, so neither is asked there. But all of them were left of one blank and stand the same way about its axis: in the right view they are
 * equally wide.
 *
 * @param spans each square's
 * @param atStart whether the piece begins with one
 * @param atEnd whether it ends with one
 */
record KnownSquares(List<Span> spans, boolean atStart, boolean atEnd) {
    static final KnownSquares NONE = new KnownSquares(List.of(), false, false);

    /** By how much the width of squares of one blank differs, as a share: it is planed so, and its edges are seen so. Common practice, no source. */
    private static final double ALIKE = 0.006;

    /** Squares that differ by more are not of one blank, or one of them is none. */
    private static final double UNLIKE = 0.1;

    /** What stands so near to a square, in half widths of it, may be its end, which is seen aslant. */
    private static final double NEAR = 0.3;

    /** The part of a square, from its middle to either side, over which its width is taken. */
    private static final double INNER = 0.7;

    KnownSquares {
        spans = List.copyOf(spans);
    }

    /**
     * From where to where one reaches: places of the picture, whatever the view.
     *
     * @param from its start, on the axis
     * @param to its end
     * @param seen half its width, in units of the distance
     */
    record Span(PixelPoint from, PixelPoint to, double seen) {
        double start(Sight sight) {
            return sight.alongOf(from.x(), from.y());
        }

        double end(Sight sight) {
            return sight.alongOf(to.x(), to.y());
        }
    }

    /** Those that may be squares as they are seen in a view. */
    static KnownSquares of(List<FlatSections.Flat> flats, RoundOutline outline, Sight sight) {
        int last = outline.count() - 1;
        double near = flats.stream()
                .mapToDouble(each -> outline.radiusMm(each.middle()))
                .max()
                .orElse(0);
        return new KnownSquares(
                flats.stream()
                        .map(each -> new Span(
                                sight.pixel(outline.ray(each.from()), 0),
                                sight.pixel(outline.ray(each.to()), 0),
                                outline.radiusUnits(each.middle())))
                        .toList(),
                flats.stream().anyMatch(each -> outline.placeMm(each.from()) < near),
                flats.stream().anyMatch(each -> outline.placeMm(last) - outline.placeMm(each.to()) < near));
    }

    /** Whether a ray along the axis meets a square or what is right beside one. */
    boolean holds(Sight sight, double along) {
        for (Span span : spans) {
            double near = NEAR * span.seen;
            if (span.start(sight) - near <= along && along <= span.end(sight) + near) {
                return true;
            }
        }
        return false;
    }

    /** How far each width is from what all are in the mean, in standard deviations: logarithms. */
    private double[] apart(SquaredContour contour) {
        double[] widths = spans.stream()
                .mapToDouble(span -> Math.log(width(contour, span)))
                .toArray();
        double mean = Arrays.stream(widths).average().orElse(0);
        boolean alike = Arrays.stream(widths).allMatch(each -> Math.abs(each - mean) < UNLIKE);
        return Arrays.stream(widths)
                .map(each -> alike ? (each - mean) / ALIKE : 0)
                .toArray();
    }

    /** The middle one of its half widths, of both edges. */
    private static double width(SquaredContour contour, Span span) {
        double from = span.start(contour.sight());
        double to = span.end(contour.sight());
        double middle = (from + to) / 2;
        double reach = INNER * (to - from) / 2;
        double sum = 0;
        for (boolean left : new boolean[] {true, false}) {
            double[][] points = contour.points(left);
            double[] widths = new double[points[0].length];
            int count = 0;
            for (int i = 0; i < widths.length; i++) {
                if (Math.abs(points[0][i] - middle) < reach) {
                    widths[count++] = Math.abs(points[1][i]);
                }
            }
            Arrays.sort(widths, 0, count);
            sum += count == 0 ? span.seen : widths[count / 2];
        }
        return sum / 2;
    }

    /** How far a view is from seeing them equally wide, in standard deviations, squared. */
    double strays(SquaredContour contour) {
        return spans.size() < 2
                ? 0
                : Arrays.stream(apart(contour)).map(each -> each * each).sum();
    }

    /** Adds that to the normal equations of the step to a better view, focal length first: as it is seen now, with a longer lens, and leaning more. */
    void add(double[][] rows, SquaredContour now, SquaredContour farther, SquaredContour leaning, double step) {
        if (spans.size() < 2) {
            return;
        }
        double[] here = apart(now);
        double[] byFocal = apart(farther);
        double[] byTilt = apart(leaning);
        for (int k = 0; k < here.length; k++) {
            double f = (byFocal[k] - here[k]) / step;
            double t = (byTilt[k] - here[k]) / step;
            rows[0][0] += f * f;
            rows[0][1] += f * t;
            rows[1][0] += f * t;
            rows[1][1] += t * t;
            rows[0][2] -= f * here[k];
            rows[1][2] -= t * here[k];
        }
    }
}
