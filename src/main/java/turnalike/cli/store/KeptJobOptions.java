package turnalike.cli.store;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import turnalike.job.kept.JobId;

/** Which kept job a command is about, mixed into every command that takes one. */
final class KeptJobOptions {
    @Parameters(paramLabel = "ID", description = "The job's id, as 'keep' printed it.")
    private String job = "";

    @Option(names = "--store", paramLabel = "FILE", required = true, description = "The store.")
    private Path file = Path.of("");

    JobId id() {
        return Stores.id(job);
    }

    Path file() {
        return file;
    }
}
