package turnalike.cli.store;

import picocli.CommandLine.Command;
import turnalike.job.kept.JobStore;

@Command(
        name = "redo",
        description = "Brings the edit of a kept job that was undone last again.",
        footer = {"", "Example: turnalike redo 7k3m-2x9q-ht4d --store shop.db"},
        mixinStandardHelpOptions = true)
public final class RedoCommand extends StepCommand {
    RedoCommand() {
        super("redo", JobStore::redo);
    }
}
