package turnalike.web.copy;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.KeptJob;
import turnalike.photo.BadPictures;
import turnalike.web.Served;

/** Originals that nothing can come of, sent to every form that takes one: each is told in words, and nothing of it is kept. */
class BadOriginalsTest {
    @TempDir
    private Path folder = Path.of("");

    private static void told(HttpResponse<String> answer, String name, String said) {
        assertThat(answer.statusCode()).as(name).isEqualTo(422);
        assertThat(answer.body())
                .as(name)
                .contains(said)
                .doesNotContain(" --")
                .doesNotContain("Take it as pattern")
                .doesNotContain("Put it into the log")
                .doesNotContain("Exception");
    }

    @Test
    void bad_pictures_are_told_and_nothing_is_kept() throws Exception {
        try (Served served = Served.in(folder)) {
            KeptJob demo = served.store().find(served.demo()).orElseThrow();
            int jobs = served.store().list().size();
            String job = "/jobs/" + demo.id().text();
            List<String> forms = List.of("/copy", job + "/copy", job + "/check");
            int next = 0;
            Map<String, String> known = Map.of("units", "mm", "span", "400", "piece", "7");
            for (BadPictures.Bad bad : BadPictures.of(Originals.picture())) {
                String form = forms.get(next++ % forms.size());
                HttpResponse<String> answer =
                        Originals.done(served, served.upload(form, known, bad.name(), bad.bytes()));
                told(answer, bad.name() + " at " + form, bad.said());
                String run = Originals.address(answer.body());
                int taken = served.post(run + (form.endsWith("check") ? "/log" : "/take"), "photo=yes")
                        .statusCode();
                assertThat(taken).as(bad.name()).isBetween(400, 499);
            }
            told(
                    Originals.done(
                            served, served.upload("/copy", Map.of("units", "mm"), "p7.jpg", Originals.photograph())),
                    "no scale",
                    "nothing says how large the piece is");
            assertThat(served.store().list()).hasSize(jobs);
            assertThat(served.store().find(demo.id())).contains(demo);
        }
    }

    @Test
    void tables_and_drawings_that_cannot_be_read_are_told_in_the_pages_words() throws Exception {
        try (Served served = Served.in(folder)) {
            int jobs = served.store().list().size();
            Map<String, String> mm = Map.of("units", "mm");
            told(upload(served, mm, "a.csv", "x,diameter\n0,wide\n"), "a.csv", "a.csv");
            told(upload(served, mm, "a.csv", "x,diameter\n0,9\n"), "one row", "nothing is kept");
            told(upload(served, mm, "a.svg", "<svg><path d='M0 0'"), "a.svg", "drawing");
            told(upload(served, mm, "a.dxf", "no drawing"), "a.dxf", "a.dxf");
            told(
                    upload(served, Map.of("units", "mm", "span", "9"), "a.csv", Originals.TABLE),
                    "span",
                    "Overall length");
            told(
                    Originals.done(
                            served,
                            served.upload(
                                    "/copy",
                                    Map.of("units", "mm", "span", "400", "error", "1"),
                                    "a.jpg",
                                    Originals.photograph())),
                    "error",
                    "Measured within");
            told(upload(served, mm, "a.pdf", "%PDF"), "a.pdf", "save it as one of these");
            told(upload(served, Map.of("units", "mm", "points", "x,diameter"), "a.csv", "x"), "both", "both given");
            told(served.post("/copy", "units=mm"), "nothing", "none was given");
            told(
                    Originals.done(
                            served, served.upload("/copy", mm, "a.csv", new byte[] {'P', 'K', 3, 4, (byte) 0xE0, 0})),
                    "a workbook",
                    "damaged workbook");
            assertThat(served.store().list()).hasSize(jobs);
            assertThat(served.get("/copy/none").statusCode()).isEqualTo(404);
            assertThat(served.get("/copy/none").body()).contains("not remembered any more");
        }
    }

    private static HttpResponse<String> upload(Served served, Map<String, String> known, String name, String text)
            throws Exception {
        return Originals.done(served, served.upload("/copy", known, name, text.getBytes(StandardCharsets.UTF_8)));
    }
}
