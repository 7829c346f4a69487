package turnalike.drawing.svg;

import turnalike.units.Length;

/**
 * A drawing's scale.
 *
 * @param paperOverWood above zero; 0.5 draws everything at half its size
 * @param text how a person reads it: {@code 1 : 2}
 */
public record Scale(double paperOverWood, String text) {
    private static final double[] TIDY = {
        1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100, 150, 200, 250, 500, 1000
    };

    public Scale {
        if (!(paperOverWood > 0) || !Double.isFinite(paperOverWood)) {
            throw new IllegalArgumentException("scale must be above zero and finite, was %s".formatted(paperOverWood));
        }
    }

    /** Full size. */
    public static final Scale FULL = new Scale(1, "1 : 1 (full size)");

    public static Scale of(double paperOverWood) {
        return paperOverWood >= 1
                ? new Scale(paperOverWood, Numbers.mm(Math.round(paperOverWood * 100) / 100.0) + " : 1")
                : new Scale(paperOverWood, "1 : " + Numbers.mm(Math.round(100 / paperOverWood) / 100.0));
    }

    /** The largest scale of the usual ones that is no larger than this; full size at most. */
    public static Scale tidy(double largest) {
        for (double one : TIDY) {
            if (1 / one <= largest * (1 + 1e-12)) {
                return one == 1 ? FULL : new Scale(1 / one, "1 : " + Numbers.mm(one));
            }
        }
        return of(largest);
    }

    /** That length on paper, in millimetres. */
    public double times(Length length) {
        return paperOverWood * length.mm();
    }
}
