package turnalike.trace.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.csv.CsvText;

/** What the header of a table of points names: which column is which, whatever people call it, and the unit that stands beside the name. */
enum PointColumns {
    /** The place along the piece. */
    PLACE("x", "x|place|position|station|stelle|platz|ort|lage"),
    /** The diameter of what is round. */
    DIAMETER("diameter", "diameter|dia|diam|ø|⌀|durchmesser"),
    /** Across the flats of what is square. */
    SIDE("side", "side|across flats|flats|seite|kante|vierkant");

    /** {@code x (mm)}, {@code x [mm]}, {@code x_mm}, {@code x, mm}, {@code x in mm}. */
    private static final String UNIT = "(?:[\\s_,:/(\\[-]+(?:in\\s+)?(mm|cm|in|inch|inches|zoll|\")[)\\]]?)?";

    private static final Map<String, String> INCHES = Map.of("inch", "in", "inches", "in", "zoll", "in", "\"", "in");
    private static final Pattern BARE = Pattern.compile("[0-9][0-9.,/ -]*");

    private final String word;
    private final Pattern heading;

    PointColumns(String word, String names) {
        this.word = word;
        this.heading = Pattern.compile("(?:" + names + ")" + UNIT);
    }

    /** The word that the docs have for it. */
    String word() {
        return word;
    }

    boolean isHeading(String cell) {
        return match(cell).matches();
    }

    private Matcher match(String cell) {
        return heading.matcher(cell.strip().toLowerCase(Locale.ROOT));
    }

    /**
     * One such column of a table.
     *
     * @param index from 0
     * @param unit that its heading says, of bare numbers below it
     */
    record Column(int index, Optional<String> unit) {
        /** The cell with the heading's unit put to it where it says none itself. */
        String of(CsvText.Line line) {
            String cell = line.cell(index);
            return unit.isPresent() && BARE.matcher(cell).matches() ? cell + " " + unit.get() : cell;
        }
    }

    /** All columns that the header names so; more than one is a mistake. */
    List<Column> in(CsvText.Line header) {
        List<Column> out = new ArrayList<>();
        for (int i = 0; i < header.cells().size(); i++) {
            Matcher match = match(header.cell(i));
            if (match.matches()) {
                Optional<String> unit = Optional.ofNullable(match.group(1));
                out.add(new Column(i, unit.map(each -> INCHES.getOrDefault(each, each))));
            }
        }
        return out;
    }
}
