package turnalike.web.news;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobStore;
import turnalike.language.Language;
import turnalike.reach.Outside;
import turnalike.release.Renewal;
import turnalike.store.StoreFile;
import turnalike.web.Site;
import turnalike.web.kit.HtmlWords;

class NewsFeatureTest {
    private static final Renewal.Age OLD_JOBS = new Renewal.Age(false, () -> Optional.of(LocalDate.EPOCH));

    private static final Pattern TOKEN = Pattern.compile("name=\"token\" content=\"([^\"]+)\"");

    @TempDir
    private Path folder;

    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    private String get(Site site, String path) throws Exception {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(site.address() + path)).build();
        return client.send(request, HttpResponse.BodyHandlers.ofString()).body();
    }

    @Test
    void a_store_of_an_earlier_release_is_told_what_changed_until_the_note_is_closed() throws Exception {
        Path file = folder.resolve("jobs.db");
        Files.writeString(folder.resolve("jobs.db.release"), "0.0.9 of 2026-01-01\n0.0.9 of 2026-01-01\n");
        List<Exception> faults = new ArrayList<>();
        try (JobStore store = StoreFile.openOrMake(file, Clock.systemUTC())) {
            Renewal renewal = Renewal.of(file, OLD_JOBS);
            try (Site site = Site.start(
                    new Site.Reach(0, Optional.empty(), Outside.plain(false), Optional.of(renewal)),
                    store,
                    faults::add)) {
                String page = get(site, "");
                assertThat(page).contains("Turnalike was renewed", "/changes");
                String told = page.substring(page.indexOf("<aside class=\"ask tour\""), page.indexOf("</aside>"));
                new HtmlWords(words -> {
                            assertThat(Language.GERMAN.knows(words)).as(words).isTrue();
                            return words;
                        })
                        .of(told);
                assertThat(get(site, "changes"))
                        .contains("<h3>Added</h3>", "<code>./package</code>")
                        .doesNotContain("`");
                assertThat(get(site, "licences")).contains("jetty-server", "EPL-2.0");
                Matcher token = TOKEN.matcher(page);
                assertThat(token.find()).isTrue();
                HttpRequest close = HttpRequest.newBuilder(URI.create(site.address() + "changes/read"))
                        .header("Origin", "http://localhost:" + site.port())
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString("token=" + token.group(1)))
                        .build();
                assertThat(client.send(close, HttpResponse.BodyHandlers.ofString())
                                .statusCode())
                        .isEqualTo(303);
                assertThat(get(site, "")).doesNotContain("was renewed");
            }
        }
        assertThat(Renewal.of(file, OLD_JOBS).unread()).isEmpty();
        assertThat(faults).isEmpty();
    }
}
