package turnalike.match;

import java.util.Arrays;
import java.util.List;

/** What no row can be below. */
final class RowBound {
    private static final int ROUNDS = 300;

    private RowBound() {}

    /**
     * For a row of all pieces. A path is a spanning tree, so the least spanning tree is a bound; a price on each piece, paid once for every
     * neighbour and given back twice, changes no path but for its ends and makes trees that look like paths cheap. The prices are raised
     * where a tree branches: M. Held and R. M. Karp, Operations Research 18 (1970) 1138–1162 (from memory), with the two ends joined to a
     * piece that differs from none.
     *
     * @param reached the total of some row, which sets the size of the steps
     */
    static double ofAll(Differences difference, double reached) {
        int n = difference.count();
        if (n < 3) {
            return reached;
        }
        double[] price = new double[n];
        int[] degree = new int[n];
        double best = 0;
        double pace = 1;
        int stalled = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double bound = priced(difference, price, degree);
            stalled = bound > best + 1e-9 * reached ? 0 : stalled + 1;
            best = Math.max(best, bound);
            if (stalled == 10) {
                pace /= 2;
                stalled = 0;
            }
            int squares = 0;
            for (int d : degree) {
                squares += (d - 2) * (d - 2);
            }
            if (squares == 0 || best >= reached) {
                break;
            }
            double step = pace * (reached - bound) / squares;
            for (int i = 0; i < n; i++) {
                price[i] += step * (degree[i] - 2);
            }
        }
        return Math.min(best, reached);
    }

    /** For a row of some of the pieces: a path is a forest, and this is the lightest forest of as many joints. */
    static double ofSome(Differences difference, int places) {
        int n = difference.count();
        int[] degree = new int[n];
        double[] joints = tree(difference, new double[n], degree);
        Arrays.sort(joints);
        double sum = 0;
        for (int i = 0; i < places - 1; i++) {
            sum += joints[i];
        }
        return sum;
    }

    /**
     * For a row whose places want sorts: no joint is below the least difference of two pieces of its sorts; and a stretch of places that want
     * one sort is a row of some of its pieces, for which {@link #ofSome} holds.
     */
    static double ofSorts(Differences difference, RowSorts sorts) {
        double sum = 0;
        List<Integer> wants = sorts.ofPlaces();
        int from = 0;
        for (int place = 1; place <= wants.size(); place++) {
            if (place < wants.size() && wants.get(place).equals(wants.get(from))) {
                continue;
            }
            int[] own = sorts.pieces(wants.get(from)).stream().mapToInt(i -> i).toArray();
            sum += ofSome(difference.among(own), place - from);
            sum += place < wants.size() ? leastBetween(difference, own, sorts.pieces(wants.get(place))) : 0;
            from = place;
        }
        return sum;
    }

    private static double leastBetween(Differences difference, int[] some, List<Integer> others) {
        double least = Double.POSITIVE_INFINITY;
        for (int one : some) {
            for (int other : others) {
                least = Math.min(least, difference.between(one, other));
            }
        }
        return least;
    }

    /** Tree with prices, less what the prices give back; fills in how many neighbours each piece has, the ends' dummy included. */
    private static double priced(Differences difference, double[] price, int[] degree) {
        double bound = 0;
        for (double joint : tree(difference, price, degree)) {
            bound += joint;
        }
        int cheapest = -1;
        int second = -1;
        for (int i = 0; i < price.length; i++) {
            bound -= 2 * price[i];
            if (cheapest < 0 || price[i] < price[cheapest]) {
                second = cheapest;
                cheapest = i;
            } else if (second < 0 || price[i] < price[second]) {
                second = i;
            }
        }
        degree[cheapest]++;
        degree[second]++;
        return bound + price[cheapest] + price[second];
    }

    /** The least spanning tree, joint by joint: Prim's method over all pairs, n² steps. */
    private static double[] tree(Differences difference, double[] price, int[] degree) {
        int n = price.length;
        Arrays.fill(degree, 0);
        double[] joints = new double[n - 1];
        double[] nearest = new double[n];
        int[] from = new int[n];
        boolean[] in = new boolean[n];
        Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        int at = 0;
        for (int k = 0; k < n - 1; k++) {
            in[at] = true;
            int next = -1;
            for (int j = 0; j < n; j++) {
                if (!in[j]) {
                    double priced = difference.between(at, j) + price[at] + price[j];
                    if (priced < nearest[j]) {
                        nearest[j] = priced;
                        from[j] = at;
                    }
                    if (next < 0 || nearest[j] < nearest[next]) {
                        next = j;
                    }
                }
            }
            joints[k] = nearest[next];
            degree[next]++;
            degree[from[next]]++;
            at = next;
        }
        return joints;
    }
}
