package turnalike.match;

import java.util.Arrays;

/**
 * The best grouping, exactly: for each collection of pieces, either its first piece is left over or it stands in one of the groups it can
 * form there; what remains is a smaller collection, solved before.
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
            return pieces <= 400 && Permutations.choose(pieces, size) <= MOST_STEPS;
        }
        return pieces <= 20 && Math.pow(2, pieces) * Permutations.choose(pieces - 1, size - 1) * layers() <= MOST_STEPS;
    }

    /** The groups one after another, then what is left over. */
    int[] solve() {
        return count == 1 ? oneGroup() : allGroups();
    }

    private int[] oneGroup() {
        BestChoice best = new BestChoice();
        int[] chosen = new int[size];
        choose(chosen, 0, 0, 0, best);
        return withRest(best.group);
    }

    private void choose(int[] chosen, int filled, int from, double sum, BestChoice best) {
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
        int all = (1 << difference.length) - 1;
        GroupTable table = new GroupTable(all);
        for (int rest = 1; rest <= all; rest++) {
            int first = Integer.numberOfTrailingZeros(rest);
            int others = rest & (rest - 1);
            table.leaveOver(rest, 1 << first, others);
            table.form(rest, 1 << first, others, size - 1, 0);
        }
        return unfold(all, table);
    }

    /**
     * For each collection of pieces and each layer, the least total it can be grouped with and the group (or the one piece left over) to
     * take first. Layer j means that size·j more pieces of the collection are left over than would not make a group anyway.
     */
    private final class GroupTable {
        final double[][] least;
        final int[][] taken;

        GroupTable(int all) {
            least = new double[layers()][all + 1];
            taken = new int[layers()][all + 1];
            for (double[] layer : least) {
                Arrays.fill(layer, Double.POSITIVE_INFINITY);
            }
            least[0][0] = 0;
        }

        /** In which layer {@code others} is when {@code rest}, in layer {@code layer}, leaves its first piece over; −1 for none. */
        int after(int rest, int layer) {
            return Integer.bitCount(rest) % size > 0 ? layer : layer - 1;
        }

        void leaveOver(int rest, int first, int others) {
            for (int layer = 0; layer < least.length; layer++) {
                int after = after(rest, layer);
                if (after >= 0) {
                    least[layer][rest] = least[after][others];
                    taken[layer][rest] = first;
                }
            }
        }

        /** Tries every group of {@code group} and {@code need} of the others; {@code sum} is the total within it so far. */
        void form(int rest, int group, int others, int need, double sum) {
            if (need == 0) {
                for (int layer = 0; layer < least.length; layer++) {
                    double total = sum + least[layer][rest ^ group];
                    if (total < least[layer][rest]) {
                        least[layer][rest] = total;
                        taken[layer][rest] = group;
                    }
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

    private int layers() {
        return left / size + 1;
    }

    private int[] unfold(int all, GroupTable table) {
        int[] grouped = new int[size * count];
        int filled = 0;
        int layer = layers() - 1;
        int rest = all;
        while (rest != 0) {
            int taken = table.taken[layer][rest];
            if (Integer.bitCount(taken) == size) {
                for (int i = 0; i < difference.length; i++) {
                    if (((taken >>> i) & 1) == 1) {
                        grouped[filled++] = i;
                    }
                }
            } else {
                layer = table.after(rest, layer);
            }
            rest ^= taken;
        }
        return withRest(grouped);
    }

    private static final class BestChoice {
        double sum = Double.POSITIVE_INFINITY;
        int[] group = new int[0];
    }
}
