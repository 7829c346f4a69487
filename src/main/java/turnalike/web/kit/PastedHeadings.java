package turnalike.web.kit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import turnalike.language.Language;

/** The headings of a pasted table: whoever copies them from a page in another language has them in that one. */
public final class PastedHeadings {
    private static final Pattern UNIT = Pattern.compile(", [^,]*$");

    /** In brackets, or a short word. */
    private static final Pattern UNIT_BEHIND = Pattern.compile("\\s*[(\\[].*$|[\\s_]+\\S{1,4}$");

    private PastedHeadings() {}

    /**
     * {@return the table, the headings of its first line as the English page has them; all else to the letter, a note in that line too}
     *
     * @param language of the page
     * @param table as it was pasted
     * @param headings that the page has, in English, each perhaps with its unit behind a comma
     */
    public static String inEnglish(Language language, String table, List<String> headings) {
        if (language == Language.ENGLISH || table.isBlank()) {
            return table;
        }
        // The longest first: one may stand in another.
        Map<String, String> english =
                new TreeMap<>(Comparator.comparing(String::length).reversed().thenComparing(Comparator.naturalOrder()));
        for (String heading : headings) {
            english.putIfAbsent(bare(language.say(heading)), bare(heading));
        }
        String indented = table.stripLeading();
        int end = indented.indexOf('\n') < 0 ? indented.length() : indented.indexOf('\n');
        String first = indented.substring(0, end);
        if (!isHeadings(first, english.keySet())) {
            return table;
        }
        english.put(language.say("1 in").substring(2), "in");
        for (Map.Entry<String, String> each : english.entrySet()) {
            first = Pattern.compile("(?iu)(?<![\\p{L}\\d])" + Pattern.quote(each.getKey()) + "(?!\\p{L})")
                    .matcher(first)
                    .replaceAll(Matcher.quoteReplacement(each.getValue()));
        }
        return table.substring(0, table.length() - indented.length()) + first + indented.substring(end);
    }

    /** A note above a table may hold the same words; a heading has a cell of its own, perhaps with its unit. */
    private static boolean isHeadings(String line, Set<String> names) {
        return Arrays.stream(line.split("[\\t;,]"))
                .map(cell -> cell.replaceAll("[\"\ufeff]", "").strip())
                .flatMap(cell -> Stream.of(cell, UNIT_BEHIND.matcher(cell).replaceAll("")))
                .anyMatch(cell -> names.stream().anyMatch(cell::equalsIgnoreCase));
    }

    private static String bare(String heading) {
        return UNIT.matcher(heading).replaceAll("");
    }
}
