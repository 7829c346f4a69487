package turnalike.stock;

import turnalike.units.Length;

/**
 * What the pattern asks of its blank.
 *
 * @param blank as it goes on the lathe
 * @param run the finished piece's length, above zero and at most the blank's
 * @param cornersStay whether some of the finished piece is left square, so that its corners must not be cut off
 */
public record BlankNeed(Blank blank, Length run, boolean cornersStay) {
    /** Lets a run of sixty-fourths add up to its blank in spite of rounding. */
    private static final double HAIR = 1 + 1e-12;

    public BlankNeed {
        if (!run.isPositive() || run.mm() > blank.length().mm() * HAIR) {
            throw new IllegalArgumentException("the run must be above zero and fit its blank of %s mm, was %s mm"
                    .formatted(blank.length().mm(), run.mm()));
        }
    }

    /** {@return what of the blank's length is no part of the piece: for holding and parting off} */
    public Length waste() {
        return Length.ofMm(Math.max(0, blank.length().mm() - run.mm()));
    }
}
