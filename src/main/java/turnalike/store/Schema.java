package turnalike.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The scripts that bring a file from one version of the schema to the next. The version is the file's {@code user_version}; each script and
 * the version it leads to are one transaction, so a file is never between two versions.
 *
 * @param scripts the first makes version 1 out of nothing; one that has been shipped never changes
 */
record Schema(List<String> scripts) {
    private static final int SHIPPED_VERSION = 1;

    /** What this program writes. */
    static final Schema SHIPPED = new Schema(
            IntStream.rangeClosed(1, SHIPPED_VERSION).mapToObj(Schema::shipped).toList());

    Schema {
        scripts = List.copyOf(scripts);
    }

    int newest() {
        return scripts.size();
    }

    /** Brings the file to the newest version; two programs may try at once. */
    void migrate(SqliteConnection db) {
        for (int from = version(db); from < newest(); from++) {
            int next = from + 1;
            db.write(() -> {
                if (version(db) < next) {
                    db.script(scripts.get(next - 1));
                    db.script("PRAGMA user_version=%d; PRAGMA application_id=%d;"
                            .formatted(next, SqliteHeader.APPLICATION_ID));
                }
                return next;
            });
        }
    }

    static int version(SqliteConnection db) {
        return db.number("PRAGMA user_version");
    }

    private static String shipped(int version) {
        String name = "V%d.sql".formatted(version);
        try (InputStream in = Optional.ofNullable(Schema.class.getResourceAsStream("/turnalike/store/" + name))
                .orElseThrow(() -> new IllegalStateException(name + " was not shipped"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
