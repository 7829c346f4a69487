package turnalike.pieces.mend;

import turnalike.units.Length;

/**
 * How far a member's diameter may be taken down, from the piece as it is.
 *
 * @param thick how much thicker than the pattern the piece is there: taking that off costs no likeness; 0 when it was not measured
 * @param gentle the cut nobody will see
 * @param most the deepest cut that leaves the diameter within its tolerance, at least the gentle one; {@link IllegalArgumentException} when
 *     not, or when one is below zero
 * @param risked the deepest cut that may do so, at least {@code most}: deeper only where the diameter is inferred and not measured
 */
public record CutRange(Length thick, Length gentle, Length most, Length risked) {
    /** For tenons, squares and whatever else must stay: no cut at all. */
    public static final CutRange NONE = new CutRange(Length.ZERO, Length.ZERO, Length.ZERO);

    public CutRange {
        if (thick.mm() < 0 || gentle.mm() < 0 || most.compareTo(gentle) < 0 || risked.compareTo(most) < 0) {
            throw new IllegalArgumentException("no room: thick %s mm, gentle %s mm, most %s mm, risked %s mm"
                    .formatted(thick.mm(), gentle.mm(), most.mm(), risked.mm()));
        }
    }

    /**
     * A place whose diameter is known.
     *
     * @param thick as in the record
     * @param gentle as in the record
     * @param most as in the record; nothing is risked beyond
     */
    public CutRange(Length thick, Length gentle, Length most) {
        this(thick, gentle, most, most);
    }

    /**
     * Half the diameter tolerance unseen and the whole of it at most (common practice, no source).
     *
     * @param diameterTolerance the job's; not negative, else {@link IllegalArgumentException}
     * @return that range, for a place no thicker than the pattern
     */
    public static CutRange within(Length diameterTolerance) {
        return new CutRange(Length.ZERO, diameterTolerance.times(0.5), diameterTolerance);
    }
}
