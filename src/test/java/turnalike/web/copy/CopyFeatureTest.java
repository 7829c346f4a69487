package turnalike.web.copy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPhoto;
import turnalike.web.Served;

/** Copying over HTTP, as the page does it. */
class CopyFeatureTest {
    private static final Map<String, String> MM = Map.of("units", "mm");

    @TempDir
    private Path folder = Path.of("");

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static KeptJob kept(Served served, JobId id) {
        return served.store().find(id).orElseThrow();
    }

    private static JobId job(HttpResponse<String> taken) {
        assertThat(taken.statusCode()).isEqualTo(303);
        String address = taken.headers().firstValue("Location").orElseThrow();
        return JobId.parse(address.substring(address.lastIndexOf('/') + 1)).get();
    }

    @Test
    void a_table_becomes_a_new_job_and_nothing_is_kept_before_that() throws Exception {
        try (Served served = Served.in(folder)) {
            int before = served.store().list().size();
            HttpResponse<String> found =
                    Originals.done(served, served.upload("/copy", MM, "knob.csv", bytes(Originals.TABLE)));
            assertThat(found.statusCode()).isEqualTo(200);
            assertThat(found.body())
                    .contains("A table of a piece 300 mm")
                    .contains("Before you rely on it")
                    .contains("Take it as pattern")
                    .doesNotContain("--error");
            assertThat(served.store().list()).hasSize(before);
            JobId id = job(served.post(Originals.address(found.body()) + "/take", "title=Old+knob"));
            assertThat(kept(served, id).text().job().title()).isEqualTo("Old knob");
            assertThat(kept(served, id).text().job().pattern().length().mm()).isEqualTo(300);
        }
    }

    @Test
    void the_sheet_to_take_a_photograph_on_is_printed_and_what_is_said_of_it_is_read() throws Exception {
        try (Served served = Served.in(folder)) {
            assertThat(served.get("/copy").body()).contains("/photo-sheet/a4.pdf", "Its bar of 100 mm");
            for (String paper : List.of("a4", "letter")) {
                HttpResponse<String> sheet = served.get("/photo-sheet/" + paper + ".pdf");
                assertThat(sheet.statusCode()).isEqualTo(200);
                assertThat(sheet.body()).startsWith("%PDF");
            }
            assertThat(served.get("/photo-sheet/a0.pdf").statusCode()).isEqualTo(404);
            HttpResponse<String> printed =
                    served.upload("/copy", Map.of("units", "mm", "bar", "40"), "a.jpg", Originals.photograph());
            assertThat(printed.statusCode()).isEqualTo(422);
            assertThat(printed.body())
                    .contains("give what a rule says of the upper bar")
                    .contains("value=\"40\"");
            HttpResponse<String> none = Originals.done(
                    served,
                    served.upload("/copy", Map.of("units", "mm", "bar", "99"), "a.jpg", Originals.photograph()));
            assertThat(none.statusCode()).isEqualTo(422);
            assertThat(none.body())
                    .contains("Give its overall length, or take it on the printed sheet")
                    .doesNotContain("--");
        }
    }

    @Test
    void a_pasted_table_and_a_drawing_are_read_as_well() throws Exception {
        try (Served served = Served.in(folder)) {
            HttpResponse<String> pasted = Originals.done(
                    served, served.post("/copy", "units=in&points=x,diameter%0A0,2%0A4,2%0A4,1%0A9,1%0A12,1"));
            assertThat(pasted.body()).contains("12 in").contains("pasted table");
            HttpResponse<String> drawn =
                    Originals.done(served, served.upload("/copy", MM, "leg.svg", bytes(Originals.DRAWING)));
            assertThat(drawn.statusCode()).isEqualTo(200);
            assertThat(drawn.body()).contains("A drawing of a piece 140 mm");
        }
    }

