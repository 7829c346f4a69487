package turnalike.units;

import java.util.Locale;

/**
 * A mass in grams. May be negative as a difference.
 *
 * @param grams finite, else {@link IllegalArgumentException}
 */
public record Mass(double grams) implements Comparable<Mass> {
    /** Grams in an avoirdupois ounce, exact: 453.59237 g / 16 (international pound, 1959; from memory). */
    public static final double GRAMS_PER_OUNCE = 28.349523125;

    private static final int OUNCES_PER_POUND = 16;

    public Mass {
        if (!Double.isFinite(grams)) {
            throw new IllegalArgumentException("mass must be finite, was %s g".formatted(grams));
        }
        grams += 0.0; // see Length
    }

    /**
     * {@return the mass of that many grams}
     *
     * @param grams finite, else {@link IllegalArgumentException}
     */
    public static Mass ofGrams(double grams) {
        return new Mass(grams);
    }

    /**
     * {@return the mass of that many avoirdupois ounces}
     *
     * @param ounces finite, else {@link IllegalArgumentException}
     */
    public static Mass ofOunces(double ounces) {
        return new Mass(ounces * GRAMS_PER_OUNCE);
    }

    /** {@return the mass in avoirdupois ounces, unrounded} */
    public double ounces() {
        return grams / GRAMS_PER_OUNCE;
    }

    /** {@return the mass in avoirdupois pounds, unrounded} */
    public double pounds() {
        return ounces() / OUNCES_PER_POUND;
    }

    /**
     * {@return as a kitchen scale shows it: {@code 24.8 oz}, and a pound or more as {@code 18 lb 9.6 oz}}
     *
     * @param decimals of the ounces, 0 to 3
     */
    public String formatOunces(int decimals) {
        String pattern = "%." + decimals + "f oz";
        double rounded = Double.parseDouble(String.format(Locale.ROOT, "%." + decimals + "f", ounces()));
        if (rounded < OUNCES_PER_POUND) {
            return String.format(Locale.ROOT, pattern, rounded);
        }
        long pounds = (long) (rounded / OUNCES_PER_POUND);
        return pounds + " lb " + String.format(Locale.ROOT, pattern, rounded - OUNCES_PER_POUND * pounds);
    }

    /** {@return as a shop's scale shows it: {@code 704 g}, and ten kilograms or more as {@code 12.44 kg}} */
    public String formatGrams() {
        return grams < 10_000
                ? String.format(Locale.ROOT, "%.0f g", grams)
                : String.format(Locale.ROOT, "%.2f kg", grams / 1000);
    }

    /**
     * {@return the two masses together}
     *
     * @param other what is added
     */
    public Mass plus(Mass other) {
        return new Mass(grams + other.grams);
    }

    /**
     * {@return this mass less the other; below zero when the other is heavier}
     *
     * @param other what is taken away
     */
    public Mass minus(Mass other) {
        return new Mass(grams - other.grams);
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(grams, other.grams);
    }
}
