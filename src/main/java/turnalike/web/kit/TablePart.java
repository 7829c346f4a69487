package turnalike.web.kit;

import java.util.List;

/**
 * A part of a table too long to be shown at once.
 *
 * @param from the first row shown, from 1
 * @param rows how many the whole table has
 */
public record TablePart(int from, int rows) {
    /** What a screen or two hold. */
    private static final int LONGEST = 100;

    /** The part that begins at that row, or the last if it is past the end. */
    public static TablePart from(int row, int rows) {
        return new TablePart(Math.max(1, Math.min(row, last(rows))), rows);
    }

    /** The part with the row that so many stand before. */
    public static TablePart holding(int index, int rows) {
        return new TablePart(index / LONGEST * LONGEST + 1, rows);
    }

    private static int last(int rows) {
        return Math.max(0, rows - 1) / LONGEST * LONGEST + 1;
    }

    /** The last row shown. */
    public int to() {
        return Math.min(rows, from + LONGEST - 1);
    }

    /** Whether the table is shown whole. */
    public boolean isWhole() {
        return rows <= LONGEST;
    }

    public boolean hasBefore() {
        return from > 1;
    }

    public boolean hasAfter() {
        return to() < rows;
    }

    /** Where the part before begins. */
    public int before() {
        return Math.max(1, from - LONGEST);
    }

    /** Where the part after begins. */
    public int after() {
        return from + LONGEST;
    }

    /** Where the last part begins. */
    public int last() {
        return last(rows);
    }

    /** Of all rows those shown. */
    public <T> List<T> of(List<T> all) {
        return all.subList(Math.min(from - 1, all.size()), Math.min(to(), all.size()));
    }
}
