package turnalike.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Round figures along an axis: steps of 1, 2 or 5 times a power of ten.
 *
 * @param step from one to the next, above zero
 * @param decimals how many each is lettered with
 */
record Ticks(List<Double> values, double step, int decimals) {
    /** From here on figures are lettered with an exponent, else they fill the picture. */
    private static final double HUGE = 1e7;

    private static final int MOST_DECIMALS = 9;

    Ticks {
        values = List.copyOf(values);
    }

    /** The ticks from {@code least} to {@code most}, both included when they are round; about {@code wanted} of them at most. */
    static Ticks between(double least, double most, int wanted) {
        double rough = (most - least) / Math.max(1, wanted);
        int power = (int) Math.floor(Math.log10(rough));
        double unit = Math.pow(10, power);
        double step = unit;
        int decimals = -power;
        if (rough > 5 * unit * (1 + 1e-9)) {
            step = 10 * unit;
            decimals = -power - 1;
        } else if (rough > 2 * unit * (1 + 1e-9)) {
            step = 5 * unit;
        } else if (rough > unit * (1 + 1e-9)) {
            step = 2 * unit;
        }
        List<Double> values = new ArrayList<>();
        double first = Math.ceil(least / step - 1e-9);
        double last = Math.floor(most / step + 1e-9);
        for (double i = first; i <= last && values.size() <= wanted + 1; i++) {
            values.add(i * step + 0.0);
        }
        return new Ticks(values, step, Math.max(0, Math.min(MOST_DECIMALS, decimals)));
    }

    /** A figure of a tick. */
    String label(double value) {
        return figure(value, decimals);
    }

    /** A figure that lies between ticks, one decimal finer. */
    String finer(double value) {
        return figure(value, Math.min(MOST_DECIMALS, decimals + 1));
    }

    private static String figure(double value, int decimals) {
        if (Math.abs(value) >= HUGE) {
            return String.format(Locale.ROOT, "%.3g", value).replace('-', '−');
        }
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        boolean zero = text.chars().noneMatch(letter -> letter >= '1' && letter <= '9');
        return zero ? text.replace("-", "") : text.replace('-', '−');
    }
}
