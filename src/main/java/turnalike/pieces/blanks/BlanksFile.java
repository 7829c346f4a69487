package turnalike.pieces.blanks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import turnalike.csv.CsvText;
import turnalike.pieces.MassText;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.Parsed;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.wood.Moisture;

/**
 * The blanks file: a table with a header. Columns by name, in any order: {@code blank} (label, unique), {@code mass_g} or {@code mass_oz},
 * and, where known, {@code length}, {@code size}, {@code moisture_pct}, {@code finished_g} or {@code finished_oz} and {@code lost}.
 * A blank cell is not known; other columns are passed over.
 */
public final class BlanksFile {
    private static final String FILE = "blanks file";
    private static final String LABEL = "blank";
    private static final String LENGTH = "length";
    private static final String SIZE = "size";
    private static final String LOST = "lost";
    private static final String MOISTURE = "moisture_pct";

    /** As many as a pieces file may hold (common practice, no source). */
    private static final int MOST = 10_000;

    private final UnitSystem units;
    private final List<String> names;
    private final List<WeighedBlank> blanks = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Map<String, Long> lineOfLabel = new HashMap<>();

    /**
     * What came of reading.
     *
     * @param blanks those of the lines that had nothing wrong, in the file's order
     * @param problems everything wrong, in the file's order
     * @param massUnit the unit that the file has the blanks' weights in
     */
    public record Read(List<WeighedBlank> blanks, List<Problem> problems, MassUnit massUnit) {
        public Read {
            blanks = List.copyOf(blanks);
            problems = List.copyOf(problems);
        }
    }

    private BlanksFile(UnitSystem units, CsvText.Line header) {
        this.units = units;
        this.names = header.cells().stream()
                .map(name -> name.strip().toLowerCase(Locale.ROOT))
                .toList();
    }

    /**
     * {@return the blanks of a file, with everything wrong in it}
     *
     * @param text the file's whole text, or what came off a spreadsheet's clipboard
     * @param units of lengths without a unit
     */
    public static Read parse(String text, UnitSystem units) {
        CsvText table = CsvText.of(text, LABEL, FILE);
        if (table.lines().isEmpty()) {
            Problem empty = new Problem(FILE, "the file is empty", "give a header line and a line for each blank");
            return new Read(List.of(), List.of(table.broken().orElse(empty)), MassUnit.GRAM);
        }
        BlanksFile file = new BlanksFile(units, table.lines().get(0));
        file.header(table.lines().get(0).number());
        if (file.problems.isEmpty()) {
            file.lines(table.lines().subList(1, table.lines().size()));
        }
        table.broken().ifPresent(file.problems::add);
        return new Read(file.blanks, file.problems, file.massUnit());
    }

    private MassUnit massUnit() {
        return names.contains("mass_oz") ? MassUnit.OUNCE : MassUnit.GRAM;
    }

    private void header(long line) {
        String where = "line " + line;
        if (!names.contains(LABEL)) {
            problems.add(new Problem(
                    where,
                    "the header has no column 'blank'",
                    "name the columns in the first line, like blank,mass_g,moisture_pct,finished_g"));
            return;
        }
        Set<String> seen = new HashSet<>();
        for (String name : names) {
            if (!name.isEmpty() && !seen.add(name)) {
                problems.add(new Problem(
                        where + ", column " + name, "two columns bear this name", "rename one or take it out"));
            }
        }
        one(where, "mass", true);
        one(where, "finished", false);
    }

    private void one(String where, String what, boolean needed) {
        boolean grams = names.contains(what + "_g");
        boolean ounces = names.contains(what + "_oz");
        if (grams && ounces) {
            problems.add(new Problem(
                    where,
                    "there are two columns of one mass, in grams and in ounces",
                    "keep %s_g or %s_oz, not both".formatted(what, what)));
        } else if (needed && !grams && !ounces) {
            problems.add(
                    new Problem(where, "the header has no column of masses", "name it mass_g, or mass_oz for ounces"));
        }
    }

    private void lines(List<CsvText.Line> lines) {
        if (lines.isEmpty()) {
            problems.add(new Problem(FILE, "there is a header and no blank", "give a line for each blank"));
        }
        if (lines.size() > MOST) {
            problems.add(new Problem(
                    FILE, "%d blanks are more than %d".formatted(lines.size(), MOST), "give one order's at a time"));
            return;
        }
        lines.forEach(this::line);
    }

