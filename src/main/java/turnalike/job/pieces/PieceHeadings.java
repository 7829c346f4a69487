package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.csv.CsvText;
import turnalike.job.Job;
import turnalike.pieces.Column;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;

/**
 * A table of pieces under the headings that people write: {@code Weight, oz}, {@code Belly (mm)}, {@code Length}. It is written anew as a
 * pieces file under that file's own names, a unit of the heading set behind each bare figure below it; what is no heading of ours, and
 * what is wrong with a figure, is left for whoever reads that file. Lines keep their numbers.
 */
public final class PieceHeadings {
    private static final Set<String> LABELS =
            Set.of("piece", "pieces", "label", "no", "no.", "nr", "number", "spindle", "#");
    private static final Set<String> WEIGHTS = Set.of("weight", "mass", "wt", "weights", "");
    private static final Set<String> GRAMS = Set.of("g", "gram", "grams");
    private static final Set<String> OUNCES = Set.of("oz", "ounce", "ounces");
    private static final Set<String> MASSES = Set.of("g", "gram", "grams", "oz", "ounce", "ounces", "kg", "lb", "lbs");

    private static final Pattern UNIT = Pattern.compile(
            "(?i)^(?<name>.*?)(?:[\\s,]+|\\s*[(\\[]\\s*|^)(?<unit>g|grams?|kg|oz|ounces?|lbs?|mm|in|inch|inches|\")\\s*[)\\]]?\\.?$");

    /** A figure without a unit: it ends in a digit, a decimal sign or a vulgar fraction. */
    private static final Pattern BARE = Pattern.compile(".*[\\p{N}.,]\\s*");

    private final Job job;
    private final Map<String, Column> names = new HashMap<>();

    private PieceHeadings(Job job) {
        this.job = job;
        ColumnTargets.names(job).forEach((column, name) -> names.put(name.toLowerCase(Locale.ROOT), column));
    }

    /** One column as it is written anew, and the unit to be set behind its bare figures; empty for none. */
    private record Heading(String name, String unit) {}

    /**
     * {@return the table as a pieces file, cells parted by tabs; to the letter where nothing was read as a table}
     *
     * @param job whose marks and check places the headings may name, and in whose units bare lengths are
     * @param text as it was pasted or uploaded
     */
    public static String plain(Job job, String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        Optional<String> label = List.of(first.split("[\\t;,]", -1)).stream()
                .map(cell -> cell.replace("\"", "").strip())
                .filter(cell -> LABELS.contains(cell.toLowerCase(Locale.ROOT)))
                .findFirst();
        CsvText table = CsvText.of(text, label.orElse("piece"));
        return label.isEmpty() || table.broken().isPresent() ? text : new PieceHeadings(job).written(table);
    }

    private String written(CsvText table) {
        List<Heading> headings = new ArrayList<>();
        StringBuilder out = new StringBuilder();
        long line = 1;
        for (CsvText.Line each : table.lines()) {
            for (; line < each.number(); line++) {
                out.append('\n');
            }
            List<String> cells = new ArrayList<>();
            if (headings.isEmpty()) {
                each.cells().forEach(cell -> headings.add(heading(cell)));
                headings.forEach(heading -> cells.add(heading.name()));
            } else {
                for (int i = 0; i < each.cells().size(); i++) {
                    cells.add(
                            i < headings.size()
                                    ? united(each.cell(i), headings.get(i).unit())
                                    : each.cell(i));
                }
            }
            cells.replaceAll(PieceHeadings::quoted);
            out.append(String.join("\t", cells)).append('\n');
            line++;
        }
        return out.toString();
    }

    private static String united(String cell, String unit) {
        return unit.isEmpty() || !BARE.matcher(cell).matches() ? cell : cell.strip() + " " + unit;
    }

    private static String quoted(String cell) {
        return '"' + cell.replaceAll("[\\r\\n]+", " ").replace("\"", "\"\"") + '"';
    }

    private Heading heading(String written) {
        String plain = written.strip().toLowerCase(Locale.ROOT);
        if (LABELS.contains(plain)) {
            return new Heading("piece", "");
        }
        if (Column.find(plain).isPresent()) {
            return new Heading(plain, "");
        }
        Matcher matcher = UNIT.matcher(plain);
        boolean hasUnit = matcher.matches();
        String name = hasUnit ? matcher.group("name").strip() : plain;
        String unit = hasUnit ? matcher.group("unit") : "";
        boolean weight = WEIGHTS.contains(name) && (unit.isEmpty() ? !name.isEmpty() : MASSES.contains(unit));
        if (weight) {
            return OUNCES.contains(unit)
                    ? new Heading(MassUnit.OUNCE.column(), "")
                    : new Heading(MassUnit.GRAM.column(), GRAMS.contains(unit) ? "" : unit);
        }
        return column(name)
                .filter(column -> !column.isMass() && !MASSES.contains(unit))
                .map(column -> new Heading(column.format(), lengthUnit(unit)))
                .orElse(new Heading(written.strip(), ""));
    }

    private String lengthUnit(String unit) {
        boolean own = unit.isEmpty()
                || UnitSystem.find(unit).filter(job.units()::equals).isPresent();
        return own ? "" : unit;
    }

    private Optional<Column> column(String name) {
        return switch (name) {
            case "length", "overall length" -> Optional.of(Column.LENGTH);
            case "balance", "balance point" -> Optional.of(Column.BALANCE);
            default ->
                Optional.ofNullable(names.get(name))
                        .or(() -> Column.find(name.replaceFirst("^mark ", "m").replaceFirst("^diameter ", "d")));
        };
    }
}
