package turnalike.trace.fit;

/**
 * A place where one member may end and the next begin.
 *
 * @param placeMm along the piece
 * @param last the last station before it
 * @param first the first station after it: the same one where a station lies on it and belongs to both
 */
record Seam(double placeMm, int last, int first) {
    /**
     * What a joint costs, in sizes, because nobody measured both sides of it: whoever sets a caliper at a piece's features sets it at its
     * joints, and twice at a shoulder. Else a form could end in a radius far from any that was measured. A shoulder right at a single row costs
     * more where others have two. Of a piece swept from end to end nothing.
     */
    int unmeasured(Data data) {
        boolean inside = last >= 0 && first < data.size();
        if (data.swept || !inside || isShared() || data.x[last] == data.x[first]) {
            return 0;
        }
        boolean onRow = placeMm == data.x[last] || placeMm == data.x[first];
        return onRow && data.shouldersTwice ? 3 : 2;
    }

    boolean isShared() {
        return last == first;
    }
}