    @Test
    void into_a_job_it_replaces_the_members_as_one_edit_that_undo_takes_back() throws Exception {
        try (Served served = Served.in(folder)) {
            JobId id = served.demo();
            KeptJob before = kept(served, id);
            String at = "/jobs/" + id.text();
            HttpResponse<String> found =
                    Originals.done(served, served.upload(at + "/copy", MM, "knob.csv", bytes(Originals.TABLE)));
            HttpResponse<String> taken = served.post(Originals.address(found.body()) + "/take", "");
            assertThat(taken.statusCode()).isEqualTo(303);
            assertThat(kept(served, id).text().job().frame())
                    .isEqualTo(before.text().job().frame());
            assertThat(kept(served, id).text().job().pattern().members())
                    .isNotEqualTo(before.text().job().pattern().members());
            JobId plain = served.job("New job");
            found = Originals.done(
                    served, served.upload("/jobs/" + plain.text() + "/copy", MM, "knob.csv", bytes(Originals.TABLE)));
            KeptJob was = kept(served, plain);
            assertThat(job(served.post(Originals.address(found.body()) + "/take", "")))
                    .isEqualTo(plain);
            assertThat(kept(served, plain).text().job().pattern().length().mm()).isCloseTo(300, within(1e-4));
            assertThat(kept(served, plain).text().job().wood())
                    .isEqualTo(was.text().job().wood());
            assertThat(kept(served, plain).undo()).contains("copy the pattern from knob.csv");
            assertThat(served.post("/jobs/" + plain.text() + "/undo", "").statusCode())
                    .isEqualTo(303);
            assertThat(kept(served, plain).text()).isEqualTo(was.text());
        }
    }

    @Test
    void a_photograph_is_kept_small_without_its_cameras_data_and_goes_as_it_came() throws Exception {
        try (Served served = Served.in(folder)) {
            JobId id = served.job("New job");
            String at = "/jobs/" + id.text();
            KeptJob was = kept(served, id);
            HttpResponse<String> found = Originals.done(
                    served,
                    served.upload(
                            at + "/copy", Map.of("units", "mm", "span", "400"), "p7.jpg", Originals.photograph()));
            assertThat(found.body()).contains("A photograph of a piece 400 mm").contains("<image class=\"backdrop\"");
            String run = Originals.address(found.body());
            assertThat(new String(served.bytes(run + "/picture.jpg"), StandardCharsets.ISO_8859_1))
                    .doesNotContain("Exif");
            served.post(run + "/take", "photo=yes");
            KeptPhoto photo = KeptPhoto.of(kept(served, id)).orElseThrow();
            assertThat(photo.name()).isEqualTo("p7.jpg");
            byte[] jpeg = served.bytes(at + "/photo.jpg");
            assertThat(jpeg).isEqualTo(photo.jpeg());
            assertThat(new String(jpeg, StandardCharsets.ISO_8859_1)).doesNotContain("Exif");
            String page = served.get(at).body();
            assertThat(page).contains("<image class=\"backdrop\"").contains("id=\"behind\"");

            // It goes with the whole job, once, and not with the job file.
            String whole = served.get(at + "/whole.json").body();
            assertThat(whole.split("base64", -1)).hasSize(3);
            GivenJob given = GivenJob.read(whole).job().orElseThrow();
            assertThat(KeptPhoto.of(given.kept())).contains(photo);
            assertThat(served.get(at + "/job.json").body()).doesNotContain("base64");
            HttpResponse<String> brought = served.upload("/jobs/file", Map.of(), "whole.json", bytes(whole));
            assertThat(KeptPhoto.of(kept(served, job(brought)))).contains(photo);

            served.post(at + "/undo", "");
            assertThat(KeptPhoto.of(kept(served, id))).isEmpty();
            assertThat(kept(served, id).text()).isEqualTo(was.text());
            served.post(at + "/redo", "");
            assertThat(KeptPhoto.of(kept(served, id))).contains(photo);
            assertThat(served.post(at + "/photo/remove", "").statusCode()).isEqualTo(303);
            assertThat(served.get(at + "/photo.jpg").statusCode()).isEqualTo(404);
            served.post(at + "/undo", "");
            assertThat(KeptPhoto.of(kept(served, id))).contains(photo);
        }
    }

    @Test
    void a_photograph_begins_a_job_and_an_undo_takes_the_photograph_alone() throws Exception {
        try (Served served = Served.in(folder)) {
            HttpResponse<String> found = Originals.done(
                    served,
                    served.upload("/copy", Map.of("units", "mm", "span", "400"), "p7.jpg", Originals.photograph()));
            JobId id = job(served.post(Originals.address(found.body()) + "/take", "title=Copy&photo=yes"));
            assertThat(KeptPhoto.of(kept(served, id))).isPresent();
            served.post("/jobs/" + id.text() + "/undo", "");
            assertThat(KeptPhoto.of(kept(served, id))).isEmpty();
            assertThat(kept(served, id).undo()).isEmpty();
            assertThat(kept(served, id).text().job().title()).isEqualTo("Copy");
        }
    }

