package turnalike.photo;

/**
 * What light to expect close under an edge, from the light farther within. How bright a dull round body is hangs on which way its surface faces: in the
 * section across the edge, at the angle a from the rim, a lamp far off gives it p cos a + q sin a, where that is not below nothing (Lambert's law),
 * and what comes from all round a nearly even share. So light is a smooth sum of few shapes over the sine of a, bent once more where a lamp that stands behind the edge
 * first reaches. In the few pixels in which the edge is looked for that cannot be told from an edge somewhat farther in or out; over most of
 * the radius it can.
 */
final class RimLight {
    /** How many numbers tell it: the level at the rim, what comes by root of the depth and by depth, and by how much faster from each late depth on. */
    static final int NUMBERS = 3 + EdgeModel.LATE_COUNT;

    private static final double[] UNTOLD = {};

    /** At so many places it is asked how bright the body is. */
    private static final int PLACES = 18;

    /** So deep, in pixels and in softnesses of the lens more, nothing of the edge mixes in. */
    private static final double CLEAR = 1.6;

    private static final double SOFTNESSES = 1.4;

    /** Sines of the angle from the rim: up to where it is asked, and from where at the latest, lest too little be left. */
    private static final double FARTHEST = 0.8;

    private static final double LATEST_START = 0.55;

    /** Nearer to the axis, in pixels, too few places are left too. */
    private static final double LEAST_RADIUS = 14;

    /**
     * How square to the axis an edge must look outward to be one of a round section, as a cosine, and below what it is an end or a shoulder: behind
     * that lies a surface that faces one way.
     */
    private static final double ROUND = 0.35;

    /** A bend is believed if it leaves less than this of the squares, and by how much of the brightest light a straight course strays at least. */
    private static final double BETTER = 0.6;

    private static final double STRAYS = 0.01;

    private static final double BEND_STEP = 0.04;

    /** A rim darker than this part of the brightest light is no more than guessed at. */
    private static final double DARK = 0.05;

    /** At so many depths, half a pixel apart, the shapes of {@link EdgeModel} are fitted to what is expected. */
    private static final int FITTED = 13;

    private static final double APART = 0.5;

    private static final double[][] SHAPES = shapes();

    private final Picture picture;

    private final EdgeLines lines;

    private final Sight.AxisLine axis;

    private final double clear;

    private final float[] mixed = new float[3];

    /**
     * For one thread.
     *
     * @param picture the picture
     * @param lines across its contour
     * @param axis the piece's, about
     * @param softness of the lens, a standard deviation in pixels
     */
    RimLight(Picture picture, EdgeLines lines, Sight.AxisLine axis, double softness) {
        this.picture = picture;
        this.lines = lines;
        this.axis = axis;
        clear = CLEAR + SOFTNESSES * softness;
    }

    /** What to expect at a point of the contour, {@link #NUMBERS} numbers; empty where nothing can be told. */
    double[] at(int i) {
        double cos = Math.cos(axis.angle());
        double sin = Math.sin(axis.angle());
        double[] normal = lines.normal(i);
        double square = Math.abs(normal[1] * cos - normal[0] * sin);
        if (square < ROUND) {
            double[] even = new double[NUMBERS];
            even[0] = light(i, clear);
            return even;
        }
        double off = Math.abs((lines.y()[i] - axis.y()) * cos - (lines.x()[i] - axis.x()) * sin);
        // Across an edge that runs aslant the section is curved the less.
        double radius = off / square;
        if (off < LEAST_RADIUS || sine(clear, radius) > LATEST_START) {
            return UNTOLD;
        }
        double from = sine(clear, radius);
        double[] sines = new double[PLACES];
        double[] light = new double[PLACES];
        for (int k = 0; k < PLACES; k++) {
            sines[k] = from + (FARTHEST - from) * k / (PLACES - 1);
            light[k] = light(i, radius * (1 - RimShares.cosine(sines[k])));
        }
        return told(sines, light, radius);
    }

    /** Of the angle from the rim at a depth under it. */
    private static double sine(double depth, double radius) {
        double cosine = Math.max(0, 1 - depth / radius);
        return Math.sqrt(1 - cosine * cosine);
    }

    /** The light of all three colours, the mean of some pixels along the edge. */
    private double light(int i, double depth) {
        double[] normal = lines.normal(i);
        double sum = 0;
        for (int side = -2; side <= 2; side++) {
            double x = lines.x()[i] - depth * normal[0] + 1.5 * side * normal[1];
            double y = lines.y()[i] - depth * normal[1] - 1.5 * side * normal[0];
            picture.linearBetween(x, y, mixed);
            sum += mixed[0] + mixed[1] + mixed[2];
        }
        return sum / 5;
    }

    /**
     * What light to expect, from light seen farther within.
     *
     * @param sines of the angle from the rim, rising
     * @param light there
     * @param radius of the section, pixels
     * @return {@link #NUMBERS} numbers in the light's unit and pixels, or none
     */
    static double[] told(double[] sines, double[] light, double radius) {
        double brightest = 0;
        for (double each : light) {
            brightest = Math.max(brightest, each);
        }
        double noise = STRAYS * STRAYS * brightest * brightest;
        RimShares shares = new RimShares(sines, light);
        double bend = RimShares.NO_BEND;
        double[] best = shares.fitted(bend);
        double straight = shares.left(best, noise, Double.POSITIVE_INFINITY);
        double least = BETTER * straight;
        for (double at = sines[0] + BEND_STEP; at < FARTHEST - 2 * BEND_STEP; at += BEND_STEP) {
            double[] bent = shares.fitted(at);
            if (bent[2] > 0) {
                double rest = shares.left(bent, noise, least);
                if (rest < least) {
                    best = bent;
                    least = rest;
                    bend = at;
                }
            }
        }
        double[] numbers = new double[NUMBERS];
        for (int k = 0; k < FITTED; k++) {
            double value = RimShares.value(best, sine(APART * k, radius), bend);
            for (int a = 0; a < NUMBERS; a++) {
                numbers[a] += SHAPES[a][k] * value;
            }
        }
        return numbers[0] > DARK * brightest ? numbers : UNTOLD;
    }

    /** What gives {@link EdgeModel}'s numbers out of light at {@link #FITTED} depths, by least squares. */
    private static double[][] shapes() {
        double[][] shapes = new double[NUMBERS][FITTED];
        for (int k = 0; k < FITTED; k++) {
            double[][] rows = new double[NUMBERS][NUMBERS + 1];
            for (int j = 0; j < FITTED; j++) {
                double[] terms = terms(APART * j);
                for (int a = 0; a < NUMBERS; a++) {
                    for (int b = 0; b < NUMBERS; b++) {
                        rows[a][b] += terms[a] * terms[b];
                    }
                    rows[a][NUMBERS] += j == k ? terms[a] : 0;
                }
            }
            for (int a = 0; a < NUMBERS; a++) {
                rows[a][a] += 1e-4;
            }
            double[] solved = LeastSquares.solve(rows);
            for (int a = 0; a < NUMBERS; a++) {
                shapes[a][k] = solved[a];
            }
        }
        return shapes;
    }

    private static double[] terms(double depth) {
        double[] terms = new double[NUMBERS];
        terms[0] = 1;
        terms[1] = Math.sqrt(depth);
        terms[2] = depth;
        for (int i = 0; i < EdgeModel.LATE_COUNT; i++) {
            terms[3 + i] = Math.max(0, depth - EdgeModel.lateDepth(i));
        }
        return terms;
    }
}
