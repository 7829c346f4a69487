package turnalike.turning;

import java.util.function.BiConsumer;

/**
 * The largest eigenvalues of an operator T that is symmetric in a weighted product, by simultaneous iteration of a few vectors with a
 * small eigenproblem of their own at each turn (Rayleigh–Ritz). For a beam T takes a shape to its deflection under its own inertia, and
 * this is Stodola's method for several modes at once (Timoshenko, Vibration Problems in Engineering; from memory).
 *
 * <p>Converges as the ratio of the first eigenvalue left out to the one sought; a vector more than is asked for brings the beam's
 * first two within 10⁻¹⁰ in a few turns.
 */
final class SubspaceIteration {
    private static final int MOST_TURNS = 400;

    /** Normed, as they stand after the last turn. */
    final double[][] shape;

    /** Largest first. */
    final double[] value;

    private final double[] weight;
    private final BiConsumer<double[], double[]> operator;

    /**
     * @param start shapes to begin with, none a mixture of the others; kept and changed
     * @param weight of each entry in the product
     * @param operator writes T of its first argument into its second
     */
    SubspaceIteration(double[][] start, double[] weight, BiConsumer<double[], double[]> operator) {
        this.weight = weight;
        this.operator = operator;
        this.shape = start;
        this.value = new double[start.length];
    }

    /**
     * Iterates until none of the first {@code wanted} values changes by more than a share of itself. The values' errors are the squares of
     * the shapes', and both shrink at every turn, so a value that has settled within 10⁻¹⁰ has a shape good to about 10⁻⁵.
     */
    SubspaceIteration settle(int wanted, double share) {
        double[][] image = new double[shape.length][shape[0].length];
        orthonormalise(shape);
        for (int turn = 0; turn < MOST_TURNS; turn++) {
            for (int k = 0; k < shape.length; k++) {
                operator.accept(shape[k], image[k]);
            }
            JacobiEigen ritz = JacobiEigen.of(products(image));
            double change = 0;
            for (int k = 0; k < shape.length; k++) {
                if (k < wanted) {
                    change = Math.max(change, Math.abs(ritz.value(k) - value[k]) / ritz.value(k));
                }
                value[k] = ritz.value(k);
                combine(image, ritz.vector(k), shape[k]);
            }
            orthonormalise(shape);
            if (change < share) {
                break;
            }
        }
        return this;
    }

    private double[][] products(double[][] image) {
        double[][] out = new double[shape.length][shape.length];
        for (int i = 0; i < shape.length; i++) {
            for (int k = 0; k <= i; k++) {
                // Symmetric but for the quadrature's own error, which the mean halves.
                double both = (product(shape[i], image[k]) + product(shape[k], image[i])) / 2;
                out[i][k] = both;
                out[k][i] = both;
            }
        }
        return out;
    }

    private static void combine(double[][] parts, double[] shares, double[] out) {
        for (int i = 0; i < out.length; i++) {
            double sum = 0;
            for (int k = 0; k < parts.length; k++) {
                sum += shares[k] * parts[k][i];
            }
            out[i] = sum;
        }
    }

    private double product(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += weight[i] * one[i] * other[i];
        }
        return sum;
    }

    /** Modified Gram–Schmidt, twice over, since what the first pass leaves of a much larger neighbour is not small. */
    private void orthonormalise(double[][] vectors) {
        for (int k = 0; k < vectors.length; k++) {
            for (int pass = 0; pass < 2; pass++) {
                for (int before = 0; before < k; before++) {
                    double share = product(vectors[k], vectors[before]);
                    for (int i = 0; i < weight.length; i++) {
                        vectors[k][i] -= share * vectors[before][i];
                    }
                }
                double size = Math.sqrt(product(vectors[k], vectors[k]));
                for (int i = 0; i < weight.length; i++) {
                    vectors[k][i] /= size;
                }
            }
        }
    }
}
