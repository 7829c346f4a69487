package turnalike.trace.drawn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * An outline in steps, as one drawn round the pixels of a picture has: what it was drawn from runs about halfway through each step.
 *
 * @param spots of the outline, halfway through its steps where it has such
 * @param stepMm how high a step is; zero where it has none
 */
record Stairs(List<Spot> spots, double stepMm) {
    private static final int LEAST = 40;
    /** So many edges stand upright or level. */
    private static final double SQUARE = 0.95;
    /** So many of the upright ones are of one height. */
    private static final double ALIKE = 0.4;

    /** Of two upright edges in a row so many lead on the same way; beads and grooves in a row go up and down. */
    private static final double LEADS_ON = 0.6;

    private static final int LEAST_UPRIGHT = 12;
    /** Of the whole length: a higher step is a shoulder. */
    private static final double HIGHEST = 0.01;

    private static final double NEAR = 0.05;
    private static final double LONGER = 1.2;

    Stairs {
        spots = List.copyOf(spots);
    }

    /** @param spots of a closed outline that lies along x, in millimetres */
    static Stairs of(List<Spot> spots) {
        double step = step(spots);
        if (step == 0) {
            return new Stairs(spots, 0);
        }
        List<Spot> out = new ArrayList<>();
        int n = spots.size();
        for (int i = 0; i < n; i++) {
            Spot before = spots.get((i + n - 1) % n);
            Spot here = spots.get(i);
            Spot next = spots.get((i + 1) % n);
            boolean isShort = here.distance(next) < LONGER * step;
            if (isShort) {
                out.add(Spot.knot((here.x() + next.x()) / 2, (here.y() + next.y()) / 2));
            } else if (before.distance(here) >= LONGER * step) {
                out.add(here);
            }
        }
        return new Stairs(out, step);
    }

    /** The height that most of its upright edges have, the least; zero where it is no stairs. */
    private static double step(List<Spot> spots) {
        int n = spots.size();
        double[] heights = new double[n];
        int upright = 0;
        int square = 0;
        int leads = 0;
        double last = 0;
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            double dx = Math.abs(spots.get((i + 1) % n).x() - spots.get(i).x());
            double rise = spots.get((i + 1) % n).y() - spots.get(i).y();
            double dy = Math.abs(rise);
            left = Math.min(left, spots.get(i).x());
            right = Math.max(right, spots.get(i).x());
            if (dx < 1e-3 * dy) {
                heights[upright++] = dy;
                square++;
                leads += rise * last > 0 ? 1 : 0;
                last = rise;
            } else if (dy < 1e-3 * dx) {
                square++;
            }
        }
        if (n < LEAST || square < SQUARE * n || upright < LEAST_UPRIGHT || leads < LEADS_ON * upright) {
            return 0;
        }
        double[] sorted = Arrays.copyOf(heights, upright);
        Arrays.sort(sorted);
        double step = sorted[upright / 5];
        long alike = Arrays.stream(sorted)
                .filter(each -> Math.abs(each - step) < NEAR * step)
                .count();
        return alike >= ALIKE * upright && step < HIGHEST * (right - left) ? step : 0;
    }
}
