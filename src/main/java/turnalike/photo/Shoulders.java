package turnalike.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * Where an outline steps: there the thicker side ends in a sharp rim, a circle round the axis that is seen across the whole near half. Where the side
 * rounds over before it falls, the camera sees no circle but wherever its rays graze. All limits by trying.
 */
final class Shoulders {
    /** The thicker side is read over so many of the outline's steps. */
    private static final int BESIDE = 5;

    /** From so much radius to a place on, the outline steps. */
    private static final double STEEP = 1;

    /** A shoulder is so high at least, in the outline's steps. */
    private static final double LEAST = 1.5;

    /** By how much the thicker side may fall towards its rim, and rise, and by what part of a step it may bend. */
    private static final double FALLS = 0.4;

    private static final double RISES = 1;

    private static final double BENDS = 0.3;

    private final RoundOutline outline;

    private final double step;

    private Shoulders(RoundOutline outline) {
        this.outline = outline;
        int last = outline.count() - 1;
        step = (outline.alongUnits(last) - outline.alongUnits(0)) / last;
    }

    /**
     * A sharp rim.
     *
     * @param place along the axis, from the foot of the perpendicular out of the camera
     * @param radius of the rim
     * @param slope how the radius changes along the thicker side, towards the thinner
     * @param thin 1 where the thinner side follows it, −1 where it comes before
     * @param hides whether something is hidden right beside it
     */
    record Rim(double place, double radius, double slope, int thin, boolean hides) {}

    /** The rims of an outline whose steps are a pixel or somewhat more. */
    static List<Rim> of(RoundOutline outline) {
        Shoulders shoulders = new Shoulders(outline);
        List<Rim> rims = new ArrayList<>();
        int k = 0;
        while (k + 1 < outline.count()) {
            int to = k;
            while (to + 1 < outline.count() && shoulders.isSteep(to)) {
                to++;
            }
            if (to > k) {
                shoulders.add(rims, k, to);
            }
            k = Math.max(k + 1, to);
        }
        return rims;
    }

    /** Whether the outline steps between a step of its and the next. */
    private boolean isSteep(int k) {
        return Math.abs(outline.radiusUnits(k + 1) - outline.radiusUnits(k)) > STEEP * step;
    }

    private void add(List<Rim> rims, int from, int to) {
        double rise = outline.radiusUnits(to) - outline.radiusUnits(from);
        int thin = rise < 0 ? 1 : -1;
        int at = rise < 0 ? from : to;
        int far = at - thin * BESIDE;
        if (Math.abs(rise) < LEAST * step || far < 0 || far >= outline.count()) {
            return;
        }
        double[][] rows = new double[2][3];
        for (int i = 1; i <= BESIDE; i++) {
            double x = -i * step;
            double r = outline.radiusUnits(at - i * thin);
            rows[0][0]++;
            rows[0][1] += x;
            rows[1][1] += x * x;
            rows[0][2] += r;
            rows[1][2] += x * r;
        }
        rows[1][0] = rows[0][1];
        double[] line = LeastSquares.solve(rows);
        double bend = 0;
        for (int i = 1; i <= BESIDE; i++) {
            bend = Math.max(bend, Math.abs(outline.radiusUnits(at - i * thin) - line[0] + line[1] * i * step));
        }
        if (line[1] > -FALLS && line[1] < RISES && bend < BENDS * step) {
            rims.add(new Rim(outline.alongUnits(at), line[0], line[1], thin, hides(from - 2, to + 2)));
        }
    }

    private boolean hides(int from, int to) {
        for (int k = Math.max(0, from); k <= Math.min(outline.count() - 1, to); k++) {
            if (outline.isHidden(k)) {
                return true;
            }
        }
        return false;
    }
}
