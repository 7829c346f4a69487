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

    /** By how much a square grows wider from its one end to the other, as a share: it is planed so, common practice, no source. */
    private static final double PARALLEL = 0.003;

    /** Neighbouring points of an edge stray together: so many of them speak as one. */
    private static final double TOGETHER = 4;

    /** Up to where it strays by more from its usual width, as a share, an edge may be the square's; its shoulder begins as slowly. */
    private static final double EVEN = 0.015;

    /** Of that the longest part that is straight counts: one that is shorter must stray by so much less, and by so many pixels. */
    private static final double[] PARTS = {1, 0.8, 0.6, 0.45};

    private static final int STEPS = 10;

    private static final double LONGER = 1.25;

    private static final double NOISE = 0.02;

    private static final int LEAST_POINTS = 16;

    /** The part of a square, from its middle to either side, over which its width is taken. */
    private static final double INNER = 0.7;

    KnownSquares {
        spans = List.copyOf(spans);
    }

    /**
     * From where to where one reaches: places of the picture, whatever the view.
     *
     * @param from where its width begins not to change, on the axis
     * @param to and up to where
     * @param roundBefore where its shoulder before it is round all about, its flats run out
     * @param roundAfter the same behind it
     * @param seen half its width, in units of the distance
     */
    record Span(PixelPoint from, PixelPoint to, PixelPoint roundBefore, PixelPoint roundAfter, double seen) {
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
                .mapToDouble(each -> outline.acrossMm(each.middle()))
                .max()
                .orElse(0);
        return new KnownSquares(
                flats.stream()
                        .map(each -> new Span(
                                sight.pixel(outline.ray(each.evenFrom()), 0),
                                sight.pixel(outline.ray(each.evenTo()), 0),
                                sight.pixel(outline.ray(each.round(outline, -1)), 0),
                                sight.pixel(outline.ray(each.round(outline, 1)), 0),
                                outline.acrossUnits(each.middle())))
                        .toList(),
                flats.stream().anyMatch(each -> outline.placeMm(each.from()) < near),
                flats.stream().anyMatch(each -> outline.placeMm(last) - outline.placeMm(each.to()) < near));
    }

    /** Whether a ray along the axis meets a square or what is right beside one. */
    boolean holds(Sight sight, double along) {
        for (Span span : spans) {
            double near = NEAR * span.seen;
            double before = sight.alongOf(span.roundBefore.x(), span.roundBefore.y());
            double after = sight.alongOf(span.roundAfter.x(), span.roundAfter.y());
            if (before - near <= along && along <= after + near) {
                return true;
            }
        }
        return false;
    }

    /**
     * How far each square is from growing no wider, and each width from what all are in the mean, in standard deviations.
     */
    private double[] off(SquaredContour contour) {
        int n = spans.size();
        double[] off = new double[n + (n < 2 ? 0 : n)];
        double[] widths = new double[n];
        for (int k = 0; k < n; k++) {
            Edge left = Edge.of(contour, spans.get(k), true);
            Edge right = Edge.of(contour, spans.get(k), false);
            widths[k] = Math.log((left.width + right.width) / 2);
            // Planed so, from its one end to the other.
            double parallel =
                    PARALLEL / (spans.get(k).end(contour.sight()) - spans.get(k).start(contour.sight()));
            off[k] = (left.taper + right.taper) / (2 * Math.hypot(parallel, Math.hypot(left.doubt, right.doubt) / 2));
        }
        double mean = Arrays.stream(widths).average().orElse(0);
        boolean alike = Arrays.stream(widths).allMatch(each -> Math.abs(each - mean) < UNLIKE);
        for (int k = n; k < off.length; k++) {
            off[k] = alike ? (widths[k - n] - mean) / ALIKE : 0;
        }
        return off;
    }

    /**
     * What one edge of a square tells.
     *
     * @param width the middle one of its half widths
     * @param taper by how much of that it stands farther out a unit on, where the square's end is, than where its start is
     * @param doubt of that, one standard deviation
     */
    private record Edge(double width, double taper, double doubt) {
        static Edge of(SquaredContour contour, Span span, boolean left) {
            double from = span.start(contour.sight());
            double to = span.end(contour.sight());
            double[][] points = contour.points(left);
            double width = width(points, (from + to) / 2, INNER * (to - from) / 2, span.seen);
            int first = 0;
            while (first + 1 < points[0].length && points[0][first] < (from + to) / 2) {
                first++;
            }
            int last = first;
            while (first > 0 && isEven(points[1][first - 1], width)) {
                first--;
            }
            while (last + 1 < points[0].length && isEven(points[1][last + 1], width)) {
                last++;
            }
            double noise = NOISE / contour.sight().focal();
            double least = Double.POSITIVE_INFINITY;
            FittedLine best = new FittedLine();
            for (double part : PARTS) {
                int count = (int) (part * (last - first + 1));
                for (int step = 0; step <= STEPS; step++) {
                    int at = first + (last - first + 1 - count) * step / STEPS;
                    FittedLine line = new FittedLine();
                    for (int i = at; i < at + count; i++) {
                        line.add(points[0][i], Math.abs(points[1][i]));
                    }
                    if (count > LEAST_POINTS && LONGER * line.strays() + noise < least) {
                        least = line.strays();
                        best = line;
                    }
                }
            }
            return least == Double.POSITIVE_INFINITY
                    ? new Edge(width, 0, 1)
                    : new Edge(width, best.slope() / width, Math.sqrt(TOGETHER) * best.slopeDoubt() / width);
        }

        private static boolean isEven(double across, double width) {
            return Math.abs(Math.abs(across) - width) < EVEN * width;
        }

        private static double width(double[][] points, double middle, double reach, double seen) {
            double[] widths = new double[points[0].length];
            int count = 0;
            for (int i = 0; i < widths.length; i++) {
                if (Math.abs(points[0][i] - middle) < reach) {
                    widths[count++] = Math.abs(points[1][i]);
                }
            }
            Arrays.sort(widths, 0, count);
            return count == 0 ? seen : widths[count / 2];
        }
    }

    /** How far a view is from seeing them so, in standard deviations, squared. */
    double strays(SquaredContour contour) {
        return Arrays.stream(off(contour)).map(each -> each * each).sum();
    }
}
