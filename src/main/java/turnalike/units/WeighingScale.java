package turnalike.units;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * What a scale can say: masses told to the step it shows, not finer. What was typed keeps its figures as far as the step has decimals; what is
 * reckoned of several weighings, a mean or a target, bears one decimal more; what is to be read off the scale later is told at its steps.
 *
 * @param step the smallest step that it shows, not below zero, else {@link IllegalArgumentException}; zero for one that shows every step
 * @param unit the unit that masses are told in
 */
public record WeighingScale(Mass step, MassUnit unit) {
    /** A scale that says nothing of its step is read like a bench scale, to tenths. */
    private static final int USUAL_DECIMALS = 1;

    private static final int MOST_DECIMALS = 3;
    private static final double SLACK = 1e-9;
    /** From this step on a hundredth of an ounce, 0.28 g, would be finer than the scale. */
    private static final double COARSE_G = 0.3;
    /** A tenth of an ounce told in grams was rounded: 2.835 g is one. */
    private static final double TOLD_ROUND = 1e-3;

    public WeighingScale {
        if (step.grams() < 0) {
            throw new IllegalArgumentException("a scale's step is not negative, was %s g".formatted(step.grams()));
        }
    }

    /**
     * A scale in grams.
     *
     * @param step as above
     */
    public WeighingScale(Mass step) {
        this(step, MassUnit.GRAM);
    }

    /**
     * {@return the same scale, its masses told in that unit}
     *
     * @param other the unit of whoever asks
     */
    public WeighingScale in(MassUnit other) {
        return new WeighingScale(step, other);
    }

    /**
     * {@return decimals of its unit that it shows: 0 for steps of 1 g and 5 g, 1 for 0.1 g and 0.5 g, 2 for 0.25 g} Of ounces off a scale whose
     * steps are round in grams, one more than of grams, a hundredth being about a quarter of a gram.
     */
    public int decimals() {
        if (unit == MassUnit.GRAM) {
            return decimals(step.grams());
        }
        double thousandths = step.ounces() * 1000;
        boolean ownSteps =
                step.grams() > 0 && Math.abs(thousandths - Math.rint(thousandths)) < TOLD_ROUND * thousandths;
        return ownSteps ? decimals(Math.rint(thousandths) / 1000) : Math.min(MOST_DECIMALS, decimals(step.grams()) + 1);
    }

    private static int decimals(double count) {
        if (count == 0) {
            return USUAL_DECIMALS;
        }
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(count) - SLACK));
        int one = decimals + 1;
        boolean wantsOneMore = !isWhole(count * Math.pow(10, decimals)) && isWhole(count * Math.pow(10, one));
        return Math.min(MOST_DECIMALS, wantsOneMore ? one : decimals);
    }

    private static boolean isWhole(double value) {
        return Math.abs(value - Math.rint(value)) < SLACK * Math.max(1, value);
    }

    /**
     * {@return a mass as it shows it: {@code 243 g}, {@code 243.1 g} or {@code 8.6 oz}}
     *
     * @param mass a reading, a difference of two, or what is expected of a piece
     */
    public String reading(Mass mass) {
        return figure(mass) + " " + unit.symbol();
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
        return reckonedFigure(mass) + " " + unit.symbol();
    }

    private String reckonedFigure(Mass mass) {
        int tenth = step.grams() == 0 ? decimals() + 1 : (int) Math.ceil(-Math.log10(unit.count(step) / 2) - SLACK);
        String fine = fixed(mass, Math.min(MOST_DECIMALS, Math.max(decimals(), tenth)));
        String coarse = figure(mass);
        return Double.parseDouble(fine) == Double.parseDouble(coarse) ? coarse : fine;
    }

    /**
     * {@return how far readings lie apart, {@code 0.2 oz}; where it shows them alike, that it is less than a step, {@code under 0.1 oz}}
     *
     * @param difference of two readings
     */
    public String apart(Mass difference) {
        return shows(difference) ? reading(difference) : "under " + least();
    }

    /**
     * {@return how far work scatters, told as {@link #reckoned}, never as nothing: {@code under 0.1 oz}}
     *
     * @param scatter a deviation
     */
    public String scatter(Mass scatter) {
        return Double.parseDouble(reckonedFigure(scatter)) == 0 ? "under " + least() : reckoned(scatter);
    }

    /**
     * {@return whether it shows that mass as more than nothing}
     *
     * @param mass a reading or a difference of two
     */
    public boolean shows(Mass mass) {
        return Double.parseDouble(figure(mass)) != 0;
    }

    /** Its step, or the last digit that it is told by where that is more. */
    private String least() {
        return PlainNumber.toFigures(Math.max(unit.count(step), Math.pow(10, -decimals())), 3) + " " + unit.symbol();
    }

    /**
     * {@return by how much the two differ as they are told: where {@code 50 g} and {@code 43 g} stand, {@code 7 g}}
     *
     * @param read what {@link #reading} tells
     * @param reckoned what {@link #reckoned} tells
     */
    public String difference(Mass read, Mass reckoned) {
        String one = figure(read);
        String other = reckonedFigure(reckoned);
        BigDecimal off = new BigDecimal(one).subtract(new BigDecimal(other)).abs();
        return (off.signum() == 0 ? "0" : off.toPlainString()) + " " + unit.symbol();
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

    /** {@return the smallest step with its unit: {@code 0.1 g}, {@code 0.1 oz}} */
    public String stepInWords() {
        return PlainNumber.toFigures(unit.count(step), 3) + " " + unit.symbol();
    }

    /**
     * {@return a mass in the unit that it is not told in, no finer than it shows: ounces to hundredths, of a scale of whole grams to tenths;
     *     grams to tenths, of a scale of some tenths of an ounce whole ones}
     *
     * @param mass as of {@link #reading}
     */
    public String other(Mass mass) {
        boolean fine = step.grams() < COARSE_G;
        return unit == MassUnit.GRAM
                ? mass.formatOunces(fine ? 2 : 1)
                : String.format(Locale.ROOT, fine ? "%.1f g" : "%.0f g", mass.grams() + 0.0);
    }

    /**
     * {@return a mass that no scale of the bench weighs, a wheel or a rough blank: {@code 704 g} and {@code 12.44 kg}, or {@code 1 lb 8.8 oz}}
     *
     * @param mass any
     */
    public String large(Mass mass) {
        return unit == MassUnit.GRAM ? mass.formatGrams() : mass.formatOunces(1);
    }

    /**
     * {@return the same in the other unit}
     *
     * @param mass any
     */
    public String largeOther(Mass mass) {
        return unit == MassUnit.GRAM ? mass.formatOunces(1) : mass.formatGrams();
    }

    private String fixed(Mass mass, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", unit.count(mass) + 0.0);
    }
}
