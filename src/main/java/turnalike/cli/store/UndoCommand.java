package turnalike.cli.store;

import picocli.CommandLine.Command;
import turnalike.job.kept.JobStore;

@Command(
        name = "undo",
        description = "Takes the last edit of a kept job back. It stays in the history, and 'redo' brings it again.",
        footer = {"", "Example: turnalike undo 7k3m-2x9q-ht4d --store shop.db"},
        mixinStandardHelpOptions = true)
public final class UndoCommand extends StepCommand {
    UndoCommand() {
        super("undo", JobStore::undo);
    }
}
