package turnalike.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiFunction;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptSummary;
import turnalike.job.kept.Step;
import turnalike.store.StoreFile;

/** One step back or forth in a job's history. */
record Stepping(String word, BiFunction<JobStore, JobId, Optional<Step>> way) {
    static void run(Stepping stepping, JobId id, Path file, boolean json, PrintWriter console) {
        Stores.with(() -> StoreFile.open(file, Stores.clock()), store -> {
            if (store.find(id).isEmpty()) {
                throw Stores.unknown(id);
            }
            Step step = stepping.way
                    .apply(store, id)
                    .orElseThrow(() -> UserError.of(
                            "job " + id,
                            "has nothing to " + stepping.word,
                            "see what was done with 'turnalike history'"));
            KeptJob now = store.find(id).orElseThrow();
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
