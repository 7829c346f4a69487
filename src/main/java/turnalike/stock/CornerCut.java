package turnalike.stock;

import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * The cut that turns a square blank into a regular octagon, so that the gouge has less corner to knock off. All exact by plane geometry.
 *
 * @param side side of the square, above zero
 */
public record CornerCut(Length side) {
    public CornerCut {
        if (!side.isPositive()) {
            throw new IllegalArgumentException("side must be above zero, was %s mm".formatted(side.mm()));
        }
    }

    /** {@return the width of each of the eight faces, and of the strip each cut takes off: {@code s (√2 - 1)}} Derived. */
    public Length face() {
        return side.times(Math.sqrt(2) - 1);
    }

    /** {@return where to mark the cut on each face, in from its edge: {@code s (1 - 1/√2)}, about 0.2929 s} Derived. */
    public Length markIn() {
        return side.times(1 - Math.sqrt(0.5));
    }

    /** {@return how deep each 45° cut takes the corner down, from the arris square to the new face: {@code s (√2 - 1) / 2}} Derived. */
    public Length depth() {
        return face().times(0.5);
    }

    /** {@return the largest round that comes out of the square, before or after the corners are cut: its side} */
    public Length largestRound() {
        return side;
    }

    Working working(UnitSystem units, boolean cornersStay) {
        String how =
                ("s = %s: mark each face at s (1 - 1/sqrt 2) = 0.2929 s = %s from both its edges and cut the corners off at 45°"
                                + " between the marks; each corner goes down by s (sqrt 2 - 1)/2 = %s; eight faces of s (sqrt 2 - 1)"
                                + " = %s; largest round %s")
                        .formatted(
                                side.format(units),
                                DualLength.both(markIn(), units),
                                DualLength.both(depth(), units),
                                DualLength.both(face(), units),
                                largestRound().format(units));
        String sureness = cornersStay
                ? "exact; but this piece has square members: their corners stay, so cut between them only, or leave the corners to the"
                        + " gouge"
                : "exact; whether it is worth doing is a matter of size and taste (%s)"
                        .formatted(Working.COMMON_PRACTICE);
        return new Working("Corner cut", how, Working.DERIVED, sureness);
    }
}
