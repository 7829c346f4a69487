package turnalike.match;

import java.util.Arrays;

/**
 * The best grouping, exactly: for each collection of pieces, either its first piece is left over or it stands in one of the groups it can
 * form there; what remains is a smaller collection, solved before. How many were left over so far follows from how many pieces are gone.
 */
final class ExactGroups {
    private static final double MOST_STEPS = 4e7;

    private final double[][] difference;
    private final int size;
    private final int count;
    private final int left;

    ExactGroups(double[][] difference, int size, int count) {
        this.difference = difference;
        this.size = size;
        this.count = count;
        left = difference.length - size * count;
    }

    /** Whether it can be done in well under a second. */
    boolean fits() {
        int pieces = difference.length;
        if (count == 1) {
            return pieces <= 400 && Orders.choose(pieces, size) <= MOST_STEPS;
        }
        return pieces <= 20 && left < size && Math.pow(2, pieces) * Orders.choose(pieces - 1, size - 1) <= MOST_STEPS;
    }

    /** The groups one after another, then what is left over. */
    int[] solve() {
        return count == 1 ? oneGroup() : allGroups();
    }

    private int[] oneGroup() {
        Best best = new Best();
        int[] chosen = new int[size];
        choose(chosen, 0, 0, 0, best);
        return withRest(best.group);
    }

    private void choose(int[] chosen, int filled, int from, double sum, Best best) {
        if (sum >= best.sum) {
            return;
        }
        if (filled == size) {
            best.sum = sum;
            best.group = chosen.clone();
            return;
        }
        for (int i = from; i + size - filled <= difference.length; i++) {
            double more = sum;
            for (int k = 0; k < filled; k++) {
                more += difference[chosen[k]][i];
            }
            chosen[filled] = i;
            choose(chosen, filled + 1, i + 1, more, best);
        }
    }

    private int[] withRest(int[] front) {
        int[] order = Arrays.copyOf(front, difference.length);
        int filled = front.length;
        for (int i = 0; i < difference.length; i++) {
            int piece = i;
            if (Arrays.stream(front).noneMatch(p -> p == piece)) {
                order[filled++] = i;
            }
        }
        return order;
    }

    private int[] allGroups() {
        int pieces = difference.length;
        int all = (1 << pieces) - 1;
        Table table = new Table(all);
        for (int rest = 1; rest <= all; rest++) {
            int first = Integer.numberOfTrailingZeros(rest);
            int others = rest & (rest - 1);
            if (Integer.bitCount(rest) % size > 0) {
                table.least[rest] = table.least[others];
                table.taken[rest] = 1 << first;
            }
            table.form(rest, 1 << first, others, size - 1, 0);
        }
        return unfold(all, table.taken);
    }

    /** For each collection of pieces, the least total it can be grouped with and the group (or the one piece left over) to take first. */
    private final class Table {
        final double[] least;
        final int[] taken;

        Table(int all) {
            least = new double[all + 1];
            taken = new int[all + 1];
            Arrays.fill(least, Double.POSITIVE_INFINITY);
            least[0] = 0;
        }

        /** Tries every group of {@code group} and {@code need} of the others; {@code sum} is the total within it so far. */
        void form(int rest, int group, int others, int need, double sum) {
            if (need == 0) {
                double total = sum + least[rest ^ group];
                if (total < least[rest]) {
                    least[rest] = total;
                    taken[rest] = group;
                }
                return;
            }
            for (int left = others; left != 0; left &= left - 1) {
                int mate = Integer.numberOfTrailingZeros(left);
                double more = sum;
                for (int in = group; in != 0; in &= in - 1) {
                    more += difference[Integer.numberOfTrailingZeros(in)][mate];
                }
                form(rest, group | (1 << mate), left & (left - 1), need - 1, more);
            }
        }
    }

    private int[] unfold(int all, int[] taken) {
        int[] grouped = new int[size * count];
        int filled = 0;
        for (int rest = all; rest != 0; rest ^= taken[rest]) {
            if (Integer.bitCount(taken[rest]) == size) {
                for (int i = 0; i < difference.length; i++) {
                    if (((taken[rest] >>> i) & 1) == 1) {
                        grouped[filled++] = i;
                    }
                }
            }
        }
        return withRest(grouped);
    }

    private static final class Best {
        double sum = Double.POSITIVE_INFINITY;
        int[] group = new int[0];
    }
}
