package turnalike.pieces;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.units.MassUnit;

/**
 * One thing measured on a piece. Its figure is in grams for the mass and in millimetres for everything else.
 *
 * @param kind what is measured
 * @param place which check place or mark, 1 to 999; 0 for the kinds that a piece has once
 */
public record Column(Kind kind, int place) implements Comparable<Column> {
    /** The mass, in grams inside, in grams or ounces in a file. */
    public static final Column MASS = new Column(Kind.MASS, 0);

    /** The overall length. */
    public static final Column LENGTH = new Column(Kind.LENGTH, 0);

    /** The balance point's distance from the start end. */
    public static final Column BALANCE = new Column(Kind.BALANCE, 0);

    private static final int LAST_PLACE = 999;
    private static final Pattern NUMBERED = Pattern.compile("([md])([1-9]\\d{0,2})");
    private static final Comparator<Column> ORDER =
            Comparator.comparing(Column::kind).thenComparingInt(Column::place);

    /** What can be measured, in the order columns are written and compared. */
    public enum Kind {
        /** How heavy the piece is. */
        MASS,
        /** How long it is from end to end. */
        LENGTH,
        /** How far its balance point lies from the start end. */
        BALANCE,
        /** How far one of its marks (an edge, a bead's crown) stands from the start end: {@code m1}, {@code m2}, … */
        MARK,
        /** A diameter at one of the job's check places: {@code d1}, {@code d2}, … */
        DIAMETER;

        private boolean isNumbered() {
            return this == MARK || this == DIAMETER;
        }
    }

    public Column {
        if (kind.isNumbered() ? place < 1 || place > LAST_PLACE : place != 0) {
            throw new IllegalArgumentException("no place %d for a column of kind %s".formatted(place, kind));
        }
    }

    /**
     * {@return the diameter at a check place}
     *
     * @param place of the job's check places, counted from 1 to 999, else {@link IllegalArgumentException}
     */
    public static Column diameter(int place) {
        return new Column(Kind.DIAMETER, place);
    }

    /**
     * {@return where a mark stands from the start end}
     *
     * @param place the mark's number, counted from 1 to 999 as on the stick, else {@link IllegalArgumentException}
     */
    public static Column mark(int place) {
        return new Column(Kind.MARK, place);
    }

    /**
     * {@return the column of that name in a pieces file; empty when the file gives the name no meaning of its own} {@code mass_g} and
     * {@code mass_oz} are both the mass.
     *
     * @param name letters in either case, blanks around it ignored
     */
    public static Optional<Column> find(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT);
        Matcher numbered = NUMBERED.matcher(plain);
        if (numbered.matches()) {
            int place = Integer.parseInt(numbered.group(2));
            return Optional.of("m".equals(numbered.group(1)) ? mark(place) : diameter(place));
        }
        return switch (plain) {
            case "mass_g", "mass_oz" -> Optional.of(MASS);
            case "length" -> Optional.of(LENGTH);
            case "balance" -> Optional.of(BALANCE);
            default -> Optional.empty();
        };
    }

    /** {@return the column's name in a pieces file; the mass is {@code mass_g}} The inverse of {@link #find}. */
    public String format() {
        return format(MassUnit.GRAM);
    }

    /**
     * {@return the column's name in a pieces file that has its masses in that unit}
     *
     * @param masses the unit of every mass of the file
     */
    public String format(MassUnit masses) {
        return switch (kind) {
            case MASS -> masses.column();
            case LENGTH -> "length";
            case BALANCE -> "balance";
            case MARK -> "m" + place;
            case DIAMETER -> "d" + place;
        };
    }

    /** {@return whether the figures are masses in grams rather than lengths in millimetres} */
    public boolean isMass() {
        return kind == Kind.MASS;
    }

    @Override
    public int compareTo(Column other) {
        return ORDER.compare(this, other);
    }
}
