package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobText;
import turnalike.language.Language;
import turnalike.web.kit.HtmlWords;

/** Every line of every page has its German, and the English of none is a developer's: one walk for both. */
class PagesInGermanTest {
    /** What a picture says, and how far a search has come, which no two runs tell alike. */
    private static final Pattern PASSED_OVER = Pattern.compile("(?s)<svg\\b.*?</svg>|<p id=\"progress\">.*?</p>");

    /** What a turner calls a member is said as it was given. */
    private static final Pattern NAMES = Pattern.compile(",\\s*\"name\"\\s*:\\s*\"[^\"]*\"");

    private static final int LONGEST_SEARCH_S = 90;

    private static final String FRAMED = """
            {"format": "turnalike-job", "version": 1, "title": "7", "units": "mm",
             "pattern": {"stock": {"section": "square", "size": 40, "length": 160},
              "members": [{"kind": "tenon", "length": 20, "diameter": 16}, {"kind": "cylinder", "length": 100, "diameter": 30},
               {"kind": "tenon", "length": 10, "diameter": 12}]},
             "wood": {"density_kg_m3": 700}, "tolerances": {"mass_pct": 10}, "frame": %s}
            """;

    private static final String PIECES =
            "piece,mass_g,length%0A1,50.1,130.2%0A2,50.9,130.0%0A3,49.6,129.9%0A4,50.4,130.1%0A5,49.9,130.3%0A6,50.2,129.8"
                    + "%0A7,50.6,130.0%0A8,49.8,130.1%0A9,50.0,129.9";

    @TempDir
    private static Path folder;

    private static final Set<String> MISSING = new TreeSet<>();
    private static final List<String> SAID_BADLY = new ArrayList<>();

    @BeforeAll
    static void walk() throws Exception {
        try (Served served = Served.in(folder)) {
            awaitMatch(served, "/jobs/" + served.demo().text());
            HtmlWords reader = new HtmlWords(words -> {
                if (!Language.GERMAN.knows(words)) {
                    MISSING.add(words.strip());
                }
                return words;
            });
            PageWalk walk = new PageWalk(served, (page, html) -> {
                // What a picture says is held with the sheets, before it is broken into lines.
                reader.of(PASSED_OVER.matcher(html).replaceAll(""));
                WordsOnPagesTest.judge(page, html, SAID_BADLY);
            });
            walk.all();
            for (String frame : List.of(
                    "{\"kind\": \"row\", \"places\": 4, \"clear\": 600, \"largest_opening\": 90, \"rails_apart\": 95}",
                    "{\"kind\": \"legs\", \"places\": 4, \"groups\": 2, \"rake_deg\": 12, \"height\": 90, \"seat_thickness\": 25}")) {
                String at = "/jobs/" + framed(served, frame).text();
                served.post(at + "/pieces/table", "sure=yes&cells=" + PIECES);
                awaitMatch(served, at);
                walk.frame(at);
            }
            // A leg with a square head stands under a table; it is too short here, and told so.
            String leg = FRAMED.replace("\"tenon\", \"length\": 20, \"diameter\": 16", "\"square\", \"length\": 20")
                    .replace("tenon", "cylinder");
            String table = leg.formatted(
                    "{\"kind\": \"legs\", \"places\": 4, \"groups\": 1, \"rake_deg\": 2, \"height\": 200, \"seat_thickness\": 25}");
            walk.frame("/jobs/"
                    + served.store()
                            .keep(JobText.read(table).text().orElseThrow())
                            .text());
            // One on round tenons does too if it is said to; here its tenon comes through and is hardly long enough.
            for (int thick : new int[] {19, 25}) {
                String tenoned =
                        "{\"kind\": \"legs\", \"places\": 4, \"rake_deg\": 12, \"splay_deg\": 5, \"height\": 200, \"under\": \"table_top\","
                                + " \"apart\": [90, 60], \"seat_thickness\": %d}".formatted(thick);
                walk.frame("/jobs/" + framed(served, tenoned).text());
            }
            // Held by one end, in inches or in a year of its own an order is told of other cautions and workings than
            // the demo.
            for (String order : List.of("spire", "finial", "legs", "wheel", "post", "balusters")) {
                String text =
                        Files.readString(Path.of("src/test/resources/turnalike/sheets/orders", order + ".job.json"));
                String bare =
                        NAMES.matcher(text).replaceAll("").replaceAll("\"(title|name)\": \"[^\"]*\"", "\"$1\": \"7\"");
                JobText held = JobText.read(bare).text().orElseThrow();
                String at = "/jobs/" + served.store().keep(held).text();
                awaitMatch(served, at);
                walk.frame(at);
            }
        }
    }

    @Test
    void no_line_of_any_page_lacks_its_german() {
        assertThat(MISSING).isEmpty();
    }

    @Test
    void no_page_speaks_as_a_developer_or_with_a_wrong_article() {
        assertThat(SAID_BADLY).isEmpty();
    }

    private static JobId framed(Served served, String frame) {
        return served.store().keep(JobText.read(FRAMED.formatted(frame)).text().orElseThrow());
    }

    /** What is told of the found set is read too. */
    private static void awaitMatch(Served served, String at) throws Exception {
        String match = at + "/match";
        for (int s = 0; s < LONGEST_SEARCH_S; s++) {
            if (!served.get(match).body().contains("id=\"progress\"")) {
                return;
            }
            Thread.sleep(1000);
        }
    }
}
