package turnalike.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Stretches of an outline that could be square by their shape alone: of even width, and stepping down at both ends. */
final class EvenStretches {
    private static final double LEAST_MM = 15;

    /** By how much an even stretch's half width may change, in pixels, and as a share of itself. */
    private static final double EVEN_PIXELS = 0.8;

    private static final double EVEN_SHARE = 0.012;

    /** Where a square's end or shoulder is rounded, its width is still within this share of the even one, so many half widths long. */
    private static final double ROUNDED = 0.06;

    private static final double ROUNDED_LENGTH = 0.35;

    /** An end's rim is so near, in pixels, that what stands beyond the even stretch is the rim. */
    private static final double RIM_PIXELS = 8;

    /** A rounded shoulder reaches so many half widths beyond the even stretch, however many pixels that is. By trying. */
    private static final double RIM_HALVES = 0.15;

    /** A shoulder falls by this share of the half width at least, within so many of them. */
    private static final double SHOULDER = 0.04;

    private static final double SHOULDER_LENGTH = 0.8;

    /** Up to an end the outline is bounded by the ray that grazes its rim, and over an arris by 0.71 of that. */
    private static final double RIM_SHARE = 0.6;

    /** So far from the end, in half widths, that line reaches the width. */
    private static final double BOUND_THERE = 1.6;

    private final RoundOutline outline;

    /** X of the outermost ray at the start, and at the end. */
    private final double[] outermost;

    EvenStretches(RoundOutline outline, SquaredContour contour) {
        this.outline = outline;
        double[] along = contour.points(true)[0];
        outermost = new double[] {along[0], along[along.length - 1]};
    }

    /** Each its first step of even width and its last, then both carried on to where it steps down. */
    List<int[]> find() {
        return even().stream()
                .map(each -> new int[] {each[0], each[1], widened(each[0], -1), widened(each[1], 1)})
                .filter(each -> stepsDown(each, -1) && stepsDown(each, 1))
                .toList();
    }

    /** Stretches of even width, each its first step and its last. */
    private List<int[]> even() {
        List<int[]> stretches = new ArrayList<>();
        int from = 0;
        while (from < outline.count()) {
            int to = from;
            double least = outline.acrossMm(from);
            double most = least;
            double allowed = Math.max(EVEN_PIXELS * outline.mmPerPixel(), EVEN_SHARE * least);
            while (to + 1 < outline.count()) {
                double next = outline.acrossMm(to + 1);
                if (Math.max(most, next) - Math.min(least, next) > allowed) {
                    break;
                }
                least = Math.min(least, next);
                most = Math.max(most, next);
                to++;
            }
            if (outline.placeMm(to) - outline.placeMm(from) >= LEAST_MM) {
                stretches.add(new int[] {from, to});
                from = to + 1;
            } else {
                from++;
            }
        }
        return joined(stretches);
    }

    /** One stretch whose width has a fault somewhere is found as two of the same width. */
    private List<int[]> joined(List<int[]> stretches) {
        List<int[]> joined = new ArrayList<>();
        for (int[] each : stretches) {
            int[] last = joined.isEmpty() ? each : joined.get(joined.size() - 1);
            double gap = outline.placeMm(each[0]) - outline.placeMm(last[1]);
            double apart =
                    Math.abs(outline.acrossMm((each[0] + each[1]) / 2) - outline.acrossMm((last[0] + last[1]) / 2));
            if (last != each && gap < 3 && apart < 2 * EVEN_SHARE * outline.acrossMm(each[0])) {
                joined.set(joined.size() - 1, new int[] {last[0], each[1]});
            } else {
                joined.add(each);
            }
        }
        return joined;
    }

    /** On to the shoulder, or to the piece's end, whose rim the picture's softness rounds. */
    private int widened(int k, int way) {
        double even = outline.acrossMm(k);
        int on = k;
        while (within(on + way)
                && Math.abs(outline.acrossMm(on + way) - even) < ROUNDED * even
                && Math.abs(outline.placeMm(on + way) - outline.placeMm(k)) < ROUNDED_LENGTH * even) {
            on += way;
        }
        int end = way < 0 ? 0 : outline.count() - 1;
        boolean near = Math.abs(outline.placeMm(end) - outline.placeMm(on)) < RIM_PIXELS * outline.mmPerPixel();
        return near || isRim(on, way, end, even) ? end : on;
    }

    /**
     * Whether nothing but the end's rim is from there on. Of a square's, which is no circle, nobody knows yet how near it is to the camera: the ray that
     * grazes it bounds the outline by a straight line, and a tenon there would stay far below that.
     */
    private boolean isRim(int from, int way, int end, double even) {
        double ray = outermost[way < 0 ? 0 : 1];
        if (bound(from, ray) > BOUND_THERE * even) {
            return false;
        }
        for (int k = from; k != end + way; k += way) {
            double bound = bound(k, ray);
            if (outline.acrossMm(k) < RIM_SHARE * Math.min(even, bound) - 2 * outline.mmPerPixel()) {
                return false;
            }
        }
        return true;
    }

    private double bound(int k, double ray) {
        return Math.abs(outline.alongUnits(k) / ray - 1) * outline.mmPerUnit();
    }

    private boolean within(int k) {
        return k >= 0 && k < outline.count();
    }

    /** Whether the piece ends there, or falls away at a shoulder. */
    private boolean stepsDown(int[] stretch, int way) {
        double half = outline.acrossMm((stretch[0] + stretch[1]) / 2);
        int k = way < 0 ? stretch[2] : stretch[3];
        for (int on = k; Math.abs(outline.placeMm(on) - outline.placeMm(k)) < SHOULDER_LENGTH * half; on += way) {
            if (!within(on + way)) {
                return true;
            }
            if (outline.acrossMm(on + way) < (1 - SHOULDER) * half) {
                return true;
            }
        }
        return false;
    }

    /** The largest radius of what is turned and seen: not in the stretch, nor in one as wide, nor in a square, nor hidden behind any of these. */
    double widestBeside(List<int[]> stretches, boolean[] flat, int[] stretch) {
        double half = outline.acrossMm((stretch[0] + stretch[1]) / 2);
        boolean[] counts = new boolean[outline.count()];
        for (int k = 0; k < counts.length; k++) {
            counts[k] = !flat[k];
        }
        double beyond = Math.max(RIM_PIXELS * outline.mmPerPixel(), RIM_HALVES * half);
        int rim = (int) (beyond / outline.placeMm(1));
        for (int[] each : stretches) {
            if (isAsWide((each[0] + each[1]) / 2, half)) {
                int from = each[2];
                int to = each[3];
                while (within(from - 1) && (isAsWide(from - 1, half) || outline.isHidden(from - 1))) {
                    from--;
                }
                while (within(to + 1) && (isAsWide(to + 1, half) || outline.isHidden(to + 1))) {
                    to++;
                }
                Arrays.fill(counts, Math.max(0, from - rim), Math.min(counts.length, to + 1 + rim), false);
            }
        }
        double widest = 0;
        for (int k = 0; k < counts.length; k++) {
            widest = counts[k] ? Math.max(widest, outline.acrossMm(k)) : widest;
        }
        return widest;
    }

    private boolean isAsWide(int k, double half) {
        return Math.abs(outline.acrossMm(k) - half) < ROUNDED * half;
    }
}
