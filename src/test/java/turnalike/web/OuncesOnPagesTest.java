package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobId;
import turnalike.workbook.WorkbookTable;

/** Where the scale shows ounces, the page asks for weights in them and tells them in them. */
class OuncesOnPagesTest {
    @TempDir
    private Path folder;

    private Served served;
    private JobId id;
    private String job = "";

    @BeforeEach
    void serve() throws Site.PortTaken, IOException, InterruptedException {
        served = Served.in(folder);
        id = served.demo();
        job = "/jobs/" + id.text();
        String ounces = text().replace("\"scale_g\": 0.1", "\"scale_oz\": 0.1");
        assertThat(ounces).isNotEqualTo(text());
        String steps =
                String.valueOf(served.store().find(id).orElseThrow().times().steps());
        assertThat(post("/file", "text", ounces, "version", steps)).isEqualTo(303);
    }

    @AfterEach
    void close() {
        served.close();
    }

    private String text() {
        return served.store().find(id).orElseThrow().text().text();
    }

    private int post(String path, String... pairs) throws IOException, InterruptedException {
        StringBuilder out = new StringBuilder("sure=yes");
        for (int i = 0; i < pairs.length; i += 2) {
            out.append('&')
                    .append(pairs[i])
                    .append('=')
                    .append(URLEncoder.encode(pairs[i + 1], StandardCharsets.UTF_8));
        }
        return served.post(job + path, out.toString()).statusCode();
    }

    private double grams(String piece) {
        return served.store()
                .find(id)
                .orElseThrow()
                .piece(piece)
                .piece()
                .mass()
                .orElseThrow()
                .grams();
    }

    @Test
    void a_bare_weight_is_ounces_and_stands_so_in_its_field() throws IOException, InterruptedException {
        assertThat(post("/pieces", "piece", "1", "mass_oz", "8.4")).isEqualTo(303);
        assertThat(post("/pieces", "piece", "2", "mass_oz", "236 g")).isEqualTo(303);
        assertThat(grams("1")).isCloseTo(8.4 * 28.349523125, within(1e-3));
        assertThat(grams("2")).isEqualTo(236);
        assertThat(served.get(job + "/pieces").body())
                .contains("Weight, oz", "name=\"mass_oz\"", "value=\"8.4\"", "17 weighed, from 4.9 oz to 8.4 oz")
                .doesNotContain("Weight, g");
        assertThat(served.get(job + "/bench").body()).contains("Weight, oz").doesNotContain("Weight, g");
    }

    @Test
    void the_workbook_tells_ounces_as_the_page_does_and_the_csv_grams() throws IOException, InterruptedException {
        assertThat(post("/pieces", "piece", "1", "mass_oz", "8.4")).isEqualTo(303);
        assertThat(post("/pieces", "piece", "2", "mass_oz", "236.1 g")).isEqualTo(303);
        WorkbookTable.Read read = WorkbookTable.read(served.file(job + "/pieces/pieces.xlsx"), "pieces.xlsx");
        assertThat(read.problems()).isEmpty();
        assertThat(read.text()).startsWith("\"piece\",\"mass_oz\"").contains("\"1\",\"8.4\"", "\"2\",\"8.3\"");
        assertThat(served.get(job + "/pieces/pieces.csv").body()).startsWith("piece,mass_g");
    }

    @Test
    void a_blanks_weight_that_is_not_touched_stays_to_the_last_digit() throws IOException, InterruptedException {
        assertThat(post("/wood/blanks/row", "c_blank", "A", "c_mass_g", "400 g"))
                .isEqualTo(303);
        assertThat(text()).contains("\"mass_g\": 400");
        String page = served.get(job + "/wood").body();
        assertThat(page).contains("Weight, oz", "value=\"14.11\"", "Will give, oz");
        String seen = page.replaceAll("(?s).*name=\"seen\" value=\"([^\"]+mass_g[^\"]+)\".*", "$1")
                .replace("&#34;", "\"")
                .replace("&quot;", "\"");
        assertThat(post(
                        "/wood/blanks/row",
                        "row",
                        "1",
                        "seen",
                        seen,
                        "c_blank",
                        "A",
                        "c_mass_g",
                        "14.11",
                        "c_lost",
                        "yes"))
                .isEqualTo(303);
        assertThat(text()).contains("\"mass_g\": 400", "\"lost\": \"yes\"");
        assertThat(post("/wood/blanks/row", "c_blank", "B", "c_mass_g", "14.2")).isEqualTo(303);
        assertThat(text()).contains("\"mass_g\": 402.56");
    }
}
