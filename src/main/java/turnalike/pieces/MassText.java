package turnalike.pieces;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.Parsed;
import turnalike.units.PlainNumber;
import turnalike.units.WeighingScale;

/**
 * Masses as a scale shows them and as people write them. The grammar: a number is {@code 182}, {@code 182.4}, {@code 182,4}, {@code .5},
 * {@code 6 1/2}, {@code 6-1/2} or {@code 6½}; a mass is a number with or without its unit ({@code g kg oz lb} and their words), or pounds
 * followed by ounces. A comma is a decimal sign, never a thousands separator. A scale's leading plus sign is read over.
 */
public final class MassText {
    /** The heaviest piece a job may hold, 100 kg: beyond it a slip of the pen is likelier than a spindle (common practice, no source). */
    public static final Mass HEAVIEST = Mass.ofGrams(100_000);

    private static final String HOW = "write it like 182.4, 182,4 g, 6 1/2 oz or 1 lb 3 oz";
    private static final double GRAMS_PER_POUND = 16 * Mass.GRAMS_PER_OUNCE;

    /** No scale for pieces shows more. */
    private static final int WEIGHED_DECIMALS = 3;

    private static final Map<String, Double> GRAMS_PER_UNIT = Map.ofEntries(
            Map.entry("g", 1.0),
            Map.entry("gram", 1.0),
            Map.entry("grams", 1.0),
            Map.entry("kg", 1000.0),
            Map.entry("oz", Mass.GRAMS_PER_OUNCE),
            Map.entry("ounce", Mass.GRAMS_PER_OUNCE),
            Map.entry("ounces", Mass.GRAMS_PER_OUNCE),
            Map.entry("lb", GRAMS_PER_POUND),
            Map.entry("lbs", GRAMS_PER_POUND),
            Map.entry("pound", GRAMS_PER_POUND),
            Map.entry("pounds", GRAMS_PER_POUND));

    // Twenty decimals carry every double from a milligram up, so that what format writes is read back unchanged.
    private static final String NUMBER = "(?:(?<whole>\\d{1,9})(?:-|\\s+))?(?<over>\\d{1,9})\\s?/\\s?(?<under>\\d{1,9})"
            + "|(?<decimal>\\d{1,9}(?:[.,]\\d{1,20})?|[.,]\\d{1,20})";
    private static final Pattern QUANTITY = Pattern.compile("(?:" + NUMBER + ")\\s*(?<unit>[a-z]+)?\\s*");

    private MassText() {}

    /**
     * Reads a mass. Refused: empty, negative, zero, a zero denominator, an unknown unit, more than {@link #HEAVIEST}.
     *
     * @param text as a scale or a hand wrote it, blanks around it ignored
     * @param bare the unit of a number that carries none
     * @return the mass, or why the text is refused and what would be read
     */
    public static Parsed<Mass> parse(String text, MassUnit bare) {
        String tidy = tidy(text);
        if (tidy.isEmpty()) {
            return Parsed.refused("the mass is empty", HOW);
        }
        if (tidy.startsWith("-")) {
            return Parsed.refused(
                    "a mass is above zero, was '%s'".formatted(text.strip()), "zero the scale and weigh again");
        }
        Matcher matcher = QUANTITY.matcher(tidy);
        if (!matcher.lookingAt()) {
            return Parsed.refused("'%s' is not a mass".formatted(text.strip()), HOW);
        }
        Quantity first = Quantity.of(matcher);
        if (matcher.end() == tidy.length()) {
            return first.wrong(text).orElseGet(() -> within(first.grams(bare), text));
        }
        if (!matcher.region(matcher.end(), tidy.length()).matches()) {
            return Parsed.refused("'%s' is not one mass".formatted(text.strip()), HOW);
        }
        Quantity second = Quantity.of(matcher);
        boolean poundsThenOunces = first.is(GRAMS_PER_POUND) && second.is(Mass.GRAMS_PER_OUNCE);
        return first.wrong(text)
                .or(() -> second.wrong(text))
                .orElseGet(() -> poundsThenOunces
                        ? within(first.grams(bare) + second.grams(bare), text)
                        : Parsed.refused("'%s' is not one mass".formatted(text.strip()), HOW));
    }

