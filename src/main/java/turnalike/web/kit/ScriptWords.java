package turnalike.web.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.language.Language;

/**
 * What one of our scripts says to a person, in another language: its sentences, which begin with a capital and have a space, and its single words
 * and parts of sentences, which end in a space; no other text in them does.
 */
final class ScriptWords {
    private static final Pattern LITERAL = Pattern.compile("\"([^\"\\\\\n]*)\"|`((?:[^`\\\\$]++|\\$\\{[^}`]*\\})*)`");
    private static final Pattern VALUE = Pattern.compile("\\$\\{[^}]*\\}");
    private static final Pattern SLOT = Pattern.compile("\\*(\\d?)");
    private static final Pattern SENTENCE =
            Pattern.compile("\\p{Lu}[^#\\[\\]=<>]* [^#\\[\\]=<>]*|(?=.*\\p{L})[^#\\[\\]=<>]* ");

    private ScriptWords() {}

    static String in(Language language, String script) {
        return LITERAL.matcher(script).replaceAll(found -> Matcher.quoteReplacement(said(language, found.group())));
    }

    /** Tells every sentence of a script, {@code *} for each of its values. */
    public static void each(String script, Consumer<String> sentence) {
        Matcher found = LITERAL.matcher(script);
        while (found.find()) {
            String inside = inside(found.group());
            if (SENTENCE.matcher(inside).matches()) {
                sentence.accept(inside);
            }
        }
    }

    private static String inside(String literal) {
        return VALUE.matcher(literal.substring(1, literal.length() - 1)).replaceAll("*");
    }

    private static String said(Language language, String literal) {
        String inside = inside(literal);
        if (!SENTENCE.matcher(inside).matches()) {
            return literal;
        }
        List<String> values = new ArrayList<>();
        Matcher value = VALUE.matcher(literal);
        while (value.find()) {
            values.add(value.group());
        }
        String quote = literal.substring(0, 1);
        String end = inside.endsWith(" ") ? " " : "";
        return language.translation(inside.strip())
                .map(said -> {
                    int[] next = new int[1];
                    return SLOT.matcher(said).replaceAll(slot -> {
                        int at = slot.group(1).isEmpty() ? next[0]++ : Integer.parseInt(slot.group(1)) - 1;
                        return Matcher.quoteReplacement(values.get(at));
                    });
                })
                .map(said -> quote + (said + end).replace("\\", "\\\\").replace(quote, "\\" + quote) + quote)
                .orElse(literal);
    }
}
