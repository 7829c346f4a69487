package turnalike.web.copy;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.language.Language;
import turnalike.web.Served;
import turnalike.web.kit.HtmlWords;

/** What stands on the page once an original was sent: while it is traced, found, refused, pointed at and checked, all of it in German. */
class TracedPagesInGermanTest {
    /** Words that German has none like, so that they stand for what was left as it was in a line that is known but for a part. */
    private static final Pattern ENGLISH = Pattern.compile("\\b(?:the|and|of|to|with|from|over|at|is|are|it)\\b");

    private static final Map<String, String> LONG = Map.of("units", "mm", "span", "400", "piece", "7");

    @TempDir
    private Path folder = Path.of("");

    private final Set<String> missing = new TreeSet<>();

    private String read(HttpResponse<String> answer) {
        new HtmlWords(words -> {
                    if (!Language.GERMAN.knows(words)
                            || ENGLISH.matcher(Language.GERMAN.say(words)).find()) {
                        missing.add(words.strip());
                    }
                    return words;
                })
                .of(answer.body());
        return Originals.address(answer.body());
    }

    private String sent(Served served, String form, Map<String, String> known, byte[] photograph) throws Exception {
        return read(Originals.done(served, served.upload(form, known, "7.jpg", photograph)));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void every_line_about_a_photograph_has_its_german() throws Exception {
        try (Served served = Served.in(folder)) {
            String job = "/jobs/" + served.job("New job").text();
            String found = sent(served, "/copy", LONG, Originals.photograph());
            assertThat(served.get(found).body()).contains("Take it as pattern", "id=\"overlay\"");
            read(Originals.done(
                    served,
                    served.post(found + "/again", "units=mm&span=400&start_x=40&start_y=20&end_x=440&end_y=20")));
            read(served.post(found + "/again", "units=mm&span=soon"));
            sent(served, "/copy", Map.of("units", "mm"), Originals.photograph());
            sent(served, "/copy", LONG, bytes("no picture"));
            sent(served, job + "/copy", LONG, Originals.photograph());
            sent(served, job + "/check", LONG, Originals.photograph());
            String taken = served.post(found + "/take", "title=7")
                    .headers()
                    .firstValue("Location")
                    .orElseThrow()
                    .replaceFirst("^https?://[^/]+", "");
            sent(served, taken + "/check", Map.of("units", "mm", "piece", "7"), Originals.photograph());
            assertThat(missing).isEmpty();
        }
    }

    @Test
    void every_line_about_a_drawing_or_a_table_has_its_german() throws Exception {
        try (Served served = Served.in(folder)) {
            String job = "/jobs/" + served.job("New job").text();
            for (String form : new String[] {"/copy", job + "/copy", job + "/check"}) {
                Map<String, String> known = Map.of("units", "mm", "piece", "7");
                read(Originals.done(served, served.upload(form, known, "7.svg", bytes(Originals.DRAWING))));
                read(Originals.done(served, served.upload(form, known, "7.csv", bytes(Originals.TABLE))));
                read(Originals.done(served, served.upload(form, known, "7.svg", bytes("<svg/>"))));
            }
            assertThat(missing).isEmpty();
        }
    }

    /** A spindle of five members, each of which a piece may miss by its own. */
    private static String spindle(double along, double bead, double cove, double thick) {
        double at = 60 + along;
        StringBuilder table = new StringBuilder("x,diameter\n");
        row(table, 0, 30 + thick);
        row(table, 30, 30 + thick);
        row(table, at, 30 + thick);
        for (int k = 0; k <= 12; k++) {
            row(table, at + 20 * k / 12.0, 30 + (10 + bead) * Math.sqrt(1 - Math.pow(k / 6.0 - 1, 2)));
        }
        for (int k = 0; k <= 12; k++) {
            row(table, at + 20 + 24 * k / 12.0, 30 - (8 + cove) * Math.sqrt(1 - Math.pow(k / 6.0 - 1, 2)));
        }
        row(table, at + 80, 27 + thick / 2);
        row(table, at + 120, 24);
        row(table, at + 120, 36 - thick);
        row(table, at + 150, 36 - thick);
        row(table, 220, 36 - thick);
        return table.toString();
    }

    private static void row(StringBuilder table, double x, double diameter) {
        table.append(String.format(Locale.ROOT, "%.3f,%.3f%n", x, diameter));
    }

    @Test
    void every_line_about_a_piece_that_is_off_its_pattern_has_its_german() throws Exception {
        try (Served served = Served.in(folder)) {
            HttpResponse<String> found = Originals.done(
                    served, served.upload("/copy", Map.of("units", "mm"), "7.csv", bytes(spindle(0, 0, 0, 0))));
            HttpResponse<String> taken = served.post(Originals.address(found.body()) + "/take", "title=7");
            String job = taken.headers().firstValue("Location").orElseThrow().replaceFirst("^https?://[^/]+", "");
            Set<String> told = new TreeSet<>();
            for (double[] off : new double[][] {
                {2, 0, 0, 0}, {-2, 0, 0, 0}, {0, 2, 2, 1.2}, {0, -2, -2, -1.2}, {0, 0, 0, 3}, {0, 0, 0, -3}
            }) {
                byte[] piece = bytes(spindle(off[0], off[1], off[2], off[3]));
                HttpResponse<String> checked = Originals.done(
                        served, served.upload(job + "/check", Map.of("units", "mm", "piece", "7"), "7.csv", piece));
                read(checked);
                Matcher line =
                        Pattern.compile("<li>(Its [^<]*|Everything [^<]*)</li>").matcher(checked.body());
                while (line.find()) {
                    told.add(line.group(1).replaceAll("[0-9.]+", "#"));
                }
            }
            assertThat(told).hasSizeGreaterThan(9);
            assertThat(missing).isEmpty();
        }
    }
}
