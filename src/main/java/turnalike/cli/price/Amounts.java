package turnalike.cli.price;

import java.math.BigDecimal;
import java.util.regex.Pattern;
import turnalike.cli.kit.UserError;

/** Money, shares and words given on the command line. */
final class Amounts {
    private static final int LONGEST_WORD = 40;
    private static final Pattern MONEY = Pattern.compile("[0-9]{1,9}([.,][0-9]{1,2})?");
    private static final Pattern PERCENT = Pattern.compile("[0-9]{1,3}([.,][0-9]{1,4})?");
    private static final BigDecimal MOST_PERCENT = BigDecimal.valueOf(500);

    private Amounts() {}

    static BigDecimal money(String option, String text) {
        if (!MONEY.matcher(text.strip()).matches()) {
            throw UserError.of(
                    option,
                    "'%s' is no amount of money".formatted(text),
                    "give a number like 45 or 45.50, without a sign or a currency");
        }
        return new BigDecimal(text.strip().replace(',', '.'));
    }

    static BigDecimal percent(String option, String text) {
        String plain = text.strip().replace("%", "").strip();
        if (!PERCENT.matcher(plain).matches() || new BigDecimal(plain.replace(',', '.')).compareTo(MOST_PERCENT) > 0) {
            throw UserError.of(
                    option, "'%s' is no share".formatted(text), "give per hundred, from 0 to 500, like 20 or 7.5");
        }
        return new BigDecimal(plain.replace(',', '.'));
    }

    static String word(String option, String text) {
        String plain = text.strip();
        if (plain.isEmpty() || plain.length() > LONGEST_WORD || plain.chars().anyMatch(Character::isISOControl)) {
            throw UserError.of(option, "'%s' is no short name".formatted(text), "give one of 1 to 40 letters");
        }
        return plain;
    }
}
