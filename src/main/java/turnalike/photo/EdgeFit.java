package turnalike.photo;

import java.util.Arrays;

/**
 * Puts each point of the contour where the light's step across it is best explained: piece and ground each with a slope of their own, between
 * them a step as soft as the picture is. A round piece grows darker or lighter towards its edge, so that the half level alone would stand
 * some tenths of a pixel off.
 */
final class EdgeFit {
    private static final double REACH = 5.5;

    private static final double STEP = 0.5;

    private static final int SAMPLES = (int) (2 * REACH / STEP) + 1;

    private static final double[] SOFTNESSES = {0.45, 0.6, 0.8, 1.05, 1.4, 1.9, 2.6, 3.6};

    private final LocalColours colours;

    private final double[] x;

    private final double[] y;

    private final float[] colour = new float[3];

    private final float[] mixed = new float[3];

    private final float[][] along = new float[SAMPLES][3];

    private final double[] light = new double[SAMPLES];

    /** The least sum of squares of the last fit, and the step it found. */
    private double error;

    private double step;

    /** A closed contour, points about a pixel apart. */
    EdgeFit(LocalColours colours, double[] x, double[] y) {
        this.colours = colours;
        this.x = x;
        this.y = y;
    }

    /**
     * The contour after fitting.
     *
     * @param x of its points
     * @param y of them
     * @param softness of the edges, as a standard deviation in pixels
     * @param contrast the middle step from ground to piece, where 1 is the whole of it
     */
    record Fitted(double[] x, double[] y, double softness, double contrast) {}

    /** Twice: the first brings the windows in place for the second. */
    Fitted fit() {
        double softness = softness();
        Fitted once = moved(softness);
        EdgeFit again = new EdgeFit(colours, once.x(), once.y());
        return again.moved(again.softness());
    }

    private Fitted moved(double softness) {
        int n = x.length;
        double[][] normals = new double[n][];
        double[] offsets = new double[n];
        double[] contrasts = new double[n];
        for (int i = 0; i < n; i++) {
            normals[i] = normal(i);
            sample(i, normals[i]);
            double offset = best(softness);
            contrasts[i] = step;
            offsets[i] = step > 0.25 && Math.abs(offset) < 1.9 ? offset : Double.NaN;
        }
        double[] fittedX = x.clone();
        double[] fittedY = y.clone();
        for (int i = 0; i < n; i++) {
            double usual = usual(offsets, i);
            // A point that goes its own way has met a knot, a shaving or the grain.
            double offset = Math.abs(offsets[i] - usual) < 0.6 ? offsets[i] : usual;
            fittedX[i] += offset * normals[i][0];
            fittedY[i] += offset * normals[i][1];
        }
        Arrays.sort(contrasts);
        return new Fitted(fittedX, fittedY, softness, n == 0 ? 0 : contrasts[n / 2]);
    }

    /** The middle one of a point's and its neighbours' offsets; 0 where most have none. */
    private static double usual(double[] offsets, int i) {
        int n = offsets.length;
        double[] near = new double[7];
        int count = 0;
        for (int k = -3; k <= 3; k++) {
            double offset = offsets[Math.floorMod(i + k, n)];
            if (!Double.isNaN(offset)) {
                near[count++] = offset;
            }
        }
        if (count < 3) {
            return 0;
        }
        Arrays.sort(near, 0, count);
        return (near[(count - 1) / 2] + near[count / 2]) / 2;
    }

