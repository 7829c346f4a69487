package turnalike.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The patches in which a picture's values are above a level, as that is let down step by step: they grow, and run together. One that hardly grows for
 * a step ends at an edge all round.
 */
final class PatchTree {
    private static final int STEPS = 40;

    /** So many of the pixels, as a share of them, may be beyond the first level or the last one. */
    private static final double STRAYS = 0.002;

    /** What grows by more than this share of itself in a step ends nowhere. */
    private static final double MOST_GROWTH = 0.2;

    private static final int LEAST_AREA = 60;

    private static final double MOST_AREA = 0.3;

    /** Of a patch: length over width, as if it were an even bar, and length over the picture's shorter side. */
    private static final double LEAST_SLENDER = 1.8;

    private static final double LEAST_LENGTH = 0.15;

    private final float[] values;

    private final int width;

    private final int height;

    /** Of each pixel another one of its patch, in the end the patch's root; -1 while it is below the level. */
    private final int[] parents;

    /** By root: how many pixels, their places' sums and those of the places' squares and products, how many at the picture's rim. */
    private final double[][] sums;

    private PatchTree(float[] values, int width, int height) {
        this.values = values;
        this.width = width;
        this.height = height;
        parents = new int[values.length];
        Arrays.fill(parents, -1);
        sums = new double[7][values.length];
    }

    /**
     * A patch.
     *
     * @param seed one of its pixels
     * @param level what all of it is above
     * @param area how many pixels it has
     */
    record Patch(int seed, double level, int area) {}

    /** Patches of a turned piece's shape that end at an edge, and not at the picture's rim. */
    static List<Patch> of(float[] values, int width, int height) {
        return new PatchTree(values, width, height).patches();
    }

    private List<Patch> patches() {
        float[] sorted = values.clone();
        Arrays.sort(sorted);
        int strays = (int) (STRAYS * sorted.length);
        double high = sorted[sorted.length - 1 - strays];
        double step = (high - sorted[strays]) / STEPS;
        if (step <= 0) {
            return List.of();
        }
        int[][] added = byStep(high, step);
        List<Patch> found = new ArrayList<>();
        List<Patch> before = List.of();
        for (int k = 0; k < STEPS; k++) {
            for (int pixel : added[k]) {
                add(pixel);
            }
            for (Patch each : before) {
                if (sums[0][root(each.seed)] <= (1 + MOST_GROWTH) * each.area) {
                    found.add(each);
                }
            }
            before = slender(high - (k + 1) * step);
        }
        return found;
    }

    /** The pixels that come above the level at each step. */
    private int[][] byStep(double high, double step) {
        int[] steps = new int[values.length];
        int[] counts = new int[STEPS + 1];
        for (int i = 0; i < values.length; i++) {
            steps[i] = (int) Math.max(0, Math.min(STEPS, (high - values[i]) / step));
            counts[steps[i]]++;
        }
        int[][] added = new int[STEPS + 1][];
        for (int k = 0; k <= STEPS; k++) {
            added[k] = new int[counts[k]];
        }
        for (int i = values.length - 1; i >= 0; i--) {
            added[steps[i]][--counts[steps[i]]] = i;
        }
        return added;
    }

    private void add(int pixel) {
        int x = pixel % width;
        int y = pixel / width;
        parents[pixel] = pixel;
        double[] own = {
            1,
            x,
            y,
            (double) x * x,
            (double) x * y,
            (double) y * y,
            x == 0 || y == 0 || x == width - 1 || y == height - 1 ? 1 : 0
        };
        for (int s = 0; s < own.length; s++) {
            sums[s][pixel] = own[s];
        }
        if (x > 0) {
            join(pixel, pixel - 1);
        }
        if (x + 1 < width) {
            join(pixel, pixel + 1);
        }
        if (y > 0) {
            join(pixel, pixel - width);
        }
        if (y + 1 < height) {
            join(pixel, pixel + width);
        }
    }

    private void join(int one, int other) {
        if (parents[other] < 0) {
            return;
        }
        int into = root(one);
        int from = root(other);
        if (into == from) {
            return;
        }
        if (sums[0][into] < sums[0][from]) {
            int swapped = into;
            into = from;
            from = swapped;
        }
        parents[from] = into;
        for (double[] sum : sums) {
            sum[into] += sum[from];
        }
    }

    private int root(int pixel) {
        int at = pixel;
        while (parents[at] != at) {
            parents[at] = parents[parents[at]];
            at = parents[at];
        }
        return at;
    }

    private List<Patch> slender(double level) {
        List<Patch> slender = new ArrayList<>();
        for (int i = 0; i < parents.length; i++) {
            double count = sums[0][i];
            if (parents[i] == i && count >= LEAST_AREA && count <= MOST_AREA * parents.length && sums[6][i] == 0) {
                double x = sums[1][i] / count;
                double y = sums[2][i] / count;
                double xx = sums[3][i] / count - x * x;
                double xy = sums[4][i] / count - x * y;
                double yy = sums[5][i] / count - y * y;
                double apart = Math.hypot((xx - yy) / 2, xy);
                double large = (xx + yy) / 2 + apart;
                double small = (xx + yy) / 2 - apart;
                if (Math.sqrt(12 * large) >= LEAST_LENGTH * Math.min(width, height)
                        && large >= LEAST_SLENDER * LEAST_SLENDER * small) {
                    slender.add(new Patch(i, level, (int) count));
                }
            }
        }
        return slender;
    }
}
