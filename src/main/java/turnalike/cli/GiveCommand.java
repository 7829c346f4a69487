package turnalike.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.JobId;
import turnalike.store.StoreFile;

@Command(
        name = "give",
        description = {
            "Prints a whole kept job with its pieces and its history as one JSON object, to carry away; 'keep' takes it back unchanged.",
            "Of a damaged store it gives what can still be read."
        },
        footer = {"", "Example: turnalike give 7k3m-2x9q-ht4d --store shop.db > wheel.kept.json"},
        mixinStandardHelpOptions = true)
final class GiveCommand implements Runnable {
    @Parameters(paramLabel = "ID", description = "The job's id, as 'keep' printed it.")
    private String job = "";

    @Option(names = "--store", paramLabel = "FILE", required = true, description = "The store.")
    private Path file = Path.of("");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Taken so that a script may give it to every command. */
    @Option(names = "--json", description = "Changes nothing: it is JSON in any case.")
    void json(boolean asked) {}

    @Override
    public void run() {
        JobId id = Stores.id(job);
        Stores.with(() -> StoreFile.openToRead(file), store -> {
            GivenJob given = store.give(id).orElseThrow(() -> Stores.unknown(id));
            PrintWriter console = spec.commandLine().getOut();
            console.print(given.format());
            console.flush();
            if (!store.notes().isEmpty()) {
                throw new UserError(store.notes());
            }
            return given;
        });
    }
}
