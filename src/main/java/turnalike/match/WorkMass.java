package turnalike.match;

import java.util.List;
import java.util.Optional;
import turnalike.units.Mass;

/**
 * What the pieces turned so far weigh: where the work runs, and how it scatters.
 *
 * @param count how many were weighed, at least {@link #FEWEST}; {@link IllegalArgumentException} below
 * @param meanG their mean, above zero
 * @param scatterG their standard deviation, with count - 1; zero or above
 */
public record WorkMass(int count, double meanG, double scatterG) {
    /** From fewer pieces a scatter says next to nothing (common practice, no source). */
    public static final int FEWEST = 5;

    /** The logistic curve so scaled lies within 0.01 of the normal law (from memory). */
    private static final double LOGISTIC = 1.702;

    public WorkMass {
        if (count < FEWEST || !(meanG > 0) || !(scatterG >= 0)) {
            throw new IllegalArgumentException(
                    "no work of %d pieces at %s g with scatter %s g".formatted(count, meanG, scatterG));
        }
    }

    /**
     * {@return where the work runs; empty with fewer than {@link #FEWEST} pieces}
     *
     * @param weighed every piece that was weighed, whether it found a place or not
     */
    public static Optional<WorkMass> of(List<Mass> weighed) {
        if (weighed.size() < FEWEST) {
            return Optional.empty();
        }
        double mean = weighed.stream().mapToDouble(Mass::grams).average().orElseThrow();
        double squares = weighed.stream()
                .mapToDouble(mass -> (mass.grams() - mean) * (mass.grams() - mean))
                .sum();
        return Optional.of(new WorkMass(weighed.size(), mean, Math.sqrt(squares / (weighed.size() - 1))));
    }

    /**
     * How likely the next piece falls within a range, to compare ranges with: by a logistic curve in the normal law's place, which like it
     * is symmetric and falls off from the mean.
     */
    double likelihood(double fromG, double toG) {
        double scaleG = Math.max(scatterG * Math.sqrt(1 + 1.0 / count), 1e-9 * meanG) / LOGISTIC;
        return share((toG - meanG) / scaleG) - share((fromG - meanG) / scaleG);
    }

    private static double share(double at) {
        return 1 / (1 + Math.exp(-at));
    }
}
