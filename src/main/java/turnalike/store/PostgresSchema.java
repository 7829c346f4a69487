package turnalike.store;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The same scripts as a file's, said in PostgreSQL's words. Where its words cannot be had from the script's, a file of the script's name
 * that ends in {@code .postgresql.sql} stands in its place.
 */
final class PostgresSchema {
    private static final Pattern TRIGGER = Pattern.compile(
            "CREATE TRIGGER (\\w+) BEFORE (UPDATE|DELETE) ON (\\w+) BEGIN SELECT RAISE\\(ABORT, ('[^']*')\\); END;");

    /** Tables, columns and triggers; not what a later PostgreSQL may list otherwise. */
    private static final String MADE = "SELECT coalesce(string_agg(line, '\n' ORDER BY line COLLATE \"C\"), '') FROM ("
            + "SELECT format('%s.%s %s %s', c.relname, a.attname, format_type(a.atttypid, a.atttypmod), a.attnotnull) AS line"
            + " FROM pg_attribute AS a JOIN pg_class AS c ON c.oid = a.attrelid"
            + " WHERE c.relnamespace = to_regnamespace('turnalike') AND c.relkind = 'r' AND a.attnum > 0 AND NOT a.attisdropped"
            + " UNION ALL SELECT format('%s on %s %s', t.tgname, c.relname, t.tgenabled)"
            + " FROM pg_trigger AS t JOIN pg_class AS c ON c.oid = t.tgrelid"
            + " WHERE c.relnamespace = to_regnamespace('turnalike') AND NOT t.tgisinternal) AS lines";

    /** Asked of the list of tables itself: what PostgreSQL remembers of names may be of before another program made them. */
    private static final String OURS =
            "SELECT count(*) FROM pg_class AS c JOIN pg_namespace AS n ON n.oid = c.relnamespace"
                    + " WHERE n.nspname = 'turnalike' AND c.relname = 'store'";

    private static final String OTHERS = "SELECT string_agg(format('%I', c.relname), ', ') FROM"
            + " (SELECT relname FROM pg_class JOIN pg_namespace AS n ON n.oid = relnamespace"
            + " WHERE relkind IN ('r', 'p', 'v', 'm') AND n.nspname <> 'information_schema' AND n.nspname NOT LIKE 'pg\\_%'"
            + " ORDER BY relname LIMIT 3) AS c";

    private PostgresSchema() {}

    /** The version of the store that is there; 0 where the database is empty, refused where it is another program's. */
    static int versionOf(PostgresConnection db) {
        if (db.number(OURS) > 0) {
            return db.find("SELECT version FROM turnalike.store", row -> row.getInt(1))
                    .orElseThrow(() -> db.damaged("its version is missing"));
        }
        db.find(OTHERS, row -> Optional.ofNullable(row.getString(1)))
                .flatMap(each -> each)
                .ifPresent(tables -> {
                    throw PostgresErrors.ofAnother(db.address(), tables);
                });
        return 0;
    }

    /** Brings the database to the newest version, from nothing too. */
    static void bringUp(PostgresConnection db, Schema schema) {
        if (db.version() >= schema.newest()) {
            return;
        }
        db.bringUp(() -> {
            int from = versionOf(db);
            if (from == 0) {
                db.script("CREATE SCHEMA IF NOT EXISTS turnalike");
                db.script(Schema.resource("postgresql.sql"));
            }
            for (int next = from + 1; next <= schema.newest(); next++) {
                db.script(inItsWords(schema, next));
            }
            if (from < schema.newest()) {
                db.run("UPDATE store SET version = ?, made = ?", schema.newest(), made(db));
            }
            return Math.max(from, schema.newest());
        });
    }

    private static String inItsWords(Schema schema, int version) {
        return Schema.find("V%d.postgresql.sql".formatted(version))
                .orElseGet(() -> inItsWords(schema.scripts().get(version - 1)));
    }

    /** One script of SQLite's in PostgreSQL's words. Texts are compared byte by byte, as SQLite does, whatever the database's language. */
    static String inItsWords(String script) {
        String out = TRIGGER.matcher(script)
                .replaceAll("CREATE TRIGGER $1 BEFORE $2 ON $3 FOR EACH ROW EXECUTE FUNCTION refused($4);");
        return out.replace(") STRICT;", ");")
                .replaceAll("\\bTEXT\\b", "TEXT COLLATE \"C\"")
                .replaceAll("\\bREAL\\b", "DOUBLE PRECISION");
    }

    private static String made(PostgresConnection db) {
        return Digest.of(db.find(MADE, row -> Database.text(row, 1)).orElse(""));
    }

    /** What is wrong with the tables; of a later version than the schema's nothing is known. */
    static Optional<String> fault(PostgresConnection db, Schema schema) {
        List<String> written = db.list("SELECT made FROM store", row -> Database.text(row, 1));
        if (db.version() > schema.newest() || written.equals(List.of(made(db)))) {
            return Optional.empty();
        }
        return Optional.of("its tables or triggers are not as they were made");
    }
}
