package turnalike.units;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * What a scale can say: masses told to the step it shows, not finer. What was typed keeps its figures as far as the step has decimals; what is
 * reckoned of several weighings, a mean or a target, bears one decimal more; what is to be read off the scale later is told at its steps.
 *
 * @param step the smallest step that it shows, not below zero, else {@link IllegalArgumentException}; zero for one that shows every step
 */
public record WeighingScale(Mass step) {
    /** A scale that says nothing of its step is read like a bench scale, to tenths. */
    private static final int USUAL_DECIMALS = 1;

    private static final int MOST_DECIMALS = 3;
    private static final double SLACK = 1e-9;
    /** From this step on a hundredth of an ounce, 0.28 g, would be finer than the scale. */
    private static final double COARSE_G = 0.3;

    public WeighingScale {
        if (step.grams() < 0) {
            throw new IllegalArgumentException("a scale's step is not negative, was %s g".formatted(step.grams()));
        }
    }

    /** {@return decimals of a gram that it shows: 0 for steps of 1 g and 5 g, 1 for 0.1 g and 0.5 g, 2 for 0.25 g} */
    public int decimals() {
        if (step.grams() == 0) {
            return USUAL_DECIMALS;
        }
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step.grams()) - SLACK));
        int one = decimals + 1;
        boolean wantsOneMore =
                !isWhole(step.grams() * Math.pow(10, decimals)) && isWhole(step.grams() * Math.pow(10, one));
        return Math.min(MOST_DECIMALS, wantsOneMore ? one : decimals);
    }

    private static boolean isWhole(double value) {
        return Math.abs(value - Math.rint(value)) < SLACK * Math.max(1, value);
    }

    /**
     * {@return a mass as it shows it: {@code 243 g} or {@code 243.1 g}}
     *
     * @param mass a reading, a difference of two, or what is expected of a piece
     */
    public String reading(Mass mass) {
        return figure(mass) + " g";
    }

    /**
     * {@return the same without its unit}
     *
     * @param mass as of {@link #reading}
     */
    public String figure(Mass mass) {
        return fixed(mass, decimals());
    }

    /**
     * {@return what was reckoned of several weighings: to a tenth of the step, where there is something to tell in it} Of a step of 2 g and
     * more, to whole grams.
     *
     * @param mass a mean, a median, a target
     */
    public String reckoned(Mass mass) {
        int tenth = step.grams() == 0 ? decimals() + 1 : (int) Math.ceil(-Math.log10(step.grams() / 2) - SLACK);
        String fine = fixed(mass, Math.min(MOST_DECIMALS, Math.max(decimals(), tenth)));
        String coarse = figure(mass);
        return (Double.parseDouble(fine) == Double.parseDouble(coarse) ? coarse : fine) + " g";
    }

    /**
     * {@return by how much the two differ as they are told: where {@code 50 g} and {@code 43 g} stand, {@code 7 g}}
     *
     * @param read what {@link #reading} tells
     * @param reckoned what {@link #reckoned} tells
     */
    public String difference(Mass read, Mass reckoned) {
        String one = figure(read);
        String other = reckoned(reckoned).replace(" g", "");
        BigDecimal off = new BigDecimal(one).subtract(new BigDecimal(other)).abs();
        return (off.signum() == 0 ? "0" : off.toPlainString()) + " g";
    }

    /**
     * {@return the lightest reading that is no lighter}
     *
     * @param mass from which on
     */
    public Mass atLeast(Mass mass) {
        return step.grams() == 0 ? mass : steps(Math.ceil(mass.grams() / step.grams() - SLACK));
    }

    /**
     * {@return the heaviest reading that is no heavier}
     *
     * @param mass up to which
     */
    public Mass atMost(Mass mass) {
        return step.grams() == 0 ? mass : steps(Math.floor(mass.grams() / step.grams() + SLACK));
    }

    private Mass steps(double steps) {
        return Mass.ofGrams(steps * step.grams());
    }

    /**
     * {@return a mass in ounces, no finer than it shows: to hundredths, of a scale of whole grams to tenths}
     *
     * @param mass as of {@link #reading}
     */
    public String ounces(Mass mass) {
        return mass.formatOunces(step.grams() < COARSE_G ? 2 : 1);
    }

    private static String fixed(Mass mass, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", mass.grams() + 0.0);
    }
}
