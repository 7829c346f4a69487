package turnalike.photo;

import java.util.Arrays;

/**
 * The points of a contour that are asked for an end's face, from the end inward, with what hangs on them and the rim's form alone: a face is laid through
 * them in many rounds.
 */
final class EndPoints {
    /** Either side of a point, in pixels, at which the face's slope is taken. */
    private static final double BESIDE = 0.25;

    private double[] along = new double[64];

    private double[] across = new double[64];

    private double[] terms = new double[64];

    private double[] slopes = new double[64];

    private int count;

    private EndPoints() {}

    /**
     * Takes them.
     *
     * @param sides X and Y of the points of one edge or both
     * @param start whether the start end is meant
     * @param apex where the end is, about
     * @param asked so far out, Y
     * @param reach so far inward from there at most
     * @param shape of the rim
     * @param focal length, pixels
     */
    static EndPoints of(
            double[][][] sides, boolean start, double apex, double asked, double reach, SeenRim shape, double focal) {
        EndPoints points = new EndPoints();
        double outward = start ? -1 : 1;
        double middle = shape.at(0);
        for (double[][] side : sides) {
            int n = side[0].length;
            for (int k = 0; k < n; k++) {
                int i = start ? k : n - 1 - k;
                double x = side[0][i];
                double y = Math.abs(side[1][i]);
                if (y > asked || (apex - x) * outward > reach) {
                    break;
                }
                points.add(x, y, shape.at(y) - middle, shape.at(y + BESIDE / focal) - shape.at(y - BESIDE / focal));
            }
        }
        return points;
    }

    private void add(double x, double y, double term, double slope) {
        if (count == along.length) {
            along = Arrays.copyOf(along, 2 * count);
            across = Arrays.copyOf(across, 2 * count);
            terms = Arrays.copyOf(terms, 2 * count);
            slopes = Arrays.copyOf(slopes, 2 * count);
        }
        along[count] = x;
        across[count] = y;
        terms[count] = term;
        slopes[count] = slope;
        count++;
    }

    int count() {
        return count;
    }

    /** X of a point. */
    double along(int k) {
        return along[k];
    }

    /** How far it is from the axis, Y. */
    double across(int k) {
        return across[k];
    }

    /** How much nearer or farther than the face's middle it stands, for a bulge of 1. */
    double term(int k) {
        return terms[k];
    }

    /** By how much that differs from half a pixel to half a pixel. */
    double slope(int k) {
        return slopes[k];
    }
}
