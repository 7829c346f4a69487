package turnalike.cli;

import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(
        name = "completion",
        description = "Prints a completion script for bash and zsh.",
        footer = {"", "Example, for this shell: source <(turnalike completion)"},
        mixinStandardHelpOptions = true)
final class CompletionCommand implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        var console = spec.commandLine().getOut();
        console.print(AutoComplete.bash("turnalike", spec.root().commandLine()));
        console.flush();
    }
}