    private void line(CsvText.Line line) {
        int found = line.cells().size();
        if (found != names.size()) {
            problems.add(new Problem(
                    "line " + line.number(),
                    "%d %s where the header has %d".formatted(found, found == 1 ? "cell" : "cells", names.size()),
                    "leave a blank cell for what is not known; with decimal commas put semicolons between the cells"));
            return;
        }
        int before = problems.size();
        Optional<String> label = label(line);
        Optional<Mass> mass = mass(line, "mass");
        Optional<Length> length = cell(line, LENGTH, this::size);
        Optional<Length> size = cell(line, SIZE, this::size);
        Optional<Moisture> moisture = cell(line, MOISTURE, BlanksFile::moisture);
        Optional<Mass> finished = mass(line, "finished");
        boolean lost = cell(line, LOST, BlanksFile::yes).orElse(false);
        if (mass.isEmpty() && problems.size() == before) {
            problems.add(new Problem(
                    "line %d, column mass".formatted(line.number()),
                    "the blank was not weighed",
                    "weigh it, or take the line out"));
        }
        finished.filter(after ->
                        mass.filter(whole -> after.grams() > whole.grams()).isPresent())
                .ifPresent(after -> problems.add(new Problem(
                        "line %d, column finished".formatted(line.number()),
                        String.format(
                                Locale.ROOT,
                                "the finished piece weighs %.1f %s, more than the %.1f %s of its blank",
                                massUnit().count(after),
                                massUnit().symbol(),
                                massUnit().count(mass.orElseThrow()),
                                massUnit().symbol()),
                        "check both weights")));
        if (problems.size() == before) {
            blanks.add(
                    new WeighedBlank(label.orElseThrow(), mass.orElseThrow(), length, size, moisture, finished, lost));
        }
    }

    private Optional<String> label(CsvText.Line line) {
        String where = "line %d, column %s".formatted(line.number(), LABEL);
        Parsed<String> parsed = Piece.label(line.cell(names.indexOf(LABEL)));
        if (parsed instanceof Parsed.Refused<String> refused) {
            problems.add(new Problem(where, refused.what(), "give each blank a short label of its own"));
            return Optional.empty();
        }
        Long earlier = lineOfLabel.putIfAbsent(parsed.get(), line.number());
        if (earlier != null) {
            problems.add(new Problem(
                    where,
                    "blank '%s' is already on line %d".formatted(parsed.get(), earlier),
                    "give each blank a label of its own, or take out the line that is wrong"));
        }
        return Optional.of(parsed.get());
    }

    private Optional<Mass> mass(CsvText.Line line, String what) {
        Optional<Mass> grams = cell(line, what + "_g", text -> MassText.parse(text, MassUnit.GRAM));
        return grams.isPresent() ? grams : cell(line, what + "_oz", text -> MassText.parse(text, MassUnit.OUNCE));
    }

    private Parsed<Length> size(String text) {
        Parsed<Length> parsed = Length.parse(text, units);
        return parsed.fold(
                length -> length.isPositive()
                        ? Parsed.of(length)
                        : Parsed.refused(
                                "a size is above zero, was '%s'".formatted(text.strip()),
                                "leave it blank when it is the job's"),
                Parsed::refused);
    }

    private static Parsed<Moisture> moisture(String text) {
        String plain = text.strip().replace(',', '.').replace("%", "").strip();
        return plain.matches("[0-9]{1,3}(\\.[0-9]{1,9})?")
                ? Moisture.read(Double.parseDouble(plain))
                : Parsed.refused(
                        "'%s' is not a moisture".formatted(text.strip()),
                        "give percent of the dry wood's weight, from 0 to 300");
    }

    private static Parsed<Boolean> yes(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "yes", "y", "x", "1", "true", "lost" -> Parsed.of(true);
            case "no", "n", "0", "false", "-" -> Parsed.of(false);
            default ->
                Parsed.refused(
                        "'%s' does not say whether it is lost".formatted(text.strip()),
                        "write yes, or leave the cell blank");
        };
    }

    /** What stands in that column, if there is one and the cell is not blank; a refusal is told. */
    private <T> Optional<T> cell(CsvText.Line line, String name, Function<String, Parsed<T>> read) {
        int index = names.indexOf(name);
        if (index < 0 || line.cell(index).isBlank()) {
            return Optional.empty();
        }
        Parsed<T> parsed = read.apply(line.cell(index));
        if (parsed instanceof Parsed.Refused<T> refused) {
            problems.add(
                    new Problem("line %d, column %s".formatted(line.number(), name), refused.what(), refused.mend()));
            return Optional.empty();
        }
        return Optional.of(parsed.get());
    }
}
