package turnalike.photo;

import java.util.Arrays;

/**
 * The place of an edge at which {@link EdgeModel} agrees best with what a camera did write along a line. Light and colour are compared as written,
 * each by its own noise: where wood and ground are equally bright, which a rim in the shade is somewhere on most pieces, only the coarse colour
 * tells them apart. A search may begin at several places; the best of its ends counts.
 */
final class EdgeSearch {
    private static final int UNKNOWNS = EdgeModel.UNKNOWNS;

    private static final int SAMPLES = EdgeModel.SAMPLES;

    private static final int FIRST_COLOUR = EdgeModel.FIRST_COLOUR;

    private static final int ROWS = EdgeModel.ROWS;

    /** How far the light's coefficients stray from nothing, as parts of the light: outside each pixel; inside by root and by pixel. */
    private static final double SLOPE = 0.04;

    private static final double ROOT = 0.3;

    private static final double DEPTH = 0.06;

    /** How much faster light may grow from some depth on, as a part of it by pixel. */
    private static final double LATE = 0.1;

    /** By how much of the light each of them strays from what the light farther within makes expect, and the root's by this part of itself too. */
    private static final double TOLD = 0.085;

    private static final double TOLD_PART = 0.3;

    /** So deep under the edge, in pixels, is that light taken. */
    private static final double WITHIN = 3;

    /** How far a hue strays from its neighbours' mean, in logarithm. */
    private static final double HUE = 0.08;

    /** Where a grain line or a shaving says no more than it must: so many squares. */
    private static final double ODD = 9;

    /** Brighter than this of 255 is as good as full, and nobody knows how much brighter it was: so much, say. */
    static final double BURNT = 250;

    private static final double BEYOND = 1.15;

    /** How many steps a search takes at most, and how many tell a good start from a bad one. */
    private static final int WHOLE = 10;

    private static final int FEW = 3;

    /** Two searches that came so near to each other, in pixels, found one edge. */
    private static final double SAME = 0.3;

    private final EdgeModel model = new EdgeModel();

    private final double brightNoise;

    private final double colourNoise;

    private final double[] seen = new double[ROWS];

    /** One over the noise of each number squared. */
    private final double[] trust = new double[ROWS];

    private final double[] held = new double[UNKNOWNS];

    /** What each unknown is held to. */
    private final double[] expected = new double[UNKNOWNS];

    private final double[] begun = new double[UNKNOWNS];

    private final double[] best = new double[UNKNOWNS];

    private double[] state = new double[UNKNOWNS];

    private double[] trial = new double[UNKNOWNS];

    /** Whether {@link #state} is what the model was last asked for, and so whether {@link #best} is. */
    private boolean atState;

    private boolean atBest;

    /** Of each number the root of what it counts, that times how far off it is, and that times how it changes with each unknown. */
    private final double[] roots = new double[ROWS];

    private final double[] pulls = new double[ROWS];

    private final double[] weighed = new double[ROWS * UNKNOWNS];

    private final NormalRows rows = new NormalRows();

    private double softness = 1;

    private double cost;

    private double sure;

    private double contrast;

    private double brightMiss;

    private double colourMiss;

    /**
     * Makes a search.
     *
     * @param brightNoise what brightness strays by, in codes of 255
     * @param colourNoise what colour does
     */
    EdgeSearch(double brightNoise, double colourNoise) {
        this.brightNoise = brightNoise;
        this.colourNoise = colourNoise;
    }

    /** How much softer colour is than brightness along the next lines, a standard deviation in pixels; 0 where it is not. */
    void coarse(double coarse) {
        model.coarse(coarse);
    }

