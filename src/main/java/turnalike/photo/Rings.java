package turnalike.photo;

import java.util.List;

/**
 * What the rims of a piece's shoulders, seen across its near half, and its straight stretches say of lean and focal length: one guess with its spread.
 * {@code docs/photo.md} derives it.
 *
 * @param count how many rims and straight stretches it is from; 0 where nothing is said
 * @param logFocal the guess of the log of the focal length over what was thought of it
 * @param tilt the guess of the lean, radians
 * @param weight of both: the inverse of their covariance, focal first
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Rings(int count, double logFocal, double tilt, double[][] weight) {
    static final Rings NONE = new Rings(0, 0, 0, new double[2][2]);

    /** How far a view may be wrong: its lean, radians, and the log of its focal length, by so much and so many times what it is uncertain by. */
    private static final double LEAN = Math.toRadians(1.5);

    private static final double MOST_LEAN = Math.toRadians(6);

    private static final double FOCAL = 0.02;

    private static final double MOST_FOCAL = 0.3;

    private static final double TIMES = 2.5;

    /** The outline that rims are looked for on has a step to a pixel, but no more than so many. */
    private static final int STEPS = 900;

    /** Below this, light hardly leaps along a rim; by trying. */
    private static final double PLAIN = 0.4;

    /** What the lean of all rims may be off by in common, radians: places and radii are read in a view that is about right. */
    private static final double COMMON = Math.toRadians(0.3);

    /** Where rims leave so much of the variance, they say nothing; that counts so much of what was known, so that it can be reckoned with. */
    private static final double OPEN = 0.95;

    private static final double HARDLY = 1e-3;

    /**
     * By so much more, radians, the lean is taken to be unsure that was known before, while rims are asked: which of several leaps of light is a rim's must not
     * hang on ends that were misread.
     */
    private static final double DOUBTED = Math.toRadians(1.15);

    /** Leans and focal lengths are looked at up to so many standard deviations of what was known before, at so many steps to either side. */
    private static final double LEANS_FAR = 4;

    private static final int LEANS = 80;

    private static final double FOCALS_FAR = 3;

    private static final int FOCALS = 12;

    /**
     * Reads the rims.
     *
     * @param at a view that is about right, for where the rims are
     * @param before what was known of lean and focal length without them
     */
    static Rings of(Picture picture, Lens lens, ViewFit.View at, ViewFit.View before, KnownSquares squares)
            throws Unsure {
        RoundOutline outline = outline(at);
        List<Ring> plain = read(picture, lens, at, before, squares, outline).stream()
                .filter(ring -> ring.highest() > PLAIN)
                .toList();
        List<StraightRun> runs = StraightRun.of(outline, at.contour().sight(), squares);
        ViewFit.View doubted =
                before.withUncertainty(before.focalUncertainty(), Math.hypot(DOUBTED, before.tiltUncertainty()));
        return plain.isEmpty() && runs.isEmpty() ? NONE : told(plain, runs, at, doubted);
    }

    /** An outline has steps of half a millimetre: of a piece that is so long they are what is wanted. */
    private static RoundOutline outline(ViewFit.View view) throws Unsure {
        return RoundOutline.of(view.contour(), view.start(), view.end(), steps(view) / 2);
    }

    private static double steps(ViewFit.View view) {
        return Math.max(1, Math.min(STEPS, pixels(view)));
    }

    private static double pixels(ViewFit.View view) {
        return view.contour().sight().focal()
                * (view.end().apex() - view.start().apex());
    }

    private static List<Ring> read(
            Picture picture,
            Lens lens,
            ViewFit.View view,
            ViewFit.View before,
            KnownSquares squares,
            RoundOutline outline) {
        Sight sight = view.contour().sight();
        RingLight light = new RingLight(picture, lens, sight);
        List<Shoulders.Rim> rims = Shoulders.of(outline).stream()
                .filter(rim -> !squares.holds(sight, rim.place() / (1 - rim.radius() * rim.radius())))
                .toList();
        Ring[] rings = new Ring[rims.size()];
        Cores.each(rings.length, k -> {
            Shoulders.Rim rim = rims.get(k);
            double most = lean(before) + focal(before) * Math.abs(rim.place());
            rings[k] = light.read(rim, Math.max(1, pixels(view) / steps(view)), most);
        });
        return List.of(rings);
    }

    private static double lean(ViewFit.View view) {
        return Math.min(MOST_LEAN, LEAN + TIMES * view.tiltUncertainty());
    }

    private static double focal(ViewFit.View view) {
        return Math.min(MOST_FOCAL, FOCAL + TIMES * view.focalUncertainty());
    }

    /**
     * What the rims add to what was known: the mean and the spread of all views, each as likely as all rims and what was known before make it, less what was
     * known. Whatever a rim says, one leap of light or several, counts as it is.
     */
    private static Rings told(List<Ring> rings, List<StraightRun> runs, ViewFit.View at, ViewFit.View before) {
        List<double[]> tables = rings.stream().map(Ring::likely).toList();
        double[] sums = new double[6];
        double most = Double.NEGATIVE_INFINITY;
        double[][] logs = new double[2 * FOCALS + 1][2 * LEANS + 1];
        for (int i = -FOCALS; i <= FOCALS; i++) {
            for (int j = -LEANS; j <= LEANS; j++) {
                double f = FOCALS_FAR * i / FOCALS;
                double t = LEANS_FAR * j / LEANS;
                double focal = before.logFocal() + f * before.focalUncertainty() - at.logFocal();
                double lean = before.tilt() + t * before.tiltUncertainty() - at.tilt();
                double log = -(f * f + t * t) / 2;
                for (int k = 0; k < tables.size(); k++) {
                    Ring ring = rings.get(k);
                    log += Math.log(ring.likely(tables.get(k), ring.place() * focal + lean));
                }
                for (StraightRun run : runs) {
                    log += Math.log(run.likely(lean));
                }
                logs[i + FOCALS][j + LEANS] = log;
                most = Math.max(most, log);
            }
        }
        for (int i = -FOCALS; i <= FOCALS; i++) {
            for (int j = -LEANS; j <= LEANS; j++) {
                double weight = Math.exp(logs[i + FOCALS][j + LEANS] - most);
                double f = FOCALS_FAR * i / FOCALS;
                double t = LEANS_FAR * j / LEANS;
                sums[0] += weight;
                sums[1] += weight * f;
                sums[2] += weight * t;
                sums[3] += weight * f * f;
                sums[4] += weight * f * t;
                sums[5] += weight * t * t;
            }
        }
        double focal = sums[1] / sums[0];
        double lean = sums[2] / sums[0];
        double common = square(COMMON / before.tiltUncertainty());
        return less(rings.size() + runs.size(), before, new double[] {focal, lean}, new double[] {
            sums[3] / sums[0] - focal * focal,
            sums[4] / sums[0] - focal * lean,
            sums[5] / sums[0] - lean * lean + common
        });
    }

    /**
     * A guess that together with what was known before gives such a mean and such a spread. Both are in standard deviations of what was known, from its
     * mean, focal length first: so along either of the spread's own two directions it is a plain difference of weights. Along one that rims leave as open
     * as it was they say nothing.
     *
     * @param mean of focal length and lean
     * @param spread the focal length's variance, what both vary together, the lean's variance
     */
    private static Rings less(int count, ViewFit.View before, double[] mean, double[] spread) {
        double turn = 0.5 * Math.atan2(2 * spread[1], spread[0] - spread[2]);
        double half = (spread[0] + spread[2]) / 2;
        double apart = Math.hypot((spread[0] - spread[2]) / 2, spread[1]);
        double[] guess = new double[2];
        double[][] weight = new double[2][2];
        for (int k = 0; k < 2; k++) {
            double[] way = k == 0
                    ? new double[] {Math.cos(turn), Math.sin(turn)}
                    : new double[] {-Math.sin(turn), Math.cos(turn)};
            double left = k == 0 ? half + apart : half - apart;
            boolean told = left < OPEN;
            double at = (way[0] * mean[0] + way[1] * mean[1]) / (told ? 1 - left : 1);
            double counts = told ? 1 / left - 1 : HARDLY;
            for (int i = 0; i < 2; i++) {
                guess[i] += way[i] * at;
                for (int j = 0; j < 2; j++) {
                    weight[i][j] += counts * way[i] * way[j];
                }
            }
        }
        double f = before.focalUncertainty();
        double t = before.tiltUncertainty();
        return new Rings(count, before.logFocal() + f * guess[0], before.tilt() + t * guess[1], new double[][] {
            {weight[0][0] / f / f, weight[0][1] / f / t}, {weight[1][0] / f / t, weight[1][1] / t / t}
        });
    }

    private static double square(double value) {
        return value * value;
    }

    /** How far a view strays from the guess, in standard deviations, squared. */
    double strays(double focal, double lean) {
        double f = focal - logFocal;
        double t = lean - tilt;
        return weight[0][0] * f * f + 2 * weight[0][1] * f * t + weight[1][1] * t * t;
    }
}
