package turnalike.pieces;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.units.Mass;

/**
 * Where a column's figures usually lie: within {@code width} of {@code centre}, both ends included.
 *
 * <p>Common practice, no source. With {@link #ENOUGH} or more others the centre is their median and the width six times their median
 * deviation scaled to a standard deviation, though no less than a few tolerances and no more than the rough width; with fewer the pattern's
 * own figure is the centre, or the median of at least {@link #FEW}, and the width is the rough one. Six keeps a sound file of hundreds of
 * pieces free of questions; medians keep one slip from hiding the next.
 *
 * @param centre in grams for the mass, in millimetres for the rest
 * @param width likewise
 */
record UsualRange(double centre, double width) {
    static final int ENOUGH = 5;
    static final int FEW = 3;

    private static final double DEVIATIONS = 6;
    private static final double MEDIAN_DEVIATION_TO_SIGMA = 1.4826; // of a normal distribution; from memory
    private static final double LEAST_TOLERANCES = 4;
    /** Wood of one species differs by about a tenth (one standard deviation of specific gravity; from memory), and three of them. */
    private static final double ROUGH_MASS = 0.30;

    private static final double ROUGH_LENGTH = 0.04;
    private static final double ROUGH_DIAMETER = 0.10;

    /** Where the column lies, from the others and the pattern; empty when neither says enough. */
    static Optional<UsualRange> of(
            Column column, List<Measures> others, Measures wanted, LikenessTolerances tolerances) {
        double[] figures = figures(column, others);
        OptionalDouble own = wanted.figure(column);
        if (figures.length >= ENOUGH) {
            double centre = median(figures);
            double spread =
                    median(Arrays.stream(figures).map(x -> Math.abs(x - centre)).toArray());
            double least = LEAST_TOLERANCES * tolerances.figure(column, Mass.ofGrams(centre));
            double most = Math.max(rough(column, centre), least);
            double width = DEVIATIONS * MEDIAN_DEVIATION_TO_SIGMA * spread;
            return Optional.of(new UsualRange(centre, Math.min(Math.max(width, least), most)));
        }
        if (own.isPresent()) {
            return Optional.of(new UsualRange(own.getAsDouble(), rough(column, own.getAsDouble())));
        }
        return figures.length < FEW ? Optional.empty() : Optional.of(roughly(column, median(figures)));
    }

    /** Around a centre with nothing known of the spread. */
    static UsualRange roughly(Column column, double centre) {
        return new UsualRange(centre, rough(column, centre));
    }

    boolean fits(double figure) {
        return Math.abs(figure - centre) <= width;
    }

    /** Well within: half the width, for an explanation that has many figures to choose from. */
    boolean fitsWell(double figure) {
        return Math.abs(figure - centre) <= width / 2;
    }

    static double[] figures(Column column, List<Measures> measures) {
        return measures.stream()
                .map(each -> each.figure(column))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
    }

    /** The median of at least one figure; the mean of the two in the middle when they are even in number. */
    static double median(double[] figures) {
        double[] sorted = figures.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    private static double rough(Column column, double centre) {
        return centre
                * switch (column.kind()) {
                    case MASS -> ROUGH_MASS;
                    case LENGTH, BALANCE, MARK -> ROUGH_LENGTH;
                    case DIAMETER -> ROUGH_DIAMETER;
                };
    }
}
