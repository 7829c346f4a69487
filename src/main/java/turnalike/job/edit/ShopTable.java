package turnalike.job.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.kept.JobText;
import turnalike.job.keys.ShopKeys;

/** A table of the shop that is typed into, row by row, and kept with the job. */
public enum ShopTable {
    /** Boards in hand. */
    BOARDS(ShopKeys.BOARDS, "board"),
    /** Blanks weighed before they are turned. */
    BLANKS(ShopKeys.BLANKS, "blank"),
    /** Times taken. */
    TIMES(ShopKeys.TIMES, "time");

    @SuppressWarnings("ImmutableEnumChecker") // a record of records and unmodifiable lists
    private final Key<ListOf<Group>> key;

    private final String word;

    ShopTable(Key<ListOf<Group>> key, String word) {
        this.key = key;
        this.word = word;
    }

    /**
     * A row as it is kept.
     *
     * @param number from 1, in the order of the table
     * @param text the whole of it, by which it is known again
     * @param cells what stands in each column that is not blank, by its name
     */
    public record Row(int number, String text, Map<String, String> cells) {
        public Row {
            cells = new LinkedHashMap<>(cells);
        }

        /**
         * {@return what stands in a column; empty for a blank cell}
         *
         * @param column its name
         */
        public String cell(String column) {
            return cells.getOrDefault(column, "");
        }
    }

    /** {@return the list's key in the job file} */
    public String key() {
        return key.name();
    }

    /** {@return what one row is: {@code board}} */
    public String word() {
        return word;
    }

    /** {@return the columns, in order} */
    public List<Key<?>> columns() {
        return key.type().item().keys();
    }

    /** {@return the column that a row is called by: the first} */
    public String label() {
        return columns().get(0).name();
    }

    /**
     * {@return the table, filled}
     *
     * @param text the job's
     */
    public List<Row> rows(JobText text) {
        List<Row> out = new ArrayList<>();
        for (var node : JobTree.of(text).root().path(key())) {
            Map<String, String> cells = new LinkedHashMap<>();
            node.properties().forEach(each -> cells.put(each.getKey(), TypedFields.spelled(each.getValue())));
            out.add(new Row(out.size() + 1, node.toString(), cells));
        }
        return out;
    }

    /**
     * {@return the table of that key, if there is one}
     *
     * @param key in the job file
     */
    public static Optional<ShopTable> find(String key) {
        for (ShopTable each : values()) {
            if (each.key().equals(key)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }
}
