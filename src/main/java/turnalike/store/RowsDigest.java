package turnalike.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/** SHA-256 (FIPS 180-4) over rows, each cell with its kind and length, so that no two lists of rows are told alike. */
final class RowsDigest {
    private final MessageDigest digest;
    private long rows;

    RowsDigest() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** Every row of these tables. Within a read or a write. */
    static RowsDigest of(Database db, List<KeptTable> tables) {
        RowsDigest out = new RowsDigest();
        tables.forEach(table -> table.each(db, row -> out.add(table, row)));
        return out;
    }

    void add(KeptTable table, List<Optional<Object>> row) {
        rows++;
        add(table.name());
        row.forEach(cell -> {
            add(cell.map(each -> each.getClass().getSimpleName()).orElse("nothing"));
            add(cell.map(String::valueOf).orElse(""));
        });
    }

    private void add(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
        digest.update(bytes);
    }

    long rows() {
        return rows;
    }

    /** Of the rows so far; more cannot be added. */
    String end() {
        return HexFormat.of().formatHex(digest.digest());
    }
}