    /**
     * Takes a line to search.
     *
     * @param line brightness and the two colours at each sample, from within to without
     * @param inside the wood's linear colour nearby, of sum 1
     * @param outside the ground's
     * @param soft of the lens, a standard deviation in pixels
     */
    void take(double[][] line, double[] inside, double[] outside, double soft) {
        softness = soft;
        model.between(inside, outside, soft);
        System.arraycopy(line[0], 0, seen, 0, SAMPLES);
        for (int k = 0; k < SAMPLES; k++) {
            seen[FIRST_COLOUR + 2 * k] = line[1][k];
            seen[FIRST_COLOUR + 2 * k + 1] = line[2][k];
        }
        Arrays.fill(trust, 0, SAMPLES, 1 / (brightNoise * brightNoise));
        Arrays.fill(trust, FIRST_COLOUR, ROWS, 1 / (colourNoise * colourNoise));
        Arrays.fill(begun, 0);
        int rim = (int) ((EdgeModel.REACH - 2.5) / EdgeModel.STEP);
        begun[1] = light(line, rim);
        begun[4] = light(line, SAMPLES - 1 - rim) * (line[0][SAMPLES - 3] > BURNT ? BEYOND : 1);
        double scale = Math.max(1e-3, Math.max(begun[1], begun[4]));
        held[0] = 1e-3;
        held[1] = 0;
        held[2] = 1 / square(ROOT * scale);
        held[3] = 1 / square(DEPTH * scale);
        held[4] = 0;
        held[5] = 1 / square(SLOPE * scale);
        Arrays.fill(held, 6, EdgeModel.FIRST_LATE, 1 / square(HUE));
        Arrays.fill(held, EdgeModel.FIRST_LATE, UNKNOWNS, 1 / square(LATE * scale));
        Arrays.fill(expected, 0);
        cost = Double.POSITIVE_INFINITY;
        atBest = false;
    }

    /** Says what light to expect under the edge of the line just taken, as {@link RimLight} tells it; nothing where that is empty. */
    void expect(double[] light) {
        if (light.length == 0) {
            return;
        }
        // The light some pixels within: the rim itself may be all but black.
        double scale = light[0] + light[1] * Math.sqrt(WITHIN) + light[2] * WITHIN;
        for (int i = 0; i < EdgeModel.LATE_COUNT; i++) {
            scale += light[3 + i] * Math.max(0, WITHIN - EdgeModel.lateDepth(i));
        }
        double strays = square(TOLD * Math.max(1e-3, scale));
        expected[2] = light[1];
        held[2] = 1 / (strays + square(TOLD_PART * light[1]));
        expected[3] = light[2];
        held[3] = 1 / strays;
        for (int i = 0; i < EdgeModel.LATE_COUNT; i++) {
            expected[EdgeModel.FIRST_LATE + i] = light[3 + i];
            held[EdgeModel.FIRST_LATE + i] = 1 / strays;
        }
    }

    /** Linear light near a sample, all three colours together. */
    private static double light(double[][] line, int at) {
        double sum = 0;
        for (int k = at - 2; k <= at + 2; k++) {
            sum += EdgeModel.light(line, k) / 5;
        }
        return sum;
    }

    private static double square(double value) {
        return value * value;
    }

    /**
     * Searches from a place on, knowing nothing else.
     *
     * @param start where the edge is looked for first, outward from the line's middle
     * @return the least cost so far: the sum of squares that the best edge leaves
     */
    double from(double start) {
        System.arraycopy(begun, 0, state, 0, UNKNOWNS);
        state[0] = start;
        keep(steps(WHOLE));
        return cost;
    }

    /**
     * Searches from several places on: a few steps from each, and to the end from the two that came best.
     *
     * @param starts where the edge is looked for first
     * @return the least cost so far
     */
    double from(double[] starts) {
        double[] costs = new double[starts.length];
        double[][] reached = new double[starts.length][UNKNOWNS];
        for (int k = 0; k < starts.length; k++) {
            System.arraycopy(begun, 0, state, 0, UNKNOWNS);
            state[0] = starts[k];
            costs[k] = steps(FEW);
            System.arraycopy(state, 0, reached[k], 0, UNKNOWNS);
        }
        int first = least(costs, reached, Double.NaN);
        int second = least(costs, reached, reached[first][0]);
        for (int k : second < 0 ? new int[] {first} : new int[] {first, second}) {
            // One that comes where a search ended before, no better than it, would end there again.
            if (costs[k] < cost || Math.abs(reached[k][0] - best[0]) >= SAME) {
                System.arraycopy(reached[k], 0, state, 0, UNKNOWNS);
                keep(steps(WHOLE));
            }
        }
        return cost;
    }

    /** The least of some costs, of those that came elsewhere than to a place; -1 where there is none. */
    private static int least(double[] costs, double[][] reached, double than) {
        int least = -1;
        for (int k = 0; k < costs.length; k++) {
            if (!(Math.abs(reached[k][0] - than) < SAME) && (least < 0 || costs[k] < costs[least])) {
                least = k;
            }
        }
        return least;
    }

    private void keep(double found) {
        if (found < cost) {
            cost = found;
            atBest = atState;
            System.arraycopy(state, 0, best, 0, UNKNOWNS);
        }
    }