    private double softness() {
        double[] sums = new double[SOFTNESSES.length];
        int every = Math.max(1, x.length / 300);
        for (int i = 0; i < x.length; i += every) {
            sample(i, normal(i));
            double[] errors = new double[SOFTNESSES.length];
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < SOFTNESSES.length; k++) {
                best(SOFTNESSES[k]);
                errors[k] = error;
                least = Math.min(least, error);
            }
            // By its logarithm, so that few odd places do not outweigh all others.
            for (int k = 0; k < SOFTNESSES.length; k++) {
                sums[k] += Math.log((errors[k] + 1e-4) / (least + 1e-4));
            }
        }
        int best = 0;
        for (int k = 1; k < SOFTNESSES.length; k++) {
            if (sums[k] < sums[best]) {
                best = k;
            }
        }
        return SOFTNESSES[best];
    }

    /** Outward, from the contour some points to both sides; the walk keeps the piece on one side all along. */
    private double[] normal(int i) {
        int n = x.length;
        double tx = 0;
        double ty = 0;
        for (int k = 1; k <= 4; k++) {
            tx += x[(i + k) % n] - x[(i - k + n) % n];
            ty += y[(i + k) % n] - y[(i - k + n) % n];
        }
        double size = Math.max(1e-12, Math.hypot(tx, ty));
        return new double[] {ty / size, -tx / size};
    }

    /** The light along the normal, on the scale from the colour close outside, 0, to that close inside, 1. */
    private void sample(int i, double[] normal) {
        double[] inside = new double[3];
        double[] outside = new double[3];
        for (int k = 0; k < SAMPLES; k++) {
            double d = -REACH + k * STEP;
            double px = x[i] + d * normal[0];
            double py = y[i] + d * normal[1];
            colours.between(px + normal[1], py - normal[0], colour, mixed);
            colours.between(px - normal[1], py + normal[0], colour, along[k]);
            for (int c = 0; c < 3; c++) {
                along[k][c] = 0.25f * (along[k][c] + mixed[c]);
            }
            colours.between(px, py, colour, mixed);
            for (int c = 0; c < 3; c++) {
                along[k][c] += 0.5f * mixed[c];
            }
            for (int c = 0; c < 3; c++) {
                inside[c] += d <= -1.5 && d >= -4 ? along[k][c] / 6 : 0;
                outside[c] += d >= 1.5 && d <= 4 ? along[k][c] / 6 : 0;
            }
        }
        double size = 1e-9;
        for (int c = 0; c < 3; c++) {
            size += (inside[c] - outside[c]) * (inside[c] - outside[c]);
        }
        for (int k = 0; k < SAMPLES; k++) {
            light[k] = 0;
            for (int c = 0; c < 3; c++) {
                light[k] += (along[k][c] - outside[c]) * (inside[c] - outside[c]) / size;
            }
        }
    }

    private double best(double softness) {
        double bestOffset = 0;
        double least = Double.POSITIVE_INFINITY;
        for (double offset = -2; offset <= 2; offset += 0.5) {
            double here = errorAt(offset, softness);
            if (here < least) {
                least = here;
                bestOffset = offset;
            }
        }
        double width = 0.25;
        for (int round = 0; round < 4; round++) {
            double below = errorAt(bestOffset - width, softness);
            double above = errorAt(bestOffset + width, softness);
            double curved = below - 2 * least + above;
            double move = curved > 0 ? 0.5 * width * (below - above) / curved : 0;
            bestOffset += Math.max(-width, Math.min(width, move));
            least = errorAt(bestOffset, softness);
            width /= 2;
        }
        error = least;
        return bestOffset;
    }

    /** The sum of squares with the edge there and the four levels and slopes as they fit best. */
    private double errorAt(double offset, double softness) {
        double[][] rows = new double[4][5];
        double squares = 0;
        double[] terms = new double[4];
        for (int k = 0; k < SAMPLES; k++) {
            double d = -REACH + k * STEP - offset;
            double outside = NormalShare.below(d / softness);
            terms[0] = outside;
            terms[1] = outside * d;
            terms[2] = 1 - outside;
            terms[3] = (1 - outside) * d;
            for (int i = 0; i < 4; i++) {
                for (int j = i; j < 4; j++) {
                    rows[i][j] += terms[i] * terms[j];
                }
                rows[i][4] += terms[i] * light[k];
            }
            squares += light[k] * light[k];
        }
        double[] right = new double[4];
        for (int i = 0; i < 4; i++) {
            right[i] = rows[i][4];
            for (int j = 0; j < i; j++) {
                rows[i][j] = rows[j][i];
            }
            // Steep slopes on both sides could imitate a step.
            rows[i][i] += i % 2 == 1 ? 1.5 : 1e-9;
        }
        double[] levels = LeastSquares.solve(rows);
        step = levels[2] - levels[0];
        double explained = 0;
        for (int i = 0; i < 4; i++) {
            explained += levels[i] * right[i];
        }
        return squares - explained;
    }
}
