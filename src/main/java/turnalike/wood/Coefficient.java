package turnalike.wood;

/**
 * A coefficient of dimensional change and whether it is printed.
 *
 * @param perPoint fraction of a size gained per percentage point of moisture
 * @param derived true when it was worked out here from the printed shrinkage, see {@link #fromShrinkage}
 */
public record Coefficient(double perPoint, boolean derived) {
    /**
     * The coefficient that a shrinkage implies: {@code S / (100 F - S (F - 10))} with fibre saturation F = 30. Derived: Equation 13-3
     * started at 10 %. Reproduces 77 of the 96 printed coefficients that have a shrinkage beside them, within 0.00001.
     */
    static Coefficient fromShrinkage(double wholePct) {
        double saturation = Moisture.FIBRE_SATURATION.pct();
        return new Coefficient(wholePct / (100 * saturation - wholePct * (saturation - 10)), true);
    }

    /** The shrinkage in percent that would give this coefficient, the inverse of {@link #fromShrinkage}. Derived. */
    double toShrinkagePct() {
        double saturation = Moisture.FIBRE_SATURATION.pct();
        return 100 * saturation * perPoint / (1 + perPoint * (saturation - 10));
    }
}
