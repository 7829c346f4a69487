package turnalike.pieces.mend;

import turnalike.solid.Sensitivity;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * The mass that comes off one member when its diameter is taken down by δ everywhere: a·δ - b·δ² grams, which is exact for every member
 * whose radius is lowered by δ/2 throughout, for dV = π∫(r² - (r - δ/2)²)dx = π∫r dx·δ - (π/4)L·δ². Derived here.
 *
 * @param gramsPerMm a = πρ∫r dx, grams for each millimetre of diameter; above zero
 * @param gramsPerMm2 b = (π/4)ρL; zero or above, else {@link IllegalArgumentException}
 */
public record Removal(double gramsPerMm, double gramsPerMm2) {
    public Removal {
        if (!(gramsPerMm > 0) || !(gramsPerMm2 >= 0) || !Double.isFinite(gramsPerMm) || !Double.isFinite(gramsPerMm2)) {
            throw new IllegalArgumentException(
                    "a cut must take off mass, was %s g/mm less %s g/mm2".formatted(gramsPerMm, gramsPerMm2));
        }
    }

    /**
     * {@return what a cut takes off a part whose mass follows its diameter like that}
     *
     * @param sensitivity of the part; by a diameter more or less, in grams
     */
    public static Removal of(Sensitivity sensitivity) {
        return new Removal(sensitivity.linearGPerMm(), sensitivity.quadraticGPerMm2());
    }

    /**
     * {@return the mass a cut takes off}
     *
     * @param takeOff how much the diameter comes down
     */
    public Mass off(Length takeOff) {
        return Mass.ofGrams(grams(takeOff.mm()));
    }

    /** Grams taken off. */
    double grams(double takeOffMm) {
        return takeOffMm * (gramsPerMm - gramsPerMm2 * takeOffMm);
    }

    /** Grams for the next millimetre when that much is off already; falls with every cut. */
    double slope(double takeOffMm) {
        return gramsPerMm - 2 * gramsPerMm2 * takeOffMm;
    }

    /** The inverse of {@link #grams}: the smaller root, in the form that keeps its digits when b is small. */
    double takeOffMm(double grams) {
        double root = Math.sqrt(Math.max(gramsPerMm * gramsPerMm - 4 * gramsPerMm2 * grams, 0));
        return 2 * grams / (gramsPerMm + root);
    }
}
