package turnalike.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as they stand in a sentence: without zeros at the end and without powers of ten. */
public final class PlainNumber {
    private PlainNumber() {}

    /**
     * {@return the number with all its digits: {@code 2}, {@code 0.0625}}
     *
     * @param value finite
     */
    public static String exact(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /**
     * {@return the number to at most so many decimals: {@code 3.125}, {@code 4}}
     *
     * @param value finite
     * @param decimals zero or more
     */
    public static String toDecimals(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    /**
     * {@return the number to so many figures: {@code 0.35}, {@code 120}}
     *
     * @param value finite
     * @param figures one or more
     */
    public static String toFigures(double value, int figures) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(figures))
                .stripTrailingZeros()
                .toPlainString();
    }

    /**
     * {@return the number to a tenth: {@code 3.5}, {@code 4}}
     *
     * @param value finite
     */
    public static String toTenths(double value) {
        String text = String.format(Locale.ROOT, "%.1f", value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }
}
