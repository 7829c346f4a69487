package turnalike.photo;

/**
 * What a camera would have written along a line across an edge. Inside stands wood of one hue whose light is that of a dull round body: a
 * level, the root of the depth under the edge, and the depth, which counts for more from where a lamp behind the edge first reaches. Outside
 * stands a ground of one hue whose light runs straight, so that a shadow is but less light. The lens mixes them in linear light; the camera
 * then writes codes, and a JPEG keeps the codes' colour coarser than their brightness.
 *
 * <p>The unknowns: where the edge is, outward from the line's middle; inside's level, root and depth; outside's level and slope; the logarithm by
 * which the red and the blue inside, then outside, stray from the hue nearby; by how much light grows faster from some depths on. Arrays of
 * fixed length are used over and over: this is where most of a trace's time goes.
 */
final class EdgeModel {
    static final double REACH = 5.5;

    static final double STEP = 0.5;

    static final int SAMPLES = (int) (2 * REACH / STEP) + 1;

    /**
     * So deep under the edge, in pixels, light may begin to grow faster: a lamp that stands behind an edge does not reach the rim, and lights the
     * wood from some way within.
     */
    private static final double[] LATE = {1.5, 3};

    /** The first of the unknowns that say by how much. */
    static final int FIRST_LATE = 10;

    static final int UNKNOWNS = FIRST_LATE + LATE.length;

    /** Brightness and two colours at every sample. */
    static final int ROWS = 3 * SAMPLES;

    /** Beyond the samples, for the coarse colour. */
    private static final int PAD = 6;

    private static final int NODES = SAMPLES + 2 * PAD;

    private static final double RED = 0.299;

    private static final double GREEN = 0.587;

    private static final double BLUE = 0.114;

    private static final double BLUENESS = 0.564;

    private static final double REDNESS = 0.713;

    /** The first of the unknowns by which one light alone changes, and how much more redness changes by red then than blueness, and by blue. */
    private static final int STRAYS = 6;

    private static final double BY_RED = -REDNESS * (1 - RED) / (BLUENESS * RED);

    private static final double BY_BLUE = -REDNESS * BLUE / (BLUENESS * (1 - BLUE));

    private final double[] blur = new double[PAD + 1];

    private int widest;

    private double softness = 1;

    private double rootSoftness = 1;

    private double[] inside = new double[3];

    private double[] outside = new double[3];

    private final double[] written = new double[ROWS];

    private final double[][] by = new double[UNKNOWNS][ROWS];

    /** At each node the softened shapes, where its three lights stand in {@link Gamma}, and the light that comes from either side. */
    private final double[] shapes = new double[NODES * SoftEdge.SHAPES];

    /** Level and depth where light begins to grow faster. */
    private final double[][] late = new double[LATE.length][2 * NODES];

    private final double[][] stands = new double[3][NODES];

    private final double[] within = new double[NODES];

    private final double[] without = new double[NODES];

    /** The wood's linear colour and the ground's, strays and all. */
    private final double[][] tint = new double[2][3];

    /** Colours at the nodes, before they are made coarse. */
    private final double[] blueness = new double[NODES];

    private final double[] redness = new double[NODES];

    /** How the one colour changes with each unknown at the nodes, then the other, before they are made coarse. */
    private final double[][] fine = new double[2 * UNKNOWNS][NODES];

    EdgeModel() {
        coarse(0);
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
        double bright = RED * red + GREEN * green + BLUE * blue;
        to[0][k] = bright;
        to[1][k] = BLUENESS * (blue - bright);
        to[2][k] = REDNESS * (red - bright);
    }

    /** Linear light of a sample so split, all three colours together. */
    static double light(double[][] seen, int k) {
        double red = seen[0][k] + seen[2][k] / REDNESS;
        double blue = seen[0][k] + seen[1][k] / BLUENESS;
        double green = (seen[0][k] - RED * red - BLUE * blue) / GREEN;
        return Gamma.linear(red) + Gamma.linear(green) + Gamma.linear(blue);
    }

