package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.sheets.PlanSheet;

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
        for (int i = 0; i < 120 && page.contains("Searching: "); i++) {
            Thread.sleep(250);
            page = get("/match").body();
        }
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
        assertThat(get("/match/set.csv").body().lines())
                .hasSize(1 + 14 + 3)
                .first()
                .isEqualTo("place,piece,mass_g,angle_deg");
        assertThat(get("/match/set-record-a5.pdf").statusCode()).isEqualTo(404);
    }

    @Test
    void the_pieces_say_which_is_off_and_whether_the_work_drifts() throws Exception {
        String page = get("/pieces?column=d2").body();
        assertThat(page)
                .contains("What sets it apart", "0.02 in long", "Mend piece 6")
                .contains("Does the work drift?", "Nothing looks like a change in the work.")
                .contains("at most 1 set in 20 raises a false alarm")
                .contains("Middle of the long taper, in", "15.004");
        assertThat(get("/pieces?piece=6").body())
                .contains("It differs: it is 0.02 in long; it is 7.6 g heavy", "Bring it to weight");
    }

    @Test
    void templates_and_outlines_are_handed_out() throws Exception {
        String page = get("/sheets").body();
        assertThat(page).contains("checking-template-us-letter.pdf", "outline.dxf");
        EnumSet<PlanSheet> ofOthers = EnumSet.of(
                PlanSheet.RAIL_STICK,
                PlanSheet.LEG_GUIDE,
                PlanSheet.SEAT_TEMPLATE,
                PlanSheet.JOINTS); // of a row, of legs, of a told home
        ofOthers.forEach(sheet -> assertThat(page).doesNotContain("<h2>" + sheet.title() + "</h2>"));
        for (PlanSheet sheet : EnumSet.complementOf(ofOthers)) {
            assertThat(page)
                    .contains("<h2>" + sheet.title() + "</h2>", sheet.title() + ", first page", sheet.use())
                    .contains("Print: " + sheet.title(), "Files: " + sheet.title());
        }
        // A job in inches is shown for the paper such a shop has, unless another is asked for.
        assertThat(page).contains("paper=us-letter\" aria-current", "checking-template-us-letter.pdf?show=yes");
        assertThat(get("/sheets?paper=a4").body())
                .contains("paper=a4\" aria-current", "checking-template-a4.pdf?show=yes")
                .doesNotContain("us-letter.pdf");
        Matcher picture =
                Pattern.compile("img src=\"[^\"]*(/sheets/pictures/[^\"]+)\"").matcher(page);
        int pictures = 0;
        for (; picture.find(); pictures++) {
            HttpResponse<String> answer = get(picture.group(1));
            assertThat(answer.body()).startsWith("<?xml").contains("<svg", "</svg>");
            assertThat(answer.headers().firstValue("Content-Disposition")).isEmpty();
        }
        assertThat(pictures).isEqualTo(PlanSheet.values().length - ofOthers.size());
        assertThat(get("/sheets/pictures/outline.pdf").statusCode()).isEqualTo(404);
        assertThat(get("/sheets/outline.dxf").body()).contains("ENTITIES", "EOF");
        HttpResponse<String> kept = get("/sheets/checking-template-a4.pdf");
        assertThat(kept.body()).startsWith("%PDF-");
        assertThat(kept.headers().firstValue("Content-Disposition"))
                .hasValueSatisfying(how -> assertThat(how).startsWith("attachment"));
        HttpResponse<String> printed = get("/sheets/checking-template-a4.pdf?show=yes");
        assertThat(printed.body()).startsWith("%PDF-");
        assertThat(printed.headers().firstValue("Content-Type").orElseThrow()).startsWith("application/pdf");
        assertThat(printed.headers().firstValue("Content-Disposition")).isEmpty();
        assertThat(get("/sheets/other.dxf").statusCode()).isEqualTo(404);
        assertThat(get("/sheets/..%2f..%2fpasswd.dxf").statusCode()).isIn(400, 404);
    }

    private String version() throws IOException, InterruptedException {
        Matcher version = Pattern.compile("name=\"version\" value=\"(\\d+)\"")
                .matcher(get("/file").body());
        assertThat(version.find()).isTrue();
        return version.group(1);
    }

    private HttpResponse<String> keep(String text, String version) throws IOException, InterruptedException {
        return served.post(
                "/jobs/" + served.demo().text() + "/file",
                "version=" + version + "&text=" + URLEncoder.encode(text, StandardCharsets.UTF_8));
    }

    @Test
    void the_job_file_itself_is_changed_as_text_and_undone() throws Exception {
        String text = served.store().find(served.demo()).orElseThrow().text().text();
        String pinned = text.replace("\"count\": 14", "\"settings\": {\"pin\": [\"1\"]}, \"count\": 14");
        String version = version();
        assertThat(keep(pinned, version).statusCode()).isEqualTo(303);
        assertThat(served.store().find(served.demo()).orElseThrow().text().text())
                .isEqualTo(pinned);
        HttpResponse<String> late = keep(text, version);
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).contains("the job was changed since this text was read");
        HttpResponse<String> wrong = keep(text.replace("\"count\": 14", "\"count\": -1"), version());
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("count: was -1", "\"count\": -1");
        served.store().undo(served.demo());
        assertThat(served.store().find(served.demo()).orElseThrow().text().text())
                .isEqualTo(text);
    }
}
