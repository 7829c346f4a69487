package turnalike.job.price;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.csv.CsvText;
import turnalike.price.Timing;
import turnalike.units.Parsed;
import turnalike.units.Problem;

/**
 * The times file: a table with a header. Columns by name, in any order: {@code stage}, {@code minutes} (52, 52.5 or 1:20), and where wanted
 * {@code pieces}, how many the time was for: 1 if left out, 0 for what is done once for the order. Lines stand in the order of the work;
 * other columns are passed over.
 */
public final class TimesFile {
    private static final String FILE = "times file";
    private static final String STAGE = "stage";
    private static final String MINUTES = "minutes";
    private static final String PIECES = "pieces";
    private static final String PIECE = "piece";
    private static final int MOST_LINES = 10_000;
    private static final int LONGEST_STAGE = 40;

    /** A month without sleep: what is longer is a slip (common practice, no source). */
    private static final double MOST_MINUTES = 43_200;

    private static final Pattern PLAIN = Pattern.compile("[0-9]{1,6}([.,][0-9]{1,6})?");
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,3}):([0-5][0-9])");

    private final List<String> names;
    private final Map<String, List<Timing>> stages = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    /**
     * What came of reading.
     *
     * @param stages the timings of each, in the file's order
     * @param problems everything wrong, in the file's order
     */
    public record Read(Map<String, List<Timing>> stages, List<Problem> problems) {
        public Read {
            stages = new LinkedHashMap<>(stages);
            problems = List.copyOf(problems);
        }
    }

    private TimesFile(CsvText.Line header) {
        this.names = header.cells().stream()
                .map(name -> name.strip().toLowerCase(Locale.ROOT))
                .toList();
    }

    /**
     * {@return the timings of a file, with everything wrong in it}
     *
     * @param text the file's whole text
     */
    public static Read parse(String text) {
        CsvText table = CsvText.of(text, STAGE, FILE);
        if (table.lines().isEmpty()) {
            Problem empty = new Problem(FILE, "the file is empty", "give a header line and a line for each time taken");
            return new Read(Map.of(), List.of(table.broken().orElse(empty)));
        }
        TimesFile file = new TimesFile(table.lines().get(0));
        file.header(table.lines().get(0).number());
        List<CsvText.Line> lines = table.lines().subList(1, table.lines().size());
        if (file.problems.isEmpty() && lines.isEmpty()) {
            file.problems.add(new Problem(FILE, "there is a header and no time", "give a line for each time taken"));
        }
        if (lines.size() > MOST_LINES) {
            file.problems.add(new Problem(
                    FILE, "%d lines are more than %d".formatted(lines.size(), MOST_LINES), "give one order's times"));
        }
        if (file.problems.isEmpty()) {
            lines.forEach(file::line);
        }
        table.broken().ifPresent(file.problems::add);
        return new Read(file.stages, file.problems);
    }

    private void header(long line) {
        for (String name : List.of(STAGE, MINUTES)) {
            if (!names.contains(name)) {
                problems.add(new Problem(
                        "line " + line,
                        "the header has no column '%s'".formatted(name),
                        "name the columns in the first line, like stage,minutes,pieces"));
            }
        }
        for (String name : List.of(STAGE, MINUTES, PIECES, PIECE)) {
            if (names.indexOf(name) != names.lastIndexOf(name)) {
                problems.add(new Problem(
                        "line %d, column %s".formatted(line, name),
                        "two columns bear this name",
                        "rename one or take it out"));
            }
        }
    }

    private void line(CsvText.Line line) {
        String stage = line.cell(names.indexOf(STAGE)).strip();
        if (stage.isEmpty() || stage.length() > LONGEST_STAGE) {
            problems.add(new Problem(
                    place(line, STAGE),
                    stage.isEmpty() ? "the stage is not named" : "the stage's name is longer than 40 letters",
                    "give a short name, like milling, turning or sanding"));
            return;
        }
        Optional<Double> minutes = told(line, MINUTES, minutes(line.cell(names.indexOf(MINUTES))));
        String count = names.contains(PIECES) ? line.cell(names.indexOf(PIECES)) : "";
        Optional<Integer> pieces = told(line, PIECES, pieces(count.strip()));
        if (minutes.isPresent() && pieces.isPresent()) {
            String piece =
                    names.contains(PIECE) ? line.cell(names.indexOf(PIECE)).strip() : "";
            stages.computeIfAbsent(stage, key -> new ArrayList<>())
                    .add(new Timing(
                            minutes.get(), pieces.get(), Optional.of(piece).filter(text -> !text.isEmpty())));
        }
    }

    private static String place(CsvText.Line line, String column) {
        return "line %d, column %s".formatted(line.number(), column);
    }

    private <T> Optional<T> told(CsvText.Line line, String column, Parsed<T> read) {
        return read.fold(Optional::of, (what, mend) -> {
            problems.add(new Problem(place(line, column), what, mend));
            return Optional.empty();
        });
    }

    /**
     * {@return minutes above zero}
     *
     * @param text as a person writes them: 52, 52.5, 52,5 or 1:20 for an hour and twenty
     */
    public static Parsed<Double> minutes(String text) {
        String plain = text.strip();
        Matcher clock = CLOCK.matcher(plain);
        double minutes = 0;
        if (clock.matches()) {
            minutes = 60.0 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2));
        } else if (PLAIN.matcher(plain).matches()) {
            minutes = Double.parseDouble(plain.replace(',', '.'));
        }
        return minutes > 0 && minutes <= MOST_MINUTES
                ? Parsed.of(minutes)
                : Parsed.refused(
                        "'%s' is no time".formatted(plain),
                        "give minutes above zero, at most 43200 (30 days), like 52 or 52.5, or hours and minutes like 1:20");
    }

    private static Parsed<Integer> pieces(String text) {
        if (text.isEmpty()) {
            return Parsed.of(1);
        }
        return text.matches("[0-9]{1,5}") && Integer.parseInt(text) <= MOST_LINES
                ? Parsed.of(Integer.parseInt(text))
                : Parsed.refused(
                        "'%s' is no count of pieces".formatted(text),
                        "give a whole number from 0 (done once for the order) to 10000, or leave it blank for 1");
    }
}
