package turnalike.turning;

import java.util.Arrays;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.units.Length;

/**
 * A second solution by another route: elements of a beam that shears (Timoshenko), with displacements of the third degree and turns of the
 * second as unknowns, stiffness, mass and the thrust's stiffness by five Gauss points, evenly sized elements between the outline's joints;
 * solved by Cholesky factors and inverse iteration. Takes every combination of end conditions. It shares no code with what it checks but
 * the outline. Being a Galerkin solution it is never limper than the beam.
 */
final class ShearElements {
    /** Moduli in N/mm², density in t/mm³. */
    record Wood(double moeMpa, double shearMpa, double tonnesPerMm3) {}

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

    private static final int HALF_BAND = 7;

    /** Unknowns of an element: where its deflections and its turns stand. */
    private static final int[] ASIDE = {0, 2, 3, 5};

    private static final int[] TURN = {1, 4, 6};

    /** What an element adds, the next one's first two left out. */
    private static final int EACH = 5;

    private final double[] node;
    private final int dofs;
    final double[][] stiffness;
    final double[][] mass;
    final double[][] geometric;
    private final boolean[] held;
    private double[][] factor = new double[0][];

    ShearElements(Outline outline, Wood wood, double thrustN, int aboutElements, End start, End end) {
        node = nodes(outline, aboutElements);
        dofs = EACH * (node.length - 1) + 2;
        stiffness = new double[dofs][HALF_BAND];
        mass = new double[dofs][HALF_BAND];
        geometric = new double[dofs][HALF_BAND];
        held = new boolean[dofs];
        for (int e = 0; e + 1 < node.length; e++) {
            element(outline, wood, e);
        }
        for (int i = 0; i < dofs; i++) {
            for (int k = 0; k < HALF_BAND; k++) {
                stiffness[i][k] -= thrustN * geometric[i][k];
            }
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
        held[EACH * at] = end != End.FREE;
        held[EACH * at + 1] = end == End.CLAMPED;
    }

    /** One more simple support at the node nearest to a place. */
    void support(double placeMm) {
        held[EACH * nearest(placeMm)] = true;
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

    private void element(Outline outline, Wood wood, int e) {
        double h = node[e + 1] - node[e];
        for (int g = 0; g < POINT.length; g++) {
            double s = (1 + POINT[g]) / 2;
            double w = SHARE[g] / 2 * h;
            Length place = Length.ofMm(node[e] + s * h);
            double r = outline.radiusAt(place).mm();
            boolean round = outline.sectionAt(place) == Section.ROUND;
            double inertia = round ? Math.PI * Math.pow(r, 4) / 4 : Math.pow(2 * r, 4) / 12;
            double area = round ? Math.PI * r * r : 4 * r * r;
            double[] aside = new double[7];
            double[] slope = new double[7];
            double[] turn = new double[7];
            double[] bend = new double[7];
            double[] shear = new double[7];
            for (int k = 0; k < 4; k++) {
                aside[ASIDE[k]] = lagrange(3, k, s);
                slope[ASIDE[k]] = slope(3, k, s) / h;
            }
            for (int k = 0; k < 3; k++) {
                turn[TURN[k]] = lagrange(2, k, s);
                bend[TURN[k]] = slope(2, k, s) / h;
            }
            for (int k = 0; k < 7; k++) {
                shear[k] = slope[k] - turn[k];
            }
            add(stiffness, e, w * wood.moeMpa() * inertia, bend);
            add(stiffness, e, w * wood.shearMpa() * area * (round ? 0.9 : 5 / 6.0), shear);
            add(mass, e, w * wood.tonnesPerMm3() * area, aside);
            add(mass, e, w * wood.tonnesPerMm3() * inertia, turn);
            add(geometric, e, w, slope);
        }
    }

    private static void add(double[][] band, int e, double share, double[] shape) {
        for (int i = 0; i < 7; i++) {
            for (int j = 0; j <= i; j++) {
                band[EACH * e + i][i - j] += share * shape[i] * shape[j];
            }
        }
    }

    /** The polynomial that is 1 at point k of evenly spaced ones and 0 at the others. */
    private static double lagrange(int degree, int k, double s) {
        double out = 1;
        for (int i = 0; i <= degree; i++) {
            out *= i == k ? 1 : (degree * s - i) / (k - i);
        }
        return out;
    }

    private static double slope(int degree, int k, double s) {
        double out = 0;
        for (int left = 0; left <= degree; left++) {
            double product = left == k ? 0 : degree / (double) (k - left);
            for (int i = 0; i <= degree; i++) {
                product *= i == k || i == left ? 1 : (degree * s - i) / (k - i);
            }
            out += product;
        }
        return out;
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
        load[EACH * at] = held[EACH * at] ? 0 : 1;
        return solve(load)[EACH * at];
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
        return "elements at " + Arrays.toString(node);
    }
}
