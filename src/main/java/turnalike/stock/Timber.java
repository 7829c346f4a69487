package turnalike.stock;

import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * An amount of wood by its actual volume.
 *
 * @param mm3 cubic millimetres, zero or more and finite, else {@link IllegalArgumentException}
 */
public record Timber(double mm3) {
    /**
     * A board foot, 1 ft × 1 ft × 1 in = 144 in³, exactly 2 359 737.216 mm³. Source: definition as given by two encyclopedias, VERIFIED
     * second-hand; the grading rules themselves (NHLA, PS 20) were not seen.
     */
    static final double MM3_PER_BOARD_FOOT = 144 * Length.MM_PER_INCH * Length.MM_PER_INCH * Length.MM_PER_INCH;

    public Timber {
        if (!(mm3 >= 0) || !Double.isFinite(mm3)) {
            throw new IllegalArgumentException("timber must be zero or more and finite, was %s mm3".formatted(mm3));
        }
    }

    /** {@return board feet by actual volume} A yard's tally rounds and counts nominal sizes, so its bill differs. */
    public double boardFeet() {
        return mm3 / MM3_PER_BOARD_FOOT;
    }

    /** {@return the volume in cubic metres} */
    public double cubicMetres() {
        return mm3 * 1e-9;
    }

    /**
     * {@return the wood of that many equal pieces}
     *
     * @param pieces zero or more, else {@link IllegalArgumentException}
     */
    public Timber times(int pieces) {
        return new Timber(mm3 * pieces);
    }

    /**
     * {@return what it weighs at that density}
     *
     * @param density of the wood as it is
     */
    public Mass mass(Density density) {
        return Mass.ofGrams(mm3 * density.gramsPerMm3());
    }
}
