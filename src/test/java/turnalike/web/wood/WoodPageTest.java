package turnalike.web.wood;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.effort.Ending;
import turnalike.job.edit.NewJob;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;
import turnalike.units.UnitSystem;
import turnalike.web.Served;
import turnalike.web.Site;

/** The page of an order's wood and the one of its price, over HTTP. */
class WoodPageTest {
    private static final String BOARDS = """
            Board;Length (ft);Width;Thickness;How many;Price
            A;8;8 1/2;2 1/4;2;31.50
            B;6;7;2 1/4;3;20
            """;

    @TempDir
    private Path folder;

    private Served served;
    private String job = "";
    private JobId id;

    @BeforeEach
    void serve() throws Site.PortTaken {
        served = Served.in(folder);
        id = served.demo();
        job = "/jobs/" + id.text();
    }

    @AfterEach
    void close() {
        served.close();
    }

    private static String form(String... pairs) {
        StringBuilder out = new StringBuilder("x=");
        for (int i = 0; i < pairs.length; i += 2) {
            out.append('&')
                    .append(pairs[i])
                    .append('=')
                    .append(URLEncoder.encode(pairs[i + 1], StandardCharsets.UTF_8));
        }
        return out.toString();
    }

    private HttpResponse<String> post(String path, String... pairs) throws IOException, InterruptedException {
        return served.post(job + path, form(pairs));
    }

    private String get(String path) throws IOException, InterruptedException {
        HttpResponse<String> answer = served.get(job + path);
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        return answer.body();
    }

    private String text() {
        return served.store().find(id).orElseThrow().text().text();
    }

    @Test
    void boards_are_pasted_cut_and_their_sheet_is_carried_away() throws IOException, InterruptedException {
        assertThat(get("/wood")).contains("What to saw", "rough blanks", "Type the boards you have in hand above");
        assertThat(post("/wood/boards/paste", "cells", BOARDS).statusCode()).isEqualTo(303);
        assertThat(text()).contains("\"length\": \"8 ft\"", "\"price\": 31.50");
        assertThat(served.store().find(id).orElseThrow().undo()).contains("add 2 boards");
        assertThat(post("/wood/cut").statusCode()).isEqualTo(303);
        String page = get("/wood");
        for (int tries = 0; page.contains("id=\"stop\"") && tries < 300; tries++) {
            Thread.sleep(100);
            page = get("/wood");
        }
        assertThat(page).contains("proven to be the least", "Cut sheet, A4", "straighten one edge", "cross-cut at");
        HttpResponse<String> sheet = served.get(job + "/wood/cut-sheet-a4.pdf");
        assertThat(sheet.statusCode()).isEqualTo(200);
        assertThat(sheet.body()).startsWith("%PDF");
        KeptJob kept = served.store().find(id).orElseThrow();
        assertThat(kept.undo().orElseThrow()).startsWith("cut the blanks out of ");
        assertThat(kept.text().job().shop().cut().orElseThrow().ended()).isEqualTo(Ending.PROOF);

        post("/steps/undo", "tab", "/wood", "version", steps());
        assertThat(get("/wood")).contains("id=\"cut\"").doesNotContain("Cut sheet, A4");
        post("/steps/redo", "tab", "/wood", "version", steps());
        assertThat(get("/wood")).contains("Cut sheet, A4");
        post("/wood/boards/row", "c_board", "C", "c_thickness", "2", "c_width", "7", "c_length", "80");
        assertThat(get("/wood")).contains("have changed since they were cut").doesNotContain("Cut sheet, A4");
        post("/steps/undo", "tab", "/wood", "version", steps());
        assertThat(get("/wood")).contains("Cut sheet, A4");

        post("/steps/undo", "tab", "/wood", "version", steps());
        assertThat(post("/steps/undo", "tab", "/wood", "version", steps())
                        .headers()
                        .firstValue("Location"))
                .hasValueSatisfying(shown -> assertThat(shown).endsWith(job + "/wood"));
        assertThat(text()).doesNotContain("\"boards\"");
        assertThat(get("/wood")).contains("Type the boards you have in hand above");
    }

