package turnalike.units;

import java.util.Locale;

/** Words as a sentence has them. */
public final class SentenceCase {
    private SentenceCase() {}

    /**
     * {@return with a capital letter at its beginning; an empty text stays empty}
     *
     * @param text a sentence or a part of one
     */
    public static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /**
     * {@return as a problem tells it within its line: a small letter at its beginning, no full stop at its end}
     *
     * @param text a sentence that does not begin with a name
     */
    public static String clause(String text) {
        String small = text.isEmpty() ? text : text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
        return small.endsWith(".") ? small.substring(0, small.length() - 1) : small;
    }

    /**
     * {@return a whole sentence of it: a capital letter at its beginning, a full stop at its end}
     *
     * @param text a sentence, or one without either
     */
    public static String sentence(String text) {
        String capital = capital(text);
        return capital.endsWith(".") ? capital : capital + ".";
    }
}
