package turnalike.photo;

import java.util.Arrays;

/**
 * What a camera would have written along a line across the edge, and the edge's place at which that agrees best with what it did write. Inside
 * stands wood of one hue whose light is that of a dull round body: a level, the root of the depth under the edge, and the depth. Outside stands
 * a ground of one hue whose light runs straight, so that a shadow is but less light. The lens mixes them in linear light; the camera then writes
 * codes, and a JPEG keeps the codes' colour coarser than their brightness. Light and colour are compared as written, each by its own noise:
 * where wood and ground are equally bright, which a rim in the shade is somewhere on most pieces, only the coarse colour tells them apart.
 */
final class EdgeModel {
    static final double REACH = 5.5;

    static final double STEP = 0.5;

    static final int SAMPLES = (int) (2 * REACH / STEP) + 1;

    /** Beyond the samples, for the coarse colour. */
    private static final int PAD = 6;

    private static final int NODES = SAMPLES + 2 * PAD;

    private static final int UNKNOWNS = 10;

    /** How far the light's coefficients stray from nothing, as parts of the light: outside each pixel; inside by root and by pixel. */
    private static final double SLOPE = 0.04;

    private static final double ROOT = 0.3;

    private static final double DEPTH = 0.06;

    /** How far a hue strays from its neighbours' mean, in logarithm. */
    private static final double HUE = 0.08;

    private final double[] blur = new double[PAD + 1];

    private final double brightNoise;

    private final double colourNoise;

    /** Of the last prediction: brightness and the two colours at each sample. */
    private final double[][] written = new double[3][SAMPLES];

    private final double[][] here = new double[3][SAMPLES];

    private final double[][] part = new double[3][NODES];

    private final double[][][] by = new double[UNKNOWNS][3][SAMPLES];

    private final double[][] node = new double[3][NODES];

    private final double[][] nodeSlope = new double[3][NODES];

    private final double[][] colourful = new double[2][NODES];

    private int widest;

    /** Of the last prediction: the wood's linear colour and the ground's, reckoned once and not at every node. */
    private final double[][] tint = new double[2][3];

    /** The shapes at each node: inside's level, root, depth; outside's level and slope. */
    private final double[][] shape = new double[5][NODES];

    private double brightMiss;

    private double colourMiss;

    private double sure;

    private double contrast;

    private double cost;

    /**
     * Makes a model.
     *
     * @param brightNoise what brightness strays by, in codes of 255
     * @param colourNoise what colour does
     */
    EdgeModel(double brightNoise, double colourNoise) {
        this.brightNoise = brightNoise;
        this.colourNoise = colourNoise;
        blur[0] = 1;
    }

    /** How much softer colour is than brightness along the next lines, a standard deviation in pixels; 0 where it is not. */
    void coarse(double coarse) {
        widest = coarse == 0 ? 0 : PAD;
        double sum = 0;
        for (int k = 0; k <= PAD; k++) {
            blur[k] = coarse == 0 ? k == 0 ? 1 : 0 : Math.exp(-k * k * STEP * STEP / (2 * coarse * coarse));
            sum += k == 0 ? blur[k] : 2 * blur[k];
        }
        for (int k = 0; k <= PAD; k++) {
            blur[k] /= sum;
        }
    }

    /** Brightness and colours of codes as a JPEG has them, from memory of ITU-T T.871. */
    static void split(double red, double green, double blue, double[][] to, int k) {
        double bright = 0.299 * red + 0.587 * green + 0.114 * blue;
        to[0][k] = bright;
        to[1][k] = 0.564 * (blue - bright);
        to[2][k] = 0.713 * (red - bright);
    }

    /**
     * Finds the edge.
     *
     * @param seen brightness and the two colours at each sample, from within to without
     * @param inside the wood's linear colour nearby, of sum 1
     * @param outside the ground's
     * @param start where the edge is looked for first
     * @param softness of the lens, a standard deviation in pixels
     * @return where it is, outward from the line's middle
     */
    double find(double[][] seen, double[] inside, double[] outside, double start, double softness) {
        double[] state = new double[UNKNOWNS];
        state[0] = start;
        state[1] = light(seen, (int) ((REACH - 2.5) / STEP));
        state[4] = light(seen, SAMPLES - 1 - (int) ((REACH - 2.5) / STEP));
        double[] held = held(Math.max(state[1], state[4]));
        double damping = 1e-3;
        predict(state, inside, outside, softness, true);
        double now = cost(seen, state, held);
        for (int round = 0; round < 10; round++) {
            derive(state, inside, outside, softness);
            double[][] rows = rows(seen, state, held);
            double[] trial = state.clone();
            boolean better = false;
            double gain = 0;
            for (int attempt = 0; attempt < 4 && !better; attempt++) {
                double[][] damped = new double[UNKNOWNS][];
                for (int a = 0; a < UNKNOWNS; a++) {
                    damped[a] = rows[a].clone();
                    damped[a][a] *= 1 + damping;
                }
                double[] move = LeastSquares.solve(damped);
                for (int a = 0; a < UNKNOWNS; a++) {
                    trial[a] = state[a] + (a == 0 ? Math.max(-0.7, Math.min(0.7, move[a])) : move[a]);
                }
                trial[1] = Math.max(0, trial[1]);
                trial[4] = Math.max(0, trial[4]);
                predict(trial, inside, outside, softness, true);
                double then = cost(seen, trial, held);
                better = then < now;
                if (better) {
                    gain = now - then;
                    now = then;
                    damping = Math.max(1e-6, damping / 5);
                } else {
                    damping *= 8;
                }
            }
            if (!better) {
                predict(state, inside, outside, softness, true);
                break;
            }
            state = trial;
            if (gain < 2e-3 * (1 + now)) {
                break;
            }
        }
        finish(seen, state, held, inside, outside, softness);
        cost = now;
        return state[0];
    }