    /**
     * {@return the mass in grams with every digit it has and no unit} {@link #parse} gives back the same mass from a milligram up.
     *
     * @param mass any; only one above zero is read back
     */
    public static String format(Mass mass) {
        return PlainNumber.exact(mass.grams());
    }

    /**
     * {@return the mass as a cell of a table that a person reads} As it was weighed, where that was in the scale's unit: in as few decimals as are
     * read back as the same mass. What was weighed in the other unit has no end of decimals in this one, and is told as the scale would show it.
     *
     * @param mass any; only one above zero is read back
     * @param scale of the job, in the unit of the column
     */
    public static String format(Mass mass, WeighingScale scale) {
        double count = scale.unit().count(mass);
        for (int decimals = 0; decimals <= WEIGHED_DECIMALS; decimals++) {
            String told = PlainNumber.toDecimals(count, decimals);
            if (scale.unit().mass(Double.parseDouble(told)).equals(mass)) {
                return told;
            }
        }
        return scale.shows(mass) ? scale.figure(mass) : PlainNumber.toFigures(count, 2);
    }

    private static Parsed<Mass> within(double grams, String text) {
        if (!(grams > 0)) {
            return Parsed.refused(
                    "a mass is above zero, was '%s'".formatted(text.strip()),
                    "leave it blank when the piece was not weighed");
        }
        if (grams > HEAVIEST.grams()) {
            return Parsed.refused(
                    "'%s' is more than 100 kg".formatted(text.strip()), "check the unit and the decimal sign");
        }
        return Parsed.of(Mass.ofGrams(grams));
    }

    /** Vulgar fractions become {@code n/m}, every space a plain space, letters lower case, a leading plus goes. */
    static String tidy(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            String spelled = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKD);
            if (spelled.indexOf('\u2044') > 0) {
                out.append(' ').append(spelled.replace('\u2044', '/'));
            } else if (c == '\u2212') {
                out.append('-');
            } else {
                out.append(Character.isSpaceChar(c) || Character.isWhitespace(c) ? ' ' : c);
            }
        }
        String plain = out.toString().strip().toLowerCase(Locale.ROOT);
        return plain.startsWith("+") ? plain.substring(1).strip() : plain;
    }

    /** A number with the unit written after it; the unit is empty when there was none. */
    private record Quantity(double count, String unit, boolean sound) {
        static Quantity of(Matcher matcher) {
            String unit = Optional.ofNullable(matcher.group("unit")).orElse("");
            String decimal = matcher.group("decimal");
            if (decimal != null) {
                return new Quantity(Double.parseDouble(decimal.replace(',', '.')), unit, true);
            }
            String whole = matcher.group("whole");
            long over = Long.parseLong(matcher.group("over"));
            long under = Long.parseLong(matcher.group("under"));
            boolean sound = under != 0 && (whole == null || over < under);
            return new Quantity((whole == null ? 0 : Long.parseLong(whole)) + over / (double) under, unit, sound);
        }

        Optional<Parsed<Mass>> wrong(String text) {
            if (!unit.isEmpty() && !GRAMS_PER_UNIT.containsKey(unit)) {
                return Optional.of(Parsed.refused("unknown unit '%s' in '%s'".formatted(unit, text.strip()), HOW));
            }
            return sound
                    ? Optional.empty()
                    : Optional.of(Parsed.refused("'%s' holds no proper fraction".formatted(text.strip()), HOW));
        }

        boolean is(double gramsPerUnit) {
            return Double.valueOf(gramsPerUnit).equals(GRAMS_PER_UNIT.get(unit));
        }

        double grams(MassUnit bare) {
            Double own = GRAMS_PER_UNIT.get(unit);
            return own == null ? bare.mass(count).grams() : count * own;
        }
    }
}
