package turnalike.trace.drawn;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers and sizes as SVG writes them. A px is 1/96 in (CSS Values and Units; from memory). */
final class SvgSizes {
    static final double MM_PER_PX = 25.4 / 96;
    private static final Map<String, Double> MM_PER_UNIT = Map.of(
            "", MM_PER_PX, "px", MM_PER_PX, "mm", 1.0, "cm", 10.0, "in", 25.4, "pt", 25.4 / 72, "pc", 25.4 / 6, "q",
            0.25);
    private static final Pattern SIZE = Pattern.compile("\\s*([0-9.eE+-]+)\\s*([a-zA-Z%]*)\\s*");

    private SvgSizes() {}

    static String unit(String size) {
        Matcher matcher = SIZE.matcher(size);
        return matcher.matches() ? matcher.group(2).toLowerCase(Locale.ROOT) : "";
    }

    /** A size in millimetres; not a number when there is none. */
    static double mm(String size) {
        Matcher matcher = SIZE.matcher(size);
        if (!matcher.matches()) {
            return Double.NaN;
        }
        Double each = MM_PER_UNIT.get(matcher.group(2).toLowerCase(Locale.ROOT));
        return each == null ? Double.NaN : number(matcher.group(1)) * each;
    }

    static double number(String text) {
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException none) {
            return Double.NaN;
        }
    }

    static double[] numbers(String text) {
        if (text.isBlank()) {
            return new double[0];
        }
        String[] parts = text.strip().split("[\\s,]+", -1);
        double[] out = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            out[i] = number(parts[i]);
        }
        return out;
    }
}
