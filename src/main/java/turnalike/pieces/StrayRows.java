package turnalike.pieces;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import turnalike.csv.CsvText;
import turnalike.units.Problem;

/** Rows of a sheet that are no pieces, and the two columns that are most easily exchanged. */
final class StrayRows {
    private static final Pattern SUMMARY = Pattern.compile(
            "(?:grand |sub-?)?(?:totals?|sums?|averages?|avg|mean|median|min(?:imum)?|max(?:imum)?|count|std ?dev|spread|\u03c3|\u03c2|\u2211)"
                    + "(?: mass| weight)?[ .:=]*");
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:[.,]\\d+)?");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,5}");

    /** Fewer lines than this may look so by chance. */
    private static final int FEW = 3;

    private StrayRows() {}

    /** Why that line is no piece: it adds the others up, or it is the header again. */
    static Optional<Problem> of(CsvText.Line line, PiecesHeader header) {
        String label = line.cell(header.label()).strip();
        String where = "line " + line.number();
        if (SUMMARY.matcher(label.toLowerCase(Locale.ROOT)).matches()) {
            return Optional.of(new Problem(
                    where, "'%s' sums the pieces up and is none".formatted(label), "take the line out of the table"));
        }
        List<String> cells = line.cells().stream().map(String::strip).toList();
        boolean again = cells.size() == header.names().size();
        for (int i = 0; again && i < cells.size(); i++) {
            again = cells.get(i).equalsIgnoreCase(header.names().get(i));
        }
        return again
                ? Optional.of(new Problem(where, "the header stands here again", "take the line out of the table"))
                : Optional.empty();
    }

    /**
     * Whether the pieces' labels stand under the mass and the masses under {@code piece}: distinct small whole numbers there, and here
     * numbers that have decimals or are all larger than those.
     */
    static Optional<Problem> swapped(List<CsvText.Line> lines, PiecesHeader header) {
        Optional<Integer> mass = header.mass();
        if (mass.isEmpty() || header.label() < 0 || lines.size() < FEW) {
            return Optional.empty();
        }
        Set<Integer> numbers = new HashSet<>();
        double leastLabel = Double.POSITIVE_INFINITY;
        boolean decimals = false;
        for (CsvText.Line line : lines) {
            String under = line.cell(mass.get()).strip();
            String label = line.cell(header.label()).strip();
            boolean like = WHOLE.matcher(under).matches()
                    && NUMBER.matcher(label).matches()
                    && numbers.add(Integer.valueOf(under));
            if (!like) {
                return Optional.empty();
            }
            leastLabel = Math.min(leastLabel, Double.parseDouble(label.replace(',', '.')));
            decimals |= label.contains(".") || label.contains(",");
        }
        int most = numbers.stream().mapToInt(Integer::intValue).max().orElse(0);
        boolean counted = most <= 2 * lines.size();
        if (!counted || !(decimals || leastLabel > most)) {
            return Optional.empty();
        }
        String name = header.names().get(mass.get());
        return Optional.of(new Problem(
                "line %d, columns %s and %s"
                        .formatted(header.line(), header.names().get(header.label()), name),
                "they seem to have changed places: the pieces are called %s and so on, and weigh %s"
                        .formatted(
                                lines.get(0).cell(header.label()).strip(),
                                lines.get(0).cell(mass.get()).strip()),
                "exchange the two names in the header"));
    }
}
