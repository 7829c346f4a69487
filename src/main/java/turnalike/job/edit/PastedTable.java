package turnalike.job.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.csv.CsvText;
import turnalike.job.fields.Key;
import turnalike.units.Problem;

/**
 * Cells of a table as they were pasted, under the headings that people write: {@code Width (mm)}, {@code Weight, oz}, {@code Qty}. A unit of the
 * heading is set behind each bare figure below it; columns that are none of ours are passed over.
 *
 * @param rows each by column, as it would be typed; empty when anything is wrong
 * @param problems everything wrong, in order
 */
public record PastedTable(List<Map<String, String>> rows, List<Problem> problems) {
    private static final Map<String, Set<String>> NAMES = Map.ofEntries(
            Map.entry("board", Set.of("boards", "name", "label", "no", "no.", "nr", "#")),
            Map.entry("blank", Set.of("blanks", "name", "label", "piece", "no", "no.", "nr", "#")),
            Map.entry("thickness", Set.of("thick", "t")),
            Map.entry("width", Set.of("wide", "w")),
            Map.entry("length", Set.of("long", "l")),
            Map.entry("size", Set.of("square", "side")),
            Map.entry("count", Set.of("qty", "quantity", "how many", "number", "pcs")),
            Map.entry("price", Set.of("cost", "each")),
            Map.entry("species", Set.of("wood", "timber")),
            Map.entry("mass_g", Set.of("mass", "mass_oz", "weight", "wt", "blank weight")),
            Map.entry("finished_g", Set.of("finished", "finished_oz", "finished weight", "turned")),
            Map.entry("moisture_pct", Set.of("moisture", "mc", "moisture, %", "moisture %")),
            Map.entry("stage", Set.of("work", "step")),
            Map.entry("minutes", Set.of("time", "min", "mins", "minute")),
            Map.entry("pieces", Set.of("for pieces", "of pieces")));

    private static final Pattern UNIT = Pattern.compile(
            "(?i)^(?<name>.*?)(?:[\\s,]+|\\s*[(\\[]\\s*|_)(?<unit>g|grams?|kg|oz|ounces?|lbs?|mm|cm|m|in|inch|inches|ft|feet|\"|')\\s*[)\\]]?\\.?$");

    /** A figure without a unit: it ends in a digit, a decimal sign or a vulgar fraction. */
    private static final Pattern BARE = Pattern.compile(".*[\\p{N}.,]\\s*");

    public PastedTable {
        rows = rows.stream()
                .map(each -> (Map<String, String>) new LinkedHashMap<>(each))
                .toList();
        problems = List.copyOf(problems);
    }

    /** A column of the paste: which of ours it is, and the unit of its bare figures; empty for none. */
    private record Heading(String column, String unit) {}

    /**
     * {@return the rows, or what is wrong}
     *
     * @param table which it is
     * @param text as it was pasted or uploaded
     */
    public static PastedTable of(ShopTable table, String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        if (first.isEmpty()) {
            return wrong("cells", "nothing is pasted", "paste a line of headings, and a line for each " + table.word());
        }
        Map<String, String> names = names(table);
        Optional<String> label = List.of(first.split("[\\t;,]", -1)).stream()
                .map(cell -> cell.replace("\"", "").strip())
                .filter(cell -> table.label().equals(names.get(cell.toLowerCase(Locale.ROOT))))
                .findFirst();
        if (label.isEmpty()) {
            return wrong(
                    "cells, line 1",
                    "no heading is '%s'".formatted(table.label()),
                    "name the columns in the first line: "
                            + String.join(
                                    ", ",
                                    table.columns().stream()
                                            .limit(6)
                                            .map(Key::name)
                                            .toList()));
        }
        CsvText cells = CsvText.of(text, label.get(), "cells");
        return cells.broken()
                .map(broken -> new PastedTable(List.of(), List.of(broken)))
                .orElseGet(() -> read(table, cells, names));
    }

    private static PastedTable wrong(String where, String what, String mend) {
        return new PastedTable(List.of(), List.of(new Problem(where, what, mend)));
    }

    private static Map<String, String> names(ShopTable table) {
        Map<String, String> out = new HashMap<>();
        for (Key<?> key : table.columns()) {
            NAMES.getOrDefault(key.name(), Set.of()).forEach(each -> out.putIfAbsent(each, key.name()));
        }
        table.columns().forEach(key -> out.put(key.name(), key.name()));
        return out;
    }

    private static PastedTable read(ShopTable table, CsvText cells, Map<String, String> names) {
        List<Heading> headings = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        CsvText.Line head = cells.lines().get(0);
        head.cells().forEach(cell -> headings.add(heading(cell, names)));
        for (Key<?> key : table.columns()) {
            long times = headings.stream()
                    .filter(each -> each.column().equals(key.name()))
                    .count();
            if (times > 1) {
                problems.add(new Problem(
                        "line %d, column %s".formatted(head.number(), key.name()),
                        "two columns bear this name",
                        "rename one or take it out"));
            } else if (times == 0 && key.isNeeded()) {
                problems.add(new Problem(
                        "line " + head.number(),
                        "no heading is '%s'".formatted(key.name()),
                        "name the columns in the first line"));
            }
        }
        List<Map<String, String>> rows = new ArrayList<>();
        for (CsvText.Line line : cells.lines().subList(1, cells.lines().size())) {
            if (line.cells().size() > headings.size()) {
                problems.add(new Problem(
                        "line " + line.number(),
                        "%d cells where the headings are %d"
                                .formatted(line.cells().size(), headings.size()),
                        "with decimal commas put semicolons or tabs between the cells"));
            }
            rows.add(row(line, headings));
        }
        if (rows.isEmpty() && problems.isEmpty()) {
            problems.add(
                    new Problem("cells", "hold headings and nothing below", "give a line for each " + table.word()));
        }
        return new PastedTable(problems.isEmpty() ? rows : List.of(), problems);
    }

    private static Map<String, String> row(CsvText.Line line, List<Heading> headings) {
        Map<String, String> out = new LinkedHashMap<>();
        for (int i = 0; i < headings.size(); i++) {
            Heading heading = headings.get(i);
            String cell = line.cell(i).strip();
            if (!heading.column().isEmpty() && !cell.isEmpty()) {
                boolean bare = !heading.unit().isEmpty() && BARE.matcher(cell).matches();
                out.put(heading.column(), bare ? cell + " " + heading.unit() : cell);
            }
        }
        return out;
    }

    private static Heading heading(String written, Map<String, String> names) {
        String plain = written.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s,]*[(\\[]?\\p{Sc}[)\\]]?$", "");
        Matcher matcher = UNIT.matcher(plain);
        if (matcher.matches()) {
            String named = names.get(matcher.group("name").strip());
            if (named != null) {
                return new Heading(named, matcher.group("unit"));
            }
        }
        return new Heading(names.getOrDefault(plain, ""), "");
    }
}
