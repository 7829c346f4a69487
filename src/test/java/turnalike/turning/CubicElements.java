package turnalike.turning;

import java.util.Arrays;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.units.Length;

/**
 * A second solution by another route: Euler–Bernoulli beam elements with two nodes and cubic displacements, stiffness, mass and
 * geometric stiffness by five Gauss points, evenly sized elements between the outline's joints; solved by Cholesky factors and inverse
 * iteration. Takes every combination of end conditions. It shares no code with what it checks but the outline.
 */
final class CubicElements {
    enum End {
        PINNED,
        CLAMPED,
        FREE
    }

    /** Gauss–Legendre, five points on −1 to 1 (from memory). */
    private static final double[] POINT = {
        0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640
    };

    private static final double[] SHARE = {
        0.5688888888888889, 0.4786286704993665, 0.4786286704993665, 0.2369268850561891, 0.2369268850561891
    };

    private static final int HALF_BAND = 4;

    private final double[] node;
    private final int dofs;
    final double[][] stiffness;
    final double[][] mass;
    final double[][] geometric;
    private final boolean[] held;
    private double[][] factor = new double[0][];

    CubicElements(Outline outline, double moeMpa, double tonnesPerMm3, int aboutElements, End start, End end) {
        node = nodes(outline, aboutElements);
        dofs = 2 * node.length;
        stiffness = new double[dofs][HALF_BAND];
        mass = new double[dofs][HALF_BAND];
        geometric = new double[dofs][HALF_BAND];
        held = new boolean[dofs];
        for (int e = 0; e + 1 < node.length; e++) {
            element(outline, moeMpa, tonnesPerMm3, e);
        }
        hold(0, start);
        hold(node.length - 1, end);
    }

    private static double[] nodes(Outline outline, int about) {
        double step = outline.length().mm() / about;
        java.util.TreeSet<Double> out = new java.util.TreeSet<>();
        for (var segment : outline.segments()) {
            double from = segment.start().mm();
            double to = segment.end().mm();
            int parts = Math.max(1, (int) Math.ceil((to - from) / step - 1e-9));
            for (int i = 0; i < parts; i++) {
                out.add(from + (to - from) * i / parts);
            }
        }
        out.add(outline.end().mm());
        return out.stream().mapToDouble(Double::doubleValue).toArray();
    }

    int elements() {
        return node.length - 1;
    }

    private void hold(int at, End end) {
        held[2 * at] = end != End.FREE;
        held[2 * at + 1] = end == End.CLAMPED;
    }

    /** One more simple support at the node nearest to a place. */
    void support(double placeMm) {
        held[2 * nearest(placeMm)] = true;
        factor = new double[0][];
    }

    int nearest(double placeMm) {
        int best = 0;
        for (int i = 0; i < node.length; i++) {
            if (Math.abs(node[i] - placeMm) < Math.abs(node[best] - placeMm)) {
                best = i;
            }
        }
        return best;
    }

    double nodeMm(int i) {
        return node[i];
    }

    private void element(Outline outline, double moeMpa, double tonnesPerMm3, int e) {
        double h = node[e + 1] - node[e];
        for (int g = 0; g < POINT.length; g++) {
            double s = (1 + POINT[g]) / 2;
            double w = SHARE[g] / 2 * h;
            Length place = Length.ofMm(node[e] + s * h);
            double r = outline.radiusAt(place).mm();
            boolean round = outline.sectionAt(place) == Section.ROUND;
            double inertia = round ? Math.PI * Math.pow(r, 4) / 4 : Math.pow(2 * r, 4) / 12;
            double area = round ? Math.PI * r * r : 4 * r * r;
            double[] n = {
                1 - 3 * s * s + 2 * s * s * s,
                h * (s - 2 * s * s + s * s * s),
                3 * s * s - 2 * s * s * s,
                h * (s * s * s - s * s)
            };
            double[] d = {(6 * s * s - 6 * s) / h, 1 - 4 * s + 3 * s * s, (6 * s - 6 * s * s) / h, 3 * s * s - 2 * s};
            double[] b = {(12 * s - 6) / h / h, (6 * s - 4) / h, (6 - 12 * s) / h / h, (6 * s - 2) / h};
            for (int i = 0; i < 4; i++) {
                for (int j = 0; j <= i; j++) {
                    int row = 2 * e + i;
                    stiffness[row][i - j] += w * moeMpa * inertia * b[i] * b[j];
                    mass[row][i - j] += w * tonnesPerMm3 * area * n[i] * n[j];
                    geometric[row][i - j] += w * d[i] * d[j];
                }
            }
        }
    }

