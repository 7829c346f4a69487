package turnalike.photo;

import java.util.SplittableRandom;

/**
 * What lies behind the piece: a smooth change of colour over the picture, fitted so that what stands on it hardly counts, and how far each
 * pixel is from it. A shadow is the ground with less light, so it counts for little.
 */
final class Ground {
    private static final int TERMS = 6;

    private static final int ROUNDS = 7;

    /** From this round on every other pixel is asked; before, far fewer bring it as near. */
    private static final int FINE = 4;

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
        return distances(picture, surface(picture, new byte[0], 0.5));
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
        double[][] surface = new double[3][];
        double[] spread = {0.25, 0.25, 0.25};
        boolean first = shows.length == 0;
        for (int c = 0; c < 3 && !first; c++) {
            surface[c] = new double[TERMS];
            surface[c][0] = ranked(picture.planes()[c], shows, rank);
            spread[c] = WIDEST;
        }
        for (int round = 0; round < ROUNDS; round++) {
            GroundSums sums =
                    first ? rim(picture) : sums(picture, shows, new Surface(surface, spread), round < FINE ? 6 : 2);
            double[][] next = new double[3][];
            for (int c = 0; c < 3; c++) {
                double[][] rows = sums.rows(c);
                for (int i = 3; i < TERMS && shows.length > 0; i++) {
                    rows[i][i] += STRAIGHT * sums.weights();
                }
                next[c] = LeastSquares.solve(rows);
                spread[c] = first ? 0.15 : Math.max(0.006, 1.15 * Math.sqrt(sums.meanSquare(c)));
                spread[c] = shows.length > 0 ? Math.min(WIDEST, spread[c]) : spread[c];
            }
            surface = next;
            first = false;
        }
        return new Surface(surface, spread);
    }

    /** Of every other pixel along the picture's rim. */
    private static GroundSums rim(CoarsePicture picture) {
        int w = picture.width();
        int h = picture.height();
        float[][] planes = picture.planes();
        double[] off = new double[3];
        GroundSums sums = new GroundSums();
        for (int y = 0; y < h; y += 2) {
            boolean rimRow = y < h * 0.08 || y > h * 0.92;
            for (int x = 0; x < w; x += 2) {
                if (rimRow || x < w * 0.08 || x > w * 0.92) {
                    int i = y * w + x;
                    sums.add((double) x / w - 0.5, 1, planes[0][i], planes[1][i], planes[2][i], off);
                }
            }
            sums.endRow((double) y / h - 0.5);
        }
        return sums;
    }

    /** Of every so manieth pixel that shows; the farther one is from the surface so far, the less it counts. */
    private static GroundSums sums(CoarsePicture picture, byte[] shows, Surface surface, int step) {
        int w = picture.width();
        int h = picture.height();
        float[][] planes = picture.planes();
        double[][] row = new double[3][3];
        double[] trust = new double[3];
        for (int c = 0; c < 3; c++) {
            trust[c] = 1 / (9 * surface.spread[c] * surface.spread[c]);
        }
        double[] places = places(w);
        GroundSums sums = new GroundSums();
        for (int y = 0; y < h; y += step) {
            double down = (double) y / h - 0.5;
            along(surface.terms, down, row);
            sums.addRow(planes, shows, y * w, places, step, row, trust);
            sums.endRow(down);
        }
        return sums;
    }

    /** What a surface is along one row: by the power of x. */
    private static void along(double[][] terms, double y, double[][] row) {
        for (int c = 0; c < 3; c++) {
            row[c][0] = terms[c][0] + y * (terms[c][2] + y * terms[c][5]);
            row[c][1] = terms[c][1] + y * terms[c][4];
            row[c][2] = terms[c][3];
        }
    }

    /** Where each column stands, from the middle, in widths. */
    private static double[] places(int width) {
        double[] places = new double[width];
        for (int x = 0; x < width; x++) {
            places[x] = (double) x / width - 0.5;
        }
        return places;
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

    private static Distances distances(CoarsePicture picture, Surface surface) {
        float[] byHue = new float[picture.width() * picture.height()];
        float[] byLight = new float[byHue.length];
        double[] places = places(picture.width());
        Cores.parts(picture.height(), (from, end) -> {
            FarFromGround far = new FarFromGround(picture, places, surface.spread);
            double[][] row = new double[3][3];
            for (int y = from; y < end; y++) {
                along(surface.terms, (double) y / picture.height() - 0.5, row);
                far.row(y, row, byHue, byLight);
            }
        });
        evenOut(byHue);
        return new Distances(byHue, byLight);
    }

    /** Hue varies less than light: the ground's own middle distance becomes that of a plain ground. */
    private static void evenOut(float[] distance) {
        float usual = Math.max(0.15f, Ranked.ofMany(distance, distance.length / 2));
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
}
