package turnalike.job.keys;

/**
 * What {@link turnalike.units.LengthText} reads, as a regular expression of ECMA-262, the kind that JSON Schema asks for. It takes some texts that
 * the reader refuses: those beyond 20 m, and a whole number before a fraction that is not below one.
 */
final class LengthPattern {
    private static final String ONE_SPACE = "[\\s\\u00a0\\u1680\\u2000-\\u200a\\u2028\\u2029\\u202f\\u205f\\u3000]";
    private static final String SPACE = ONE_SPACE + "*";

    private static final String DASH = "[-\\u2010\\u2011\\u2212]";

    /** Every fraction that Unicode has as one letter, those of nothing left out. */
    private static final String VULGAR = "[\\u00bc-\\u00be\\u2150-\\u215e]";

    private static final String POSITIVE = "0{0,8}[1-9]\\d{0,8}";

    private static final String INCH = "(?:[iI][nN](?:[cC][hH](?:[eE][sS])?)?|[\"\\u201d\\u2033])";

    private static final String FOOT = "(?:[fF][tT]|[fF][oO][oO][tT]|[fF][eE][eE][tT]|['\\u2019\\u2032])";

    private static final String METRIC = "(?:[mM][mM]|[cC][mM]|[mM])";

    private LengthPattern() {}

    static String of(boolean aboveZero) {
        String number = number(aboveZero);
        String any = number(false);
        String one = number + SPACE + "(?:" + INCH + "|" + FOOT + "|" + METRIC + ")?";
        String feetAndInches = any + SPACE + FOOT + SPACE + any + SPACE + INCH;
        return "^" + SPACE + "(?:" + one + "|" + feetAndInches + ")" + SPACE + "$";
    }

    /** One over the number behind it, U+215F, and none of three, U+2189, are fractions of one letter too. */
    private static String number(boolean aboveZero) {
        String whole = "\\d{1,9}";
        String border = "(?:" + DASH + "|" + ONE_SPACE + "+)";
        String over = aboveZero
                ? "(?:" + POSITIVE + border + whole + "|(?:" + whole + border + ")?" + POSITIVE + ")"
                : "(?:" + whole + border + ")?" + whole;
        String fraction = over + ONE_SPACE + "?[/\\u2044]" + ONE_SPACE + "?" + POSITIVE;
        String vulgar = "(?:" + whole + SPACE + ")?(?:" + VULGAR + "|\\u215f" + POSITIVE
                + (aboveZero ? ")|" + POSITIVE + SPACE + "\\u2189" : "|\\u2189)");
        String decimal = aboveZero
                ? "(?=[\\d.,]*[1-9])(?:\\d{1,9}(?:[.,]\\d{1,15})?|[.,]\\d{1,15})"
                : "(?:\\d{1,9}(?:[.,]\\d{1,15})?|[.,]\\d{1,15})";
        return "(?:" + fraction + "|" + vulgar + "|" + decimal + ")";
    }
}
