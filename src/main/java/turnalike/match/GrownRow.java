package turnalike.match;

/**
 * Rows that grow at one end by whichever piece differs least from the last and keeps the set within its rule, each from another piece; the shortest of
 * them. Costs n·places steps for each.
 */
final class GrownRow {
    private static final int MOST_ROWS = 40;

    /** So many pieces are looked at in all, some tenths of a second. */
    private static final long MOST_STEPS = 20_000_000;

    private final Differences difference;
    private final SetRule rule;

    GrownRow(Differences difference, SetRule rule) {
        this.difference = difference;
        this.rule = rule;
    }

    /** The pieces in order; none where no row grew to its end. */
    int[] best(int places) {
        int pieces = difference.count();
        long may = Math.max(1, MOST_STEPS / ((long) pieces * places));
        int rows = (int) Math.min(Math.min(MOST_ROWS, pieces), may);
        int[] best = new int[0];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < rows; i++) {
            int[] grown = from((int) ((long) i * pieces / rows), places);
            if (grown.length == places && rule.passes(grown) && total(grown) < least) {
                best = grown;
                least = total(grown);
            }
        }
        return best;
    }

    private int[] from(int first, int places) {
        boolean[] in = new boolean[difference.count()];
        int[] row = new int[places];
        row[0] = first;
        in[first] = true;
        double lightest = rule.massG(first);
        double heaviest = lightest;
        double sum = lightest;
        for (int filled = 1; filled < places; filled++) {
            int next = -1;
            double least = Double.POSITIVE_INFINITY;
            for (int piece = 0; piece < in.length; piece++) {
                double mass = rule.massG(piece);
                if (!in[piece]
                        && rule.passes(Math.min(lightest, mass), Math.max(heaviest, mass), sum + mass, filled + 1)
                        && difference.between(row[filled - 1], piece) < least) {
                    next = piece;
                    least = difference.between(row[filled - 1], piece);
                }
            }
            if (next < 0) {
                return new int[0];
            }
            row[filled] = next;
            in[next] = true;
            lightest = Math.min(lightest, rule.massG(next));
            heaviest = Math.max(heaviest, rule.massG(next));
            sum += rule.massG(next);
        }
        return row;
    }

    private double total(int[] row) {
        double sum = 0;
        for (int i = 1; i < row.length; i++) {
            sum += difference.between(row[i - 1], row[i]);
        }
        return sum;
    }
}
