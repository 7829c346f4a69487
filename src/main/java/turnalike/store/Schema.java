package turnalike.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
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
    private static final int SHIPPED_VERSION = 3;

    /** Asks what the file has been made of, its tables, indexes and triggers, in an order of its own. */
    static final String TABLES =
            "SELECT type, name, tbl_name, coalesce(sql, '') FROM sqlite_schema ORDER BY 1, 2, 3, 4";

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

    /** What is wrong with the file's tables, indexes and triggers; empty when they are as its version's script made them. */
    Optional<String> fault(SqliteConnection db) {
        return fault(version(db), db.list(TABLES, Schema::made));
    }

    /** The same by the answers to {@code PRAGMA user_version} and to {@link #TABLES}; of a later version than these nothing is known. */
    Optional<String> fault(int version, List<List<String>> tables) {
        if (version > newest() || tables.equals(tables(version))) {
            return Optional.empty();
        }
        return Optional.of("its tables, indexes or triggers are not as they were made");
    }

    /** A new store's own answer. */
    private List<List<String>> tables(int version) {
        try (SqliteConnection db = SqliteConnection.inMemory()) {
            new Schema(scripts.subList(0, Math.max(0, version))).migrate(db);
            return db.list(TABLES, Schema::made);
        }
    }

    /** One row of the answer to {@link #TABLES}. */
    static List<String> made(ResultSet row) throws SQLException {
        List<String> out = new ArrayList<>();
        for (int column = 1; column <= 4; column++) {
            out.add(String.valueOf(row.getString(column)));
        }
        return out;
    }

    private static String shipped(int version) {
        return resource("V%d.sql".formatted(version));
    }

    /** A script that is shipped with the program. */
    static String resource(String name) {
        return find(name).orElseThrow(() -> new IllegalStateException(name + " was not shipped"));
    }

    /** The same; empty where there is none of that name. */
    static Optional<String> find(String name) {
        try (InputStream in = Schema.class.getResourceAsStream("/turnalike/store/" + name)) {
            return in == null ? Optional.empty() : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
