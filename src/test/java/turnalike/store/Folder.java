package turnalike.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.pieces.Measures;
import turnalike.units.Mass;

/** What the store's tests have in common: a clock that can be set, a store with something in it, bytes in and out. */
final class Folder {
    private Folder() {}

    /** Stands at noon of the first of March 2026, UTC, and goes on by a second with each look. */
    static final class SetClock extends Clock {
        private Instant now = Instant.parse("2026-03-01T12:00:00Z");

        void goOn(Duration by) {
            now = now.plus(by);
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException("these tests are in UTC");
        }

        @Override
        public Instant instant() {
            now = now.plusSeconds(1);
            return now;
        }
    }

    static Function<KeptJob, Edit> log(String label, double grams) {
        return kept -> Edit.of(
                "log piece " + label,
                Change.of(kept.find(label)
                        .orElse(KeptPiece.unmeasured(label))
                        .with(Measures.ofMass(Mass.ofGrams(grams)))));
    }

    /** A store with that many jobs, each with a history of sixty steps. */
    static List<JobId> fill(Path file, int jobs, Clock clock) {
        try (JobStore store = StoreFile.openOrMake(file, clock)) {
            Random random = new Random(jobs);
            return Stream.generate(() -> JobId.of(random.ints(12).toArray()))
                    .limit(jobs)
                    .map(id -> store.keep(new GivenJob(id, Histories.draw(random, 60))))
                    .toList();
        }
    }

    static void step(JobStore store, JobId id, Random random) {
        switch (random.nextInt(5)) {
            case 0 -> store.undo(id);
            case 1 -> store.redo(id);
            default -> store.edit(id, kept -> Histories.edit(random, kept));
        }
    }

    static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static void write(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    static List<String> names(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(each -> String.valueOf(each.getFileName())).sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
