package turnalike.match;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows of sorts that grow at one end by whichever piece of the sort that the next place wants differs least from the last and keeps its sort within
 * its rule, each from another piece; the shortest of them. Costs n·places steps for each.
 */
final class GrownSortedRow {
    private static final int MOST_ROWS = 40;

    /** So many pieces are looked at in all, some tenths of a second. */
    private static final long MOST_STEPS = 20_000_000;

    private final Differences difference;
    private final SortRules rules;
    private final int[] wants;
    private final List<List<Integer>> pieces = new ArrayList<>();

    GrownSortedRow(Differences difference, RowSorts sorts, SortRules rules) {
        this.difference = difference;
        this.rules = rules;
        this.wants = sorts.ofPlaces().stream().mapToInt(i -> i).toArray();
        for (int sort = 0; sort < sorts.count(); sort++) {
            pieces.add(sorts.pieces(sort));
        }
    }

    /** The pieces in order; none where no row grew to its end. */
    int[] best() {
        List<Integer> firsts = pieces.get(wants[0]);
        long may = Math.max(1, MOST_STEPS / ((long) difference.count() * wants.length));
        int rows = (int) Math.min(Math.min(MOST_ROWS, firsts.size()), may);
        int[] best = new int[0];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < rows; i++) {
            int[] grown = from(firsts.get((int) ((long) i * firsts.size() / rows)));
            if (grown.length == wants.length && rules.passes(grown) && total(grown) < least) {
                best = grown;
                least = total(grown);
            }
        }
        return best;
    }

    private int[] from(int first) {
        SortRules.Growing growing = rules.growing();
        boolean[] in = new boolean[difference.count()];
        int[] row = new int[wants.length];
        row[0] = first;
        for (int place = 0; place < row.length; place++) {
            int next = place == 0 ? first : nearest(row[place - 1], wants[place], in, growing);
            if (next < 0) {
                return new int[0];
            }
            row[place] = next;
            in[next] = true;
            growing.take(wants[place], next);
        }
        return row;
    }

    private int nearest(int last, int sort, boolean[] in, SortRules.Growing growing) {
        int next = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int piece : pieces.get(sort)) {
            if (!in[piece] && difference.between(last, piece) < least && growing.mayTake(sort, piece)) {
                next = piece;
                least = difference.between(last, piece);
            }
        }
        return next;
    }

    private double total(int[] row) {
        double sum = 0;
        for (int i = 1; i < row.length; i++) {
            sum += difference.between(row[i - 1], row[i]);
        }
        return sum;
    }
}
