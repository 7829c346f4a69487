package turnalike.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import turnalike.cli.demo.Demo;
import turnalike.cli.kit.PaperChoice;
import turnalike.cli.page.PageServer;
import turnalike.effort.Effort;

/** Touches what a command touches, so that the start script can have its classes made ready once. */
@Command(name = "warm-up", hidden = true, description = "Used by the start script.")
final class WarmUpCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        try {
            Path folder = Files.createTempDirectory("turnalike-warm-up");
            try {
                Demo.run(folder, PaperChoice.A4, Effort.ofAsks(0));
                keepAndLog(folder);
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

    /** The store's classes too: a log from the bench should answer at once. */
    private void keepAndLog(Path folder) {
        String store = folder.resolve("warm-up.db").toString();
        PageServer serving = PageServer.of(spec);
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        Program.run(
                List.of("keep", folder.resolve("fair-wheel.job.json").toString(), "--store", store), out, out, serving);
        Matcher id = Pattern.compile("as job (\\S+)\\.").matcher(said.toString(StandardCharsets.UTF_8));
        if (id.find()) {
            Program.run(
                    List.of("log", id.group(1), "--store", store, "--piece", "1", "--mass", "141"), out, out, serving);
        }
    }
}
