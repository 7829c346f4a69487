package turnalike.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Kept text that a test's result must equal. A missing one is written and the test fails; a mismatch leaves what came beside the build. */
public final class Golden {
    private Golden() {}

    public static void check(String name, String actual) {
        Path kept = Path.of("src/test/resources/turnalike", name);
        try {
            if (!Files.exists(kept)) {
                Files.createDirectories(kept.getParent());
                Files.writeString(kept, actual);
                fail("no golden %s; written now: look at it, then keep it", kept);
            }
            if (!Files.readString(kept).equals(actual)) {
                Path came = Path.of("target/goldens", name);
                Files.createDirectories(came.getParent());
                Files.writeString(came, actual);
                assertThat(actual).as("differs from %s, see %s", kept, came).isEqualTo(Files.readString(kept));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
