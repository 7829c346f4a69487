package turnalike.pieces;

import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * The job's tolerances, in which differences are counted.
 *
 * @param mark for lengths, balance points and marks; above zero
 * @param diameter for diameters; above zero
 * @param massPct for masses, in per cent of the mean mass; above zero and finite, else {@link IllegalArgumentException} as for the others
 */
public record LikenessTolerances(Length mark, Length diameter, double massPct) {
    public LikenessTolerances {
        if (!mark.isPositive() || !diameter.isPositive() || !(massPct > 0) || !Double.isFinite(massPct)) {
            throw new IllegalArgumentException(
                    "tolerances must be above zero, were mark %s mm, diameter %s mm, mass %s %%"
                            .formatted(mark.mm(), diameter.mm(), massPct));
        }
    }

    /** The tolerance of a column, in grams for the mass and millimetres for the rest. */
    double figure(Column column, Mass meanMass) {
        return switch (column.kind()) {
            case MASS -> massPct / 100 * meanMass.grams();
            case LENGTH, BALANCE, MARK -> mark.mm();
            case DIAMETER -> diameter.mm();
        };
    }
}
