package turnalike.photo;

import java.util.SplittableRandom;

/**
 * What lies behind the piece: a smooth change of colour over the picture, fitted so that what stands on it hardly counts, and how far each
 * pixel is from it. A shadow is the ground with less light, so it counts for little.
 */
final class Ground {
    private static final int TERMS = 6;

    /** By roots of light: darker than a sixth of the ground's light is hardly a soft shadow. */
    private static final double DEEPEST_SHADOW = 0.4;

    /** Where only the hue is asked, anything but black may be shadow. */
    private static final double BLACK = 0.12;

    /** Where only some of the ground shows: the most that it may stray, and what bends are held by. */
    private static final double WIDEST = 0.06;

    private static final double STRAIGHT = 0.003;

    private Ground() {}

    /**
     * How far each pixel is from the ground, in standard deviations of the ground itself.
     *
     * @param byHue where darkness alone counts for nothing: no shadow is then taken for the piece, and no piece of the ground's own hue found
     * @param byLight where it counts
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared, and large
    record Distances(float[] byHue, float[] byLight) {}

    static Distances distances(CoarsePicture picture) {
        Surface ground = surface(picture, new byte[0], 0.5);
        return new Distances(
                distances(picture, ground.terms, ground.spread, true),
                distances(picture, ground.terms, ground.spread, false));
    }

    /**
     * A smooth change of colour.
     *
     * @param terms of each colour
     * @param spread how far what it was fitted to strays from it
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Surface(double[][] terms, double[] spread) {}

    /**
     * The picture with what does not show painted like the ground that does, straying as that does.
     *
     * @param picture the picture
     * @param shows 1 where it stays as it is
     * @param rank of all the light there, from dark to bright, the share at which the ground's is looked for first: a half, or more where it is the
     *     brightest thing and may be half hidden
     */
    static CoarsePicture painted(CoarsePicture picture, byte[] shows, double rank) {
        int w = picture.width();
        Surface ground = surface(picture, shows, rank);
        double[][] bounds = bounds(picture, shows, ground);
        float[][] planes = new float[3][];
        SplittableRandom dice = new SplittableRandom(w);
        for (int c = 0; c < 3; c++) {
            planes[c] = picture.planes()[c].clone();
            for (int i = 0; i < shows.length; i++) {
                if (shows[i] == 0) {
                    double light = dot(ground.terms[c], basis(picture, i));
                    double within = Math.max(bounds[c][0], Math.min(bounds[c][1], light));
                    planes[c][i] = (float) Math.max(0, within + ground.spread[c] * (2 * dice.nextDouble() - 1));
                }
            }
        }
        return picture.with(planes);
    }

    /** The least and the most light of the ground where it shows; beyond, the surface may run off. */
    private static double[][] bounds(CoarsePicture picture, byte[] shows, Surface ground) {
        double[][] bounds = new double[3][];
        for (int c = 0; c < 3; c++) {
            bounds[c] = new double[] {Double.POSITIVE_INFINITY, 0};
            for (int i = 0; i < shows.length; i++) {
                if (shows[i] > 0) {
                    double light = dot(ground.terms[c], basis(picture, i));
                    bounds[c][0] = Math.min(bounds[c][0], light);
                    bounds[c][1] = Math.max(bounds[c][1], light);
                }
            }
        }
        return bounds;
    }

    private static double[] basis(CoarsePicture picture, int pixel) {
        int w = picture.width();
        int row = pixel / w;
        return basis((double) (pixel % w) / w - 0.5, (double) row / picture.height() - 0.5);
    }

