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

    /** Board feet by actual volume. A yard's tally rounds and counts nominal sizes, so its bill differs. */
    public double boardFeet() {
        return mm3 / MM3_PER_BOARD_FOOT;
    }

    public double cubicMetres() {
        return mm3 * 1e-9;
    }

    public Timber times(int pieces) {
        return new Timber(mm3 * pieces);
    }

    /** What it weighs at that density. */
    public Mass mass(Density density) {
        return Mass.ofGrams(mm3 * density.gramsPerMm3());
    }
}
