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

    private static final int TERMS = 5;

    /** A fit that finds less of a step than this has found none. */
    private static final double LEAST_STEP = 0.12;

    /** What keeps slopes on both sides from imitating a step: as much as so many samples that say they are level. */
    private static final double[] HELD = {1e-9, 1.5, 1e-9, 0.3, 1.5};

    /** The samples of either side, from the far one to this, that surely belong to it. */
    private static final int SIDE = (int) ((REACH - 1.5) / STEP);

    /** By how much the plain difference may fit worse: colours are kept coarser than light in a JPEG, and lean outward. */
    private static final double FOR_LIGHT = 1;

    /** Noise of a colour, as a share of the brighter side. */
    private static final double NOISE = 0.02;

    private static final double[] SOFTNESSES = {0.45, 0.6, 0.8, 1.05, 1.4, 1.9, 2.6, 3.6, 5};

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
    @SuppressWarnings("ArrayRecordComponent") // never compared, and large
    record Fitted(double[] x, double[] y, double softness, double contrast) {}

    /** Twice: the first brings the windows in place for the second. */
    Fitted fit() {
        double softness = softness();
        Fitted once = moved(softness);
        EdgeFit again = new EdgeFit(colours, once.x(), once.y());
        double soft = again.softness();
        return again.moved(soft);
    }

    private Fitted moved(double softness) {
        int n = x.length;
        double[][] normals = new double[n][];
        double[][] offsets = new double[2][n];
        double[] contrasts = new double[n];
        double[] favour = new double[n];
        for (int i = 0; i < n; i++) {
            normals[i] = normal(i);
            sample(i, normals[i]);
            double[] misfit = new double[2];
            for (int way = 0; way < 2; way++) {
                scale(way == 1);
                double offset = best(softness);
                offsets[way][i] = step > LEAST_STEP && Math.abs(offset) < 1.9 ? offset : Double.NaN;
                misfit[way] = Math.log((error + 0.002) / Math.max(0.01, step * step));
                contrasts[i] = Math.max(contrasts[i], step);
            }
            favour[i] = Math.max(-3, Math.min(3, misfit[0] - misfit[1])) - FOR_LIGHT;
        }
        double[] chosen = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = 0;
            for (int k = -10; k <= 10; k++) {
                sum += favour[Math.floorMod(i + k, n)];
            }
            chosen[i] = offsets[sum > 0 ? 1 : 0][i];
        }
        double[] fittedX = x.clone();
        double[] fittedY = y.clone();
        for (int i = 0; i < n; i++) {
            double usual = usual(chosen, i);
            // A point that goes its own way has met a knot, a shaving or the grain.
            double offset = Math.abs(chosen[i] - usual) < 0.6 ? chosen[i] : usual;
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

    /**
     * How soft the picture's sharpest edges are. Where the piece darkens towards its edge, the step looks softer than the lens made it, never
     * sharper: so not the usual softness but that of the sharpest eighth.
     */
    private double softness() {
        int every = Math.max(1, x.length / 300);
        double[] found = new double[x.length / every + 1];
        int count = 0;
        for (int i = 0; i < x.length; i += every) {
            sample(i, normal(i));
            int softest = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < SOFTNESSES.length; k++) {
                best(SOFTNESSES[k]);
                if (error < least && step > 0.3) {
                    least = error;
                    softest = k;
                }
            }
            if (softest >= 0) {
                found[count++] = SOFTNESSES[softest];
            }
        }
        Arrays.sort(found, 0, count);
        return count == 0 ? 0.8 : found[count / 8];
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
        }
        scale(false);
    }

    /** Lays the sampled colours on the scale between the two sides: by all of their difference, or by what is steady on each side. */
    private void scale(boolean steady) {
        double[] scale = parting(steady ? NOISE : 10);
        for (int k = 0; k < SAMPLES; k++) {
            light[k] = scale[3];
            for (int c = 0; c < 3; c++) {
                light[k] += scale[c] * along[k][c];
            }
        }
    }

    /**
     * The scale on which inside and outside stand best apart for how much each changes on its own side (Fisher's discriminant): a fall of the
     * piece's light towards its edge counts little, a change of hue much.
     *
     * @param noise of a colour, as a share of the brighter side: a large one makes it the plain difference of the two
     * @return what to multiply each colour by, and what to add
     */
    private double[] parting(double noise) {
        double[][] mean = new double[2][3];
        int count = 0;
        for (int k = 0; k <= SIDE; k++) {
            count++;
            for (int c = 0; c < 3; c++) {
                mean[0][c] += along[k][c] / (SIDE + 1);
                mean[1][c] += along[SAMPLES - 1 - k][c] / (SIDE + 1);
            }
        }
        double brightest = 1e-4;
        for (int c = 0; c < 3; c++) {
            brightest = Math.max(brightest, Math.max(mean[0][c], mean[1][c]));
        }
        double[][] rows = new double[3][4];
        for (int k = 0; k <= SIDE; k++) {
            for (int a = 0; a < 3; a++) {
                for (int b = 0; b < 3; b++) {
                    rows[a][b] += (along[k][a] - mean[0][a]) * (along[k][b] - mean[0][b]) / count
                            + (along[SAMPLES - 1 - k][a] - mean[1][a])
                                    * (along[SAMPLES - 1 - k][b] - mean[1][b])
                                    / count;
                }
            }
        }
        for (int c = 0; c < 3; c++) {
            rows[c][c] += noise * noise * brightest * brightest;
            rows[c][3] = mean[0][c] - mean[1][c];
        }
        double[] plane = LeastSquares.solve(rows);
        double apart = 1e-12;
        double atOutside = 0;
        for (int c = 0; c < 3; c++) {
            apart += plane[c] * (mean[0][c] - mean[1][c]);
            atOutside += plane[c] * mean[1][c];
        }
        return new double[] {plane[0] / apart, plane[1] / apart, plane[2] / apart, -atOutside / apart};
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

    /**
     * The sum of squares with the edge there and the levels as they fit best. Outside the light runs straight. Inside it is that of a dull round
     * body, whose normal turns away with the root of the depth under its edge: a level, that root, and the depth itself.
     */
    private double errorAt(double offset, double softness) {
        double[][] rows = new double[TERMS][TERMS + 1];
        double squares = 0;
        double[] terms = new double[TERMS];
        for (int k = 0; k < SAMPLES; k++) {
            double d = -REACH + k * STEP - offset;
            double outside = NormalShare.below(d / softness);
            double depth = Math.max(0, -d);
            terms[0] = outside;
            terms[1] = outside * d;
            terms[2] = 1 - outside;
            terms[3] = (1 - outside) * Math.sqrt(depth);
            terms[4] = (1 - outside) * depth;
            for (int i = 0; i < TERMS; i++) {
                for (int j = i; j < TERMS; j++) {
                    rows[i][j] += terms[i] * terms[j];
                }
                rows[i][TERMS] += terms[i] * light[k];
            }
            squares += light[k] * light[k];
        }
        double[] right = new double[TERMS];
        for (int i = 0; i < TERMS; i++) {
            right[i] = rows[i][TERMS];
            for (int j = 0; j < i; j++) {
                rows[i][j] = rows[j][i];
            }
            rows[i][i] += HELD[i];
        }
        double[] levels = LeastSquares.solve(rows);
        step = levels[2] - levels[0];
        double explained = 0;
        for (int i = 0; i < TERMS; i++) {
            explained += levels[i] * right[i];
        }
        return squares - explained;
    }
}
