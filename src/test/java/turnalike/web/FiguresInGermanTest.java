package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.job.kept.JobId;
import turnalike.language.Language;

/** Where the page is German a figure to be filled in has a comma; with a comma or a point it is the same figure, and a point is kept. */
class FiguresInGermanTest {
    @TempDir
    private Path folder;

    private static String german(Served served, String path) throws Exception {
        return served.client()
                .send(
                        served.request(path).header("Accept-Language", "de").build(),
                        HttpResponse.BodyHandlers.ofString())
                .body();
    }

    private static String field(String html, String id) {
        return found("<input[^>]* id=\"" + id + "\"[^>]* value=\"([^\"]*)\"", html);
    }

    private static String area(String html, String id) {
        return found("<textarea id=\"" + id + "\"[^>]*>([^<]*)</textarea>", html);
    }

    private static String found(String shape, String html) {
        return Pattern.compile(shape)
                .matcher(html)
                .results()
                .map((MatchResult each) -> each.group(1))
                .findFirst()
                .orElse("no such field");
    }

    @Test
    void a_size_is_shown_with_a_comma_and_taken_with_either() throws Exception {
        try (Served served = Served.in(folder)) {
            JobId job = served.job("New job");
            String at = "/jobs/" + job.text();
            served.post(at + "/units", "units=mm");
            served.post(at + "/member/1", "length=100,5&name=100.5");
            served.post(at + "/fields", "title=Model 1,5&wood.density_kg_m3=655.5");
            assertThat(served.store().find(job).orElseThrow().text().text())
                    .contains("\"100.5\"", "655.5", "Model 1,5");
            String html = german(served, at + "?member=1");
            assertThat(field(html, "f-length")).isEqualTo("100,5");
            assertThat(field(html, "f-wood-density_kg_m3")).isEqualTo("655,5");
            assertThat(field(html, "f-name")).as("typed words").isEqualTo("100.5");
            assertThat(field(served.get(at + "?member=1").body(), "f-length")).isEqualTo("100.5");
            int steps = served.store().find(job).orElseThrow().times().steps();
            served.post(at + "/member/1", "length=100,5&name=100.5");
            assertThat(served.store().find(job).orElseThrow().times().steps()).isEqualTo(steps);
        }
    }

    @Test
    void lists_and_lines_of_figures_too_and_names_beside_them_stay() throws Exception {
        try (Served served = Served.in(folder)) {
            JobId job = served.job("New job");
            String at = "/jobs/" + job.text();
            served.post(at + "/units", "units=mm");
            String typed = "settings.pin=12,5; 30&checks=Model 1.5 ; 100,5%0D%0Aneck 2,5 ; 60.25";
            served.post(at + "/fields", typed);
            assertThat(served.store().find(job).orElseThrow().text().text())
                    .contains("\"12.5\"", "\"100.5\"", "\"60.25\"", "Model 1.5", "neck 2,5");
            String html = german(served, at);
            assertThat(field(html, "f-settings-pin")).isEqualTo("12,5; 30");
            assertThat(area(html, "f-checks")).isEqualTo("Model 1.5 ; 100,5\nneck 2,5 ; 60,25");
            assertThat(area(served.get(at).body(), "f-checks")).isEqualTo("Model 1.5 ; 100.5\nneck 2,5 ; 60.25");
            int steps = served.store().find(job).orElseThrow().times().steps();
            served.post(at + "/fields", typed);
            assertThat(served.store().find(job).orElseThrow().times().steps()).isEqualTo(steps);
        }
    }

    @Test
    void what_is_charged_too() throws Exception {
        try (Served served = Served.in(folder)) {
            String at = "/jobs/" + served.demo().text() + "/price";
            served.post(at, "rate=45,5&others=wood 1.5 ; 62,50&markup_pct=&tax_pct=&currency=EUR");
            String html = german(served, at);
            assertThat(field(html, "price-rate")).isEqualTo("45,5");
            assertThat(area(html, "price-others")).isEqualTo("wood 1.5 ; 62,50");
            assertThat(area(served.get(at).body(), "price-others")).isEqualTo("wood 1.5 ; 62.50");
        }
    }

