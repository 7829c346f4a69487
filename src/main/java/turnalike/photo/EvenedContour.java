package turnalike.photo;

import java.util.Arrays;

/**
 * How a contour runs nearby, by the parabola that is laid through some of its points so that those far off hardly count. On a coarse weave a contour walked
 * from pixel to pixel follows the threads that lie against the piece; what turned wood does so close by is a parabola, or two that meet in a corner.
 */
final class EvenedContour {
    /** So often a parabola is laid anew, each point counting by how far it was off the last one. */
    private static final int ROUNDS = 4;

    /** One side alone counts if it leaves less than this share of what both leave: what lies there is a corner. */
    private static final double CORNER = 0.4;

    /** How much the distance of the point in question counts beside all others', from so many times theirs on. */
    private static final double OWN = 0.3;

    private static final double BEYOND = 4;

    /** So many times the middle distance off, and a point counts for a quarter. */
    private static final double FAR = 2;

    private final double[] x;

    private final double[] y;

    private final int reach;

    /**
     * Takes a closed contour.
     *
     * @param x of its points, about a pixel apart
     * @param y of them
     * @param reach how many points to either side, or twice as many to one, a parabola is laid through
     */
    EvenedContour(double[] x, double[] y, int reach) {
        this.x = x;
        this.y = y;
        this.reach = reach;
    }

    /** How far its points lie off such a parabola, in the middle, in pixels. */
    double roughness() {
        int every = 5;
        double[] off = new double[(x.length + every - 1) / every];
        Cores.parts(off.length, (from, end) -> {
            for (int k = from; k < end; k++) {
                off[k] = course(k * every)[1];
            }
        });
        Arrays.sort(off);
        return off.length == 0 ? 0 : off[off.length / 2];
    }

    /** The points moved across it to where it runs, x then y. */
    double[][] points() {
        double[][] points = {x.clone(), y.clone()};
        Cores.parts(x.length, (from, end) -> {
            for (int i = from; i < end; i++) {
                double[] tangent = tangent(i, reach);
                double move = course(i)[0];
                points[0][i] += move * tangent[1];
                points[1][i] -= move * tangent[0];
            }
        });
        return points;
    }

    /** How far across from a point the contour runs, and by how much its points stray from there, in pixels. */
    private double[] course(int i) {
        double[] both = course(i, -reach, reach);
        double[] before = course(i, -2 * reach, 0);
        double[] after = course(i, 0, 2 * reach);
        double[] side = score(before) < score(after) ? before : after;
        return score(side) < CORNER * score(both) ? side : both;
    }

    /** What speaks against a course: how far off it its points lie, and how much farther than those the one in question, which beyond a corner is none of its own. */
    private static double score(double[] course) {
        return course[1] + Math.max(0, OWN * (Math.abs(course[0]) - BEYOND * course[1]));
    }

    private double[] course(int i, int first, int last) {
        int n = x.length;
        double[] tangent = tangent(i, reach);
        int count = last - first + 1;
        double[] along = new double[count];
        double[] across = new double[count];
        double[] trust = new double[count];
        for (int k = 0; k < count; k++) {
            int at = Math.floorMod(i + first + k, n);
            along[k] = ((x[at] - x[i]) * tangent[0] + (y[at] - y[i]) * tangent[1]) / reach;
            across[k] = (x[at] - x[i]) * tangent[1] - (y[at] - y[i]) * tangent[0];
            trust[k] = 1;
        }
        double[] solved = new double[3];
        double usual = 0;
        double[] off = new double[count];
        for (int round = 0; round < ROUNDS; round++) {
            double[][] rows = new double[3][4];
            for (int k = 0; k < count; k++) {
                double[] terms = {1, along[k], along[k] * along[k]};
                for (int a = 0; a < 3; a++) {
                    for (int b = 0; b < 3; b++) {
                        rows[a][b] += trust[k] * terms[a] * terms[b];
                    }
                    rows[a][3] += trust[k] * terms[a] * across[k];
                }
            }
            for (int a = 0; a < 3; a++) {
                rows[a][a] += 1e-6;
            }
            solved = LeastSquares.solve(rows);
            for (int k = 0; k < count; k++) {
                off[k] = Math.abs(across[k] - solved[0] - along[k] * (solved[1] + along[k] * solved[2]));
            }
            double[] sorted = off.clone();
            Arrays.sort(sorted);
            usual = Math.max(1e-3, sorted[count / 2]);
            for (int k = 0; k < count; k++) {
                double far = off[k] / (FAR * usual);
                trust[k] = 1 / ((1 + far * far) * (1 + far * far));
            }
        }
        return new double[] {solved[0], usual};
    }

    /** Along it, of length 1. */
    private double[] tangent(int i, int points) {
        int n = x.length;
        double tx = 0;
        double ty = 0;
        for (int k = 1; k <= points; k++) {
            tx += x[(i + k) % n] - x[(i - k + n) % n];
            ty += y[(i + k) % n] - y[(i - k + n) % n];
        }
        double size = Math.max(1e-12, Math.hypot(tx, ty));
        return new double[] {tx / size, ty / size};
    }
}
