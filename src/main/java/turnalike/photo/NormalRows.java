package turnalike.photo;

import java.util.Arrays;

/** Normal equations of a small least-squares problem, used over and over: added up, held by what is known, damped, solved by Cholesky's roots. */
final class NormalRows {
    private final int size;

    private final double[] rows;

    private final double[] right;

    private final double[] roots;

    private final double[] solution;

    NormalRows(int size) {
        this.size = size;
        rows = new double[size * size];
        right = new double[size];
        roots = new double[size * size];
        solution = new double[size];
    }

    /** Sets the lower half to the products of every two columns over so many numbers; one of the factors is weighed. */
    void add(double[][] weighed, double[][] columns, int count) {
        int a = 0;
        for (; a + 1 < size; a += 2) {
            for (int b = 0; b <= a; b += 2) {
                four(a, b, weighed, columns, count);
            }
        }
        for (int b = 0; a < size && b <= a; b++) {
            double sum = 0;
            for (int k = 0; k < count; k++) {
                sum += weighed[a][k] * columns[b][k];
            }
            rows[a * size + b] = sum;
        }
    }

    /** Two columns by two: each number read serves two products, and no sum waits for another. */
    private void four(int a, int b, double[][] weighed, double[][] columns, int count) {
        double[] one = weighed[a];
        double[] other = weighed[a + 1];
        double[] left = columns[b];
        double[] right = columns[b + 1];
        double first = 0;
        double second = 0;
        double third = 0;
        double fourth = 0;
        double nextFirst = 0;
        double nextSecond = 0;
        double nextThird = 0;
        double nextFourth = 0;
        int k = 0;
        for (; k + 1 < count; k += 2) {
            first += one[k] * left[k];
            second += one[k] * right[k];
            third += other[k] * left[k];
            fourth += other[k] * right[k];
            nextFirst += one[k + 1] * left[k + 1];
            nextSecond += one[k + 1] * right[k + 1];
            nextThird += other[k + 1] * left[k + 1];
            nextFourth += other[k + 1] * right[k + 1];
        }
        if (k < count) {
            first += one[k] * left[k];
            second += one[k] * right[k];
            third += other[k] * left[k];
            fourth += other[k] * right[k];
        }
        rows[a * size + b] = first + nextFirst;
        rows[a * size + b + 1] = second + nextSecond;
        rows[(a + 1) * size + b] = third + nextThird;
        rows[(a + 1) * size + b + 1] = fourth + nextFourth;
    }

    void right(int a, double value) {
        right[a] = value;
    }

    /** Holds an unknown by one over a variance. */
    void hold(int a, double weight) {
        rows[a * size + a] += weight;
    }

    /** The unknowns, every diagonal taken larger by a share; one of which nothing is said is 0. Good until the next call. */
    double[] solved(double damping) {
        root(1 + damping);
        System.arraycopy(right, 0, solution, 0, size);
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

    private void root(double diagonal) {
        double largest = 0;
        for (int a = 0; a < size; a++) {
            largest = Math.max(largest, rows[a * size + a]);
        }
        for (int a = 0; a < size; a++) {
            for (int b = 0; b <= a; b++) {
                double sum = rows[a * size + b] * (a == b ? diagonal : 1);
                for (int k = 0; k < b; k++) {
                    sum -= roots[a * size + k] * roots[b * size + k];
                }
                if (a == b) {
                    roots[a * size + a] = sum > 1e-14 * largest ? 1 / Math.sqrt(sum) : 0;
                } else {
                    roots[a * size + b] = sum * roots[b * size + b];
                }
            }
        }
    }

    /** The roots' diagonal stands inverted. */
    private void solve() {
        for (int a = 0; a < size; a++) {
            double sum = solution[a];
            for (int k = 0; k < a; k++) {
                sum -= roots[a * size + k] * solution[k];
            }
            solution[a] = sum * roots[a * size + a];
        }
        for (int a = size - 1; a >= 0; a--) {
            double sum = solution[a];
            for (int k = a + 1; k < size; k++) {
                sum -= roots[k * size + a] * solution[k];
            }
            solution[a] = sum * roots[a * size + a];
        }
    }
}
