package turnalike.pieces.mend;

import turnalike.units.Length;

/**
 * How far a member's diameter may be taken down, from the piece as it is.
 *
 * @param thick how much thicker than the pattern the piece is there: taking that off costs no likeness; 0 when it was not measured
 * @param gentle the cut nobody will see
 * @param most the deepest cut, at least the gentle one; {@link IllegalArgumentException} when not, or when one is below zero
 */
public record CutRange(Length thick, Length gentle, Length most) {
    /** For tenons, squares and whatever else must stay: no cut at all. */
    public static final CutRange NONE = new CutRange(Length.ZERO, Length.ZERO, Length.ZERO);

    public CutRange {
        if (thick.mm() < 0 || gentle.mm() < 0 || most.compareTo(gentle) < 0) {
            throw new IllegalArgumentException(
                    "no room: thick %s mm, gentle %s mm, most %s mm".formatted(thick.mm(), gentle.mm(), most.mm()));
        }
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
