package turnalike.language;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The figures in a line, told apart from its words, so that one entry of a catalogue serves a line with any figures.
 *
 * @param frame the line with {@code #} for each figure
 * @param figures as they stood, in order
 */
record Figures(String frame, List<String> figures) {
    /** {@code 12}, {@code 1,234.5}, {@code 3/8}, {@code 1 3/4}; {@code 0.1.0}, which numbers a version and has no decimals. */
    private static final String ONE = "(?:\\d+ \\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+){2,}|\\d+(?:,\\d{3})*(?:\\.\\d+)?)";

    private static final Pattern FIGURE = Pattern.compile(ONE);

    /** Before a figure: what is too small to be told is less than that. */
    static final String UNDER = "under";

    private static final Pattern BOUND = Pattern.compile("(?:%s )?%s".formatted(UNDER, ONE));

    /** What a turner numbers pieces by: {@code n7}, {@code A-12}. */
    private static final String LABEL = "\\b\\p{L}{1,3}-?\\d+\\b";

    /** {@code 1, 2, 3}, {@code n7, n105}, {@code 0 → 2, 17 → 15}, and {@code 1 in, 2 in, 3} of {@code 1 in, 2 in, 3 in}; or a figure. */
    private static final Pattern LIST = Pattern.compile(
            "(?:(?:%2$s|%1$s), )*%2$s(?:, (?:%2$s|%1$s))+|(?:(?:%2$s|%1$s), )+%2$s|(?:%1$s(?: → %1$s)?, )+%1$s(?: → %1$s)?|(?:%1$s in, )+%1$s(?= in\\b)|(?:%1$s mm, )+%1$s(?= mm\\b)|%1$s"
                    .formatted(ONE, LABEL));

    private static final Pattern VERSION = Pattern.compile("\\d+(?:\\.\\d+){2,}");

    private static final Pattern THOUSANDS = Pattern.compile("\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?");

    Figures {
        figures = List.copyOf(figures);
    }

    static Figures of(String line) {
        return of(line, FIGURE);
    }

    /** The same with one {@code #} for a whole list of figures, so that one entry serves lists of any length. */
    static Figures ofLists(String line) {
        return of(line, LIST);
    }

    /** The same with one {@code #} for {@code under 0.01} as for a figure; {@code under} is what that word is there. */
    static Figures ofBounds(String line, String under) {
        Figures bounds = of(line, BOUND);
        return new Figures(
                bounds.frame(),
                bounds.figures().stream()
                        .map(each -> each.startsWith(UNDER) ? under + each.substring(UNDER.length()) : each)
                        .toList());
    }

    private static Figures of(String line, Pattern figure) {
        Matcher found = figure.matcher(line);
        StringBuilder frame = new StringBuilder();
        List<String> figures = new ArrayList<>();
        while (found.find()) {
            figures.add(found.group());
            found.appendReplacement(frame, "#");
        }
        return new Figures(found.appendTail(frame).toString(), figures);
    }

    /** {@return the figure with a comma before its decimals and a point between its thousands; a version as it is} */
    static String withComma(String figure) {
        if (VERSION.matcher(figure).matches()) {
            return figure;
        }
        if (THOUSANDS.matcher(figure).matches()) {
            return figure.replace(',', '\0').replace('.', ',').replace('\0', '.');
        }
        return figure.replace('.', ',');
    }

    /** {@return a figure or a list of them, written as here; {@code inch} is what an inch is called} */
    static String written(String list, String inch) {
        return localised(list).replace(" in,", " " + inch + ",");
    }

    /** {@return the line as it was, its figures with a comma before the decimals} */
    static String localised(String line) {
        return FIGURE.matcher(line).replaceAll(found -> Matcher.quoteReplacement(withComma(found.group())));
    }
}
