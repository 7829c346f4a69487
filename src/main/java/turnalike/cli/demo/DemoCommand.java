package turnalike.cli.demo;

import java.nio.file.Path;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.PaperChoice;
import turnalike.effort.Effort;

@Command(
        name = "demo",
        description = {
            "Runs the whole main job on a shipped, invented order: a fair's wheel of fourteen spindles, with three to spare.",
            "Writes the job file, sample pieces, the plan, the sheets and the placed set, and says where each is."
        },
        mixinStandardHelpOptions = true)
public final class DemoCommand implements Runnable {
    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "turnalike-demo",
            description = "Where to write (default ${DEFAULT-VALUE}).")
    private Path out = Path.of("");

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "both",
            description = "a4, letter or both (the default).")
    private PaperChoice paper = PaperChoice.BOTH;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        String text = Demo.run(out, paper, Effort.usual());
        var console = spec.commandLine().getOut();
        console.print(text);
        console.flush();
    }
}
