package turnalike.web.load;

import java.io.IOException;
import java.io.InputStream;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Asks one server as a browser's script would, over connections that stay open. */
final class Client {
    private static final Pattern TOKEN = Pattern.compile("name=\"token\" content=\"([^\"]+)\"");
    private static final int PATIENCE_MS = 60_000;

    private final String origin;
    private String token = "AAAAAAAAAAAAAAAAAAAAAA";

    /** @param origin {@code http://localhost:8617} */
    Client(String origin) {
        this.origin = origin;
    }

    /** What came back. */
    record Answer(int status, String body) {}

    /** Reads the token that every form carries. */
    void enter() throws IOException {
        Matcher matcher = TOKEN.matcher(get("/").body());
        if (matcher.find()) {
            token = matcher.group(1);
        }
    }

    Answer get(String path) throws IOException {
        return answer(open(path));
    }

    Answer post(String path, String form) throws IOException {
        HttpURLConnection connection = open(path);
        connection.setDoOutput(true);
        connection.setRequestProperty("Origin", origin);
        connection.setRequestProperty("Cookie", "turnalike-token=" + token);
        connection.setRequestProperty("HX-Request", "true");
        connection.getOutputStream().write((form + "&token=" + token).getBytes(StandardCharsets.UTF_8));
        return answer(connection);
    }

    /** Logs a piece as the bench view's script does, under a number of its own. */
    Answer entry(String job, String entry, String piece, int mass) throws IOException {
        HttpURLConnection connection = open("/api/jobs/" + job + "/pieces");
        connection.setDoOutput(true);
        connection.setRequestProperty("Origin", origin);
        connection.setRequestProperty("Cookie", "turnalike-token=" + token);
        connection.setRequestProperty("X-Turnalike-Token", token);
        connection.setRequestProperty("Content-Type", "application/json");
        connection
                .getOutputStream()
                .write("{\"entry\": \"%s\", \"pieces\": [{\"piece\": \"%s\", \"figures\": {\"mass_g\": \"%d\"}}]}"
                        .formatted(entry, piece, mass)
                        .getBytes(StandardCharsets.UTF_8));
        return answer(connection);
    }

    private HttpURLConnection open(String path) throws IOException {
        HttpURLConnection connection =
                (HttpURLConnection) URI.create(origin + path).toURL().openConnection();
        connection.setConnectTimeout(PATIENCE_MS);
        connection.setReadTimeout(PATIENCE_MS);
        connection.setInstanceFollowRedirects(false);
        return connection;
    }

    private static Answer answer(HttpURLConnection connection) throws IOException {
        int status = connection.getResponseCode();
        InputStream in = status < 400 ? connection.getInputStream() : connection.getErrorStream();
        return new Answer(status, in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
}
