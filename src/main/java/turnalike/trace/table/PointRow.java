package turnalike.trace.table;

/** One row: where it stands in the file, its place, and half of its diameter or of its side. In millimetres. */
record PointRow(long line, double placeMm, double radiusMm, boolean isSquare) {
    /** Whether another says just what this one does. */
    boolean isSameAs(PointRow other) {
        return placeMm == other.placeMm && radiusMm == other.radiusMm && isSquare == other.isSquare;
    }
}
