package turnalike.cli.kit;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Option;
import turnalike.units.Working;

/** Whether a command says how its figures were found. */
public final class WorkingsOption {
    @Option(names = "--workings", description = "Say how each figure was found, and its source.")
    private boolean workings;

    /** Says so below the figures, if it was asked for. */
    public void print(List<Working> found, PrintWriter console) {
        if (workings) {
            console.print(WorkingsText.text(found));
        }
    }
}
