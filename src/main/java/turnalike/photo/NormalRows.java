package turnalike.photo;

import java.util.Arrays;

/** Normal equations of a small least-squares problem, used over and over: added up, held by what is known, damped, solved by Cholesky's roots. */
final class NormalRows {
    /** How many unknowns: three times any number. */
    private static final int SIZE = EdgeModel.UNKNOWNS;

    private final double[] rows = new double[SIZE * SIZE];

    private final double[] right = new double[SIZE];

    private final double[] roots = new double[SIZE * SIZE];

    /** Of the roots, the one at hand. */
    private final double[] column = new double[SIZE];

    private final double[] solution = new double[SIZE];

    /**
     * Sets the lower half to the products of every two unknowns over all numbers, and the right side to those of each with what they are off by.
     *
     * @param by how the numbers change with each unknown, weighed, number by number
     * @param off by how much each is off, likewise weighed
     */
    void add(double[] by, double[] off) {
        for (int a = 0; a < SIZE; a += 3) {
            for (int b = 0; b < a; b += 3) {
                nine(a, b, by, off.length);
            }
            six(a, by, off);
        }
    }

    /** Three unknowns by three others: each number read serves three products, and no sum waits for another. */
    private void nine(int a, int b, double[] by, int count) {
        double aa = 0;
        double ab = 0;
        double ac = 0;
        double ba = 0;
        double bb = 0;
        double bc = 0;
        double ca = 0;
        double cb = 0;
        double cc = 0;
        for (int k = 0; k < count; k++) {
            double one = by[k * SIZE + a];
            double two = by[k * SIZE + a + 1];
            double three = by[k * SIZE + a + 2];
            double left = by[k * SIZE + b];
            double middle = by[k * SIZE + b + 1];
            double right = by[k * SIZE + b + 2];
            aa += one * left;
            ab += one * middle;
            ac += one * right;
            ba += two * left;
            bb += two * middle;
            bc += two * right;
            ca += three * left;
            cb += three * middle;
            cc += three * right;
        }
        int to = a * SIZE + b;
        rows[to] = aa;
        rows[to + 1] = ab;
        rows[to + 2] = ac;
        rows[to + SIZE] = ba;
        rows[to + SIZE + 1] = bb;
        rows[to + SIZE + 2] = bc;
        rows[to + 2 * SIZE] = ca;
        rows[to + 2 * SIZE + 1] = cb;
        rows[to + 2 * SIZE + 2] = cc;
    }

    /** Three unknowns by themselves, with their right side. */
    private void six(int a, double[] by, double[] off) {
        double aa = 0;
        double ba = 0;
        double bb = 0;
        double ca = 0;
        double cb = 0;
        double cc = 0;
        double first = 0;
        double second = 0;
        double third = 0;
        for (int k = 0; k < off.length; k++) {
            double one = by[k * SIZE + a];
            double two = by[k * SIZE + a + 1];
            double three = by[k * SIZE + a + 2];
            aa += one * one;
            ba += two * one;
            bb += two * two;
            ca += three * one;
            cb += three * two;
            cc += three * three;
            first += one * off[k];
            second += two * off[k];
            third += three * off[k];
        }
        int to = a * SIZE + a;
        rows[to] = aa;
        rows[to + SIZE] = ba;
        rows[to + SIZE + 1] = bb;
        rows[to + 2 * SIZE] = ca;
        rows[to + 2 * SIZE + 1] = cb;
        rows[to + 2 * SIZE + 2] = cc;
        right[a] = first;
        right[a + 1] = second;
        right[a + 2] = third;
    }

    /** Holds an unknown, which stands there, near 0 by one over a variance. */
    void hold(int a, double weight, double at) {
        rows[a * SIZE + a] += weight;
        right[a] -= weight * at;
    }

    /** The unknowns, every diagonal taken larger by a share; one of which nothing is said is 0. Good until the next call. */
    double[] solved(double damping) {
        root(1 + damping);
        System.arraycopy(right, 0, solution, 0, SIZE);
        solve();
        return solution;
    }

    /** An unknown's variance, all others left open. */
    double variance(int a) {
        root(1);
        Arrays.fill(solution, 0);
        solution[a] = 1;
        solve();
        return Math.max(0, solution[a]);
    }

    /** Column by column: what a column takes off those behind it waits for nothing. */
    private void root(double diagonal) {
        double largest = 0;
        for (int a = 0; a < SIZE; a++) {
            largest = Math.max(largest, rows[a * SIZE + a]);
        }
        System.arraycopy(rows, 0, roots, 0, rows.length);
        for (int a = 0; a < SIZE; a++) {
            roots[a * SIZE + a] *= diagonal;
        }
        for (int k = 0; k < SIZE; k++) {
            double left = roots[k * SIZE + k];
            double inverse = left > 1e-14 * largest ? 1 / Math.sqrt(left) : 0;
            roots[k * SIZE + k] = inverse;
            for (int a = k + 1; a < SIZE; a++) {
                double share = roots[a * SIZE + k] * inverse;
                roots[a * SIZE + k] = share;
                column[a] = share;
                for (int b = k + 1; b <= a; b++) {
                    roots[a * SIZE + b] -= share * column[b];
                }
            }
        }
    }

    /** The roots' diagonal stands inverted. */
    private void solve() {
        for (int a = 0; a < SIZE; a++) {
            double sum = solution[a];
            for (int k = 0; k < a; k++) {
                sum -= roots[a * SIZE + k] * solution[k];
            }
            solution[a] = sum * roots[a * SIZE + a];
        }
        for (int a = SIZE - 1; a >= 0; a--) {
            double sum = solution[a];
            for (int k = a + 1; k < SIZE; k++) {
                sum -= roots[k * SIZE + a] * solution[k];
            }
            solution[a] = sum * roots[a * SIZE + a];
        }
    }
}
