package turnalike.match;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import turnalike.pieces.AlikestNeighbours;
import turnalike.units.PlainNumber;

/**
 * Which sets pass: (heaviest − lightest) / mean at most a given share. When none does, the share is widened to the smallest that lets one
 * pass, so the search below has one rule only. Pieces are known by their index in the list given.
 */
final class SetRule {
    /** Told of one set after another, as piece indices in ascending mass; answers whether to go on. */
    interface Visit {
        boolean set(int[] pieces);
    }

    /** Shares that differ by less are the same: a printed tolerance is no exact double. */
    private static final double SAME = 1e-12;

    private final double[] massesG;
    private final Integer[] ascending;
    private final int places;
    private final double smallestShare;
    private final boolean wantedPasses;
    private final double share;

    SetRule(double[] massesG, int places, double wantedShare) {
        this.massesG = massesG.clone();
        this.places = places;
        ascending = new Integer[massesG.length];
        Arrays.setAll(ascending, i -> i);
        Arrays.sort(ascending, (a, b) -> Double.compare(massesG[a], massesG[b]));
        smallestShare = share(alikest());
        wantedPasses = smallestShare <= wantedShare * (1 + SAME) + SAME;
        share = Math.max(wantedShare, smallestShare) * (1 + SAME) + SAME;
    }

    /** What to tell the user: nothing, or that no set passes what was asked for. */
    List<String> warnings(double wantedPct) {
        if (wantedPasses) {
            return List.of();
        }
        return List.of(String.format(
                Locale.ROOT,
                "no %d pieces are within %s %% of one another in mass; the set placed is the most alike there is, within %s %%",
                places,
                wantedPct,
                told(100 * smallestShare, wantedPct)));
    }

    /** What to tell of a set that a person chose and that does not pass. */
    String unlike(int[] pieces, double wantedPct) {
        return String.format(
                Locale.ROOT,
                "the pieces placed are within %s %% of one another in mass, more than the tolerance for a set's weights, %s %%",
                told(100 * share(pieces), wantedPct),
                PlainNumber.exact(wantedPct));
    }

    /** To a tenth, or as fine as it takes to read as more than what was wanted. */
    private static String told(double pct, double wantedPct) {
        String tenth = String.format(Locale.ROOT, "%.1f", pct);
        return Double.parseDouble(tenth) > wantedPct ? tenth : String.format(Locale.ROOT, "%.2f", pct);
    }

    /** How far a set's share is above the one wanted; 0 when it passes. */
    static double misses(double share, double wantedShare) {
        return share <= wantedShare * (1 + SAME) + SAME ? 0 : share;
    }

    boolean passes(int[] pieces) {
        return share(pieces) <= share;
    }

    boolean passes(double lightestG, double heaviestG, double sumG) {
        return (heaviestG - lightestG) * places <= share * sumG;
    }

    double massG(int piece) {
        return massesG[piece];
    }

    /** Whether so many pieces are within what is allowed among themselves, of whatever set they may become part. */
    boolean passes(double lightestG, double heaviestG, double sumG, int count) {
        return (heaviestG - lightestG) * count <= share * sumG;
    }

    /** The set with the smallest share, a run of neighbours; of several the most typical. */
    int[] alikest() {
        if (places == 0) {
            return new int[0];
        }
        double[] ascendingG =
                Arrays.stream(ascending).mapToDouble(piece -> massesG[piece]).toArray();
        return window(AlikestNeighbours.first(ascendingG, places, first -> share(window(first)), SAME));
    }

    /** Calls for each passing set once, until told to stop; whether all were visited. */
    boolean each(Visit visit) {
        return extend(new int[places], 0, 0, 0, visit);
    }

    /** How many sets pass, counted no further than {@code most}. */
    long count(long most) {
        long[] count = new long[1];
        each(set -> ++count[0] < most);
        return count[0];
    }

    double share(int[] pieces) {
        double lightest = Double.POSITIVE_INFINITY;
        double heaviest = Double.NEGATIVE_INFINITY;
        double sum = 0;
        for (int piece : pieces) {
            lightest = Math.min(lightest, massesG[piece]);
            heaviest = Math.max(heaviest, massesG[piece]);
            sum += massesG[piece];
        }
        return (heaviest - lightest) * pieces.length / sum;
    }

    /** The set of neighbours in mass whose lightest has so many lighter beside it. */
    int[] window(int first) {
        int[] set = new int[places];
        Arrays.setAll(set, i -> ascending[first + i]);
        return set;
    }

    private boolean extend(int[] set, int filled, int from, double sumG, Visit visit) {
        if (filled == places) {
            double spreadG = massesG[set[places - 1]] - massesG[set[0]];
            return spreadG * places > share * sumG || visit.set(set.clone());
        }
        for (int i = from; i + places - filled <= ascending.length; i++) {
            double massG = massesG[ascending[i]];
            if (filled > 0 && hopeless(massesG[set[0]], massG, sumG, places - filled)) {
                return true;
            }
            set[filled] = ascending[i];
            if (!extend(set, filled + 1, i + 1, sumG + massG, visit)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether no set passes that has this lightest, these pieces and {@code open} more from {@code massG} up. Were all of those as heavy as the
     * heaviest, h, the mean would be (sum + open·h) / places; the spread h − lightest then grows faster with h than what is allowed.
     */
    private boolean hopeless(double lightestG, double massG, double sumG, int open) {
        double slope = places - share * open;
        return slope > 0 && massG * slope > share * sumG + lightestG * places + SAME * massG;
    }
}
