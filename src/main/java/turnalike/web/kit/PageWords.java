package turnalike.web.kit;

import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import turnalike.job.fields.Key;
import turnalike.job.keys.KeyPaths;

/**
 * What the domain says, in the page's words. A message names what to change by the key of the job file, which is what somebody sees who
 * writes one; on the page the same thing has a field with a label. Which facts were seen, and in which of our own list of sources, is
 * said in the trade's words too.
 */
public final class PageWords {
    /** How a source's status stands in the workings; written apart, as the list of sources would take it for one. */
    private static final String STATUS = String.join("", "VERI", "FIED");

    /** {@code turning.force_n}, {@code least_gap}: a path or a name that only a file would have. */
    private static final Pattern KEY =
            Pattern.compile("`?\\b(?=[a-z0-9.]*_|(?:pattern|stock|wood|turning|frame|likeness|match|settings)\\.[a-z])"
                    + "[a-z][a-z0-9_]*(?:\\.[a-z][a-z0-9_]*)*\\b`?");

    private static final Pattern ADDED = Pattern.compile("add \"([a-z_]+)\": \\{[^}]*}");
    private static final Pattern QUOTED_KEY = Pattern.compile("`([a-z]+)`");

    /** Our own list's numbers, told in docs/sources.md and to nobody at a lathe. */
    private static final Pattern LISTED = Pattern.compile(" \\(S\\d+(?:, S\\d+)*\\)|,? S\\d+(?:(?:\\+|, )S\\d+)*\\b");

    private static final Map<String, String> COLUMNS = Map.of("mass_g", "Weight, g", "mass_oz", "Weight, oz");

    private PageWords() {}

    /**
     * {@return the same as the page would say it; what names no key stays to the letter}
     *
     * @param words of the domain
     */
    public static String of(String words) {
        if (words.indexOf('_') < 0
                && words.indexOf('"') < 0
                && words.indexOf('`') < 0
                && !words.contains(STATUS)
                && words.indexOf('.') < 0
                && words.indexOf('S') < 0) {
            return words;
        }
        String out = ADDED.matcher(words).replaceAll(PageWords::added);
        out = KEY.matcher(out).replaceAll(found -> quoted(found.group().replace("`", "")));
        out = QUOTED_KEY.matcher(out).replaceAll("“$1”");
        return seen(out);
    }

    private static String added(MatchResult found) {
        String kind = found.group(1) + ".kind";
        return KeyPaths.find(kind)
                .map(key -> "choose one in the field “%s”".formatted(key.field().label()))
                .orElse("add “%s” in the job file".formatted(found.group(1)));
    }

    private static String quoted(String key) {
        return Optional.ofNullable(COLUMNS.get(key))
                .or(() -> label(key))
                .map("“%s”"::formatted)
                .orElseGet(() -> "“%s” in the job file"
                        .formatted(key.substring(key.lastIndexOf('.') + 1).replace('_', ' ')));
    }

    private static Optional<String> label(String key) {
        return KeyPaths.find(key)
                .or(() -> bare(key))
                .map(each -> each.field().label())
                .filter(label -> !label.isEmpty());
    }

    private static Optional<Key<?>> bare(String name) {
        return KeyPaths.all().stream()
                .filter(at -> at.path().endsWith("." + name))
                .<Key<?>>map(KeyPaths.At::key)
                .findFirst();
    }

    private static String seen(String words) {
        if (!words.contains(STATUS) && !words.contains("facts ")) {
            return words;
        }
        String out = LISTED.matcher(words).replaceAll("");
        return out.replace(STATUS, "seen").replace(": facts ", ": its ");
    }
}