    @Test
    void another_job_is_sawn_along_and_the_cutting_outlives_the_program() throws Exception {
        JobId other = served.store().keep(NewJob.in(UnitSystem.INCH));
        post("/wood/boards/paste", "cells", "Board;Length;Width;Thickness;How many\nA;8 ft;12;4;60\n");
        assertThat(get("/wood")).contains("Jobs sawn along", "value=\"%s\"".formatted(other.text()));
        post("/wood/cut", "with", other.text());
        String page = get("/wood");
        for (int tries = 0; page.contains("id=\"stop\"") && tries < 300; tries++) {
            Thread.sleep(100);
            page = get("/wood");
        }
        assertThat(page).contains("Sawn along: ");
        assertThat(served.store()
                        .find(id)
                        .orElseThrow()
                        .text()
                        .job()
                        .shop()
                        .cut()
                        .orElseThrow()
                        .with())
                .containsExactly(other.text());
        String shown = page.substring(page.indexOf("<p><strong>"), page.indexOf("Left over, as long"));
        served.close();
        served = Served.in(folder);
        String again = get("/wood");
        assertThat(again.substring(again.indexOf("<p><strong>"), again.indexOf("Left over, as long")))
                .isEqualTo(shown);
        served.store().bin(other);
        assertThat(get("/wood")).contains("have changed since they were cut");
    }

    private String steps() {
        return Integer.toString(served.store().find(id).orElseThrow().times().steps());
    }

