package turnalike.release;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** Texts packed with the program. */
final class Packed {
    private Packed() {}

    /** The text of a file on the class path; it was packed with the program, so that it is missing is a fault of ours. */
    static String text(String path) {
        try (InputStream in = Packed.class.getResourceAsStream(path)) {
            return new String(Objects.requireNonNull(in, path).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
