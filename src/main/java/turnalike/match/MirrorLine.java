package turnalike.match;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * A line through the axle in which the places mirror one another, and the wheel as seen along it. Of two places that mirror one another
 * the moments along the line are alike and those across it opposite.
 */
final class MirrorLine {
    /** The pairs, from one end of the line to the other: the place across to the one side, … */
    final int[] left;
    /** … and its mirror image. */
    final int[] right;

    /** The places on the line itself: none, one or two. */
    final int[] onLine;

    /** How far each place of a wheel of radius 1 lies along the line, and across it. */
    final double[] along;

    final double[] across;

    private final double cosine;
    private final double sine;

    /**
     * @param halves a compass with twice as many directions as the wheel has places
     * @param sum place k mirrors place sum − k
     */
    MirrorLine(PlaceDirections halves, int sum) {
        int n = halves.places / 2;
        along = new double[n];
        across = new double[n];
        for (int place = 0; place < n; place++) {
            along[place] = halves.cos[Math.floorMod(2 * place - sum, 2 * n)];
            across[place] = halves.sin[Math.floorMod(2 * place - sum, 2 * n)];
        }
        cosine = halves.cos[sum];
        sine = halves.sin[sum];
        onLine = IntStream.range(0, n)
                .filter(k -> Math.floorMod(sum - k, n) == k)
                .toArray();
        left = IntStream.range(0, n)
                .filter(k -> Math.floorMod(sum - k, n) != k && across[k] > 0)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> -along[k]))
                .mapToInt(Integer::intValue)
                .toArray();
        right = IntStream.of(left).map(k -> Math.floorMod(sum - k, n)).toArray();
    }

    int pairs() {
        return left.length;
    }

    double along(double xGMm, double yGMm) {
        return xGMm * cosine + yGMm * sine;
    }

    double across(double xGMm, double yGMm) {
        return yGMm * cosine - xGMm * sine;
    }
}
