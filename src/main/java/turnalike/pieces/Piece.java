package turnalike.pieces;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Parsed;

/**
 * One turned spindle.
 *
 * @param label what is written on it; not blank, one line, no blanks around it, else {@link IllegalArgumentException}
 * @param measures what was measured on it
 * @param extra further columns of the file, kept as written and otherwise ignored: names that are neither blank nor a known column's,
 *     cells that are not blank, else {@link IllegalArgumentException}
 */
public record Piece(String label, Measures measures, Map<String, String> extra) {
    /** The most letters of a label that is typed or read (common practice, no source): more is a note. */
    static final int LONGEST_LABEL = 64;

    /** What stands in a text for letters that could not be read. */
    static final char UNREADABLE_LETTER = '\ufffd';

    public Piece {
        if (label.isEmpty() || !label.equals(label.strip()) || label.chars().anyMatch(Character::isISOControl)) {
            throw new IllegalArgumentException("a label is one line of text, was '%s'".formatted(label));
        }
        for (Map.Entry<String, String> each : extra.entrySet()) {
            if (each.getKey().isBlank() || each.getValue().isBlank() || isKnown(each.getKey())) {
                throw new IllegalArgumentException(
                        "'%s' is not an extra column, with '%s'".formatted(each.getKey(), each.getValue()));
            }
        }
        extra = Collections.unmodifiableMap(new LinkedHashMap<>(extra));
    }

    /**
     * {@return a piece with nothing beside its measures}
     *
     * @param label what is written on it
     * @param measures what was measured on it
     */
    public static Piece of(String label, Measures measures) {
        return new Piece(label, measures, Map.of());
    }

    /**
     * {@return a label as somebody typed it, without the blanks around it; refused unless it is one line of letters, 64 at most}
     *
     * @param text as typed
     */
    public static Parsed<String> label(String text) {
        String label = text.strip();
        return label.isEmpty() || label.length() > LONGEST_LABEL || !isOneLine(label)
                ? Parsed.refused(
                        "is no label", "give what is written on the piece, %d letters at most".formatted(LONGEST_LABEL))
                : Parsed.of(label);
    }

    /** {@return the mass, if weighed} */
    public Optional<Mass> mass() {
        return measures.mass();
    }

    /** {@return the overall length, if measured} */
    public Optional<Length> length() {
        return measures.length(Column.LENGTH);
    }

    /** {@return the balance point's distance from the start end, if measured} */
    public Optional<Length> balance() {
        return measures.length(Column.BALANCE);
    }

    /** {@return the diameters measured, by check place from 1} */
    public SortedMap<Integer, Length> diameters() {
        SortedMap<Integer, Length> diameters = new TreeMap<>();
        measures.figures().forEach((column, figure) -> {
            if (column.kind() == Column.Kind.DIAMETER) {
                diameters.put(column.place(), Length.ofMm(figure));
            }
        });
        return Collections.unmodifiableSortedMap(diameters);
    }

    /**
     * {@return a copy with other measures: a correction keeps the label and the extra columns}
     *
     * @param changed in place of all its measures
     */
    public Piece with(Measures changed) {
        return new Piece(label, changed, extra);
    }

    /**
     * {@return a copy with that in a further column}
     *
     * @param column its name
     * @param text what is noted there; blank takes the column out
     * @throws IllegalArgumentException when something is noted under a blank name, or one a pieces file gives a meaning of its own
     */
    public Piece noting(String column, String text) {
        Map<String, String> changed = new LinkedHashMap<>(extra);
        if (text.isBlank()) {
            changed.remove(column);
        } else {
            changed.put(column, text);
        }
        return new Piece(label, measures, changed);
    }

    /**
     * {@return what is noted of a piece, without the blanks around it; refused unless it is one line of letters, or nothing}
     *
     * @param text as typed
     */
    public static Parsed<String> note(String text) {
        String note = text.strip();
        return isOneLine(note)
                ? Parsed.of(note)
                : Parsed.refused("is more than one line of letters", "give one word or a number");
    }

    private static boolean isOneLine(String text) {
        return text.chars().noneMatch(each -> Character.isISOControl(each) || each == UNREADABLE_LETTER);
    }

    /**
     * {@return whether a pieces file gives that column a meaning of its own}
     *
     * @param name letters in either case, blanks around it ignored
     */
    public static boolean isKnown(String name) {
        return PiecesFile.LABEL.equalsIgnoreCase(name.strip())
                || Column.find(name).isPresent();
    }
}
