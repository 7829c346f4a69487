package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What reads a page as a turner would; {@link PagesInGermanTest}, which walks all of them anyway, has it read each. */
class WordsOnPagesTest {
    /** What a person writes themself: the job file is shown and sent as it is, and a field's own figures. */
    private static final Pattern UNREAD = Pattern.compile(
            "(?s)<(script|style|svg|textarea)\\b.*?</\\1>|<option\\b.*?</option>|<!--.*?-->|<head>.*?</head>");

    private static final Pattern TAG = Pattern.compile("<[^>]*>");

    private static final List<Pattern> NOT_OURS_TO_SAY = List.of(
            Pattern.compile("\\b[a-z][a-z0-9]*_[a-z0-9_]+"), // a key
            Pattern.compile("\\b(?:turning|frame|stock|wood|match|likeness|settings|pattern)\\.[a-z]\\w*"), // a path
            Pattern.compile("[{}`]|\\bnull\\b|\\bNaN\\b|\\bInfinity\\b|Optional\\[|[A-Za-z]Exception"),
            Pattern.compile("VERIFIED|RECALLED|REDACTED|TODO|\\bS\\d+\\+S\\d+"),
            Pattern.compile(
                    "(?i)\\ba (?:[aeio]|u(?!n?i|se))[a-z]{2,}|\\ban (?:[bcdfgjklmnpqrstvwxyz])[a-z]{2,}"), // the
            // article
            Pattern.compile(
                    "\\b1 (?:pieces|blanks|openings|marks|places|members|settings|sheets|pages|boards)\\b(?! of)"),
            Pattern.compile(
                    "\\bin in\\b|\\bmm mm\\b|\\.\\.(?!\\.)|,,| ,|\\( | ;(?! [a-z0-9])|\\bthe the\\b|\\bof of\\b"),
            Pattern.compile("(?:^|[ (])--[a-z]+"), // an option of the command
            Pattern.compile("\\d\\.\\d{9,}")); // a figure that nobody rounded

    /** Gathers what no turner should read on that page. */
    static void judge(String page, String html, List<String> found) {
        for (String line : words(html)) {
            for (Pattern each : NOT_OURS_TO_SAY) {
                var hit = each.matcher(line);
                if (hit.find()) {
                    found.add("%s: «%s» in: %s".formatted(page, hit.group(), line));
                }
            }
        }
    }

    private static List<String> words(String html) {
        String text = TAG.matcher(UNREAD.matcher(html).replaceAll("\n")).replaceAll("\n");
        return text.lines()
                .map(line -> line.replace("&quot;", "\"")
                        .replace("&#39;", "'")
                        .replace("&amp;", "&")
                        .replace("&lt;", "<"))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .distinct()
                .toList();
    }

    @Test
    void the_reader_sees_what_it_looks_for() {
        List<String> found = new ArrayList<>();
        for (String bad : List.of(
                "What is a ogee?",
                "column mass_g",
                "set turning.force_n",
                "add {…}",
                "(VERIFIED, S3)",
                "1 pieces logged",
                "now in in",
                "range 2.812500000000007",
                "an bead")) {
            judge("sample", "<p>" + bad + "</p>", found);
        }
        assertThat(found).hasSize(10);
        judge("sample", "<p>a useful unit, a union, an hour, 1 piece, 2.81 g</p><textarea>mass_g</textarea>", found);
        assertThat(found).hasSize(10);
    }
}