    /** At most so many steps on from {@link #state}; the cost there. */
    private double steps(int most) {
        double damping = 1e-3;
        model.predict(state);
        atState = true;
        atBest = false;
        double now = costOf(state);
        for (int round = 0; round < most; round++) {
            // The last trial that was better is what the model holds.
            model.derive(state);
            addUp();
            double gain = 0;
            for (int attempt = 0; attempt < 4 && gain <= 0; attempt++) {
                double[] move = rows.solved(damping);
                for (int a = 0; a < UNKNOWNS; a++) {
                    trial[a] = state[a] + move[a];
                }
                trial[0] = state[0] + Math.max(-0.7, Math.min(0.7, move[0]));
                trial[1] = Math.max(0, trial[1]);
                trial[4] = Math.max(0, trial[4]);
                model.predict(trial);
                gain = now - costOf(trial);
                damping = gain > 0 ? Math.max(1e-6, damping / 5) : damping * 8;
            }
            if (gain <= 0) {
                atState = false;
                break;
            }
            now -= gain;
            double[] last = state;
            state = trial;
            trial = last;
            if (gain < 2e-3 * (1 + now)) {
                break;
            }
        }
        return now;
    }

    /**
     * Works out how well the best edge is known, and in what it fails.
     *
     * @return where it is, outward from the line's middle
     */
    double settle() {
        judge();
        model.derive(best);
        System.arraycopy(best, 0, state, 0, UNKNOWNS);
        addUp();
        sure = Math.sqrt(rows.variance(0));
        return best[0];
    }

    /** Works out in what the best edge fails, and {@link #contrast}. */
    void judge() {
        if (!atBest) {
            model.predict(best);
            atBest = true;
        }
        double[] written = model.written();
        double bright = 0;
        double colour = 0;
        for (int k = 0; k < ROWS; k++) {
            double off = square(seen[k] - written[k]);
            bright += k < SAMPLES ? off : 0;
            colour += k < SAMPLES ? 0 : off;
        }
        brightMiss = Math.sqrt(bright / SAMPLES);
        colourMiss = Math.sqrt(colour / (2 * SAMPLES));
        int in = sample(best[0] - 2 * softness);
        int out = sample(best[0] + 2 * softness);
        contrast = Math.abs(written[in] - written[out])
                + Math.abs(written[FIRST_COLOUR + 2 * in] - written[FIRST_COLOUR + 2 * out])
                + Math.abs(written[FIRST_COLOUR + 2 * in + 1] - written[FIRST_COLOUR + 2 * out + 1]);
    }

    private static int sample(double at) {
        return Math.max(0, Math.min(SAMPLES - 1, (int) ((at + EdgeModel.REACH) / EdgeModel.STEP)));
    }

    /** The sum of squares that the best edge left, and, once settled, its place's standard deviation, pixels. */
    double cost() {
        return cost;
    }

    double sure() {
        return sure;
    }

    /** How the edge's two sides differ close to it, in codes. */
    double contrast() {
        return contrast;
    }

    double brightMiss() {
        return brightMiss;
    }

    double colourMiss() {
        return colourMiss;
    }

    private double costOf(double[] at) {
        double[] written = model.written();
        double bright = 1;
        for (int k = 0; k < SAMPLES; k++) {
            bright *= 1 + square(seen[k] - written[k]) * trust[k] / ODD;
        }
        double colour = 1;
        for (int k = FIRST_COLOUR; k < ROWS; k++) {
            colour *= 1 + square(seen[k] - written[k]) * trust[k] / ODD;
        }
        // Two logarithms of products for a sum of many: a factor is below 1e5, and 46 of them hold in a number.
        double sum = ODD * (Math.log(bright) + Math.log(colour));
        for (int a = 0; a < UNKNOWNS; a++) {
            sum += held[a] * square(at[a] - expected[a]);
        }
        return sum;
    }

    /** The normal equations at {@link #state}. */
    private void addUp() {
        double[] written = model.written();
        double[] by = model.by();
        for (int k = 0; k < ROWS; k++) {
            double off = seen[k] - written[k];
            double root = Math.sqrt(trust[k] / (1 + off * off * trust[k] / ODD));
            roots[k] = root;
            pulls[k] = root * off;
        }
        for (int k = 0; k < ROWS; k++) {
            double root = roots[k];
            for (int a = 0; a < UNKNOWNS; a++) {
                weighed[k * UNKNOWNS + a] = root * by[k * UNKNOWNS + a];
            }
        }
        rows.add(weighed, pulls);
        for (int a = 0; a < UNKNOWNS; a++) {
            rows.hold(a, held[a], state[a] - expected[a]);
        }
    }
}
