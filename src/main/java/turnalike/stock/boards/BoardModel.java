package turnalike.stock.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import turnalike.units.Length;

/**
 * The order as a {@link Question} in whole numbers: lengths in nanometres, so that sixty-fourths and tenths are exact, boards that give the
 * same taken together.
 *
 * @param question in whole numbers
 * @param copies for each of its types, the boards
 * @param complete whether every way to rip a board is in it
 */
record BoardModel(Question question, List<List<Copy>> copies, boolean complete) {
    /** Nanometres in a millimetre: a sixty-fourth of an inch is a whole number of them. */
    private static final double UNITS = 1e6;

    /** Lengths are rounded to the unit one by one; a stretch forgives that much. */
    private static final long ROUNDING = 20;

    private static final int MOST_RIPS = 400;

    /** One board of those that give the same, and the ways to rip it, in the order of its type. */
    record Copy(Board board, int number, List<Layout> ways) {
        String label() {
            return board.label(number);
        }
    }

    /**
     * One way to rip a board.
     *
     * @param rips the size of each and what each of its strips gives, stretch by stretch of the board
     */
    record Layout(List<RipLayout> rips) {}

    /**
     * One rip.
     *
     * @param size index of its section
     * @param layers how many strips
     * @param stretches for each clear stretch of the board, which of the question's it is; below zero for none
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record RipLayout(int size, int layers, int[] stretches) {}

    static long units(Length length) {
        return Math.round(length.mm() * UNITS);
    }

    /**
     * What is asked.
     *
     * @param keep length of a piece that is to be left over as well, if any
     * @param lacking how many blanks may be left out
     * @param countLacking whether the blanks left out are what counts, and boards cost nothing
     */
    record Terms(Optional<Length> keep, int lacking, boolean countLacking) {}

    /** The sections that are sawn, the thickest first. */
    static List<Length> sizes(CuttingOrder order) {
        return order.wanted().stream()
                .map(Wanted::size)
                .distinct()
                .sorted((a, b) -> b.compareTo(a))
                .toList();
    }

    /** Builds it; {@code kinds} are the wanted blanks that some board can give, {@code boards} those with the cost of each. */
    static BoardModel of(CuttingOrder order, List<Wanted> kinds, List<BoardChoice.Weighed> boards, Terms terms) {
        return new Builder(order, kinds, terms).build(boards);
    }

    private static final class Builder {
        private final CuttingOrder order;
        private final List<Wanted> kinds;
        private final Terms terms;
        private final List<Length> sizes;
        private final long kerf;
        private final Map<Question.Stretch, Integer> stretches = new LinkedHashMap<>();
        private boolean complete = true;

        Builder(CuttingOrder order, List<Wanted> kinds, Terms terms) {
            this.order = order;
            this.kinds = kinds;
            this.terms = terms;
            this.sizes = sizes(order);
            this.kerf = units(order.sawing().kerf());
        }

        BoardModel build(List<BoardChoice.Weighed> boards) {
            List<List<Layout>> layouts = new ArrayList<>();
            List<BoardChoice.Weighed> used = new ArrayList<>();
            for (BoardChoice.Weighed each : boards) {
                List<Layout> ways = ways(each.board());
                if (!ways.isEmpty()) {
                    layouts.add(ways);
                    used.add(each);
                }
            }
            reachOnly(layouts);
            int width = stretches.size() + (terms.lacking() > 0 ? 1 : 0);
            Map<String, Integer> typeOf = new TreeMap<>();
            List<Question.Type> types = new ArrayList<>();
            List<List<Copy>> copies = new ArrayList<>();
            for (int i = 0; i < used.size(); i++) {
                Board board = used.get(i).board();
                List<int[]> rips =
                        layouts.get(i).stream().map(each -> supply(each, width)).toList();
                String key =
                        used.get(i).cost() + rips.stream().map(Arrays::toString).collect(Collectors.joining());
                int type = typeOf.getOrDefault(key, -1);
                long cost = terms.countLacking() ? 0 : used.get(i).cost();
                if (type < 0) {
                    typeOf.put(key, types.size());
                    types.add(new Question.Type(cost, board.count(), rips));
                    copies.add(new ArrayList<>());
                    type = types.size() - 1;
                } else {
                    Question.Type old = types.get(type);
                    types.set(type, new Question.Type(cost, old.count() + board.count(), rips));
                }
                for (int copy = 0; copy < board.count(); copy++) {
                    copies.get(type).add(new Copy(board, copy, layouts.get(i)));
                }
            }
            if (terms.lacking() > 0) {
                int[] one = new int[width];
                one[width - 1] = 1;
                types.add(new Question.Type(terms.countLacking() ? 1 : 0, terms.lacking(), List.of(one)));
            }
            return new BoardModel(question(types), copies, complete);
        }

        private Question question(List<Question.Type> types) {
            List<Question.Stretch> all = new ArrayList<>(stretches.keySet());
            if (terms.lacking() > 0) {
                BitSet wanted = new BitSet();
                wanted.set(0, kinds.size());
                all.add(new Question.Stretch(wanted, Question.Stretch.ONE));
            }
            return new Question(weights(), demand(), all, types);
        }

