package turnalike.web.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.web.Served;

/** What a script is sent of a job's page that it shows already. */
final class PartsTest {
    private static final Pattern TOLD = Pattern.compile("data-told=\"([^\"]*)\"");

    @TempDir
    Path folder;

    private String told = "";

    private String asked(Served served, String path) throws Exception {
        HttpResponse<String> answer = served.client()
                .send(
                        served.request(path)
                                .header("HX-Request", "true")
                                .header(Parts.HEADER, told)
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(200);
        Matcher matcher = TOLD.matcher(answer.body());
        assertThat(matcher.find()).isTrue();
        told = matcher.group(1);
        return answer.body();
    }

    @Test
    void who_shows_nothing_yet_is_sent_every_part() throws Exception {
        try (Served served = Served.in(folder)) {
            String page = asked(served, "/jobs/" + served.demo().text());
            assertThat(page).doesNotContain("data-same").contains("<section id=\"drawing\"", "<nav id=\"run\"");
            assertThat(told).contains("drawing=", "run=", "settings=", "order=");
        }
    }

    @Test
    void what_stands_already_comes_as_an_empty_element() throws Exception {
        try (Served served = Served.in(folder)) {
            String address = "/jobs/" + served.demo().text();
            asked(served, address);
            String again = asked(served, address);
            assertThat(again)
                    .contains("<div id=\"drawing\" data-same></div>", "<div id=\"run\" data-same></div>")
                    .doesNotContain("<svg");
            assertThat(again.length()).isLessThan(8_000);
        }
    }

    @Test
    void of_a_drawing_only_the_groups_that_changed_are_sent() throws Exception {
        try (Served served = Served.in(folder)) {
            String address = "/jobs/" + served.demo().text();
            String whole = asked(served, address + "?member=1");
            String other = asked(served, address + "?member=2");
            assertThat(other)
                    .contains("<section id=\"drawing\"", "<g data-same></g>", "class=\"handle")
                    .contains("<div id=\"stock\" data-same></div>", "<div id=\"order\" data-same></div>")
                    .contains("<section id=\"member\"");
            assertThat(other.length()).isLessThan(whole.length() / 3);
        }
    }

    @Test
    void an_edit_sends_what_follows_from_it() throws Exception {
        try (Served served = Served.in(folder)) {
            String address = "/jobs/" + served.demo().text();
            asked(served, address);
            served.post(address + "/fields", "count=17");
            String after = asked(served, address);
            assertThat(after).contains("value=\"17\"", "<div id=\"settings\" data-same></div>");
            assertThat(after).contains("<section id=\"stock\"");
        }
    }

    @Test
    void a_form_sent_to_a_script_leaves_out_what_the_page_says_once() throws Exception {
        try (Served served = Served.in(folder)) {
            String address = "/jobs/" + served.demo().text();
            assertThat(served.get(address).body()).contains("name=\"version\"");
            assertThat(asked(served, address))
                    .doesNotContain("name=\"version\"")
                    .contains("data-version=");
        }
    }
}
