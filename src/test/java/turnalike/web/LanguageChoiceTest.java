package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LanguageChoiceTest {
    @TempDir
    private Path folder;

    private static HttpResponse<String> get(Served served, String path, String... headers) throws Exception {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(served.address()).resolve(path));
        if (headers.length > 0) {
            request.headers(headers);
        }
        return HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofString());
    }

    @Test
    void the_browser_asks_first_and_the_choice_stays() throws Exception {
        try (Served served = Served.in(folder)) {
            String asked = get(served, "/", "Accept-Language", "de-AT,de;q=0.9,en;q=0.8")
                    .body();
            assertThat(asked)
                    .contains("<html lang=\"de\">", ">Hilfe</a>", "lang=\"en\"")
                    .doesNotContain(">Help</a>");
            assertThat(get(served, "/", "Accept-Language", "fr,de;q=0.9").body())
                    .contains("<html lang=\"en\">", ">Help</a>");
            String chosen = get(served, "/", "Accept-Language", "de", "Cookie", "turnalike-language=en")
                    .body();
            assertThat(chosen).contains("<html lang=\"en\">");
        }
    }

    @Test
    void a_choice_leads_back_to_our_own_page_and_nowhere_else() throws Exception {
        try (Served served = Served.in(folder)) {
            HttpResponse<String> chosen = get(served, "/language/de", "Referer", served.address() + "help?x=1");
            assertThat(chosen.statusCode()).isEqualTo(302);
            assertThat(chosen.headers().firstValue("Location").orElseThrow()).endsWith("/help?x=1");
            assertThat(chosen.headers().firstValue("Set-Cookie").orElseThrow())
                    .contains("turnalike-language=de", "SameSite=Strict");
            for (String elsewhere :
                    new String[] {"https://example.org//evil.example/", "https://example.org/language/de", "::"}) {
                assertThat(get(served, "/language/de", "Referer", elsewhere)
                                .headers()
                                .firstValue("Location")
                                .orElseThrow())
                        .as(elsewhere)
                        .matches("(http://localhost:\\d+)?/");
            }
            assertThat(get(served, "/language/fr").statusCode()).isEqualTo(404);
        }
    }

    @Test
    void sheets_come_in_the_language_of_who_asks() throws Exception {
        try (Served served = Served.in(folder)) {
            String picture = "/jobs/" + served.demo().text() + "/sheets/pictures/bench-card-a4-1.svg";
            assertThat(get(served, picture, "Accept-Language", "de").body())
                    .contains(">Taster<")
                    .doesNotContain(">Calipers<");
            assertThat(get(served, picture).body()).contains(">Calipers<");
        }
    }
}
