package turnalike.pieces.blanks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import turnalike.pieces.AlikestNeighbours;

/**
 * The choice of so many masses whose greatest less least is smallest, the most typical of those equally narrow: {@link AlikestNeighbours}.
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
        double[] ascendingG = order.stream().mapToDouble(massesG::get).toArray();
        int best = AlikestNeighbours.first(
                ascendingG, many, from -> ascendingG[from + many - 1] - ascendingG[from], AlikestNeighbours.SAME_G);
        List<Integer> chosen =
                order.subList(best, best + many).stream().sorted().toList();
        return new LeastSpread(chosen, ascendingG[best + many - 1] - ascendingG[best]);
    }
}