    /** Radians a second. */
    double naturalSpeed(int mode) {
        double[][] shapes = new double[mode + 1][];
        double value = 0;
        for (int k = 0; k <= mode; k++) {
            shapes[k] = new double[dofs];
            value = inverseIteration(mass, shapes, k);
        }
        return Math.sqrt(value);
    }

    double bucklingN() {
        return inverseIteration(geometric, new double[][] {new double[dofs]}, 0);
    }

    private double inverseIteration(double[][] right, double[][] shapes, int k) {
        double[] u = shapes[k];
        for (int i = 0; i < dofs; i++) {
            u[i] = held[i] ? 0 : Math.sin(1.7 * i + 0.3 * k * i * i + 1);
        }
        double value = 0;
        for (int turn = 0; turn < 3000; turn++) {
            for (int before = 0; before < k; before++) {
                double share = dot(shapes[before], times(right, u));
                for (int i = 0; i < dofs; i++) {
                    u[i] -= share * shapes[before][i];
                }
            }
            double[] load = times(right, u);
            double size = Math.sqrt(dot(u, load));
            for (int i = 0; i < dofs; i++) {
                u[i] /= size;
                load[i] = held[i] ? 0 : load[i] / size;
            }
            double[] next = solve(load);
            double now = 1 / dot(load, next);
            System.arraycopy(next, 0, u, 0, dofs);
            if (Math.abs(now - value) < 1e-13 * now) {
                break;
            }
            value = now;
        }
        double size = Math.sqrt(dot(u, times(right, u)));
        for (int i = 0; i < dofs; i++) {
            u[i] /= size;
        }
        return value;
    }

    /** The deflection at a node under one newton there. */
    double sagMmPerN(int at) {
        double[] load = new double[dofs];
        load[2 * at] = held[2 * at] ? 0 : 1;
        return solve(load)[2 * at];
    }

    private double[] times(double[][] band, double[] x) {
        double[] out = new double[dofs];
        for (int i = 0; i < dofs; i++) {
            for (int k = 0; k < HALF_BAND && i - k >= 0; k++) {
                out[i] += band[i][k] * x[i - k];
                if (k > 0) {
                    out[i - k] += band[i][k] * x[i];
                }
            }
        }
        return out;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private double[] solve(double[] load) {
        if (factor.length == 0) {
            factor = factorised();
        }
        double[] x = load.clone();
        for (int i = 0; i < dofs; i++) {
            for (int k = 1; k < HALF_BAND && i - k >= 0; k++) {
                x[i] -= factor[i][k] * x[i - k];
            }
            x[i] /= factor[i][0];
        }
        for (int i = dofs - 1; i >= 0; i--) {
            x[i] /= factor[i][0];
            for (int k = 1; k < HALF_BAND && i - k >= 0; k++) {
                x[i - k] -= factor[i][k] * x[i];
            }
        }
        return x;
    }

    private double[][] factorised() {
        double[][] l = new double[dofs][HALF_BAND];
        for (int i = 0; i < dofs; i++) {
            for (int k = Math.min(HALF_BAND - 1, i); k >= 0; k--) {
                int j = i - k;
                double sum = held[i] || held[j] ? (k == 0 ? 1 : 0) : stiffness[i][k];
                for (int m = Math.max(0, i - HALF_BAND + 1); m < j; m++) {
                    if (j - m < HALF_BAND) {
                        sum -= l[i][i - m] * l[j][j - m];
                    }
                }
                l[i][k] = k == 0 ? Math.sqrt(sum) : sum / l[j][0];
            }
        }
        return l;
    }

    @Override
    public String toString() {
        return "cubic elements at " + Arrays.toString(node);
    }
}