    /** Begins with the picture's rim, or, where only some of it shows, with one colour of that, and runs the straighter. */
    private static Surface surface(CoarsePicture picture, byte[] shows, double rank) {
        int w = picture.width();
        int h = picture.height();
        double[][] surface = new double[3][];
        double[] spread = {0.25, 0.25, 0.25};
        boolean first = shows.length == 0;
        for (int c = 0; c < 3 && !first; c++) {
            surface[c] = new double[TERMS];
            surface[c][0] = ranked(picture.planes()[c], shows, rank);
            spread[c] = WIDEST;
        }
        double[] basis = new double[TERMS];
        double[] off = new double[3];
        for (int round = 0; round < 7; round++) {
            double[][] next = new double[3][];
            double[] squares = new double[3];
            // All colours count a pixel alike: one matrix, three right sides.
            double[][] normal = new double[TERMS][TERMS];
            double[][] right = new double[3][TERMS];
            double weights = 0;
            for (int y = 0; y < h; y += 2) {
                for (int x = 0; x < w; x += 2) {
                    if (shows.length > 0 && shows[y * w + x] == 0) {
                        continue;
                    }
                    boolean rim = x < w * 0.08 || x > w * 0.92 || y < h * 0.08 || y > h * 0.92;
                    if (first && !rim) {
                        continue;
                    }
                    fill(basis, (double) x / w - 0.5, (double) y / h - 0.5);
                    double far = 0;
                    for (int c = 0; c < 3 && !first; c++) {
                        off[c] = picture.planes()[c][y * w + x] - dot(surface[c], basis);
                        far += off[c] * off[c] / (spread[c] * spread[c]);
                    }
                    double doubt = 1 + far / 9;
                    double weight = first ? 1 : 1 / (doubt * doubt);
                    weights += weight;
                    for (int i = 0; i < TERMS; i++) {
                        double weighted = weight * basis[i];
                        double[] row = normal[i];
                        for (int j = i; j < TERMS; j++) {
                            row[j] += weighted * basis[j];
                        }
                    }
                    for (int c = 0; c < 3; c++) {
                        double weighted = weight * picture.planes()[c][y * w + x];
                        for (int i = 0; i < TERMS; i++) {
                            right[c][i] += weighted * basis[i];
                        }
                        squares[c] += weight * off[c] * off[c];
                    }
                }
            }
            for (int c = 0; c < 3; c++) {
                double[][] rows = rows(normal, right[c]);
                for (int i = 3; i < TERMS && shows.length > 0; i++) {
                    rows[i][i] += STRAIGHT * weights;
                }
                next[c] = LeastSquares.solve(rows);
                spread[c] = first ? 0.15 : Math.max(0.006, 1.15 * Math.sqrt(squares[c] / weights));
                spread[c] = shows.length > 0 ? Math.min(WIDEST, spread[c]) : spread[c];
            }
            surface = next;
            first = false;
        }
        return new Surface(surface, spread);
    }

    private static double ranked(float[] plane, byte[] shows, double rank) {
        float[] values = new float[plane.length];
        int count = 0;
        for (int i = 0; i < plane.length; i++) {
            if (shows[i] > 0) {
                values[count++] = plane[i];
            }
        }
        return Ranked.of(values, count, (int) (rank * (count - 1)));
    }

    private static float[] distances(CoarsePicture picture, double[][] surface, double[] spread, boolean byHue) {
        int w = picture.width();
        int h = picture.height();
        float[] distance = new float[w * h];
        double[] basis = new double[TERMS];
        double[] ground = new double[3];
        double[] scale = new double[3];
        for (int c = 0; c < 3; c++) {
            scale[c] = 1 / (spread[c] * spread[c]);
        }
        double deepest = byHue ? BLACK : DEEPEST_SHADOW;
        double brightest = byHue ? 1.6 : 1;
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                fill(basis, (double) x / w - 0.5, (double) y / h - 0.5);
                double product = 0;
                double size = 0;
                for (int c = 0; c < 3; c++) {
                    ground[c] = dot(surface[c], basis);
                    product += scale[c] * ground[c] * picture.planes()[c][y * w + x];
                    size += scale[c] * ground[c] * ground[c];
                }
                double light = size > 0 ? Math.max(deepest, Math.min(brightest, product / size)) : 1;
                double far = 0;
                for (int c = 0; c < 3; c++) {
                    double off = picture.planes()[c][y * w + x] - light * ground[c];
                    far += off * off * scale[c];
                }
                double shade = byHue ? 0 : (1 - light) / 0.2;
                distance[y * w + x] = (float) Math.sqrt(far + shade * shade);
            }
        }
        if (byHue) {
            evenOut(distance);
        }
        return distance;
    }

    /** Hue varies less than light: the ground's own middle distance becomes that of a plain ground. */
    private static void evenOut(float[] distance) {
        float usual = Math.max(0.15f, Ranked.of(distance.clone(), distance.length, distance.length / 2));
        for (int i = 0; i < distance.length; i++) {
            distance[i] *= 0.8f / usual;
        }
    }

    private static double[] basis(double x, double y) {
        double[] basis = new double[TERMS];
        fill(basis, x, y);
        return basis;
    }

    private static void fill(double[] basis, double x, double y) {
        basis[0] = 1;
        basis[1] = x;
        basis[2] = y;
        basis[3] = x * x;
        basis[4] = x * y;
        basis[5] = y * y;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < TERMS; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** The half that was not added up is the other one mirrored. */
    private static double[][] rows(double[][] normal, double[] right) {
        double[][] rows = new double[TERMS][TERMS + 1];
        for (int i = 0; i < TERMS; i++) {
            for (int j = 0; j < TERMS; j++) {
                rows[i][j] = normal[Math.min(i, j)][Math.max(i, j)];
            }
            rows[i][TERMS] = right[i];
        }
        return rows;
    }
}
