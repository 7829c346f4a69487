package turnalike.pieces.control;

/**
 * A change in the work that chance hardly explains.
 *
 * @param kind what it looks like
 * @param since the label of the first piece of it
 * @param at the label of the piece at which it is told
 * @param pieces how many pieces it spans, both included
 * @param by how much: the mean from {@code since} to {@code at} less the mean before; of a drift the fitted line's rise over these pieces; in
 *     the chart's own unit, with its sign
 * @param stands whether the pieces after {@code at}, if any, still lie there
 */
public record WorkChange(Kind kind, String since, String at, int pieces, double by, boolean stands) {
    /** What a change looks like. */
    public enum Kind {
        /** One piece far from those before it. */
        APART,
        /** A step that lasts. */
        SHIFT,
        /** A steady way up or down. */
        DRIFT
    }

    WorkChange times(double factor) {
        return new WorkChange(kind, since, at, pieces, by * factor, stands);
    }

    Signal signal() {
        String up = by > 0 ? "above" : "below";
        return switch (kind) {
            case APART ->
                new Signal(at, RunRule.STANDS_APART, "piece %s: far %s the pieces before it".formatted(at, up));
            case SHIFT ->
                new Signal(
                        at,
                        RunRule.LASTING_CHANGE,
                        "pieces %s to %s: %s the pieces before them, and it lasts".formatted(since, at, up));
            case DRIFT ->
                new Signal(
                        at,
                        RunRule.LASTING_CHANGE,
                        "pieces %s to %s: steadily %s".formatted(since, at, by > 0 ? "rising" : "falling"));
        };
    }

    /**
     * {@return the change as a sentence, without a capital letter and a full stop: {@code the last five necks grew 0.2 mm (pieces 5 to 9)}}
     *
     * @param things what was measured, in the plural
     * @param amount the size of {@link #by} with its unit and no sign
     */
    public String words(String things, String amount) {
        return switch (kind) {
            case APART -> "piece %s lies %s %s the pieces before it".formatted(at, amount, by > 0 ? "above" : "below");
            case SHIFT ->
                "from piece %s on the %s are %s %s than before"
                        .formatted(since, things, amount, by > 0 ? "more" : "less");
            case DRIFT ->
                "the %s %s %s over %d pieces, %s to %s"
                        .formatted(things, by > 0 ? "grew" : "shrank", amount, pieces, since, at);
        };
    }
}
