package turnalike.pieces;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Which of the runs of so many neighbours in order of mass to take: of all that are equally the narrowest, thousands where many pieces weigh the same,
 * the one whose middle lies nearest the median of all masses, as what is typical is most easily matched, mended and repeated; of those equally near the
 * lightest. A choice that leaves out no mass between its least and greatest is never wider than one that does, so only runs are looked at.
 */
public final class AlikestNeighbours {
    /** Masses are told apart no finer than this, which taking one from another may get wrong; no scale comes near it. */
    public static final double SAME_G = 1e-9;

    private AlikestNeighbours() {}

    /**
     * {@return where in the order the run begins}
     *
     * @param ascendingG the masses, in grams, each at least as great as the one before
     * @param many how many belong to a run, from 1 to all
     * @param width how far apart a run is, by where it begins
     * @param same widths that differ by no more are the same
     */
    public static int first(double[] ascendingG, int many, IntToDoubleFunction width, double same) {
        int last = ascendingG.length - many;
        if (many < 1 || last < 0) {
            throw new IllegalArgumentException("a run has 1 to %d masses, was %d".formatted(ascendingG.length, many));
        }
        double[] widths = IntStream.rangeClosed(0, last).mapToDouble(width).toArray();
        double least = Arrays.stream(widths).min().orElseThrow();
        double medianG = middle(ascendingG, (ascendingG.length - 1) / 2, ascendingG.length / 2);
        int best = 0;
        double nearestG = Double.POSITIVE_INFINITY;
        for (int first = 0; first <= last; first++) {
            double offG = Math.abs(middle(ascendingG, first, first + many - 1) - medianG);
            if (widths[first] <= least + same && offG < nearestG - SAME_G) {
                best = first;
                nearestG = offG;
            }
        }
        return best;
    }

    private static double middle(double[] ascendingG, int from, int to) {
        return (ascendingG[from] + ascendingG[to]) / 2;
    }
}