    @Test
    void what_cannot_be_is_told_at_its_cell_and_stays_there() throws IOException, InterruptedException {
        HttpResponse<String> refused =
                post("/wood/boards/row", "c_board", "A", "c_thickness", "2", "c_width", "-7", "c_length", "80");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body())
                .containsPattern("id=\"boards-next-width\"[^>]*value=\"-7\"[^>]*aria-invalid=\"true\"")
                .contains("a length carries no sign");
        assertThat(text()).doesNotContain("\"boards\"");
        HttpResponse<String> pasted =
                post("/wood/boards/paste", "cells", "Board,Length,Width,Thickness\nA,80,7,2\nB,80,no,2\n");
        assertThat(pasted.statusCode()).isEqualTo(422);
        assertThat(pasted.body()).contains("pasted row 2, width");
        HttpResponse<String> heavy = post("/wood/blanks/row", "c_blank", "1", "c_mass_g", "9000");
        assertThat(heavy.statusCode()).isEqualTo(422);
        assertThat(heavy.body())
                .containsPattern("id=\"blanks-next-mass_g\"[^>]*aria-invalid=\"true\"")
                .contains("heavier than any wood full of water");
        assertThat(post("/wood/chairs/row").statusCode()).isEqualTo(404);
        assertThat(post("/wood/boards/row", "row", "1", "seen", "{}", "c_board", "A")
                        .statusCode())
                .isEqualTo(409);
    }

    @Test
    void a_row_is_typed_over_and_taken_out() throws IOException, InterruptedException {
        post("/wood/boards/row", "c_board", "A", "c_thickness", "2", "c_width", "7", "c_length", "80");
        String seen = seen(get("/wood"));
        assertThat(post("/wood/boards/row", "row", "1", "seen", seen, "c_width", "7 1/2")
                        .statusCode())
                .isEqualTo(303);
        assertThat(text()).contains("\"width\": \"7 1/2\"");
        int before = served.store().find(id).orElseThrow().times().steps();
        post("/wood/boards/row", "row", "1", "seen", seen(get("/wood")), "c_width", "7 1/2");
        assertThat(served.store().find(id).orElseThrow().times().steps())
                .as("nothing typed anew is no step")
                .isEqualTo(before);
        post("/wood/boards/remove", "row", "1", "seen", seen(get("/wood")));
        assertThat(text()).doesNotContain("\"boards\"");
    }

    private static String seen(String page) {
        Matcher matcher = Pattern.compile("name=\"seen\" value=\"([^\"]+)\"").matcher(page);
        assertThat(matcher.find()).isTrue();
        return matcher.group(1).replace("&#34;", "\"").replace("&amp;", "&");
    }

    @Test
    void the_log_corrects_what_the_blanks_will_give_and_how_many_are_lost() throws IOException, InterruptedException {
        post("/wood/blanks/paste", "cells", "Blank,Weight\n1,560\n2,566\n3,552\n15,571\n16,548\n");
        String page = get("/wood");
        assertThat(page).contains("finished, in the set", "Too few blanks");
        assertThat(page).contains("17 good so far");
        post("/pieces/remove", "piece", "2");
        assertThat(get("/wood"))
                .as("a slip taken out cost no wood")
                .contains("0 lost and 16 good so far", "Piece 2 was taken out of the log, which is no loss.");
        assertThat(get("/pieces")).contains("Was it spoiled?");
        post("/pieces/spoiled", "piece", "2", "tab", "/wood");
        assertThat(get("/wood"))
                .contains("1 lost and 16 good so far", "Spoiled, by the log: 2")
                .doesNotContain("Piece 2 was taken out");
        assertThat(get("/pieces")).contains("Piece 2 counts as a loss.");
        assertThat(post("/pieces/spoiled", "piece", "none").statusCode()).isEqualTo(404);
        post("/steps/undo", "tab", "/wood", "version", steps());
        post("/steps/undo", "tab", "/wood", "version", steps());
        assertThat(get("/wood")).contains("0 lost and 17 good so far").doesNotContain("Spoiled, by");
    }

    @Test
    void times_and_charges_make_a_quote_that_shows_no_markup() throws IOException, InterruptedException {
        assertThat(get("/price")).contains("none is timed yet", "Time a piece").doesNotContain("What it comes to");
        post("/wood/times/paste", "cells", "Stage,Minutes,Pieces\nmilling,90,0\nturning,40,1\nturning,36,1\n");
        assertThat(get("/price")).contains("Give your rate for an hour").doesNotContain("What it comes to");
        assertThat(served.get(job + "/price/invoice.csv").statusCode()).isEqualTo(404);
        HttpResponse<String> refused = post("/price", "rate", "dear");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).containsPattern("id=\"price-rate\"[^>]*value=\"dear\"[^>]*aria-invalid=\"true\"");
        assertThat(post(
                                "/price",
                                "rate",
                                "€ 45",
                                "others",
                                "wood ; 62.50",
                                "markup_pct",
                                "10",
                                "tax_pct",
                                "",
                                "currency",
                                "EUR")
                        .statusCode())
                .isEqualTo(303);
        assertThat(get("/price")).contains("What it comes to", "49.50", "68.75", "For you alone: The markup of 10 %");
        String invoice = get("/price/invoice.csv");
        assertThat(invoice).contains("wood,1,,68.75,68.75,EUR").doesNotContain("markup");
        assertThat(served.get(job + "/price/quote-us-letter.pdf").statusCode()).isEqualTo(200);
        assertThat(served.get(job + "/price/other.pdf").statusCode()).isEqualTo(404);
    }

    @Test
    void the_bench_views_clock_counts_as_turning() throws IOException, InterruptedException {
        served.api(
                "POST",
                job + "/pieces",
                "{\"pieces\": [{\"piece\": \"40\", \"figures\": {\"mass_g\": 250}, \"minutes\": 31}]}");
        assertThat(get("/price")).contains("The bench view timed 1 piece at the lathe", "31 min each");

        post("/wood/times/paste", "cells", "Stage,Minutes,Pieces\nTurning,90,3\n");
        assertThat(get("/price")).contains("Not counted: 1 time typed for", "31 min each");
    }
}
