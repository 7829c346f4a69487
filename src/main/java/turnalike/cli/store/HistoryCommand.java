package turnalike.cli.store;

import java.io.PrintWriter;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptSummary;
import turnalike.job.kept.Step;
import turnalike.job.kept.StepSummary;

@Command(
        name = "history",
        description =
                "Lists everything ever done to a kept job, with its time; nothing leaves it, what was undone included.",
        footer = {"", "Example: turnalike history 7k3m-2x9q-ht4d --store shop.db"},
        mixinStandardHelpOptions = true)
public final class HistoryCommand implements Runnable {
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss", Locale.ROOT);

    @Mixin
    private KeptJobOptions kept = new KeptJobOptions();

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean json;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        JobId id = kept.id();
        Stores.with(() -> kept.place().openToRead(), store -> {
            // Without what each step changed: a long history of large texts takes no more room than its lines.
            List<StepSummary> done = store.done(id);
            if (done.isEmpty()) {
                throw Stores.unknown(id);
            }
            PrintWriter console = spec.commandLine().getOut();
            if (json) {
                console.print(KeptSummary.history(id, done));
            } else {
                done.forEach(step -> console.println(line(step)));
                Stores.note(console, store.notes());
            }
            console.flush();
            return id;
        });
    }

    private static String line(StepSummary step) {
        String did = step.did() == Step.Did.EDIT
                ? ""
                : "%s step %d: ".formatted(step.did().word(), step.of().orElseThrow());
        return "%5d  %s  %s%s%s"
                .formatted(
                        step.number(),
                        TIME.format(step.at().atZone(ZoneId.systemDefault())),
                        did,
                        step.what(),
                        step.who().map(", by %s"::formatted).orElse(""));
    }
}
