package turnalike.photo;

import java.util.Arrays;

/** The lines across a contour along which its edge is looked for: where they stand, what was written along them, and of which hues either side is. */
final class EdgeLines {
    /** To how many points on either side hues are averaged. */
    private static final int HUES = 12;

    private final Picture picture;

    private final double[] x;

    private final double[] y;

    private final double[][] normals;

    /** Of each point linear red, green and blue some pixels within, then without. */
    private final double[] light;

    /** A closed contour, points about a pixel apart. */
    EdgeLines(Picture picture, double[] x, double[] y) {
        this.picture = picture;
        this.x = x;
        this.y = y;
        normals = new double[x.length][];
        light = new double[6 * x.length];
        Cores.parts(x.length, this::learn);
    }

    int count() {
        return x.length;
    }

    double[] x() {
        return x;
    }

    double[] y() {
        return y;
    }

    /** The direction outward at a point, of length 1. */
    double[] normal(int i) {
        return normals[i];
    }

    /** The wood's linear colour near a point, of sum 1. */
    double[] inside(int i) {
        return hue(i, 0);
    }

    /** The ground's. */
    double[] outside(int i) {
        return hue(i, 1);
    }

    /** Outward, from the contour some points to both sides; the walk keeps the piece on one side all along. */
    private double[] outward(int i) {
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

    /** Reads what was written, one line at a time: each thread has its own. */
    final class Reader {
        private final float[] mixed = new float[3];

        private final double[] summed = new double[3];

        private final double[][] seen = new double[3][EdgeModel.SAMPLES];

        /** What was written along a point's line, half of it from a pixel to either side: brightness and two colours, good until the next call. */
        double[][] read(int i) {
            double[] normal = normals[i];
            boolean burnt = isBurnt(x[i] + EdgeModel.REACH * normal[0], y[i] + EdgeModel.REACH * normal[1]);
            for (int k = 0; k < EdgeModel.SAMPLES; k++) {
                double d = -EdgeModel.REACH + k * EdgeModel.STEP;
                double px = x[i] + d * normal[0];
                double py = y[i] + d * normal[1];
                Arrays.fill(summed, 0);
                for (int side = -1; side <= 1; side++) {
                    if (burnt) {
                        picture.codesBetween(px + side * normal[1], py - side * normal[0], mixed);
                    } else {
                        picture.linearBetween(px + side * normal[1], py - side * normal[0], mixed);
                    }
                    for (int c = 0; c < 3; c++) {
                        summed[c] += (side == 0 ? 0.5 : 0.25) * mixed[c];
                    }
                }
                for (int c = 0; c < 3; c++) {
                    summed[c] = burnt ? summed[c] : Gamma.code(summed[c]);
                }
                EdgeModel.split(summed[0], summed[1], summed[2], seen, k);
            }
            return seen;
        }

        /**
         * A pixel over the rim of a ground brighter than full lost light before anything mixed it: it eats into the edge by about as much as
         * mixing codes in place of light pushes it out, so there they are mixed. By trying.
         */
        private boolean isBurnt(double px, double py) {
            picture.codesBetween(px, py, mixed);
            return (mixed[0] + mixed[1] + mixed[2]) / 3 > EdgeSearch.BURNT;
        }
    }

    /** Which way is outward at some points, and what light stands on either side of them. */
    private void learn(int first, int end) {
        float[] mixed = new float[3];
        for (int i = first; i < end; i++) {
            double[] normal = outward(i);
            normals[i] = normal;
            for (int side = 0; side < 2; side++) {
                int at = 6 * i + 3 * side;
                for (double d = 2.5; d <= 6; d += 1) {
                    double way = side == 0 ? -d : d;
                    picture.linearBetween(x[i] + way * normal[0], y[i] + way * normal[1], mixed);
                    for (int c = 0; c < 3; c++) {
                        light[at + c] += mixed[c];
                    }
                }
            }
        }
    }

    /** The hue on one side, averaged along the contour. */
    private double[] hue(int i, int side) {
        int n = x.length;
        double[] sum = new double[3];
        int from = Math.floorMod(i - HUES, n);
        for (int k = 0; k <= 2 * HUES; k++) {
            int at = 6 * from + 3 * side;
            for (int c = 0; c < 3; c++) {
                sum[c] += light[at + c];
            }
            from = from + 1 == n ? 0 : from + 1;
        }
        double whole = Math.max(1e-9, sum[0] + sum[1] + sum[2]);
        for (int c = 0; c < 3; c++) {
            sum[c] = (sum[c] + 1e-9 * whole / 3) / whole;
        }
        return sum;
    }
}
