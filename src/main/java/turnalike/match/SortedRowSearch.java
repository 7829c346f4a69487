package turnalike.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import turnalike.effort.Effort;

/**
 * A short open path whose places want sorts, without proof: from the nearest neighbour each time, of the sets most alike in mass or of one grown so, then by swapping two pieces of one sort,
 * turning stretches that want the same from either end, and exchanging pieces for spares of their sort, as long as that helps; then again
 * from the best with a few pieces swapped. Each pass over a row of n costs n² steps.
 */
final class SortedRowSearch {
    private static final double GAIN = 1e-12;
    private static final int MOST_SWAPS = 4;

    private final Differences difference;
    private final RowSorts sorts;
    private final int[] wants;
    private final SortRules rules;
    private final SplitMix64 dice = new SplitMix64(3);
    private final double least;
    private final List<List<Integer>> placesOf = new ArrayList<>();
    private int[] row;
    private final List<int[]> spares = new ArrayList<>();

    SortedRowSearch(Differences difference, RowSorts sorts, SortRules rules) {
        this.difference = difference;
        this.sorts = sorts;
        this.rules = rules;
        this.wants = sorts.ofPlaces().stream().mapToInt(sort -> sort).toArray();
        least = GAIN * difference.largest() + Double.MIN_NORMAL;
        List<List<Integer>> open = new ArrayList<>();
        for (int sort = 0; sort < sorts.count(); sort++) {
            int[] set = rules.alikest(sort);
            open.add(new ArrayList<>(Arrays.stream(set).boxed().toList()));
            List<Integer> chosen = List.copyOf(open.get(sort));
            spares.add(sorts.pieces(sort).stream()
                    .filter(piece -> !chosen.contains(piece))
                    .mapToInt(piece -> piece)
                    .toArray());
            placesOf.add(new ArrayList<>());
        }
        row = new int[wants.length];
        for (int place = 0; place < wants.length; place++) {
            placesOf.get(wants[place]).add(place);
            row[place] = nearest(open.get(wants[place]), place);
        }
    }

    private int nearest(List<Integer> open, int place) {
        int best = 0;
        for (int i = 1; i < open.size() && place > 0; i++) {
            if (difference.between(row[place - 1], open.get(i)) < difference.between(row[place - 1], open.get(best))) {
                best = i;
            }
        }
        return open.remove(best);
    }

    /** Improves until the effort is spent, {@code bound} is met or {@code rounds} kicks in a row found nothing. */
    int[] solve(double bound, int rounds, Effort effort) {
        improve();
        startFromGrown();
        int[] best = row.clone();
        List<int[]> bestSpares = copy(spares);
        double bestTotal = total(best);
        int nothing = 0;
        while (bestTotal > bound && nothing < rounds && row.length > 1 && !effort.spent()) {
            row = best.clone();
            spares.clear();
            spares.addAll(copy(bestSpares));
            kick();
            improve();
            nothing++;
            if (total(row) < bestTotal - least) {
                best = row.clone();
                bestSpares = copy(spares);
                bestTotal = total(best);
                nothing = 0;
            }
        }
        return best;
    }

    /** Where another start is better from the outset: pieces alike in mass may look nothing like one another, and thousands hide those that do. */
    private void startFromGrown() {
        if (spares.stream().allMatch(own -> own.length == 0)) {
            return;
        }
        int[] grown = new GrownSortedRow(difference, sorts, rules).best();
        if (grown.length > 0 && total(grown) < total(row) - least) {
            row = grown;
            for (int sort = 0; sort < spares.size(); sort++) {
                spares.set(
                        sort,
                        sorts.pieces(sort).stream()
                                .filter(piece -> Arrays.stream(grown).noneMatch(each -> each == piece))
                                .mapToInt(piece -> piece)
                                .toArray());
            }
            improve();
        }
    }

    private static List<int[]> copy(List<int[]> lists) {
        return lists.stream().map(int[]::clone).toList();
    }

    double total(int[] path) {
        double sum = 0;
        for (int i = 1; i < path.length; i++) {
            sum += difference.between(path[i - 1], path[i]);
        }
        return sum;
    }

    private void improve() {
        boolean moved = true;
        while (moved) {
            moved = swapPairs();
            moved |= turnStretches();
            moved |= exchangeSpares();
        }
    }

