package turnalike.pieces.blanks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The choice of so many masses whose greatest less least is smallest. Exact: in order of mass a best choice is a run of neighbours, so all
 * runs are looked at. Of runs equally narrow the lightest is taken.
 *
 * @param chosen indices into the masses, in the order of the masses given
 * @param spreadG the greatest chosen less the least, in grams; 0 for none
 */
record LeastSpread(List<Integer> chosen, double spreadG) {
    LeastSpread {
        chosen = List.copyOf(chosen);
    }

    /** Chooses {@code count} of the masses, or all of them where there are fewer. */
    static LeastSpread of(List<Double> massesG, int count) {
        List<Integer> order =
                new ArrayList<>(IntStream.range(0, massesG.size()).boxed().toList());
        order.sort(Comparator.comparing(massesG::get));
        int many = Math.min(count, order.size());
        if (many == 0) {
            return new LeastSpread(List.of(), 0);
        }
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int from = 0; from + many <= order.size(); from++) {
            double spread = massesG.get(order.get(from + many - 1)) - massesG.get(order.get(from));
            if (spread < least) {
                least = spread;
                best = from;
            }
        }
        List<Integer> chosen =
                order.subList(best, best + many).stream().sorted().toList();
        return new LeastSpread(chosen, least);
    }
}
