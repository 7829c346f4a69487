package turnalike.web.pieces;

import java.util.List;
import turnalike.job.kept.KeptPiece;

/**
 * A part of a table too long to be shown at once.
 *
 * @param from the first row shown, from 1
 * @param rows how many the whole table has
 */
public record TablePart(int from, int rows) {
    /** What a screen or two hold. */
    static final int LONGEST = 100;

    /** The part that begins at that row, or the last if it is past the end. */
    static TablePart from(int row, int rows) {
        return new TablePart(Math.max(1, Math.min(row, last(rows))), rows);
    }

    /** The part with that piece; without one of that label the last, where what was logged last stands. */
    static TablePart holding(List<KeptPiece> pieces, String label) {
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i).label().equals(label)) {
                return new TablePart(i / LONGEST * LONGEST + 1, pieces.size());
            }
        }
        return new TablePart(last(pieces.size()), pieces.size());
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

    List<KeptPiece> of(List<KeptPiece> pieces) {
        return pieces.subList(Math.min(from - 1, pieces.size()), Math.min(to(), pieces.size()));
    }
}
