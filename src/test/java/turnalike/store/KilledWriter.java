package turnalike.store;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.Step;
import turnalike.pieces.Measures;
import turnalike.units.Mass;

/**
 * A program that writes until it is killed. It keeps one job and then does the same things to it in the same order for ever, and prints a
 * line after each is acknowledged: the job's id, then the number of each step.
 */
final class KilledWriter {
    private static final int PAUSE_MS = 10;

    private KilledWriter() {}

    public static void main(String[] arguments) throws InterruptedException {
        try (JobStore store = StoreFile.openOrMake(Path.of(arguments[0]), Clock.systemUTC())) {
            JobId id = store.keep(text());
            acknowledge(id.text());
            for (int step = 2; ; step++) {
                Optional<Step> kept = act(store, id, step);
                acknowledge(String.valueOf(kept.orElseThrow().number()));
            }
        }
    }

    static JobText text() {
        return Histories.job("Killed", 22.5);
    }

    /** What the step of that number does: every tenth an undo and the one after it a redo, else an edit of three pieces at once. */
    static Step.Did did(int step) {
        return step % 10 == 0 ? Step.Did.UNDO : step % 10 == 1 ? Step.Did.REDO : Step.Did.EDIT;
    }

    /** The mass that an edit gives to all three pieces. */
    static Mass mass(int step) {
        return Mass.ofGrams(step);
    }

    private static Optional<Step> act(JobStore store, JobId id, int step) {
        return switch (did(step)) {
            case UNDO -> store.undo(id);
            case REDO -> store.redo(id);
            case EDIT ->
                store.edit(id, kept -> Edit.of("three pieces", piece("a", step), piece("b", step), piece("c", step)));
        };
    }

    private static Change piece(String label, int step) {
        return Change.of(KeptPiece.unmeasured(label).with(Measures.ofMass(mass(step))));
    }

    /** Pauses after it: a person does, and a writer without pause would hardly ever let the other one in. */
    private static void acknowledge(String line) throws InterruptedException {
        System.out.println(line);
        System.out.flush();
        Thread.sleep(PAUSE_MS);
    }
}
