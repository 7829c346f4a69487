package turnalike.photo;

import java.util.ArrayList;
import java.util.List;

/**
 * What the rims of a piece's shoulders, seen across its near half, say of lean and focal length: one guess with its spread. {@code docs/photo.md}
 * derives it.
 *
 * @param count how many rims it is from; 0 where nothing is said
 * @param logFocal the guess of the log of the focal length over what was thought of it
 * @param tilt the guess of the lean, radians
 * @param weight of both: the inverse of their covariance, focal first
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Rings(int count, double logFocal, double tilt, double[][] weight) {
    static final Rings NONE = new Rings(0, 0, 0, new double[2][2]);

    /** A rim alone may be a shadow's border; two that agree seldom are. */
    private static final int LEAST = 2;

    /** How far a view may be wrong: its lean, radians, and the log of its focal length, by so much and so many times what it is uncertain by. */
    private static final double LEAN = Math.toRadians(1.5);

    private static final double MOST_LEAN = Math.toRadians(6);

    private static final double FOCAL = 0.02;

    private static final double MOST_FOCAL = 0.3;

    private static final double TIMES = 2.5;

    /** The outline that rims are looked for on has a step to a pixel, but no more than so many. */
    private static final int STEPS = 900;

    /** Below this, light hardly leaps along a rim. This and the next four are by trying. */
    private static final double PLAIN = 0.4;

    /** How far below a rim's best place tells nothing any more, and what a standard deviation from what was known before costs. */
    private static final double TELLING = 0.3;

    private static final double KNOWN = 0.02;

    /** What the lean of all rims may be off by in common, radians, and what that of a pair may be: the more pairs agree, the less. */
    private static final double COMMON = Math.toRadians(0.15);

    private static final double PAIR = Math.toRadians(1);

    /** A rim that strays by so many standard deviations, squared, counts half as much in strays, and ever less beyond. */
    private static final double SOFT = 4;

    /** Reads the rims in a view that is about right. */
    static Rings of(Picture picture, Lens lens, ViewFit.View view, KnownSquares squares) throws Unsure {
        List<Ring> rings = read(picture, lens, view, squares);
        double[] about = about(rings, view);
        List<Ring> plain = new ArrayList<>();
        List<Ring.Peak> peaks = new ArrayList<>();
        for (Ring ring : rings) {
            Ring.Peak peak = ring.peak(error(ring, about));
            if (peak.height() > PLAIN) {
                plain.add(ring);
                peaks.add(peak);
            }
        }
        return plain.size() < LEAST ? NONE : agreed(plain, peaks, view);
    }

    private static List<Ring> read(Picture picture, Lens lens, ViewFit.View view, KnownSquares squares) throws Unsure {
        Sight sight = view.contour().sight();
        double pixels = sight.focal() * (view.end().apex() - view.start().apex());
        // An outline has steps of half a millimetre: of a piece that is so long they are what is wanted.
        double steps = Math.max(1, Math.min(STEPS, pixels));
        RoundOutline outline = RoundOutline.of(view.contour(), view.start(), view.end(), steps / 2);
        RingLight light = new RingLight(picture, lens, sight);
        List<Ring> rings = new ArrayList<>();
        for (Shoulders.Rim rim : Shoulders.of(outline)) {
            if (squares.holds(sight, rim.place() / (1 - rim.radius() * rim.radius()))) {
                continue;
            }
            double most = lean(view) + focal(view) * Math.abs(rim.place());
            rings.add(light.read(rim, Math.max(1, pixels / steps), most));
        }
        return rings;
    }

    private static double lean(ViewFit.View view) {
        return Math.min(MOST_LEAN, LEAN + TIMES * view.tiltUncertainty());
    }

    private static double focal(ViewFit.View view) {
        return Math.min(MOST_FOCAL, FOCAL + TIMES * view.focalUncertainty());
    }

    /** What a ring sees of a view whose focal length and lean are wrong by so much. */
    private static double error(Ring ring, double[] wrong) {
        return ring.place() * wrong[0] + wrong[1];
    }

    /** Where most rims leap together: what focal length and lean are about wrong by. */
    private static double[] about(List<Ring> rings, ViewFit.View view) {
        double[] least =
                rings.stream().mapToDouble(ring -> ring.highest() - TELLING).toArray();
        double[] best = new double[2];
        double most = Double.NEGATIVE_INFINITY;
        double lean = lean(view);
        double focal = focal(view);
        int focals = 10;
        int leans = (int) Math.ceil(lean / Math.toRadians(0.1));
        for (int i = -focals; i <= focals; i++) {
            for (int j = -leans; j <= leans; j++) {
                double[] wrong = {focal * i / focals, lean * j / leans};
                double sum = -KNOWN * TIMES * TIMES * (square(wrong[0] / focal) + square(wrong[1] / lean));
                for (int k = 0; k < least.length; k++) {
                    Ring ring = rings.get(k);
                    sum += Math.max(0, ring.value(error(ring, wrong)) - least[k]);
                }
                if (sum > most) {
                    most = sum;
                    best = wrong;
                }
            }
        }
        return best;
    }

    /** The guess that the rims agree on; one that goes its own way, as a shadow's border does, counts little. */
    private static Rings agreed(List<Ring> rings, List<Ring.Peak> peaks, ViewFit.View view) {
        double[] wrong = new double[2];
        double[][] rows = new double[2][3];
        double strays = 0;
        for (int round = 0; round < 6; round++) {
            rows = new double[2][3];
            strays = 0;
            for (int k = 0; k < peaks.size(); k++) {
                Ring.Peak peak = peaks.get(k);
                double e = rings.get(k).place();
                double off = round == 0 ? 0 : peak.error() - error(rings.get(k), wrong);
                double apart = square(off / peak.uncertainty());
                double counts = 1 / square(peak.uncertainty() * (1 + apart / SOFT));
                rows[0][0] += counts * e * e;
                rows[0][1] += counts * e;
                rows[1][1] += counts;
                rows[0][2] += counts * e * peak.error();
                rows[1][2] += counts * peak.error();
                strays += SOFT * Math.log1p(apart / SOFT);
            }
            rows[1][0] = rows[0][1];
            wrong = LeastSquares.solve(held(rows, 1 / square(view.focalUncertainty())));
        }
        // Two rims agree in some lean and focal length whatever they say: one far from what was thought of it counts as
        // straying.
        strays += square(wrong[0] / view.focalUncertainty());
        double wide = Math.max(1, strays / (peaks.size() - 1));
        double pairs = peaks.size() * (peaks.size() - 1) / 2.0;
        double more = square(COMMON) + square(PAIR / pairs);
        return new Rings(peaks.size(), view.logFocal() + wrong[0], view.tilt() + wrong[1], widened(rows, wide, more));
    }

    /** The same, and the focal length as it is where rims near to one another leave it open. */
    private static double[][] held(double[][] rows, double weight) {
        return new double[][] {{rows[0][0] + weight, rows[0][1], rows[0][2]}, rows[1].clone()};
    }

    /** The weight of a guess whose variances are so many times as large, and the lean's by so much more. */
    private static double[][] widened(double[][] rows, double times, double lean) {
        double f = rows[0][0] / times;
        double both = rows[0][1] / times;
        double t = rows[1][1] / times;
        // The inverse of a sum in one corner, without that of the weight itself, which there may be none of.
        double less = lean / (1 + lean * t);
        return new double[][] {
            {f - less * both * both, both - less * both * t}, {both - less * both * t, t - less * t * t}
        };
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

    /** Adds the guess to the normal equations of the step from a view to a better one, focal length first. */
    void add(double[][] rows, double focal, double lean) {
        for (int i = 0; i < 2; i++) {
            rows[i][0] += weight[i][0];
            rows[i][1] += weight[i][1];
            rows[i][2] += weight[i][0] * (logFocal - focal) + weight[i][1] * (tilt - lean);
        }
    }
}
