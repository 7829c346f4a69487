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
     * So deep under the edge, in samples, light may begin to grow faster, 1.5 and 3 pixels: a lamp that stands behind an edge does not reach the rim,
     * and lights the wood from some way within. What the lens makes of it stands so many samples farther out.
     */
    private static final int[] LATE = {3, 6};

    static final int LATE_COUNT = LATE.length;

    private static final int LATEST = 6;

    /** The first of the unknowns that say by how much. */
    static final int FIRST_LATE = 10;

    static final int UNKNOWNS = FIRST_LATE + LATE.length;

    /**
     * Brightness at every sample, a row that says nothing, then from here on both colours at each sample: what they change by begins so where the
     * compiler may take several numbers at once.
     */
    static final int FIRST_COLOUR = SAMPLES + 1;

    static final int ROWS = FIRST_COLOUR + 2 * SAMPLES;

    /** Beyond the samples, for the coarse colour. */
    private static final int PAD = 6;

    private static final int NODES = SAMPLES + 2 * PAD;

    private static final double RED = 0.299;

    private static final double GREEN = 0.587;

    private static final double BLUE = 0.114;

    private static final double BLUENESS = 0.564;

    private static final double REDNESS = 0.713;

    private final double[] blur = new double[PAD + 1];

    private int widest;

    private double softness = 1;

    private double rootSoftness = 1;

    private double[] inside = new double[3];

    private double[] outside = new double[3];

    private final double[] written = new double[ROWS];

    private final double[] by = new double[ROWS * UNKNOWNS];

    /** At each node the softened shapes, where its three lights stand in {@link Gamma}, and the light that comes from either side. */
    private final double[] shapes = new double[(NODES + LATEST) * SoftEdge.SHAPES];

    private final double[] stands = new double[3 * NODES];

    private final double[] within = new double[NODES];

    private final double[] without = new double[NODES];

    /** The wood's linear colour and the ground's, strays and all. */
    private final double[][] tint = new double[2][3];

    /** Both colours at each node, before they are made coarse, and how they change with each unknown. */
    private final double[] fine = new double[NODES * 2];

    private final double[] fineBy = new double[NODES * 2 * UNKNOWNS];

    /** How deep under the edge light may begin to grow faster, pixels. */
    static double lateDepth(int i) {
        return LATE[i] * STEP;
    }

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

    /** Brightness at each sample, and from {@link #FIRST_COLOUR} on the one colour and the other at each. */
    double[] written() {
        return written;
    }

    /** How each number changes with each unknown, number by number, after {@link #derive}. */
    double[] by() {
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
        int end = PAD + SAMPLES + widest;
        for (int j = PAD - widest; j < end; j++) {
            SoftEdge.fill(((j - PAD) * STEP - REACH - state[0]) * perSoftness, shapes, j * SoftEdge.SHAPES);
        }
        for (int j = end; j < end + LATEST; j++) {
            SoftEdge.fillDepth(((j - PAD) * STEP - REACH - state[0]) * perSoftness, shapes, j * SoftEdge.SHAPES);
        }
        for (int j = PAD - widest; j < end; j++) {
            double u = ((j - PAD) * STEP - REACH - state[0]) * perSoftness;
            int at = j * SoftEdge.SHAPES;
            double level = shapes[at + SoftEdge.LEVEL];
            double depth = shapes[at + SoftEdge.DEPTH];
            double wood = state[1] * level
                    + state[2] * rootSoftness * shapes[at + SoftEdge.ROOT]
                    + state[3] * softness * depth;
            for (int i = 0; i < LATE.length; i++) {
                wood += state[FIRST_LATE + i] * softness * shapes[at + LATE[i] * SoftEdge.SHAPES + SoftEdge.DEPTH];
            }
            // The depth on the other side is this side's and u more.
            double ground = state[4] * (1 - level) + state[5] * softness * (depth + u);
            within[j] = wood < 0 ? 0 : wood;
            without[j] = ground < 0 ? 0 : ground;
            for (int c = 0; c < 3; c++) {
                stands[3 * j + c] = within[j] * tint[0][c] + without[j] * tint[1][c];
            }
        }
        Gamma.at(stands, 3 * (PAD - widest), 3 * end);
        for (int j = PAD - widest; j < end; j++) {
            double red = Gamma.codeAt(stands[3 * j]);
            double green = Gamma.codeAt(stands[3 * j + 1]);
            double blue = Gamma.codeAt(stands[3 * j + 2]);
            double bright = RED * red + GREEN * green + BLUE * blue;
            fine[2 * j] = BLUENESS * (blue - bright);
            fine[2 * j + 1] = REDNESS * (red - bright);
            if (j >= PAD && j < PAD + SAMPLES) {
                written[j - PAD] = bright;
            }
        }
        soften(fine, written, 2);
    }

    /**
     * Makes colours coarse, or what they change by: so many numbers of each node, those of one node together. So it is one long loop, in which the
     * compiler takes several numbers at once where a node's are whole vectors.
     */
    private void soften(double[] from, double[] to, int wide) {
        double b0 = blur[0];
        double b1 = blur[1];
        double b2 = blur[2];
        double b3 = blur[3];
        double b4 = blur[4];
        double b5 = blur[5];
        double b6 = blur[6];
        int first = FIRST_COLOUR * (wide / 2);
        for (int i = 0; i < SAMPLES * wide; i++) {
            to[first + i] = b0 * from[i + 6 * wide]
                    + b1 * (from[i + 5 * wide] + from[i + 7 * wide])
                    + (b2 * (from[i + 4 * wide] + from[i + 8 * wide]) + b3 * (from[i + 3 * wide] + from[i + 9 * wide]))
                    + (b4 * (from[i + 2 * wide] + from[i + 10 * wide]) + b5 * (from[i + wide] + from[i + 11 * wide]))
                    + b6 * (from[i] + from[i + 12 * wide]);
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
            int firstAt = at + LATE[0] * SoftEdge.SHAPES;
            int secondAt = at + LATE[1] * SoftEdge.SHAPES;
            double first = softness * shapes[firstAt + SoftEdge.DEPTH];
            double second = softness * shapes[secondAt + SoftEdge.DEPTH];
            wood += state[FIRST_LATE] * shapes[firstAt + SoftEdge.LEVEL]
                    + state[FIRST_LATE + 1] * shapes[secondAt + SoftEdge.LEVEL];
            double red = Gamma.slopeAt(stands[3 * j]);
            double green = Gamma.slopeAt(stands[3 * j + 1]);
            double blue = Gamma.slopeAt(stands[3 * j + 2]);
            double redIn = red * tint[0][0];
            double blueIn = blue * tint[0][2];
            double redOut = red * tint[1][0];
            double blueOut = blue * tint[1][2];
            double brightIn = RED * redIn + GREEN * green * tint[0][1] + BLUE * blueIn;
            double brightOut = RED * redOut + GREEN * green * tint[1][1] + BLUE * blueOut;
            if (j >= PAD && j < PAD + SAMPLES) {
                int k = (j - PAD) * UNKNOWNS;
                by[k] = wood * brightIn - ground * brightOut;
                by[k + 1] = level * brightIn;
                by[k + 2] = root * brightIn;
                by[k + 3] = depth * brightIn;
                by[k + 4] = (1 - level) * brightOut;
                by[k + 5] = off * brightOut;
                by[k + 6] = RED * redIn * within[j];
                by[k + 7] = BLUE * blueIn * within[j];
                by[k + 8] = RED * redOut * without[j];
                by[k + 9] = BLUE * blueOut * without[j];
                by[k + 10] = first * brightIn;
                by[k + 11] = second * brightIn;
            }
            int to = j * 2 * UNKNOWNS;
            double in = BLUENESS * (blueIn - brightIn);
            double out = BLUENESS * (blueOut - brightOut);
            fineBy[to] = wood * in - ground * out;
            fineBy[to + 1] = level * in;
            fineBy[to + 2] = root * in;
            fineBy[to + 3] = depth * in;
            fineBy[to + 4] = (1 - level) * out;
            fineBy[to + 5] = off * out;
            fineBy[to + 6] = -BLUENESS * RED * redIn * within[j];
            fineBy[to + 7] = BLUENESS * (1 - BLUE) * blueIn * within[j];
            fineBy[to + 8] = -BLUENESS * RED * redOut * without[j];
            fineBy[to + 9] = BLUENESS * (1 - BLUE) * blueOut * without[j];
            fineBy[to + 10] = first * in;
            fineBy[to + 11] = second * in;
            in = REDNESS * (redIn - brightIn);
            out = REDNESS * (redOut - brightOut);
            fineBy[to + 12] = wood * in - ground * out;
            fineBy[to + 13] = level * in;
            fineBy[to + 14] = root * in;
            fineBy[to + 15] = depth * in;
            fineBy[to + 16] = (1 - level) * out;
            fineBy[to + 17] = off * out;
            fineBy[to + 18] = REDNESS * (1 - RED) * redIn * within[j];
            fineBy[to + 19] = -REDNESS * BLUE * blueIn * within[j];
            fineBy[to + 20] = REDNESS * (1 - RED) * redOut * without[j];
            fineBy[to + 21] = -REDNESS * BLUE * blueOut * without[j];
            fineBy[to + 22] = first * in;
            fineBy[to + 23] = second * in;
        }
        soften(fineBy, by, 2 * UNKNOWNS);
    }
}