    @Test
    void a_piece_and_a_row_of_the_shop_too() throws Exception {
        try (Served served = Served.in(folder)) {
            String at = "/jobs/" + served.demo().text();
            served.post(at + "/pieces", "piece=1,5&mass_g=512,5&sure=yes");
            String html = german(served, at + "/pieces");
            assertThat(html).contains("value=\"512,5\"").contains("1,5");
            served.post(at + "/wood/blanks/row", "c_blank=1&c_mass_g=560,5");
            assertThat(german(served, at + "/wood")).contains("value=\"560,5\"");
            assertThat(served.get(at + "/wood").body()).contains("value=\"560.5\"");
        }
    }

    @Test
    void a_text_that_a_script_shows_is_german() throws Exception {
        try (Served served = Served.in(folder)) {
            String at = "/jobs/" + served.demo().text();
            assertThat(german(served, at + "/member/3/drag?key=crown&value=0.1"))
                    .contains("Glied 3");
            assertThat(german(served, "/api" + at + "/changes?seen=0"))
                    .containsPattern("\"what\" : \".*erfundenen Stücke");
        }
    }

    @Test
    void pieces_named_otherwise_than_by_figures_alone_too() {
        String labels = "n7, n105, 12, A-3" + ", n9".repeat(60);
        assertThat(Language.GERMAN.say("Next set: keep pieces " + labels + "; they make a set as they are"))
                .isEqualTo("Nächster Satz: zu behalten sind die Stücke " + labels
                        + "; sie ergeben einen Satz, wie sie sind");
        assertThat(Language.GERMAN.say("Next set: keep piece n7; they make a set as they are"))
                .startsWith("Nächster Satz: zu behalten ist Stück n7; ");
        assertThat(Language.GERMAN.say("Next set: keep pieces the pale one, n7; they make a set as they are"))
                .startsWith("Nächster Satz: zu behalten sind die Stücke the pale one, n7; ");
    }

    @Test
    void room_that_no_rule_shows_too() {
        for (String line : List.of(
                "Hub: bore 3/4 in (19 mm), 1 in (25.4 mm) deep: less than 0.004 in (0.1 mm) of wood between two mortises",
                "Rim: bore 19 mm (3/4 in), 25 mm (1 in) deep: less than 0.1 mm (0.004 in) of wood between two mortises,"
                        + " 6 mm (15/64 in) to the outside",
                "Spokes: less than 0.1 mm (0.004 in) between two of them at the nearest, 20 mm (25/32 in) from the start end",
                "less than 0.1 mm (0.004 in) is left from a mortise's bottom to the axle's hole",
                "mortises 19 mm (3/4 in) wide and 25 mm (1 in) deep leave less than 0.1 mm (0.004 in) of wood between them",
                "between 1/32 in and 3/64 in on the rule")) {
            assertThat(Language.GERMAN.knows(line)).as(line).isTrue();
        }
    }

    /** What was done is told in the history, beside Undo, and where another bench did it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "hub bead 3 thicker at the crown: 1 1/2 → 1 5/8 in",
                "taper 4 thinner at its end: 22.5 → 22 mm",
                "hub bead 3 longer: 3/4 → 7/8 in",
                "end of cove 4 moved: 3/4 → 7/8 in",
                "move hub bead 3 to place 8",
                "insert a bead before cove 4",
                "insert an ogee in cove 4",
                "remove vee 5",
                "make a cove of hub bead 3",
                "hold piece 7 at place 3",
                "swap pieces 7 and 11",
                "log piece 12",
                "cut the blanks out of 2 boards",
                "scale the pattern to 110 %, tenons as they are",
                "stretch the piece to 16 in by member 6",
                "add board C",
                "took back: turn the run end for end",
                "change what is charged"
            })
    void what_was_done_is_told_in_german(String words) {
        assertThat(Language.GERMAN.knows(words)).as(words).isTrue();
    }
}