    /**
     * Says what stands on either side of the next lines.
     *
     * @param wood linear colour nearby, of sum 1
     * @param ground likewise
     * @param soft the lens, a standard deviation in pixels
     */
    void between(double[] wood, double[] ground, double soft) {
        inside = wood;
        outside = ground;
        softness = soft;
        rootSoftness = Math.sqrt(soft);
    }

    /** Brightness at each sample, then one colour at each, then the other. */
    double[] written() {
        return written;
    }

    /** How each number changes with each unknown, after {@link #derive}. */
    double[][] by() {
        return by;
    }

    /** Fills {@link #written}. */
    void predict(double[] state) {
        for (int side = 0; side < 2; side++) {
            double[] hue = side == 0 ? inside : outside;
            tint[side][0] = hue[0] * Math.exp(state[6 + 2 * side]);
            tint[side][1] = hue[1];
            tint[side][2] = hue[2] * Math.exp(state[7 + 2 * side]);
        }
        double perSoftness = 1 / softness;
        for (int j = PAD - widest; j < PAD + SAMPLES + widest; j++) {
            double u = ((j - PAD) * STEP - REACH - state[0]) * perSoftness;
            int at = j * SoftEdge.SHAPES;
            SoftEdge.fill(u, shapes, at);
            double level = shapes[at + SoftEdge.LEVEL];
            double depth = shapes[at + SoftEdge.DEPTH];
            double wood = state[1] * level
                    + state[2] * rootSoftness * shapes[at + SoftEdge.ROOT]
                    + state[3] * softness * depth;
            for (int i = 0; i < LATE.length; i++) {
                SoftEdge.fillDepth(u + LATE[i] * perSoftness, late[i], 2 * j);
                wood += state[FIRST_LATE + i] * softness * late[i][2 * j + 1];
            }
            // The depth on the other side is this side's and u more.
            double ground = state[4] * (1 - level) + state[5] * softness * (depth + u);
            within[j] = wood < 0 ? 0 : wood;
            without[j] = ground < 0 ? 0 : ground;
            double red = stand(0, j);
            double green = stand(1, j);
            double blue = stand(2, j);
            double bright = RED * red + GREEN * green + BLUE * blue;
            blueness[j] = BLUENESS * (blue - bright);
            redness[j] = REDNESS * (red - bright);
            if (j >= PAD && j < PAD + SAMPLES) {
                written[j - PAD] = bright;
            }
        }
        soften(blueness, written, SAMPLES);
        soften(redness, written, 2 * SAMPLES);
    }

    private double stand(int c, int j) {
        double at = Gamma.at(within[j] * tint[0][c] + without[j] * tint[1][c]);
        stands[c][j] = at;
        return Gamma.codeAt(at);
    }

    private void soften(double[] from, double[] to, int first) {
        if (widest == 0) {
            System.arraycopy(from, PAD, to, first, SAMPLES);
            return;
        }
        double b0 = blur[0];
        double b1 = blur[1];
        double b2 = blur[2];
        double b3 = blur[3];
        double b4 = blur[4];
        double b5 = blur[5];
        double b6 = blur[6];
        for (int k = 0; k < SAMPLES; k++) {
            to[first + k] = b0 * from[k + 6]
                    + b1 * (from[k + 5] + from[k + 7])
                    + (b2 * (from[k + 4] + from[k + 8]) + b3 * (from[k + 3] + from[k + 9]))
                    + (b4 * (from[k + 2] + from[k + 10]) + b5 * (from[k + 1] + from[k + 11]))
                    + b6 * (from[k] + from[k + 12]);
        }
    }

