package turnalike.match;

import java.util.Arrays;
import java.util.function.Predicate;

/**
 * The shortest open path through a passing set, exactly. For each group of pieces and each piece of it as the last, the shortest path through
 * the group that ends there follows from the groups one smaller: M. Held and R. M. Karp, J. SIAM 10 (1962) 196–210 (from memory). With
 * spares, the groups as large as the row and passing are compared. Costs 2^m·m² steps and 2^m·m numbers for m pieces.
 */
final class ExactRow {
    /** 16 pieces take some 17 million steps and 8 MB. */
    static final int MOST_PIECES = 16;

    private final Differences difference;
    private final int places;
    private final double[][] shortest;

    ExactRow(Differences difference, int places) {
        this.difference = difference;
        this.places = places;
        shortest = new double[1 << difference.count()][];
    }

    /** The pieces in order, any piece at any place. */
    int[] solve(SetRule rule) {
        return solve(rule::passes, (piece, place) -> true);
    }

    /** The pieces in order, of each sort at the places that want it. */
    int[] solve(SortRules rules, RowSorts sorts) {
        return solve(rules::passes, (piece, place) -> sorts.ofPieces()
                .get(piece)
                .equals(sorts.ofPlaces().get(place)));
    }

    /** Whether a piece may stand at a place. */
    private interface Fits {
        boolean at(int piece, int place);
    }

    private int[] solve(Predicate<int[]> rule, Fits fits) {
        int pieces = difference.count();
        int bestGroup = 0;
        int bestLast = 0;
        double best = Double.POSITIVE_INFINITY;
        for (int group = 1; group < 1 << pieces; group++) {
            int size = Integer.bitCount(group);
            if (size > places) {
                continue;
            }
            shortest[group] = extend(group, fits);
            boolean any = Arrays.stream(shortest[group]).anyMatch(total -> total < Double.POSITIVE_INFINITY);
            if (size == places && any && rule.test(members(group))) {
                for (int last = 0; last < pieces; last++) {
                    if (shortest[group][last] < best) {
                        best = shortest[group][last];
                        bestGroup = group;
                        bestLast = last;
                    }
                }
            }
        }
        return path(bestGroup, bestLast);
    }

    private double[] extend(int group, Fits fits) {
        int place = Integer.bitCount(group) - 1;
        double[] ending = new double[difference.count()];
        Arrays.fill(ending, Double.POSITIVE_INFINITY);
        for (int last = 0; last < ending.length; last++) {
            int rest = group & ~(1 << last);
            if (rest == group || !fits.at(last, place)) {
                continue;
            }
            if (rest == 0) {
                ending[last] = 0;
                continue;
            }
            double[] before = shortest[rest];
            for (int previous = 0; previous < ending.length; previous++) {
                ending[last] = Math.min(ending[last], before[previous] + difference.between(previous, last));
            }
        }
        return ending;
    }

    /** Walks back along the steps that made the shortest path. */
    private int[] path(int group, int last) {
        int[] path = new int[places];
        int left = group;
        int at = last;
        for (int place = places - 1; place >= 0; place--) {
            path[place] = at;
            int rest = left & ~(1 << at);
            int previous = at;
            for (int p = 0; p < difference.count() && rest != 0; p++) {
                if (shortest[rest][p] + difference.between(p, at) == shortest[left][at]) {
                    previous = p;
                    break;
                }
            }
            left = rest;
            at = previous;
        }
        return path;
    }

    private int[] members(int group) {
        int[] members = new int[Integer.bitCount(group)];
        int filled = 0;
        for (int i = 0; i < difference.count(); i++) {
            if (((group >>> i) & 1) == 1) {
                members[filled++] = i;
            }
        }
        return members;
    }
}
