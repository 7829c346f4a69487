package turnalike.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One table of the schema, as a new file has it; a database has the same.
 *
 * @param name the table's
 * @param columns in order
 * @param key those by which its rows are put in order, the same in both kinds of store
 */
record KeptTable(String name, List<Column> columns, List<String> key) {
    /** One column: {@code TEXT}, {@code INTEGER} or {@code REAL}. */
    record Column(String name, String type) {
        private Optional<Object> value(ResultSet row, int at) throws SQLException {
            Object value =
                    switch (type) {
                        case "INTEGER" -> row.getInt(at);
                        case "REAL" -> row.getDouble(at);
                        case "TEXT" -> Optional.ofNullable(row.getString(at)).orElse("");
                        default -> throw new IllegalStateException("no column is a " + type);
                    };
            return row.wasNull() ? Optional.empty() : Optional.of(value);
        }
    }

    KeptTable {
        columns = List.copyOf(columns);
        key = List.copyOf(key);
    }

    /** All tables of the schema, each after those it points to. */
    static List<KeptTable> all(Schema schema) {
        try (SqliteConnection db = SqliteConnection.inMemory()) {
            schema.migrate(db);
            return db
                    .list(
                            "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite%' ORDER BY rowid",
                            row -> Database.text(row, 1))
                    .stream()
                    .map(name -> of(db, name))
                    .toList();
        }
    }

    private static KeptTable of(SqliteConnection db, String name) {
        List<Column> columns = db.list(
                "SELECT name, type FROM pragma_table_info(?) ORDER BY cid",
                row -> new Column(Database.text(row, 1), Database.text(row, 2)),
                name);
        List<String> key = db.list(
                "SELECT name FROM pragma_table_info(?) WHERE pk > 0 ORDER BY pk", row -> Database.text(row, 1), name);
        if (key.isEmpty()) {
            throw new IllegalStateException("the table %s has no key to go by".formatted(name));
        }
        return new KeptTable(name, columns, key);
    }

    /** Takes the values of one row. */
    interface Taker {
        void take(List<Optional<Object>> values);
    }

    /** Every row in the order of the key. Within a read or a write. */
    void each(Database db, Taker taker) {
        db.each("SELECT %s FROM %s ORDER BY %s".formatted(names(), name, String.join(", ", key)), row -> {
            List<Optional<Object>> values = new ArrayList<>();
            for (int i = 0; i < columns.size(); i++) {
                values.add(columns.get(i).value(row, i + 1));
            }
            taker.take(values);
        });
    }

    /** Within a write. */
    void insert(Database db, List<Optional<Object>> values) {
        @Nullable Object[] cells = new @Nullable Object[values.size()];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = values.get(i).orElse(null);
        }
        String marks = columns.stream().map(each -> "?").collect(Collectors.joining(", "));
        db.run("INSERT INTO %s (%s) VALUES (%s)".formatted(name, names(), marks), cells);
    }

    private String names() {
        return columns.stream().map(Column::name).collect(Collectors.joining(", "));
    }
}