    /** How what is written changes with each unknown, right after it was predicted for them. */
    void derive(double[] state) {
        double perSoftness = 1 / softness;
        double rootFall = rootSoftness * perSoftness;
        for (int j = PAD - widest; j < PAD + SAMPLES + widest; j++) {
            int at = j * SoftEdge.SHAPES;
            double level = shapes[at + SoftEdge.LEVEL];
            double root = rootSoftness * shapes[at + SoftEdge.ROOT];
            double depth = softness * shapes[at + SoftEdge.DEPTH];
            double off = depth + (j - PAD) * STEP - REACH - state[0];
            double fall = perSoftness * shapes[at + SoftEdge.LEVEL_FALL];
            double wood = state[1] * fall + state[2] * rootFall * shapes[at + SoftEdge.ROOT_FALL] + state[3] * level;
            double ground = state[4] * fall + state[5] * (1 - level);
            for (int i = 0; i < LATE.length; i++) {
                wood += state[FIRST_LATE + i] * late[i][2 * j];
            }
            double red = Gamma.slopeAt(stands[0][j]);
            double green = Gamma.slopeAt(stands[1][j]);
            double blue = Gamma.slopeAt(stands[2][j]);
            double redIn = red * tint[0][0];
            double blueIn = blue * tint[0][2];
            double redOut = red * tint[1][0];
            double blueOut = blue * tint[1][2];
            double brightIn = RED * redIn + GREEN * green * tint[0][1] + BLUE * blueIn;
            double brightOut = RED * redOut + GREEN * green * tint[1][1] + BLUE * blueOut;
            if (j >= PAD && j < PAD + SAMPLES) {
                int k = j - PAD;
                by[0][k] = wood * brightIn - ground * brightOut;
                by[1][k] = level * brightIn;
                by[2][k] = root * brightIn;
                by[3][k] = depth * brightIn;
                by[4][k] = (1 - level) * brightOut;
                by[5][k] = off * brightOut;
                by[6][k] = RED * redIn * within[j];
                by[7][k] = BLUE * blueIn * within[j];
                by[8][k] = RED * redOut * without[j];
                by[9][k] = BLUE * blueOut * without[j];
                for (int i = 0; i < LATE.length; i++) {
                    by[FIRST_LATE + i][k] = softness * late[i][2 * j + 1] * brightIn;
                }
            }
            double in = BLUENESS * (blueIn - brightIn);
            double out = BLUENESS * (blueOut - brightOut);
            fine[0][j] = wood * in - ground * out;
            fine[1][j] = level * in;
            fine[2][j] = root * in;
            fine[3][j] = depth * in;
            fine[4][j] = (1 - level) * out;
            fine[5][j] = off * out;
            fine[6][j] = -BLUENESS * RED * redIn * within[j];
            fine[7][j] = BLUENESS * (1 - BLUE) * blueIn * within[j];
            fine[8][j] = -BLUENESS * RED * redOut * without[j];
            fine[9][j] = BLUENESS * (1 - BLUE) * blueOut * without[j];
            for (int i = 0; i < LATE.length; i++) {
                fine[FIRST_LATE + i][j] = softness * late[i][2 * j + 1] * in;
            }
            in = REDNESS * (redIn - brightIn);
            out = REDNESS * (redOut - brightOut);
            fine[UNKNOWNS][j] = wood * in - ground * out;
            fine[UNKNOWNS + 1][j] = level * in;
            fine[UNKNOWNS + 2][j] = root * in;
            fine[UNKNOWNS + 3][j] = depth * in;
            fine[UNKNOWNS + 4][j] = (1 - level) * out;
            fine[UNKNOWNS + 5][j] = off * out;
            for (int i = 0; i < LATE.length; i++) {
                fine[UNKNOWNS + FIRST_LATE + i][j] = softness * late[i][2 * j + 1] * in;
            }
        }
        for (int a = 0; a < UNKNOWNS; a++) {
            soften(fine[a], by[a], SAMPLES);
            if (a < STRAYS || a >= FIRST_LATE) {
                soften(fine[UNKNOWNS + a], by[a], 2 * SAMPLES);
            } else {
                // One light alone changes: both colours go by it.
                double ratio = (a - STRAYS) % 2 == 0 ? BY_RED : BY_BLUE;
                for (int k = 0; k < SAMPLES; k++) {
                    by[a][2 * SAMPLES + k] = ratio * by[a][SAMPLES + k];
                }
            }
        }
    }
}
