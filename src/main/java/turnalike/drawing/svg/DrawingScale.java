package turnalike.drawing.svg;

import turnalike.units.Length;

/**
 * A drawing's scale.
 *
 * @param paperOverWood above zero; 0.5 draws everything at half its size
 * @param text how a person reads it: {@code 1 : 2}
 */
public record DrawingScale(double paperOverWood, String text) {
    private static final double[] TIDY = {
        1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 250, 500, 1000
    };

    public DrawingScale {
        if (!(paperOverWood > 0) || !Double.isFinite(paperOverWood)) {
            throw new IllegalArgumentException("scale must be above zero and finite, was %s".formatted(paperOverWood));
        }
    }

    /** Full size. */
    public static final DrawingScale FULL = new DrawingScale(1, "1 : 1 (full size)");

    public static DrawingScale of(double paperOverWood) {
        return paperOverWood >= 1
                ? new DrawingScale(paperOverWood, SvgNumbers.mm(Math.round(paperOverWood * 100) / 100.0) + " : 1")
                : new DrawingScale(paperOverWood, "1 : " + SvgNumbers.mm(Math.round(100 / paperOverWood) / 100.0));
    }

    /** The largest scale of the usual ones that is no larger than this; full size at most. */
    public static DrawingScale tidy(double largest) {
        for (double one : TIDY) {
            if (1 / one <= largest * (1 + 1e-12)) {
                return one == 1 ? FULL : new DrawingScale(1 / one, "1 : " + SvgNumbers.mm(one));
            }
        }
        return of(largest);
    }

    /** That length on paper, in millimetres. */
    public double times(Length length) {
        return paperOverWood * length.mm();
    }
}
