package turnalike.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * Stretches of even width that are lit as flats and not as a round: a square left on a turned piece. A round's light falls off to both sides as
 * the root of 1 − h² and with h, the share of the half width; a flat's is even, and where two flats are seen it steps at the arris between
 * them. Grain is averaged out along the stretch.
 *
 * <p>Of a square turned by φ about the axis one sees w = s·(cos φ + sin φ) across, the arris at the share p = (1 − tan φ) / (1 + tan φ) of the
 * half width; so s follows from both. Derived for a far camera; a near one widens the nearer corners, of which the half for a flat that faces
 * the camera is exact: its half width is seen at depth 1 − s/2.
 */
final class FlatSections {
    private static final double LEAST_MM = 15;

    /** By how much an even stretch's half width may change, in pixels, and as a share of itself. */
    private static final double EVEN_PIXELS = 0.8;

    private static final double EVEN_SHARE = 0.012;

    /** Where a square's end or shoulder is rounded, its width is still within this share of the even one. */
    private static final double ROUNDED = 0.06;

    /** An end's rim is so near, in pixels, that what stands beyond the even stretch is the rim. */
    private static final double RIM_PIXELS = 8;

    private static final int ACROSS = 37;

    private static final double EDGE = 0.85;

    private static final int ALONG = 80;

    /** A flat explains its light within this of it; a round does not. */
    private static final double MOST_MISFIT = 0.02;

    /** An arris is a step of at least so much of the light. */
    private static final double LEAST_STEP = 0.06;

    private final Picture picture;

    private final RoundOutline outline;

    private final SquaredContour contour;

    private final Lens lens;

    private final float[] colour = new float[3];

    FlatSections(Picture picture, RoundOutline outline, SquaredContour contour, Lens lens) {
        this.picture = picture;
        this.lens = lens;
        this.outline = outline;
        this.contour = contour;
    }

    /**
     * A stretch found square.
     *
     * @param from its first step
     * @param to its last
     * @param share half its side over the radius that a round of that width would have
     * @param faceOn whether one flat faces the camera; else two are seen
     */
    record Flat(int from, int to, double share, boolean faceOn) {}

    List<Flat> find() {
        List<Flat> found = new ArrayList<>();
        int from = 0;
        while (from < outline.count()) {
            int to = from;
            double least = outline.radiusMm(from);
            double most = least;
            double allowed = Math.max(EVEN_PIXELS * outline.mmPerPixel(), EVEN_SHARE * least);
            while (to + 1 < outline.count()) {
                double next = outline.radiusMm(to + 1);
                if (Math.max(most, next) - Math.min(least, next) > allowed) {
                    break;
                }
                least = Math.min(least, next);
                most = Math.max(most, next);
                to++;
            }
            if (outline.placeMm(to) - outline.placeMm(from) >= LEAST_MM) {
                add(found, from, to);
                from = to + 1;
            } else {
                from++;
            }
        }
        return found.stream()
                .map(flat -> new Flat(widened(flat.from(), -1), widened(flat.to(), 1), flat.share(), flat.faceOn()))
                .toList();
    }

    /** On to the shoulder, or to the piece's end, whose rim the picture's softness rounds. */
    private int widened(int k, int way) {
        double even = outline.radiusMm(k);
        int on = k;
        while (on + way >= 0
                && on + way < outline.count()
                && Math.abs(outline.radiusMm(on + way) - even) < ROUNDED * even) {
            on += way;
        }
        int end = way < 0 ? 0 : outline.count() - 1;
        return Math.abs(outline.placeMm(end) - outline.placeMm(on)) < RIM_PIXELS * outline.mmPerPixel() ? end : on;
    }

