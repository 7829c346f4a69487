package turnalike.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lengths as turners write them. {@link #parse} and {@link #print} are inverses up to the rounding that printing names.
 *
 * <p>The grammar: a number is {@code 22}, {@code 1.5}, {@code 1,5}, {@code .5}, {@code 1/2}, {@code 1 1/2}, {@code 1-1/2} or {@code 1½};
 * a length is a number and its unit ({@code " in inch inches ' ft foot feet mm cm m}), a number alone in the job's units, or feet
 * followed by inches. A comma is a decimal sign, never a thousands separator. A sign is refused: every length a person types is a size
 * or a place measured from the datum end.
 */
public final class LengthText {
    /** Rounding leaves less than this of a length that was written as a fraction. */
    private static final double WRITTEN_SO_MM = 1e-6;

    private static final String HOW = "write it like 22, 1.5, 1 1/2, 1-1/2, 22 in, 1' 10\", 38 mm or 3.8 cm";

    private static final Map<String, Double> MM_PER_UNIT = Map.ofEntries(
            Map.entry("mm", 1.0),
            Map.entry("cm", 10.0),
            Map.entry("m", 1000.0),
            Map.entry("\"", Length.MM_PER_INCH),
            Map.entry("in", Length.MM_PER_INCH),
            Map.entry("inch", Length.MM_PER_INCH),
            Map.entry("inches", Length.MM_PER_INCH),
            Map.entry("'", 12 * Length.MM_PER_INCH),
            Map.entry("ft", 12 * Length.MM_PER_INCH),
            Map.entry("foot", 12 * Length.MM_PER_INCH),
            Map.entry("feet", 12 * Length.MM_PER_INCH));

    // Nine digits each side hold every length to 20 m and keep whole numbers exact in a double.
    private static final String NUMBER = "(?:(?<whole>\\d{1,9})(?:-|\\s+))?(?<over>\\d{1,9})\\s?/\\s?(?<under>\\d{1,9})"
            + "|(?<decimal>\\d{1,9}(?:[.,]\\d{1,15})?|[.,]\\d{1,15})";
    private static final Pattern QUANTITY = Pattern.compile("(?:" + NUMBER + ")\\s*(?<unit>[a-z]+|['\"])?\\s*");
    /** What is left beyond these of a sum of millimetres is noise. */
    private static final int NOISE_DECIMALS = 9;

    /** Printed of what rounds to zero. */
    private static final Pattern NOTHING = Pattern.compile("-?0(\\.0+)? ");

    private LengthText() {}

    /**
     * A length as printed, and what rounding took from it.
     *
     * @param text the text, with its unit
     * @param roundedOff the true length less the printed one: at most half a 64th of an inch, or 0.05 mm, either way
     */
    public record Printed(String text, Length roundedOff) {}

    /**
     * Reads a length; the refusal says what is wrong and how a length is written.
     *
     * @param text what a person typed
     * @param bareUnits the units of a number that carries none
     * @return the length; or refused, also when it carries a sign or is longer than {@link Length#LONGEST}
     */
    public static Parsed<Length> parse(String text, UnitSystem bareUnits) {
        String tidy = tidy(text);
        if (tidy.isEmpty()) {
            return Parsed.refused("no length given", HOW);
        }
        if (tidy.startsWith("-") || tidy.startsWith("+")) {
            return Parsed.refused(
                    "a length carries no sign, was '%s'".formatted(text), "give the size itself, above zero");
        }
        List<Quantity> quantities = new ArrayList<>();
        Matcher matcher = QUANTITY.matcher(tidy);
        int at = 0;
        while (at < tidy.length()) {
            if (!matcher.region(at, tidy.length()).lookingAt()) {
                return Parsed.refused("'%s' is not a length".formatted(text), HOW);
            }
            Optional<String> wrong = Quantity.wrong(matcher);
            if (wrong.isPresent()) {
                return Parsed.refused("%s in '%s'".formatted(wrong.get(), text), HOW);
            }
            quantities.add(Quantity.of(matcher));
            at = matcher.end();
        }
        return total(quantities, text, bareUnits);
    }

    private static Parsed<Length> total(List<Quantity> quantities, String text, UnitSystem bareUnits) {
        Quantity first = quantities.get(0);
        double mm;
        if (quantities.size() == 1) {
            mm = first.count() * first.mmPerUnit().orElse(bareUnits.length(1).mm());
        } else if (quantities.size() == 2 && first.isFeet() && quantities.get(1).isInches()) {
            mm = (first.count() * 12 + quantities.get(1).count()) * Length.MM_PER_INCH;
        } else if (quantities.stream().allMatch(each -> each.mmPerUnit().isPresent())) {
            return Parsed.refused(
                    "two units that disagree in '%s'".formatted(text), "use one unit, or feet then inches");
        } else {
            return Parsed.refused("'%s' is not one length".formatted(text), HOW);
        }
        if (mm > Length.LONGEST.mm()) {
            return Parsed.refused("'%s' is more than 20 m".formatted(text), "check the unit and the decimal sign");
        }
        return Parsed.of(Length.ofMm(mm));
    }

    /** Vulgar fractions become {@code n/m}, typographic quotes plain ones, every space a plain space, letters lower case. */
    private static String tidy(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.getType(c) == Character.OTHER_NUMBER) {
                String spelled = Normalizer.normalize(String.valueOf(c), Normalizer.Form.NFKD);
                boolean fraction = spelled.indexOf('\u2044') > 0;
                out.append(fraction ? " " + spelled.replace('\u2044', '/') + " " : c);
            } else {
                out.append(plain(c));
            }
        }
        return out.toString().strip().toLowerCase(Locale.ROOT);
    }

    private static String plain(char c) {
        return switch (c) {
            case '\u2019', '\u2032' -> "'";
            case '\u201d', '\u2033' -> "\"";
            case '\u2044' -> "/";
            case '\u2010', '\u2011', '\u2212' -> "-";
            default -> Character.isSpaceChar(c) || Character.isWhitespace(c) ? " " : String.valueOf(c);
        };
    }

    /** A number with the size of the unit written after it, if any. */
    private record Quantity(double count, Optional<Double> mmPerUnit) {
        private static final double MM_PER_FOOT = 12 * Length.MM_PER_INCH;

        boolean isFeet() {
            return mmPerUnit.equals(Optional.of(MM_PER_FOOT));
        }

        boolean isInches() {
            return mmPerUnit.equals(Optional.of(Length.MM_PER_INCH));
        }

        static Optional<String> wrong(Matcher matcher) {
            String unit = matcher.group("unit");
            if (unit != null && !MM_PER_UNIT.containsKey(unit)) {
                return Optional.of("unknown unit '%s'".formatted(unit));
            }
            if (matcher.group("under") == null) {
                return Optional.empty();
            }
            long under = Long.parseLong(matcher.group("under"));
            if (under == 0) {
                return Optional.of("a fraction over zero");
            }
            boolean improper = Long.parseLong(matcher.group("over")) >= under;
            return matcher.group("whole") != null && improper
                    ? Optional.of("a whole number before a fraction that is not below one")
                    : Optional.empty();
        }

        static Quantity of(Matcher matcher) {
            Optional<Double> unit = Optional.ofNullable(matcher.group("unit")).map(MM_PER_UNIT::get);
            String decimal = matcher.group("decimal");
            if (decimal != null) {
                return new Quantity(Double.parseDouble(decimal.replace(',', '.')), unit);
            }
            String whole = matcher.group("whole");
            long under = Long.parseLong(matcher.group("under"));
            long over = Long.parseLong(matcher.group("over"));
            return new Quantity(((whole == null ? 0 : Long.parseLong(whole)) * under + over) / (double) under, unit);
        }
    }

    /**
     * Prints to the nearest 1/64 in as a fraction in lowest terms, or to the nearest 0.1 mm, and says what was rounded off.
     *
     * @param length of either sign
     * @param units the units to print in
     * @return the text, and the true length less the printed one
     */
    public static Printed print(Length length, UnitSystem units) {
        return units == UnitSystem.INCH ? printInches(length) : printMm(length, 1);
    }

    /**
     * {@return the length in millimetres to that many decimals, trailing zeros dropped}
     *
     * @param length of either sign
     * @param decimals how many at most, zero or more; a half goes to the even digit
     */
    public static Printed printMm(Length length, int decimals) {
        // What was reckoned of quarters of an inch comes to 6.3499999999999996 mm, which is half-way all the same.
        BigDecimal rounded = BigDecimal.valueOf(length.mm())
                .setScale(NOISE_DECIMALS, RoundingMode.HALF_EVEN)
                .setScale(decimals, RoundingMode.HALF_EVEN);
        return new Printed(digits(rounded) + " mm", length.minus(Length.ofMm(rounded.doubleValue())));
    }

    /**
     * What a caliper tells and a rule does not: millimetres to that many decimals; in inches a fraction where the length is a whole number
     * of 64ths (somebody wrote it so), else decimals, one more than of millimetres.
     */
    static String printFine(Length length, UnitSystem units, int decimals) {
        if (units == UnitSystem.METRIC) {
            return printMm(length, decimals).text();
        }
        Printed fraction = printInches(length);
        if (Math.abs(fraction.roundedOff().mm()) < WRITTEN_SO_MM) {
            return fraction.text();
        }
        BigDecimal rounded = BigDecimal.valueOf(length.inches()).setScale(decimals + 1, RoundingMode.HALF_EVEN);
        return digits(rounded) + " in";
    }

    /** What {@link #printFine} tells; of less than half its last digit, that it is under one. */
    static String printMeasured(Length length, UnitSystem units, int decimals) {
        return neverNothing(printFine(length, units, decimals), units, decimals);
    }

    /** The same in both systems; where neither tells anything the one word stands for both. */
    static String printMeasuredBoth(Length length, UnitSystem first, int decimals) {
        return neverNothingBoth(
                first, decimals, printFine(length, first, decimals), printFine(length, first.other(), decimals));
    }

    /** All decimals, trailing zeros too and in inches no fraction, so that figures in a column compare; of less, that it is under the last one. */
    static String printSteady(Length length, UnitSystem units, int decimals) {
        return neverNothing(steady(length, units, decimals), units, decimals);
    }

    /** The same in both systems, as {@link #printMeasuredBoth}. */
    static String printSteadyBoth(Length length, UnitSystem first, int decimals) {
        return neverNothingBoth(
                first, decimals, steady(length, first, decimals), steady(length, first.other(), decimals));
    }

    private static String steady(Length length, UnitSystem units, int decimals) {
        return String.format(
                Locale.ROOT,
                "%." + scale(units, decimals) + "f %s",
                units == UnitSystem.INCH ? length.inches() : length.mm(),
                units.symbol());
    }

    private static String neverNothing(String printed, UnitSystem units, int decimals) {
        return isNothing(printed) ? "under " + lastDigit(units, decimals) : printed;
    }

    private static String neverNothingBoth(UnitSystem first, int decimals, String printed, String other) {
        String beside = isNothing(printed) && isNothing(other)
                ? lastDigit(first.other(), decimals)
                : neverNothing(other, first.other(), decimals);
        return neverNothing(printed, first, decimals) + " (" + beside + ")";
    }

    private static boolean isNothing(String printed) {
        return NOTHING.matcher(printed).lookingAt();
    }

    private static int scale(UnitSystem units, int decimals) {
        return units == UnitSystem.METRIC ? decimals : decimals + 1;
    }

    private static String lastDigit(UnitSystem units, int decimals) {
        return BigDecimal.ONE.movePointLeft(scale(units, decimals)).toPlainString() + " " + units.symbol();
    }

    private static String digits(BigDecimal rounded) {
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    private static Printed printInches(Length length) {
        long parts = Math.round(Math.abs(length.inches()) * 64);
        long whole = parts / 64;
        long over = parts % 64;
        long under = 64;
        while (over != 0 && over % 2 == 0) {
            over /= 2;
            under /= 2;
        }
        String sign = length.mm() < 0 && parts != 0 ? "-" : "";
        String fraction = over == 0 ? "" : over + "/" + under;
        String digits = whole == 0 && over != 0 ? fraction : over == 0 ? "" + whole : whole + " " + fraction;
        double printedInches = (length.mm() < 0 ? -parts : parts) / 64.0;
        return new Printed(sign + digits + " in", length.minus(Length.ofInches(printedInches)));
    }
}