    @Test
    void ends_pointed_at_are_traced_between_and_wrong_ones_are_told() throws Exception {
        try (Served served = Served.in(folder)) {
            HttpResponse<String> found = Originals.done(
                    served,
                    served.upload("/copy", Map.of("units", "mm", "span", "400"), "p7.jpg", Originals.photograph()));
            String again = Originals.address(found.body()) + "/again";
            HttpResponse<String> turned = Originals.done(
                    served, served.post(again, "units=mm&span=400&start_x=440&start_y=180&end_x=40&end_y=180"));
            assertThat(turned.statusCode()).isEqualTo(200);
            assertThat(turned.body()).contains("A photograph of a piece 400 mm");
            HttpResponse<String> beside = Originals.done(
                    served, served.post(again, "units=mm&span=400&start_x=40&start_y=20&end_x=440&end_y=20"));
            assertThat(beside.statusCode()).isEqualTo(422);
            assertThat(beside.body()).contains("pointed at").contains("id=\"overlay\"");
            HttpResponse<String> typed = served.post(again, "units=mm&span=soon");
            assertThat(typed.statusCode()).isEqualTo(422);
            assertThat(typed.body()).contains("Overall length");
        }
    }

    @Test
    void a_finished_piece_is_held_against_the_pattern_and_logged_with_undo() throws Exception {
        try (Served served = Served.in(folder)) {
            HttpResponse<String> found =
                    Originals.done(served, served.upload("/copy", MM, "knob.csv", bytes(Originals.TABLE)));
            JobId id = job(served.post(Originals.address(found.body()) + "/take", "title=Knobs"));
            String at = "/jobs/" + id.text();
            String piece = Originals.TABLE.replace("200,30", "200,30.2");
            HttpResponse<String> checked = Originals.done(
                    served, served.upload(at + "/check", Map.of("units", "mm", "piece", "7"), "7.csv", bytes(piece)));
            assertThat(checked.statusCode()).isEqualTo(200);
            assertThat(checked.body())
                    .contains("Unlike the pattern by")
                    .contains("Put it into the log")
                    .contains("The piece over its pattern")
                    .doesNotContain(" --");
            assertThat(kept(served, id).pieces()).isEmpty();
            HttpResponse<String> logged = served.post(Originals.address(checked.body()) + "/log", "");
            assertThat(logged.headers().firstValue("Location").orElseThrow()).endsWith("/pieces");
            assertThat(kept(served, id).find("7")).isPresent();
            // Nothing was weighed yet: what was measured is charted, and nobody is sent to a column of a file.
            assertThat(served.get(at + "/pieces").body()).doesNotContain("no piece has a figure");
            served.post(at + "/steps/undo", "tab=/pieces");
            assertThat(kept(served, id).find("7")).isEmpty();
            // What belongs to another pattern is not logged.
            HttpResponse<String> other = Originals.done(
                    served,
                    served.upload(
                            at + "/check",
                            Map.of("units", "mm", "piece", "8"),
                            "8.csv",
                            bytes("x,diameter\n0,9\n10,9\n60,9\n")));
            assertThat(other.body()).doesNotContain("Put it into the log");
            assertThat(served.post(Originals.address(other.body()) + "/log", "").statusCode())
                    .isEqualTo(422);
            assertThat(kept(served, id).find("8")).isEmpty();
        }
    }

    @Test
    void a_body_too_large_for_where_it_goes_is_told_in_words() throws Exception {
        try (Served served = Served.in(folder)) {
            // Some in a row: an answer that is lost with the line is lost now and then.
            for (int i = 0; i < 20; i++) {
                HttpResponse<String> pieces =
                        served.upload("/jobs/x/pieces/table", Map.of(), "a.csv", new byte[4 << 20]);
                assertThat(pieces.statusCode()).isEqualTo(413);
                assertThat(pieces.body()).contains("larger than a megabyte");
            }
            HttpResponse<String> table = served.upload("/copy", MM, "a.csv", new byte[1_100_000]);
            assertThat(table.statusCode()).isEqualTo(413);
            assertThat(table.body()).contains("larger than a megabyte");
        }
    }
}