    private void add(List<Flat> found, int from, int to) {
        double[] light = light(from, to);
        double mean = 0;
        for (double each : light) {
            mean += each / ACROSS;
        }
        if (mean < 1e-3) {
            return;
        }
        double round = misfit(light, 0, ACROSS, true) / mean;
        double one = misfit(light, 0, ACROSS, false) / mean;
        if (one < MOST_MISFIT && (one < 1.3 * round || fall(light) < LEAST_STEP)) {
            double half = outline.radiusUnits((from + to) / 2);
            double seen = half / Math.sqrt(1 - half * half);
            found.add(new Flat(from, to, seen / (1 + seen) / half, true));
            return;
        }
        double best = Double.POSITIVE_INFINITY;
        int at = 0;
        for (int k = 5; k <= ACROSS - 5; k++) {
            double both = Math.hypot(
                            misfit(light, 0, k - 1, false) * Math.sqrt(k - 1),
                            misfit(light, k + 1, ACROSS, false) * Math.sqrt(ACROSS - k - 1))
                    / Math.sqrt(ACROSS - 2)
                    / mean;
            if (both < best) {
                best = both;
                at = k;
            }
        }
        double step = Math.abs(light[at - 2] - light[at + 2]) / mean;
        if (best < MOST_MISFIT && best < 0.5 * round && step > LEAST_STEP) {
            double arris = Math.abs(-EDGE + 2 * EDGE * at / (ACROSS - 1));
            double tan = (1 - arris) / (1 + arris);
            found.add(new Flat(from, to, Math.sqrt(1 + tan * tan) / (1 + tan), false));
        }
    }

    /** How much darker or lighter the sides are than the middle, as a share. */
    private static double fall(double[] light) {
        double sides = (light[0] + light[1] + light[ACROSS - 1] + light[ACROSS - 2]) / 4;
        return Math.abs(light[ACROSS / 2] - sides) / light[ACROSS / 2];
    }

    /** The light across, from the one edge to the other, its mean along. */
    private double[] light(int from, int to) {
        double[] light = new double[ACROSS];
        int inner = Math.max(1, (to - from) / 12);
        for (int t = 0; t < ALONG; t++) {
            int k = from + inner + (int) ((double) t / (ALONG - 1) * (to - from - 2 * inner));
            double along = outline.alongUnits(k);
            double half = outline.radiusUnits(k);
            for (int h = 0; h < ACROSS; h++) {
                double across = half * (-EDGE + 2 * EDGE * h / (ACROSS - 1));
                PixelPoint straight = contour.sight().pixel(along, across);
                PixelPoint pixel = lens.bent(straight.x(), straight.y());
                int px = (int) Math.max(0, Math.min(picture.width() - 1, pixel.x()));
                int py = (int) Math.max(0, Math.min(picture.height() - 1, pixel.y()));
                picture.linear(px, py, colour);
                light[h] += (colour[0] + colour[1] + colour[2]) / 3 / ALONG;
            }
        }
        return light;
    }

    /** The root mean square that a straight run of light leaves, or, for a round, that with the root of 1 − h². */
    private static double misfit(double[] light, int from, int to, boolean round) {
        int terms = round ? 3 : 2;
        double[][] rows = new double[terms][terms + 1];
        for (int k = from; k < to; k++) {
            double[] basis = basis(k);
            for (int a = 0; a < terms; a++) {
                for (int b = 0; b < terms; b++) {
                    rows[a][b] += basis[a] * basis[b];
                }
                rows[a][terms] += basis[a] * light[k];
            }
        }
        double[] unknown = LeastSquares.solve(rows);
        double sum = 0;
        for (int k = from; k < to; k++) {
            double[] basis = basis(k);
            double off = light[k];
            for (int a = 0; a < terms; a++) {
                off -= unknown[a] * basis[a];
            }
            sum += off * off;
        }
        return Math.sqrt(sum / Math.max(1, to - from));
    }

    private static double[] basis(int k) {
        double h = -EDGE + 2 * EDGE * k / (ACROSS - 1);
        return new double[] {1, h, Math.sqrt(1 - h * h)};
    }
}
