package turnalike.stock.boards;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.CRC32;
import turnalike.stock.boards.CuttingPlan.CutBlank;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.stock.boards.CuttingPlan.Rip;
import turnalike.stock.boards.CuttingPlan.Strip;
import turnalike.units.Length;

/**
 * A cutting that was found, so short that it can be written down and laid out again without a search.
 *
 * @param order the sign of what it was found for, see {@link #sign}
 * @param strips every strip, board by board, rip by rip, from the upper face down; one that holds nothing too
 * @param bound as {@link CuttingPlan} has it
 * @param proven as {@link CuttingPlan} has it
 * @param longest as {@link CuttingPlan} has it
 * @param longestProven as {@link CuttingPlan} has it
 */
public record CutRecord(
        String order, List<Row> strips, BigDecimal bound, boolean proven, Length longest, boolean longestProven) {
    /** Lets a sixty-fourth that is not quite one in binary still fit. */
    private static final double HAIR_MM = 1e-6;

    /**
     * One strip.
     *
     * @param board the board's own name, {@code A#2} where several are alike
     * @param rip which rip of it, from 1 at the edge
     * @param layer which strip of the rip, from 1 at the upper face
     * @param blanks which of the wanted ones each blank is, from 1, from one end of the board to the other
     * @param from where each begins, from the untrimmed end; as many
     */
    public record Row(String board, int rip, int layer, List<Integer> blanks, List<Length> from) {
        public Row {
            blanks = List.copyOf(blanks);
            from = List.copyOf(from);
            if (blanks.size() != from.size() || rip < 1 || layer < 1) {
                throw new IllegalArgumentException(
                        "a strip has a place and as many starts as blanks, was rip %d, layer %d, %s, %s"
                                .formatted(rip, layer, blanks, from));
            }
        }
    }

    public CutRecord {
        strips = List.copyOf(strips);
    }

    /**
     * {@return the plan written down}
     *
     * @param plan as it was found
     */
    public static CutRecord of(CuttingPlan plan) {
        List<Row> rows = new ArrayList<>();
        for (CutBoard board : plan.boards()) {
            for (int rip = 0; rip < board.rips().size(); rip++) {
                List<Strip> strips = board.rips().get(rip).strips();
                for (int layer = 0; layer < strips.size(); layer++) {
                    List<CutBlank> blanks = strips.get(layer).blanks();
                    rows.add(new Row(
                            board.label(),
                            rip + 1,
                            layer + 1,
                            blanks.stream()
                                    .map(each -> plan.order().wanted().indexOf(each.of()) + 1)
                                    .toList(),
                            blanks.stream().map(CutBlank::from).toList()));
                }
            }
        }
        return new CutRecord(
                sign(plan.order()), rows, plan.bound(), plan.proven(), plan.longest(), plan.longestProven());
    }

    /**
     * {@return a short sign of what is cut out of what, the same for the same blanks, boards and saw} Names of jobs do not count; lengths
     * count to a micrometre, so that another unit of length is no other order.
     *
     * @param order what is asked
     */
    public static String sign(CuttingOrder order) {
        StringBuilder text = new StringBuilder();
        for (Wanted each : order.wanted()) {
            add(text, each.size(), each.length());
            text.append(each.count()).append(each.wood().orElse("")).append(';');
        }
        for (Board each : order.boards()) {
            text.append(each.name()).append('|');
            add(text, each.thickness(), each.width(), each.length());
            text.append(each.count()).append(each.species().orElse(""));
            text.append(each.price()
                            .map(price -> price.stripTrailingZeros().toPlainString())
                            .orElse("-"))
                    .append('|');
            each.faults().forEach(fault -> add(text, fault.from(), fault.to()));
            text.append(';');
        }
        add(text, order.sawing().kerf(), order.sawing().edge(), order.sawing().end());
        CRC32 sum = new CRC32();
        sum.update(text.toString().getBytes(java.nio.charset.StandardCharsets.UTF_8));
        return String.format(Locale.ROOT, "%08x", sum.getValue());
    }

    private static void add(StringBuilder text, Length... lengths) {
        for (Length each : lengths) {
            text.append(Math.round(each.mm() * 1000)).append(',');
        }
    }

    /**
     * {@return the plan laid out again; empty where it was found for another order, or is none of these boards}
     *
     * @param asked what is to be cut out of what now
     */
    public Optional<CuttingPlan> on(CuttingOrder asked) {
        if (!order.equals(sign(asked))) {
            return Optional.empty();
        }
        Map<String, List<Row>> byBoard = new LinkedHashMap<>();
        strips.forEach(row ->
                byBoard.computeIfAbsent(row.board(), each -> new ArrayList<>()).add(row));
        List<CutBoard> boards = new ArrayList<>();
        for (Map.Entry<String, List<Row>> each : byBoard.entrySet()) {
            Optional<CutBoard> cut =
                    board(asked, each.getKey()).flatMap(board -> cut(asked, board, each.getKey(), each.getValue()));
            if (cut.isEmpty()) {
                return Optional.empty();
            }
            boards.add(cut.get());
        }
        return isWanted(boards)
                ? Optional.of(CuttingPlan.of(asked, boards, bound, proven, longest, longestProven))
                : Optional.empty();
    }

    private static Optional<Board> board(CuttingOrder asked, String label) {
        for (Board each : asked.boards()) {
            for (int copy = 0; copy < each.count() && label.startsWith(each.name()); copy++) {
                if (each.label(copy).equals(label)) {
                    return Optional.of(each);
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<CutBoard> cut(CuttingOrder asked, Board board, String label, List<Row> rows) {
        TreeMap<Integer, List<Row>> byRip = new TreeMap<>();
        rows.forEach(row ->
                byRip.computeIfAbsent(row.rip(), each -> new ArrayList<>()).add(row));
        List<Rip> rips = new ArrayList<>();
        Length from = asked.sawing().edge();
        for (List<Row> each : byRip.values()) {
            Length start = from;
            Optional<Rip> rip = size(asked, each).flatMap(size -> rip(asked, board, start, size, each));
            if (rip.isEmpty()) {
                return Optional.empty();
            }
            rips.add(rip.get());
            from = start.plus(rip.get().size()).plus(asked.sawing().kerf());
        }
        double end = from.minus(asked.sawing().kerf()).mm();
        boolean fits = end <= board.width().minus(asked.sawing().edge()).mm() + HAIR_MM;
        return fits ? Optional.of(new CutBoard(board, label, rips)) : Optional.empty();
    }

    /** The one size of all its blanks; empty where there is none or more than one. */
    private static Optional<Length> size(CuttingOrder asked, List<Row> rows) {
        Set<Length> sizes = new HashSet<>();
        for (Row row : rows) {
            for (int number : row.blanks()) {
                if (number < 1 || number > asked.wanted().size()) {
                    return Optional.empty();
                }
                sizes.add(asked.wanted().get(number - 1).size());
            }
        }
        return sizes.size() == 1 ? sizes.stream().findFirst() : Optional.empty();
    }

    private static Optional<Rip> rip(CuttingOrder asked, Board board, Length from, Length size, List<Row> rows) {
        List<Strip> strips = new ArrayList<>();
        for (Row row : rows) {
            List<CutBlank> blanks = new ArrayList<>();
            for (int i = 0; i < row.blanks().size(); i++) {
                Wanted of = asked.wanted().get(row.blanks().get(i) - 1);
                CutBlank blank = new CutBlank(of, row.from().get(i));
                boolean isApart = blanks.isEmpty() || isApart(blanks.get(blanks.size() - 1), blank, asked.sawing());
                if (!of.mayBe(board) || !isApart || !isClear(blank, board, asked.sawing())) {
                    return Optional.empty();
                }
                blanks.add(blank);
            }
            strips.add(new Strip(size, blanks));
        }
        return strips.size() <= asked.layers(board, size) ? Optional.of(new Rip(from, size, strips)) : Optional.empty();
    }

    private static boolean isApart(CutBlank before, CutBlank blank, Sawing sawing) {
        double end =
                before.from().plus(before.of().length()).plus(sawing.kerf()).mm();
        return blank.from().mm() >= end - HAIR_MM;
    }

    private static boolean isClear(CutBlank blank, Board board, Sawing sawing) {
        double from = blank.from().mm();
        double end = from + blank.of().length().mm();
        return board.clear(sawing).stream()
                .anyMatch(each -> from >= each.from().mm() - HAIR_MM
                        && end <= each.from().plus(each.length()).mm() + HAIR_MM);
    }

    private static boolean isWanted(List<CutBoard> boards) {
        Map<Wanted, Integer> count = new HashMap<>();
        boards.stream()
                .flatMap(board -> board.strips().stream())
                .flatMap(strip -> strip.blanks().stream())
                .forEach(blank -> count.merge(blank.of(), 1, Integer::sum));
        return count.entrySet().stream()
                .allMatch(each -> each.getValue() <= each.getKey().count());
    }
}
