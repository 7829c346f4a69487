package turnalike.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.Step;
import turnalike.web.Served;
import turnalike.web.Site;

/** Pieces that are logged with a number of their own, as the bench view's script sends them, and what a browser must carry for it. */
class EntriesTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final String ENTRY = "0123456789abcdef01234567";
    private static final String OTHER = "ffffffffffffffffffffffff";

    @TempDir
    private Path folder;

    private Served served;
    private String job = "";

    @BeforeEach
    void serve() throws Site.PortTaken {
        served = Served.in(folder);
        job = "/jobs/" + served.demo().text();
    }

    @AfterEach
    void close() {
        served.close();
    }

    private HttpResponse<String> log(String entry, String piece) throws IOException, InterruptedException {
        return served.api("POST", job + "/pieces", "{\"entry\": \"%s\", \"pieces\": [%s]}".formatted(entry, piece));
    }

    private HttpResponse<String> post(String entry) throws IOException, InterruptedException {
        return served.api("POST", job + "/pieces", entry);
    }

    private static String piece(String label, String mass) {
        return "{\"piece\": \"%s\", \"figures\": {\"mass_g\": \"%s\"}}".formatted(label, mass);
    }

    private HttpResponse<String> takeBack(String entry) throws IOException, InterruptedException {
        return served.api("DELETE", job + "/entries/" + entry, "");
    }

    private static JsonNode json(HttpResponse<String> answer) throws IOException {
        return MAPPER.readTree(answer.body());
    }

    private List<Step> steps() {
        return served.store().give(served.demo()).orElseThrow().history();
    }

    private KeptPiece kept(String label) {
        return served.store().find(served.demo()).orElseThrow().find(label).orElseThrow();
    }

    private double grams(String label) {
        return kept(label).piece().mass().orElseThrow().grams();
    }

    @Test
    void an_entry_is_kept_with_its_figures_and_its_time() throws Exception {
        HttpResponse<String> answer = log(
                ENTRY,
                "{\"piece\": \"41\", \"figures\": {\"mass_g\": \"142.5\", \"length\": \"15\", \"d1\": \"1.001\"}, \"minutes\": 12.5}");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(json(answer).get("questions")).isEmpty();
        assertThat(json(answer).has("kept_before")).isFalse();
        assertThat(grams("41")).isEqualTo(142.5);
        assertThat(kept("41").piece().length().orElseThrow().mm()).isEqualTo(381);
        assertThat(kept("41").turning()).contains(Duration.ofSeconds(750));
        assertThat(steps().get(steps().size() - 1).what()).isEqualTo("log piece 41 (bench entry " + ENTRY + ")");
    }

    @Test
    void an_entry_sent_twice_is_kept_once_and_never_over_a_later_correction() throws Exception {
        int first = json(log(ENTRY, piece("41", "142.5"))).get("step").intValue();
        log(OTHER, piece("41", "140.5"));
        int before = steps().size();
        HttpResponse<String> again = log(ENTRY, piece("41", "142.5"));
        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(json(again).get("kept_before").booleanValue()).isTrue();
        assertThat(json(again).get("step").intValue()).isEqualTo(first);
        assertThat(json(again).get("pieces").get(0).textValue()).isEqualTo("41");
        assertThat(steps()).hasSize(before);
        assertThat(grams("41")).isEqualTo(140.5);
    }

    @Test
    void several_pieces_are_one_entry_too() throws Exception {
        String both = piece("51", "141") + "," + piece("52", "142");
        log(ENTRY, both);
        int before = steps().size();
        assertThat(json(log(ENTRY, both)).get("pieces")).hasSize(2);
        assertThat(steps()).hasSize(before);
        assertThat(takeBack(ENTRY).statusCode()).isEqualTo(200);
        assertThat(served.store().find(served.demo()).orElseThrow().find("52")).isEmpty();
    }

    @Test
    void a_likely_slip_is_kept_and_asked_about_with_figures_as_the_page_has_them() throws Exception {
        JsonNode questions = json(log(ENTRY, piece("41", "1409"))).get("questions");
        assertThat(questions.get(0).get("question").textValue()).contains("140.9 g meant?");
        assertThat(grams("41")).isEqualTo(1409);
        served.speak("de");
        JsonNode german = json(log(OTHER, piece("42", "1408"))).get("questions");
        assertThat(german.get(0).get("question").textValue())
                .contains("140,8 g")
                .doesNotContain("140.8 g");
    }

    @Test
    void a_likely_slip_is_not_kept_where_it_is_to_be_asked_about_first() throws Exception {
        String slip = "{\"entry\": \"%s\", \"ask\": true, \"pieces\": [%s]}".formatted(ENTRY, piece("41", "1409"));
        int before = steps().size();
        HttpResponse<String> answer = post(slip);
        assertThat(answer.statusCode()).isEqualTo(409);
        JsonNode asked = json(answer).get("problems").get(0);
        assertThat(asked.get("what").textValue()).contains("140.9 g meant?");
        assertThat(asked.get("mend").textValue()).contains("without `ask`");
        assertThat(steps()).hasSize(before);
        assertThat(log(ENTRY, piece("41", "1409")).statusCode()).isEqualTo(200);
        // Sent once more although it arrived: kept is kept, and nothing is asked.
        HttpResponse<String> again = post(slip);
        assertThat(again.statusCode()).isEqualTo(200);
        assertThat(json(again).get("kept_before").booleanValue()).isTrue();
        String sound = "{\"entry\": \"%s\", \"ask\": true, \"pieces\": [%s]}".formatted(OTHER, piece("42", "140.8"));
        assertThat(post(sound).statusCode()).isEqualTo(200);
        assertThat(grams("42")).isEqualTo(140.8);
    }

    @Test
    void what_cannot_be_read_is_refused_in_words_and_changes_nothing() throws Exception {
        int before = steps().size();
        HttpResponse<String> answer =
                log(ENTRY, "{\"piece\": \"41\", \"figures\": {\"mass_g\": \"heavy\", \"d1\": \"1/0\"}}");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(json(answer).get("error").textValue()).startsWith("mass_g: 'heavy' is not a mass");
        assertThat(json(answer).get("problems").findValuesAsText("where")).containsExactly("mass_g", "d1");
        assertThat(json(log(ENTRY, piece("41", "140") + "," + piece("42", "heavy")))
                        .get("where")
                        .textValue())
                .isEqualTo("piece 2: mass_g");
        assertThat(log(ENTRY, piece("", "140")).statusCode()).isEqualTo(422);
        assertThat(log("x", piece("41", "140")).statusCode()).isEqualTo(422);
        assertThat(steps()).hasSize(before);
    }

    @Test
    void the_last_entry_is_taken_back_unless_something_else_was_done_since() throws Exception {
        log(ENTRY, piece("41", "142.5"));
        log(OTHER, piece("42", "142.5"));
        HttpResponse<String> late = takeBack(ENTRY);
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(json(late).get("what").textValue()).isEqualTo("is not what was done last");
        assertThat(takeBack(OTHER).statusCode()).isEqualTo(200);
        assertThat(served.store().find(served.demo()).orElseThrow().find("42")).isEmpty();
        assertThat(takeBack(OTHER).statusCode()).isEqualTo(409);
        assertThat(takeBack("no-number").statusCode()).isEqualTo(404);
        assertThat(json(log(OTHER, piece("42", "142.5"))).get("kept_before").booleanValue())
                .as("what was taken back and comes late stays taken back")
                .isTrue();
    }

    /** A program names no origin and needs none of a page's tokens; whoever names one is a browser. */
    @Test
    void a_browser_carries_the_token_of_our_page_and_a_program_need_not() throws Exception {
        log(ENTRY, piece("41", "142.5"));
        int before = steps().size();
        String sent = "{\"pieces\": [%s]}".formatted(piece("43", "141"));
        String token = "AAAAAAAAAAAAAAAAAAAAAA";
        for (String[] headers : List.of(
                new String[] {"Origin", "http://localhost:" + served.port()},
                new String[] {"Sec-Fetch-Site", "same-origin"},
                new String[] {"Sec-Fetch-Site", "none"},
                new String[] {"Origin", "http://localhost:" + served.port(), "X-Turnalike-Token", token},
                new String[] {"Sec-Fetch-Site", "same-origin", "Cookie", "turnalike-token=" + token})) {
            HttpRequest.Builder request =
                    served.request("/api" + job + "/pieces").POST(HttpRequest.BodyPublishers.ofString(sent));
            assertThat(served.client()
                            .send(request.headers(headers).build(), HttpResponse.BodyHandlers.ofString())
                            .statusCode())
                    .as(String.join(" ", headers))
                    .isEqualTo(403);
        }
        assertThat(steps()).hasSize(before);
        HttpRequest program = served.request("/api" + job + "/pieces")
                .POST(HttpRequest.BodyPublishers.ofString(sent))
                .build();
        assertThat(served.client()
                        .send(program, HttpResponse.BodyHandlers.ofString())
                        .statusCode())
                .isEqualTo(200);
        assertThat(steps()).hasSize(before + 1);
    }
}
