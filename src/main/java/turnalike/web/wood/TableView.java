package turnalike.web.wood;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import turnalike.job.edit.ShopTable;
import turnalike.job.kept.JobText;
import turnalike.job.keys.ShopKeys;
import turnalike.units.MassUnit;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.web.kit.FieldWidth;

/**
 * One of the shop's tables as it is typed into.
 *
 * @param table which
 * @param heads its columns
 * @param rows those that are kept, and last the one for the next
 * @param problems what belongs to no cell
 * @param pasted what was pasted and not kept
 * @param toldHeads what stands above what is told of each row
 */
public record TableView(
        ShopTable table,
        List<Head> heads,
        List<Row> rows,
        List<Problem> problems,
        String pasted,
        List<String> toldHeads) {
    private static final Map<String, String> LABELS = Map.ofEntries(
            Map.entry("board", "Board"),
            Map.entry("thickness", "Thickness"),
            Map.entry("width", "Width"),
            Map.entry("length", "Length"),
            Map.entry("count", "How many"),
            Map.entry("price", "Price each"),
            Map.entry("species", "Wood"),
            Map.entry("blank", "Blank"),
            Map.entry("mass_g", "Weight, g"),
            Map.entry("size", "Square"),
            Map.entry("moisture_pct", "Moisture, %"),
            Map.entry("finished_g", "Finished, g"),
            Map.entry("lost", "Spoiled"),
            Map.entry("stage", "Stage"),
            Map.entry("minutes", "Minutes"),
            Map.entry("pieces", "For pieces"),
            Map.entry("piece", "Piece"));

    /**
     * One column.
     *
     * @param name its key
     * @param label what stands above it
     * @param isFigure whether figures stand in it
     */
    public record Head(String name, String label, boolean isFigure) {}

    /**
     * One row.
     *
     * @param number from 1
     * @param seen the whole row as it is kept; empty for the next one
     * @param name what it is called
     * @param cells its fields, one for each column
     * @param told what follows from it, in the order of the heads; empty where nothing does
     */
    public record Row(int number, String seen, String name, List<Cell> cells, List<String> told) {
        public Row {
            cells = List.copyOf(cells);
            told = List.copyOf(told);
        }

        /** Whether it is the one that is typed next. */
        public boolean isNext() {
            return seen.isEmpty();
        }
    }

    /**
     * One field.
     *
     * @param id of the field
     * @param head its column
     * @param value as kept or as typed
     * @param wrong what is wrong with it; empty when nothing is
     */
    public record Cell(String id, Head head, String value, String wrong) {
        /** The class of its element; a mixed fraction wants a wider field, or its last digit is cut off. */
        public String look() {
            return head.isFigure() ? FieldWidth.look("figure", value) : "words";
        }
    }

    public TableView {
        heads = List.copyOf(heads);
        rows = List.copyOf(rows);
        problems = List.copyOf(problems);
        toldHeads = List.copyOf(toldHeads);
    }

    /** The same with what is told of each kept row beside it. */
    TableView telling(List<String> newHeads, List<List<String>> told) {
        List<Row> out = new ArrayList<>();
        for (Row row : rows) {
            List<String> mine = row.isNext() || row.number() > told.size() ? List.of() : told.get(row.number() - 1);
            out.add(new Row(row.number(), row.seen(), row.name(), row.cells(), mine));
        }
        return new TableView(table, heads, out, problems, pasted, newHeads);
    }

    static TableView of(ShopTable table, JobText text, TypedRow typed) {
        List<ShopTable.Row> kept = table.rows(text);
        List<Head> heads =
                heads(table, kept, text.job().units(), text.job().tolerances().masses());
        List<Row> rows = new ArrayList<>();
        kept.forEach(row -> rows.add(row(table, heads, MassCells.of(text).seen(row), typed)));
        Map<String, String> next = new LinkedHashMap<>();
        if (table != ShopTable.TIMES) {
            next.put(table.label(), next(table, kept));
        }
        rows.add(row(table, heads, new ShopTable.Row(kept.size() + 1, "", next), typed));
        boolean about = typed.table().filter(table::equals).isPresent();
        return new TableView(
                table,
                heads,
                rows,
                about ? typed.others(heads.stream().map(Head::name).toList()) : List.of(),
                about ? typed.pasted() : "",
                List.of());
    }

    private static Row row(ShopTable table, List<Head> heads, ShopTable.Row row, TypedRow typed) {
        boolean mine = typed.isAbout(table, row.number());
        List<Cell> cells = heads.stream()
                .map(head -> new Cell(
                        "%s-%s-%s".formatted(table.key(), row.text().isEmpty() ? "next" : row.number(), head.name()),
                        head,
                        mine ? typed.cells().getOrDefault(head.name(), "") : row.cell(head.name()),
                        mine ? typed.wrong(head.name()) : ""))
                .toList();
        return new Row(row.number(), row.text(), row.cell(table.label()), cells, List.of());
    }

    /** Of the pairs for faults as many as are used, and one more. */
    private static List<Head> heads(ShopTable table, List<ShopTable.Row> rows, UnitSystem units, MassUnit masses) {
        int faults = 1;
        for (int number = 1; number < ShopKeys.MOST_FAULTS; number++) {
            String from = "from" + number;
            faults = rows.stream().anyMatch(row -> !row.cell(from).isEmpty()) ? number + 1 : faults;
        }
        List<Head> out = new ArrayList<>();
        for (var key : table.columns()) {
            String digits = key.name().replaceAll("\\D", "");
            boolean isFault = key.name().matches("(from|to)\\d");
            if (!isFault || Integer.parseInt(digits) <= faults) {
                String fault = faults == 1 ? "Fault" : "Fault " + digits;
                String label = isFault
                        ? key.name().startsWith("from") ? fault + " from" : "to"
                        : LABELS.getOrDefault(key.name(), key.name()).replace(", g", ", " + masses.symbol());
                out.add(new Head(
                        key.name(),
                        key.type().isLength() ? label + ", " + units.symbol() : label,
                        isFigure(key.name())));
            }
        }
        return out;
    }

    /** What the columns are called, without units. */
    static List<String> headings(ShopTable table) {
        return heads(table, List.of(), UnitSystem.METRIC, MassUnit.GRAM).stream()
                .map(Head::label)
                .toList();
    }

    /** Whether figures stand in that column. */
    static boolean isFigure(String column) {
        return !List.of("board", "blank", "species", "lost", "stage", "piece").contains(column);
    }

    /** The name after the last one's: 7 after 6, D after C. */
    private static String next(ShopTable table, List<ShopTable.Row> rows) {
        String first = table == ShopTable.BOARDS ? "A" : "1";
        String last = rows.isEmpty() ? "" : rows.get(rows.size() - 1).cell(table.label());
        String name = first;
        if (last.matches("\\d{1,8}")) {
            name = Integer.toString(Integer.parseInt(last) + 1);
        } else if (last.matches("[A-Ya-y]")) {
            name = String.valueOf((char) (last.charAt(0) + 1));
        } else if (!rows.isEmpty()) {
            name = Integer.toString(rows.size() + 1);
        }
        String found = name;
        boolean taken = rows.stream().anyMatch(row -> row.cell(table.label()).equals(found));
        return taken ? "" : found;
    }

    /** Whether nothing is kept yet. */
    public boolean isEmpty() {
        return rows.size() == 1;
    }

    public String key() {
        return table.key();
    }

    /** The field that the next row begins with, once its name is there. */
    public String firstField() {
        String column = heads.get(table == ShopTable.TIMES ? 0 : 1).name();
        return "%s-next-%s".formatted(table.key(), column);
    }
}
