package turnalike.sources;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence that leans on a source or says that there is none.
 *
 * @param place the file it stands in
 * @param feature the folder right under {@code turnalike} that uses it, or {@link #TESTS}
 * @param text the sentence; of a working, its figure's name and its source
 * @param strict whether every name in it is a source's: so in a working and after "Source:"
 */
record Mention(String place, String feature, String text, boolean strict) {
    static final String TESTS = "tests";

    /** Not after a stroke or a hyphen: addresses and dates of drafts have years too. */
    private static final String YEAR = "(?<![/\\d-])(?:1[89]|20[012])\\d\\d(?![\\d-]| (?:rpm|m|mm|pieces|elements)\\b)";

    private static final String STANDARD =
            "\\b(?:ISO(?:/\\w+)?|ASME|ANSI|DIN|NIST|RFC|ECMA-|AIAG|OEIS|GTR-) ?[A-Z]?\\d*";
    private static final String BOOK =
            "[Hh]andbook|, ch\\. |\\bTheory of\\b|Encyclop|[Rr]eference\\b.* for |\\b[A-Z]\\. [A-Z][a-z]+";
    private static final String METHOD =
            "\\b[A-Z][a-z]+'s (?:method|rule|theorem|rotations|formula|principle|algorithm|bound|lemma)\\b";
    private static final Pattern CITED = Pattern.compile(YEAR + "|" + STANDARD + "|" + BOOK + "|" + METHOD);

    private static final Pattern MEMORY = Pattern.compile("(?i)from memory");
    private static final Pattern SEEN = Pattern.compile("\\b(?:VERIFIED|verified)\\b");
    private static final Pattern NONE = Pattern.compile("(?i)no source|common practice");
    private static final Pattern COMPUTED = Pattern.compile("\\bCOMPUTED\\b");
    private static final Pattern BRACKET = Pattern.compile("\\([^()]*(?i:from memory)[^()]*\\)");
    private static final Pattern NAME = Pattern.compile("\\p{Lu}\\p{L}+");
    private static final Pattern STATUS =
            Pattern.compile("VERIFIED|FROM MEMORY|COMPUTED|From memory|\\bS\\d+\\b|Sources?:|\\{@\\w+");

    /** Whether it leans on anything: a citation, or a word on how sure something is. */
    boolean leans() {
        return strict
                || saysHowSure()
                || COMPUTED.matcher(text).find()
                || CITED.matcher(text).find();
    }

    private boolean saysHowSure() {
        return MEMORY.matcher(text).find()
                || SEEN.matcher(text).find()
                || NONE.matcher(text).find();
    }

    /** What is wrong with it if these rows are all there are; empty when nothing is. */
    Set<String> faults(List<SourceRow> rows) {
        Set<String> faults = new TreeSet<>();
        List<SourceRow> mine =
                rows.stream().filter(row -> row.names(toString())).toList();
        if (mine.isEmpty()) {
            faults.add("no row");
            return faults;
        }
        String left = toString();
        for (SourceRow row : mine) {
            left = row.without(left);
        }
        left = left.replaceFirst("^" + Pattern.quote(place + ":"), "");
        Matcher cited = CITED.matcher(left);
        if (cited.find()) {
            faults.add("no row names '" + cited.group() + "'");
        }
        nameIn(strict ? left : bracket(left)).ifPresent(name -> faults.add("no row names '" + name + "'"));
        agree(faults, mine, MEMORY, "FROM MEMORY");
        agree(faults, mine, SEEN, "VERIFIED");
        agree(faults, mine, NONE, "common practice");
        return faults;
    }

    private static String bracket(String left) {
        Matcher bracket = BRACKET.matcher(left);
        StringBuilder out = new StringBuilder();
        while (bracket.find()) {
            out.append(bracket.group()).append(' ');
        }
        return out.toString();
    }

    private static Optional<String> nameIn(String left) {
        Matcher name = NAME.matcher(STATUS.matcher(left).replaceAll(""));
        return name.find() ? Optional.of(name.group()) : Optional.empty();
    }

    private void agree(Set<String> faults, List<SourceRow> mine, Pattern said, String status) {
        if (said.matcher(text).find()
                && mine.stream().noneMatch(row -> row.status().contains(status))) {
            faults.add("no row of it says " + status);
        }
    }

    @Override
    public String toString() {
        return place + ": " + text;
    }
}
