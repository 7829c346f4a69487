package turnalike.cli;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.job.kept.JobStore;

@Command(
        name = "redo",
        description = "Brings the edit of a kept job that was undone last again.",
        footer = {"", "Example: turnalike redo 7k3m-2x9q-ht4d --store shop.db"},
        mixinStandardHelpOptions = true)
final class RedoCommand implements Runnable {
    @Parameters(paramLabel = "ID", description = "The job's id, as 'keep' printed it.")
    private String job = "";

    @Option(names = "--store", paramLabel = "FILE", required = true, description = "The store.")
    private Path file = Path.of("");

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean json;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        Stepping.run(
                new Stepping("redo", JobStore::redo),
                Stores.id(job),
                file,
                json,
                spec.commandLine().getOut());
    }
}