        private long[] weights() {
            List<Length> lengths =
                    new ArrayList<>(kinds.stream().map(Wanted::length).toList());
            terms.keep().ifPresent(lengths::add);
            return lengths.stream().mapToLong(each -> units(each) + kerf).toArray();
        }

        private int[] demand() {
            List<Integer> out =
                    new ArrayList<>(kinds.stream().map(Wanted::count).toList());
            terms.keep().ifPresent(keep -> out.add(1));
            return out.stream().mapToInt(each -> each).toArray();
        }

        private static int[] supply(Layout layout, int width) {
            int[] out = new int[width];
            for (RipLayout rip : layout.rips()) {
                for (int stretch : rip.stretches()) {
                    if (stretch >= 0) {
                        out[stretch] += rip.layers();
                    }
                }
            }
            return out;
        }

        /** Every way to rip a board into which nothing more fits that could be wanted. */
        private List<Layout> ways(Board board) {
            List<RipLayout> perSize = new ArrayList<>();
            List<Integer> most = new ArrayList<>();
            for (int size = 0; size < sizes.size(); size++) {
                int layers = order.layers(board, sizes.get(size));
                int beside = order.beside(board, sizes.get(size));
                BitSet blanks = blanks(board, size);
                if (layers > 0 && beside > 0 && !blanks.isEmpty()) {
                    int wanted = blanks.stream()
                            .map(kind -> kind < kinds.size() ? kinds.get(kind).count() : 1)
                            .sum();
                    perSize.add(new RipLayout(size, layers, stretches(board, blanks)));
                    most.add(Math.min(beside, (wanted + layers - 1) / layers));
                }
            }
            List<Layout> out = new ArrayList<>();
            double room = board.width()
                    .minus(order.sawing().edge().times(2))
                    .plus(order.sawing().kerf())
                    .mm();
            rip(
                    perSize,
                    most,
                    0,
                    new int[perSize.size()],
                    room + 1e-9 * board.width().mm(),
                    out);
            return out;
        }

        private void rip(
                List<RipLayout> perSize, List<Integer> most, int at, int[] counts, double room, List<Layout> out) {
            if (out.size() >= MOST_RIPS) {
                complete = false;
                return;
            }
            if (at == perSize.size()) {
                boolean isFull = true;
                List<RipLayout> rips = new ArrayList<>();
                for (int i = 0; i < counts.length; i++) {
                    isFull &= counts[i] == most.get(i) || each(perSize.get(i)) > room;
                    for (int copy = 0; copy < counts[i]; copy++) {
                        rips.add(perSize.get(i));
                    }
                }
                if (isFull && !rips.isEmpty()) {
                    out.add(new Layout(rips));
                }
                return;
            }
            double each = each(perSize.get(at));
            int fit = Math.min(most.get(at), (int) Math.floor(room / each));
            for (int count = fit; count >= 0; count--) {
                counts[at] = count;
                rip(perSize, most, at + 1, counts, room - count * each, out);
            }
            counts[at] = 0;
        }

        private double each(RipLayout rip) {
            return sizes.get(rip.size()).plus(order.sawing().kerf()).mm();
        }

        private BitSet blanks(Board board, int size) {
            BitSet out = new BitSet();
            for (int kind = 0; kind < kinds.size(); kind++) {
                out.set(
                        kind,
                        kinds.get(kind).size().equals(sizes.get(size))
                                && kinds.get(kind).mayBe(board));
            }
            if (terms.keep().isPresent()) {
                out.set(kinds.size());
            }
            return out;
        }

        private int[] stretches(Board board, BitSet blanks) {
            return board.clear(order.sawing()).stream()
                    .mapToInt(clear -> stretches.computeIfAbsent(
                            new Question.Stretch(blanks, units(clear.length()) + kerf + ROUNDING),
                            each -> stretches.size()))
                    .toArray();
        }

        /** Cuts each stretch down to what blanks can reach of it: many boards of different lengths then give the same. */
        private void reachOnly(List<List<Layout>> layouts) {
            List<Question.Stretch> old = new ArrayList<>(stretches.keySet());
            Optional<CutTables> tables = CutTables.of(new Question(weights(), demand(), old, List.of()));
            if (tables.isEmpty()) {
                return;
            }
            stretches.clear();
            int[] renamed = new int[old.size()];
            for (int i = 0; i < old.size(); i++) {
                long reached = tables.get().reached(i);
                renamed[i] = reached == 0
                        ? -1
                        : stretches.computeIfAbsent(
                                new Question.Stretch(old.get(i).blanks(), reached), each -> stretches.size());
            }
            for (List<Layout> ways : layouts) {
                ways.replaceAll(layout -> new Layout(layout.rips().stream()
                        .map(rip -> new RipLayout(
                                rip.size(),
                                rip.layers(),
                                Arrays.stream(rip.stretches())
                                        .map(each -> renamed[each])
                                        .toArray()))
                        .toList()));
            }
        }
    }
}
