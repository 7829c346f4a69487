package turnalike.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import turnalike.job.kept.StoreException;
import turnalike.units.Problem;

/**
 * The first hundred bytes of the file, read without SQLite: whether it is ours, of which schema, and whether its end is missing. Nothing is
 * opened that this refuses. Offsets as in "Database File Format", section 1.3, sqlite.org (from memory).
 *
 * @param schema the schema's version
 */
record SqliteHeader(int schema) {
    /** Marks our files among all SQLite files: "Turn" in ASCII. */
    static final int APPLICATION_ID = 0x5475726e;

    private static final int BYTES = 100;
    private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);

    /** The header of a file that is there; {@link StoreException} when it is no store of ours or is cut short. */
    static SqliteHeader read(Path file) {
        if (Files.isDirectory(file)) {
            throw refused(file, "is a folder", "name the store's file in it");
        }
        if (!Files.exists(file)) {
            throw refused(file, "no such file", "check the name; 'turnalike keep' makes a store");
        }
        try {
            return read(file, Files.size(file), firstBytes(file));
        } catch (IOException unreadable) {
            throw SqliteErrors.disk(file, unreadable);
        }
    }

    private static SqliteHeader read(Path file, long size, ByteBuffer bytes) {
        if (size == 0) {
            throw refused(
                    file,
                    "is empty, 0 bytes long",
                    "remove it to begin a new store in its place; " + Backups.advice(file));
        }
        if (bytes.limit() < MAGIC.length || !magic(bytes)) {
            throw refused(
                    file,
                    "is no store, or its beginning is damaged; it is left as it is",
                    "check the name; " + Backups.advice(file));
        }
        if (bytes.limit() < BYTES) {
            throw SqliteErrors.damaged(file, "only its first %d bytes are there".formatted(size));
        }
        int application = bytes.getInt(68);
        int schema = bytes.getInt(60);
        if (application != APPLICATION_ID || schema == 0) {
            throw refused(
                    file,
                    "is a file of another program; it is left as it is",
                    "check the name; " + Backups.advice(file));
        }
        if (schema > Schema.SHIPPED.newest()) {
            throw refused(
                    file,
                    "was written by a later Turnalike (schema %d, this one knows %d)"
                            .formatted(schema, Schema.SHIPPED.newest()),
                    "use that Turnalike; the file is left as it is");
        }
        missingEnd(file, size, bytes).ifPresent(how -> {
            throw SqliteErrors.damaged(file, how);
        });
        return new SqliteHeader(schema);
    }

    /** The header counts the pages; a write that was cut off may leave another length, which SQLite mends from its journal. */
    private static Optional<String> missingEnd(Path file, long size, ByteBuffer bytes) {
        int stored = Short.toUnsignedInt(bytes.getShort(16));
        long pageSize = stored == 1 ? 65_536 : stored;
        long whole = pageSize * Integer.toUnsignedLong(bytes.getInt(28));
        boolean counted = bytes.getInt(24) == bytes.getInt(92);
        boolean cutOff = Files.exists(file.resolveSibling(file.getFileName() + "-journal"));
        return counted && !cutOff && size < whole
                ? Optional.of("only %d of its %d bytes are there".formatted(size, whole))
                : Optional.empty();
    }

    private static boolean magic(ByteBuffer bytes) {
        for (int i = 0; i < MAGIC.length; i++) {
            if (bytes.get(i) != MAGIC[i]) {
                return false;
            }
        }
        return true;
    }

    private static ByteBuffer firstBytes(Path file) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(BYTES);
        try (SeekableByteChannel channel = Files.newByteChannel(file)) {
            while (bytes.hasRemaining() && channel.read(bytes) >= 0) {
                // until full or at the end
            }
        }
        return bytes.flip();
    }

    private static StoreException refused(Path file, String what, String mend) {
        return new StoreException(new Problem(file.toString(), what, mend));
    }
}
