package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes over the wire before the first page stands, as a browser asks for it. */
class FirstLoadTest {
    private static final Pattern LOADED = Pattern.compile("(?:href|src)=\"(/assets/[^\"]+)\"");

    @TempDir
    private Path folder;

    private static HttpResponse<byte[]> packed(Served served, String path) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        served.request(path)
                                .header("Accept-Encoding", "gzip, deflate")
                                .GET()
                                .build(),
                        HttpResponse.BodyHandlers.ofByteArray());
    }

    @Test
    void a_page_with_styles_and_scripts_is_under_300_kilobytes() throws Exception {
        try (Served served = Served.in(folder)) {
            for (String page : new String[] {"/", "/jobs/" + served.demo().text()}) {
                String html = served.get(page).body();
                int sum = packed(served, page).body().length;
                Matcher matcher = LOADED.matcher(html);
                int files = 0;
                while (matcher.find()) {
                    sum += packed(served, matcher.group(1)).body().length;
                    files++;
                }
                assertThat(files).isGreaterThanOrEqualTo(5);
                assertThat(sum).as(page).isLessThan(300_000);
            }
        }
    }

    @Test
    void a_file_is_packed_for_whoever_unpacks_it() throws Exception {
        try (Served served = Served.in(folder)) {
            HttpResponse<byte[]> packed = packed(served, "/assets/htmx.js");
            HttpResponse<String> plain = served.get("/assets/htmx.js");
            assertThat(packed.headers().firstValue("Content-Encoding")).contains("gzip");
            assertThat(packed.headers().firstValue("Vary")).contains("Accept-Encoding");
            assertThat(plain.headers().firstValue("Content-Encoding")).isEmpty();
            byte[] unpacked =
                    new java.util.zip.GZIPInputStream(new java.io.ByteArrayInputStream(packed.body())).readAllBytes();
            assertThat(new String(unpacked, java.nio.charset.StandardCharsets.UTF_8))
                    .isEqualTo(plain.body());
            assertThat(packed.body().length).isLessThan(unpacked.length / 2);
        }
    }
}
