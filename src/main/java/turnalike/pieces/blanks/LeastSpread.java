package turnalike.pieces.blanks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The choice of so many masses whose greatest less least is smallest. Exact: in order of mass a best choice is a run of neighbours, so all
 * runs are looked at. Of runs equally narrow the one nearest the median of all masses is taken, as what is typical is most easily matched by a piece
 * turned later; of those equally near, the lightest.
 *
 * @param chosen indices into the masses, in the order of the masses given
 * @param spreadG the greatest chosen less the least, in grams; 0 for none
 */
record LeastSpread(List<Integer> chosen, double spreadG) {
    /** Masses are told apart no finer than this, which taking one from another may get wrong; no scale comes near it. */
    private static final double SAME_G = 1e-9;

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
        double least = IntStream.rangeClosed(0, order.size() - many)
                .mapToDouble(from -> massesG.get(order.get(from + many - 1)) - massesG.get(order.get(from)))
                .min()
                .orElseThrow();
        double medianG =
                (massesG.get(order.get((order.size() - 1) / 2)) + massesG.get(order.get(order.size() / 2))) / 2;
        int best = 0;
        double nearest = Double.POSITIVE_INFINITY;
        for (int from = 0; from + many <= order.size(); from++) {
            double lightestG = massesG.get(order.get(from));
            double heaviestG = massesG.get(order.get(from + many - 1));
            double off = Math.abs((lightestG + heaviestG) / 2 - medianG);
            if (heaviestG - lightestG <= least + SAME_G && off < nearest - SAME_G) {
                nearest = off;
                best = from;
            }
        }
        List<Integer> chosen =
                order.subList(best, best + many).stream().sorted().toList();
        return new LeastSpread(chosen, massesG.get(order.get(best + many - 1)) - massesG.get(order.get(best)));
    }
}
