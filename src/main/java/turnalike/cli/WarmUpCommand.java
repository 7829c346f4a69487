package turnalike.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import picocli.CommandLine.Command;

/** Touches what a command touches, so that the start script can have its classes made ready once. */
@Command(name = "warm-up", hidden = true, description = "Used by the start script.")
final class WarmUpCommand implements Runnable {
    @Override
    public void run() {
        try {
            Path folder = Files.createTempDirectory("turnalike-warm-up");
            try {
                Demo.run(folder, PaperChoice.A4, 0);
            } finally {
                try (Stream<Path> all = Files.walk(folder)) {
                    for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                        Files.delete(each);
                    }
                }
            }
        } catch (IOException trouble) {
            throw new UncheckedIOException(trouble);
        }
    }
}
