package turnalike.photo;

import java.util.Arrays;

/** How soft a picture's edges are, by the lines across a contour. */
final class EdgeSoftness {
    /** So many times the least cost is left by a softness far beyond the best; on none of fifty pictures a better one came after that. */
    private static final double MUCH_WORSE = 1.5;

    /**
     * How soft the lens is, is asked at so many points, so many of them together: what noise makes of one alone strays by a quarter and more, and the sharper
     * ones would be the noise's. None of them speaks against a softness by more than so many squares: it may stand across a knot.
     */
    private static final int ASKED = 60;

    private static final int TOGETHER = 5;

    private static final double MOST_TOLD = 30;

    /** A step of less than this, in codes over brightness and colours, tells nothing. */
    private static final double LEAST_STEP = 15;

    private static final double[] SOFTNESSES = {0.45, 0.6, 0.8, 1.05, 1.4, 1.9, 2.6, 3.6, 5};

    private final Picture picture;

    private final CoarseColour coarse;

    private final EdgeLines lines;

    private final Sight.AxisLine axis;

    /**
     * Takes a contour.
     *
     * @param picture the picture
     * @param coarse how coarse its colour is
     * @param lines across the contour
     * @param axis the piece's, about
     */
    EdgeSoftness(Picture picture, CoarseColour coarse, EdgeLines lines, Sight.AxisLine axis) {
        this.picture = picture;
        this.coarse = coarse;
        this.lines = lines;
        this.axis = axis;
    }

    /** Where nothing is known of it yet, a standard deviation in pixels. */
    double asked(EdgeFit.Noise noise) {
        return asked(noise, 0, SOFTNESSES.length - 1);
    }

    /** About what it was found to be before. */
    double near(double softness, EdgeFit.Noise noise) {
        int rank = 0;
        while (rank < SOFTNESSES.length - 1 && SOFTNESSES[rank + 1] <= softness) {
            rank++;
        }
        return asked(noise, Math.max(0, rank - 1), Math.min(SOFTNESSES.length - 1, rank + 2));
    }

    /**
     * How soft the picture's edges are. Where the piece darkens towards its edge more suddenly than the model has it, the step looks softer than
     * the lens made it, never sharper: so not the usual softness but that of the sharper third.
     */
    private double asked(EdgeFit.Noise noise, int from, int to) {
        int n = lines.count();
        int every = Math.max(1, n / ASKED);
        int count = (n + every - 1) / every;
        double[][] costs = new double[count][];
        Cores.parts(count, (first, end) -> {
            EdgeSearch search = new EdgeSearch(noise.bright(), noise.colour());
            EdgeLines.Reader reader = lines.new Reader();
            RimLight within = new RimLight(picture, lines, axis, SOFTNESSES[(from + to) / 2]);
            for (int k = first; k < end; k++) {
                costs[k] = costs(k * every, search, reader, within, from, to);
            }
        });
        double[] told = new double[(count + TOGETHER - 1) / TOGETHER];
        int known = 0;
        for (int first = 0; first < count; first += TOGETHER) {
            double[] sum = new double[to - from + 1];
            boolean any = false;
            for (int k = first; k < Math.min(count, first + TOGETHER); k++) {
                for (int s = 0; s < costs[k].length; s++) {
                    sum[s] += costs[k][s];
                    any = true;
                }
            }
            if (any) {
                told[known++] = softest(sum, from);
            }
        }
        Arrays.sort(told, 0, known);
        return known == 0 ? 0.8 : told[known / 3];
    }

    private static double softest(double[] costs, int from) {
        int least = 0;
        for (int s = 1; s < costs.length; s++) {
            least = costs[s] < costs[least] ? s : least;
        }
        return between(costs, least, from);
    }

    /** By how much more than the best softness each leaves unexplained of the edge at one point; none where there is none. */
    private double[] costs(int i, EdgeSearch search, EdgeLines.Reader reader, RimLight within, int from, int to) {
        double[][] seen = reader.read(i);
        search.coarse(coarse.along(lines.normal(i)));
        double[] light = within.at(i);
        double[] costs = new double[to - from + 1];
        int least = -1;
        double[] inside = lines.inside(i);
        double[] outside = lines.outside(i);
        // A lens much softer than the best one explains a line ever worse: no need to try those.
        boolean worse = false;
        for (int k = from; k <= to; k++) {
            if (worse) {
                costs[k - from] = costs[k - from - 1];
                continue;
            }
            search.take(seen, inside, outside, SOFTNESSES[k]);
            search.expect(light);
            costs[k - from] = search.from(0);
            search.judge();
            if ((least < 0 || costs[k - from] < costs[least]) && search.contrast() > LEAST_STEP) {
                least = k - from;
            }
            worse = least >= 0 && k - from > least + 1 && costs[k - from] > MUCH_WORSE * costs[least];
        }
        if (least < 0) {
            return new double[0];
        }
        double best = costs[least];
        for (int k = 0; k < costs.length; k++) {
            costs[k] = Math.min(MOST_TOLD, costs[k] - best);
        }
        return costs;
    }

    /** The softness of least cost, by the parabola through the least one and its neighbours; the softnesses grow by factors. */
    private static double between(double[] costs, int least, int from) {
        double here = SOFTNESSES[from + least];
        if (least == 0 || least == costs.length - 1) {
            return here;
        }
        double bend = costs[least - 1] - 2 * costs[least] + costs[least + 1];
        double share = bend > 0 ? 0.5 * (costs[least - 1] - costs[least + 1]) / bend : 0;
        double within = Math.max(-0.5, Math.min(0.5, share));
        double next = SOFTNESSES[from + least + (within < 0 ? -1 : 1)];
        return here * Math.pow(next / here, Math.abs(within));
    }
}
