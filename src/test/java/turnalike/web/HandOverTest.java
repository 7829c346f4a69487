package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the pages say of the demo's pieces and set, and the files they hand out. */
class HandOverTest {
    @TempDir
    private Path folder;

    private Served served;

    @BeforeEach
    void serve() throws Site.PortTaken {
        served = Served.in(folder);
    }

    @AfterEach
    void close() {
        served.close();
    }

    private HttpResponse<String> get(String page) throws IOException, InterruptedException {
        return served.get("/jobs/" + served.demo().text() + page);
    }

    @Test
    void the_set_is_shown_in_its_frame_and_its_record_is_a_pdf() throws Exception {
        String page = get("/match").body();
        assertThat(page)
                .contains("The frame as it will look", "the wheel with its 14 pieces", "Balance against roundness");
        assertThat(page).doesNotContain("--strict", "style=\"");
        for (String paper : new String[] {"a4", "us-letter"}) {
            HttpResponse<String> record = get("/match/set-record-" + paper + ".pdf");
            assertThat(record.statusCode()).isEqualTo(200);
            assertThat(record.headers().firstValue("Content-Type").orElseThrow())
                    .startsWith("application/pdf");
            assertThat(record.body()).startsWith("%PDF-");
        }
        assertThat(get("/match/set-record-a5.pdf").statusCode()).isEqualTo(404);
    }

    @Test
    void the_pieces_say_which_is_off_and_whether_the_work_drifts() throws Exception {
        String page = get("/pieces?column=d2").body();
        assertThat(page)
                .contains("Which one is off?", "piece 6: it is 0.02 in long; it is 7.6 g heavy")
                .contains("The last four diameters at the belly grew 0.013 in (pieces 14 to 17)")
                .contains("Middle of the long taper, in", "15.004");
    }

    @Test
    void templates_and_outlines_are_handed_out() throws Exception {
        String page = get("/sheets").body();
        assertThat(page).contains("checking-template-a4.pdf", "outline.dxf");
        assertThat(get("/sheets/outline.dxf").body()).contains("ENTITIES", "EOF");
        assertThat(get("/sheets/checking-template-a4.pdf").body()).startsWith("%PDF-");
        assertThat(get("/sheets/other.dxf").statusCode()).isEqualTo(404);
        assertThat(get("/sheets/..%2f..%2fpasswd.dxf").statusCode()).isIn(400, 404);
    }
}
