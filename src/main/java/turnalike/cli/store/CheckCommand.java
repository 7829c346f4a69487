package turnalike.cli.store;

import java.io.PrintWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.UserError;
import turnalike.job.kept.KeptSummary;
import turnalike.job.kept.StoreReport;
import turnalike.store.StorePlace;

@Command(
        name = "check",
        description = {
            "Looks through a whole store: its pages, its texts, every job step by step. Nothing is written.",
            "Exit code 2 when anything is wrong; what can still be read is counted all the same."
        },
        footer = {"", "Example: turnalike check --store shop.db"},
        mixinStandardHelpOptions = true)
public final class CheckCommand implements Runnable {
    @Option(names = "--store", paramLabel = "STORE", required = true, description = Stores.OPTION)
    private String named = "";

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean json;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        StorePlace store = Stores.place(named);
        StoreReport report = Stores.told(store::check);
        PrintWriter console = spec.commandLine().getOut();
        if (json) {
            console.print(KeptSummary.checked(report));
        } else {
            console.println("%s: %s; %s and %s can be read."
                    .formatted(
                            store,
                            report.sound() ? "sound" : "NOT sound",
                            count(report.jobs(), "job"),
                            count(report.pieces(), "piece")));
        }
        console.flush();
        if (!report.sound()) {
            throw new UserError(report.faults());
        }
    }

    private static String count(int count, String what) {
        return count == 1 ? "1 " + what : count + " " + what + "s";
    }
}