    /** The sum of squares that the last edge left, and its place's standard deviation, pixels. */
    double cost() {
        return cost;
    }

    double sure() {
        return sure;
    }

    /** How the last edge's two sides differ close to it, in codes. */
    double contrast() {
        return contrast;
    }

    double brightMiss() {
        return brightMiss;
    }

    double colourMiss() {
        return colourMiss;
    }

    private void finish(
            double[][] seen, double[] state, double[] held, double[] inside, double[] outside, double softness) {
        derive(state, inside, outside, softness);
        double[][] rows = rows(seen, state, held);
        rows[0][UNKNOWNS] = 1;
        for (int a = 1; a < UNKNOWNS; a++) {
            rows[a][UNKNOWNS] = 0;
        }
        sure = Math.sqrt(Math.max(0, LeastSquares.solve(rows)[0]));
        double bright = 0;
        double colour = 0;
        for (int k = 0; k < SAMPLES; k++) {
            bright += square(seen[0][k] - written[0][k]);
            colour += square(seen[1][k] - written[1][k]) + square(seen[2][k] - written[2][k]);
        }
        brightMiss = Math.sqrt(bright / SAMPLES);
        colourMiss = Math.sqrt(colour / 2 / SAMPLES);
        int in = Math.max(0, Math.min(SAMPLES - 1, (int) ((state[0] - 2 * softness + REACH) / STEP)));
        int out = Math.max(0, Math.min(SAMPLES - 1, (int) ((state[0] + 2 * softness + REACH) / STEP)));
        contrast = Math.abs(written[0][in] - written[0][out])
                + Math.abs(written[1][in] - written[1][out])
                + Math.abs(written[2][in] - written[2][out]);
    }

    private static double[] held(double light) {
        double scale = Math.max(1e-3, light);
        double[] held = new double[UNKNOWNS];
        held[0] = 1e-3;
        held[2] = 1 / square(ROOT * scale);
        held[3] = 1 / square(DEPTH * scale);
        held[5] = 1 / square(SLOPE * scale);
        Arrays.fill(held, 6, UNKNOWNS, 1 / square(HUE));
        return held;
    }

    private static double square(double value) {
        return value * value;
    }

    /** Linear light near a sample, all three colours together. */
    private static double light(double[][] seen, int at) {
        double sum = 0;
        for (int k = at - 2; k <= at + 2; k++) {
            double red = seen[0][k] + seen[2][k] / 0.713;
            double blue = seen[0][k] + seen[1][k] / 0.564;
            double green = (seen[0][k] - 0.299 * red - 0.114 * blue) / 0.587;
            sum += (Gamma.linear(red) + Gamma.linear(green) + Gamma.linear(blue)) / 5;
        }
        return sum;
    }

    private double cost(double[][] seen, double[] state, double[] held) {
        double sum = 0;
        for (int c = 0; c < 3; c++) {
            double noise = c == 0 ? brightNoise : colourNoise;
            for (int k = 0; k < SAMPLES; k++) {
                double off = square((seen[c][k] - written[c][k]) / noise);
                // A grain line says no more than it must.
                sum += 9 * Math.log1p(off / 9);
            }
        }
        for (int a = 0; a < UNKNOWNS; a++) {
            sum += held[a] * square(state[a]);
        }
        return sum;
    }

