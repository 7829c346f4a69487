package turnalike.units;

/**
 * Mass over volume, in kilograms per cubic metre.
 *
 * @param kgPerM3 finite and above zero, else {@link IllegalArgumentException}
 */
public record Density(double kgPerM3) {
    public Density {
        if (!(kgPerM3 > 0) || !Double.isFinite(kgPerM3)) {
            throw new IllegalArgumentException(
                    "density must be above zero and finite, was %s kg/m3".formatted(kgPerM3));
        }
    }

    /**
     * {@return the density of that many kilograms per cubic metre}
     *
     * @param kgPerM3 finite and above zero, else {@link IllegalArgumentException}
     */
    public static Density ofKgPerM3(double kgPerM3) {
        return new Density(kgPerM3);
    }

    /** {@return grams in one cubic millimetre: 1 kg/m³ is 10⁻⁶ g/mm³} */
    public double gramsPerMm3() {
        return kgPerM3 * 1e-6;
    }
}
