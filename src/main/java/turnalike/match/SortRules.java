package turnalike.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Which sets pass where places want sorts: those whose pieces of each sort pass among themselves. */
final class SortRules {
    private final RowSorts sorts;
    private final List<SetRule> rules = new ArrayList<>();

    /** Of each piece the how manieth of its sort it is, from 0. */
    private final int[] numbers;

    /** @param massesG of all pieces; every sort has as many pieces as places want */
    SortRules(double[] massesG, RowSorts sorts, double wantedShare) {
        this.sorts = sorts;
        numbers = new int[massesG.length];
        int[] counted = new int[massesG.length + 1];
        for (int piece = 0; piece < numbers.length; piece++) {
            numbers[piece] = counted[Math.min(sorts.ofPieces().get(piece), massesG.length)]++;
        }
        for (int sort = 0; sort < sorts.count(); sort++) {
            double[] own =
                    sorts.pieces(sort).stream().mapToDouble(i -> massesG[i]).toArray();
            rules.add(new SetRule(own, sorts.places(sort), wantedShare));
        }
    }

    /** Whether those pieces, as many of each sort as the places want and in any order, pass. */
    boolean passes(int[] row) {
        for (int sort = 0; sort < rules.size(); sort++) {
            if (!passes(row, sort)) {
                return false;
            }
        }
        return true;
    }

    boolean passes(int[] row, int sort) {
        if (sorts.places(sort) == 0) {
            return true;
        }
        int[] set = Arrays.stream(row)
                .filter(piece -> sorts.ofPieces().get(piece) == sort)
                .map(piece -> numbers[piece])
                .toArray();
        return rules.get(sort).passes(set);
    }

    /** The pieces of a sort that are most alike, as many as its places want. */
    int[] alikest(int sort) {
        List<Integer> own = sorts.pieces(sort);
        return Arrays.stream(rules.get(sort).alikest()).map(own::get).toArray();
    }

    /** As many pieces of a sort as its places want, neighbours in mass, so many lighter ones left out; they need not pass. */
    int[] window(int sort, int first) {
        List<Integer> own = sorts.pieces(sort);
        return Arrays.stream(rules.get(sort).window(first)).map(own::get).toArray();
    }

    List<String> warnings(double wantedPct, List<String> names) {
        List<String> out = new ArrayList<>();
        for (int sort = 0; sort < rules.size(); sort++) {
            if (sorts.places(sort) == 0) {
                continue;
            }
            for (String warning : rules.get(sort).warnings(wantedPct)) {
                out.add(names.get(sort) + ": " + warning);
            }
        }
        return out;
    }

    /** {@return the masses of a row before it has a piece} */
    Growing growing() {
        return new Growing();
    }

    /** The masses that a row has of each sort so far. */
    final class Growing {
        private final double[] lightestG = new double[rules.size()];
        private final double[] heaviestG = new double[rules.size()];
        private final double[] sumG = new double[rules.size()];
        private final int[] count = new int[rules.size()];

        /** Whether the pieces of its sort stay within what is allowed among themselves with that one. */
        boolean mayTake(int sort, int piece) {
            double massG = massG(sort, piece);
            return count[sort] == 0
                    || rules.get(sort)
                            .passes(
                                    Math.min(lightestG[sort], massG),
                                    Math.max(heaviestG[sort], massG),
                                    sumG[sort] + massG,
                                    count[sort] + 1);
        }

        void take(int sort, int piece) {
            double massG = massG(sort, piece);
            lightestG[sort] = count[sort] == 0 ? massG : Math.min(lightestG[sort], massG);
            heaviestG[sort] = Math.max(heaviestG[sort], massG);
            sumG[sort] += massG;
            count[sort]++;
        }

        private double massG(int sort, int piece) {
            return rules.get(sort).massG(numbers[piece]);
        }
    }
}
