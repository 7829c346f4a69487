package turnalike.cli.store;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.BiFunction;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import turnalike.cli.kit.Today;
import turnalike.cli.kit.UserError;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptSummary;
import turnalike.job.kept.Step;

/** One step back or forth in a job's history. */
abstract class StepCommand implements Runnable {
    private final String word;
    private final BiFunction<JobStore, JobId, Optional<Step>> way;

    @Mixin
    private KeptJobOptions kept = new KeptJobOptions();

    @Option(names = "--json", description = "Print one JSON object.")
    private boolean json;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    StepCommand(String word, BiFunction<JobStore, JobId, Optional<Step>> way) {
        this.word = word;
        this.way = way;
    }

    @Override
    public void run() {
        JobId id = kept.id();
        Stores.with(() -> kept.place().open(Today.clock()), store -> {
            if (store.find(id).isEmpty()) {
                throw Stores.unknown(id);
            }
            Step step = way.apply(store, id)
                    .orElseThrow(() -> UserError.of(
                            "job " + id, "has nothing to " + word, "see what was done with 'turnalike history'"));
            KeptJob now = store.find(id).orElseThrow();
            PrintWriter console = spec.commandLine().getOut();
            if (json) {
                console.print(KeptSummary.stepped(id, step, now));
            } else {
                console.println("%s: %s".formatted(step.did() == Step.Did.UNDO ? "Undone" : "Done again", step.what()));
                now.undo().ifPresent(what -> console.println("Next undo: " + what));
                now.redo().ifPresent(what -> console.println("Next redo: " + what));
                Stores.note(console, store.notes());
            }
            console.flush();
            return step;
        });
    }
}