    /** What the joints at these two places add up to, a joint between them once. */
    private double joints(int one, int other) {
        double sum = joint(one - 1) + joint(one);
        sum += other - 1 == one ? 0 : joint(other - 1);
        return sum + (other == one ? 0 : joint(other));
    }

    /** Across from a place to the next; beyond the ends nothing. */
    private double joint(int place) {
        return place < 0 || place + 1 >= row.length ? 0 : difference.between(row[place], row[place + 1]);
    }

    private boolean swapPairs() {
        boolean moved = false;
        for (List<Integer> places : placesOf) {
            for (int i = 0; i < places.size(); i++) {
                for (int j = i + 1; j < places.size(); j++) {
                    double now = joints(places.get(i), places.get(j));
                    swap(places.get(i), places.get(j));
                    if (now - joints(places.get(i), places.get(j)) > least) {
                        moved = true;
                    } else {
                        swap(places.get(i), places.get(j));
                    }
                }
            }
        }
        return moved;
    }

    private void swap(int one, int other) {
        int held = row[one];
        row[one] = row[other];
        row[other] = held;
    }

    private boolean turnStretches() {
        boolean moved = false;
        for (int middle = 0; middle < 2 * row.length - 1; middle++) {
            // From the middle out, as long as the places want the same on both sides.
            int from = middle / 2;
            int to = (middle + 1) / 2;
            while (from >= 0 && to < row.length && wants[from] == wants[to]) {
                double left = from == 0 ? 0 : difference.between(row[from - 1], row[to]);
                double right = to == row.length - 1 ? 0 : difference.between(row[from], row[to + 1]);
                if (joint(from - 1) + joint(to) - left - right > least) {
                    for (int i = from, j = to; i < j; i++, j--) {
                        swap(i, j);
                    }
                    moved = true;
                }
                from--;
                to++;
            }
        }
        return moved;
    }

    private boolean exchangeSpares() {
        boolean moved = false;
        for (int place = 0; place < row.length; place++) {
            if (spares.get(wants[place]).length > 0) {
                moved |= exchangeAt(place, difference.beside(row, place - 1), difference.beside(row, place + 1));
            }
        }
        return moved;
    }

    private boolean exchangeAt(int place, double[] left, double[] right) {
        boolean moved = false;
        int[] own = spares.get(wants[place]);
        for (int s = 0; s < own.length; s++) {
            int held = row[place];
            double now = left[held] + right[held];
            if (now - left[own[s]] - right[own[s]] > least) {
                row[place] = own[s];
                if (rules.passes(row, wants[place])) {
                    own[s] = held;
                    moved = true;
                } else {
                    row[place] = held;
                }
            }
        }
        return moved;
    }

    /** Swaps a few pieces of one sort at random, or brings in a spare. */
    private void kick() {
        int swaps = 2 + dice.below(MOST_SWAPS - 1);
        for (int i = 0; i < swaps; i++) {
            int place = dice.below(row.length);
            List<Integer> alike = placesOf.get(wants[place]);
            swap(place, alike.get(dice.below(alike.size())));
        }
        int place = dice.below(row.length);
        int[] own = spares.get(wants[place]);
        if (own.length > 0 && dice.below(3) == 0) {
            otherWeight(wants[place], own);
        } else if (own.length > 0) {
            int s = dice.below(own.length);
            int held = row[place];
            row[place] = own[s];
            if (rules.passes(row, wants[place])) {
                own[s] = held;
            } else {
                row[place] = held;
            }
        }
    }

    /** Takes lighter or heavier pieces of a sort in place of all it has: one at a time would not pass. */
    private void otherWeight(int sort, int[] own) {
        List<Integer> places = placesOf.get(sort);
        int[] set = rules.window(sort, dice.below(own.length + 1));
        if (!rules.passes(set, sort)) {
            return;
        }
        List<Integer> in = Arrays.stream(set).boxed().toList();
        List<Integer> out = new ArrayList<>(Arrays.stream(own).boxed().toList());
        List<Integer> fresh = new ArrayList<>(in);
        places.forEach(each -> fresh.remove((Integer) row[each]));
        for (int each : places) {
            if (!in.contains(row[each])) {
                out.add(row[each]);
                row[each] = fresh.remove(0);
            }
        }
        out.removeAll(in);
        Arrays.setAll(own, i -> out.get(i));
    }
}