    private double[][] rows(double[][] seen, double[] state, double[] held) {
        double[][] rows = new double[UNKNOWNS][UNKNOWNS + 1];
        for (int c = 0; c < 3; c++) {
            double noise = c == 0 ? brightNoise : colourNoise;
            for (int k = 0; k < SAMPLES; k++) {
                double off = seen[c][k] - written[c][k];
                double weight = 1 / (noise * noise) / (1 + square(off / noise) / 9);
                for (int a = 0; a < UNKNOWNS; a++) {
                    double weighed = weight * by[a][c][k];
                    for (int b = a; b < UNKNOWNS; b++) {
                        rows[a][b] += weighed * by[b][c][k];
                    }
                    rows[a][UNKNOWNS] += weighed * off;
                }
            }
        }
        for (int a = 0; a < UNKNOWNS; a++) {
            for (int b = 0; b < a; b++) {
                rows[a][b] = rows[b][a];
            }
            rows[a][a] += held[a];
            rows[a][UNKNOWNS] -= held[a] * state[a];
        }
        return rows;
    }

    /** Fills {@link #written}, and the nodes' shapes and slopes when asked. */
    private void predict(double[] state, double[] inside, double[] outside, double softness, boolean keep) {
        double root = Math.sqrt(softness);
        for (int c = 0; c < 3; c++) {
            tint[0][c] = tint(inside, state, 6, c);
            tint[1][c] = tint(outside, state, 8, c);
        }
        for (int j = 0; j < NODES; j++) {
            double u = ((j - PAD) * STEP - REACH - state[0]) / softness;
            double level = SoftEdge.level(u);
            double rooted = root * SoftEdge.root(u);
            double deep = softness * SoftEdge.depth(u);
            double off = softness * SoftEdge.depth(-u);
            if (keep) {
                shape[0][j] = level;
                shape[1][j] = rooted;
                shape[2][j] = deep;
                shape[3][j] = 1 - level;
                shape[4][j] = off;
            }
            double within = Math.max(0, state[1] * level + state[2] * rooted + state[3] * deep);
            double without = Math.max(0, state[4] * (1 - level) + state[5] * off);
            for (int c = 0; c < 3; c++) {
                double light = within * tint[0][c] + without * tint[1][c];
                node[c][j] = Gamma.code(light);
                if (keep) {
                    nodeSlope[c][j] = Gamma.slope(light);
                }
            }
        }
        mix(node, written);
    }

    private static double tint(double[] hue, double[] state, int from, int c) {
        return c == 1 ? hue[c] : hue[c] * Math.exp(state[from + c / 2]);
    }

    /** How what is written changes with each unknown, right after it was predicted for them. */
    private void derive(double[] state, double[] inside, double[] outside, double softness) {
        double step = 0.04;
        double[] beside = state.clone();
        beside[0] = state[0] + step;
        for (int c = 0; c < 3; c++) {
            System.arraycopy(written[c], 0, here[c], 0, SAMPLES);
        }
        predict(beside, inside, outside, softness, false);
        for (int c = 0; c < 3; c++) {
            for (int k = 0; k < SAMPLES; k++) {
                by[0][c][k] = (written[c][k] - here[c][k]) / step;
            }
            System.arraycopy(here[c], 0, written[c], 0, SAMPLES);
        }
        for (int a = 1; a < UNKNOWNS; a++) {
            for (int j = 0; j < NODES; j++) {
                for (int c = 0; c < 3; c++) {
                    part[c][j] = nodeSlope[c][j] * partial(a, c, j, state);
                }
            }
            mix(part, by[a]);
        }
    }

    /** How a node's linear colour changes with an unknown. */
    private double partial(int a, int c, int j, double[] state) {
        if (a <= 3) {
            return shape[a - 1][j] * tint[0][c];
        }
        if (a <= 5) {
            return shape[a - 1][j] * tint[1][c];
        }
        boolean within = a < 8;
        int which = within ? a - 6 : a - 8;
        if (c != 2 * which) {
            return 0;
        }
        return within
                ? (state[1] * shape[0][j] + state[2] * shape[1][j] + state[3] * shape[2][j]) * tint[0][c]
                : (state[4] * shape[3][j] + state[5] * shape[4][j]) * tint[1][c];
    }

    /** Codes of red, green, blue at the nodes to brightness and coarse colours at the samples. */
    private void mix(double[][] from, double[][] to) {
        for (int j = 0; j < NODES; j++) {
            double bright = 0.299 * from[0][j] + 0.587 * from[1][j] + 0.114 * from[2][j];
            colourful[0][j] = 0.564 * (from[2][j] - bright);
            colourful[1][j] = 0.713 * (from[0][j] - bright);
            if (j >= PAD && j < PAD + SAMPLES) {
                to[0][j - PAD] = bright;
            }
        }
        for (int c = 0; c < 2; c++) {
            double[] fine = colourful[c];
            for (int k = 0; k < SAMPLES; k++) {
                double sum = blur[0] * fine[k + PAD];
                for (int i = 1; i <= widest; i++) {
                    sum += blur[i] * (fine[k + PAD - i] + fine[k + PAD + i]);
                }
                to[c + 1][k] = sum;
            }
        }
    }
}
