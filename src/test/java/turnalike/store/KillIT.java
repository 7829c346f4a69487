package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.Step;
import turnalike.job.kept.StoreReport;

/**
 * Programs that write to the store are killed, without warning, at moments nobody chose: while Java starts, while the store is made, while
 * it is opened, backed up, written to. Two write to the same file at a time and each is killed for itself. After every kill the file is
 * opened again, and everything acknowledged must be in it, and nothing by halves. A few kills here; {@code ./campaign kills} makes them by
 * the hundred.
 */
class KillIT {
    private static final int KILLS = Integer.getInteger("turnalike.kills", 14);
    private static final int WRITERS = 2;
    private static final int ROUNDS_ON_ONE_FILE = 20;

    /** One writer in four lives this long at most: Java starts meanwhile, the store is made or opened. */
    private static final int SHORT_LIFE_MS = 1500;

    /** The others are killed soon after so many acknowledgements at most. */
    private static final int MOST_WRITES = 8;

    private static final int A_WRITE_TAKES_ABOUT_MS = 30;

    @TempDir
    private Path folder = Path.of("");

    /** What one writer was told before it was killed. */
    private record Acknowledged(JobId id, int steps) {}

    @Test
    void every_acknowledged_write_is_there_and_no_half_one() throws Exception {
        Random random = new Random(20260301);
        int kills = 0;
        int acknowledged = 0;
        for (int file = 0; kills < KILLS; file++) {
            Path store = folder.resolve("shop-%d.db".formatted(file));
            Map<JobId, Integer> told = new HashMap<>();
            for (int round = 0; round < ROUNDS_ON_ONE_FILE && kills < KILLS; round++) {
                for (Acknowledged each : killed(store, random)) {
                    told.put(each.id(), each.steps());
                    acknowledged += each.steps();
                }
                kills += WRITERS;
                verify(store, told);
            }
            examine(store, told);
        }
        assertThat(kills).isGreaterThanOrEqualTo(KILLS);
        assertThat(acknowledged).as("writes acknowledged before the kills").isGreaterThan(kills);
    }

    private List<Acknowledged> killed(Path store, Random random) throws IOException, InterruptedException {
        List<Writer> writers = new ArrayList<>();
        for (int i = 0; i < WRITERS; i++) {
            writers.add(start(store));
        }
        for (Writer writer : writers) {
            if (random.nextInt(4) == 0) {
                Thread.sleep(random.nextInt(SHORT_LIFE_MS));
            } else {
                waitForWrites(writer, 1 + random.nextInt(MOST_WRITES));
                Thread.sleep(random.nextInt(A_WRITE_TAKES_ABOUT_MS));
            }
            writer.process().destroyForcibly();
        }
        List<Acknowledged> out = new ArrayList<>();
        for (Writer writer : writers) {
            assertThat(writer.process().waitFor(60, TimeUnit.SECONDS)).isTrue();
            assertThat(Files.readString(writer.complained())).isEmpty();
            List<String> lines = lines(writer.said());
            if (!lines.isEmpty()) {
                out.add(new Acknowledged(JobId.parse(lines.get(0)).get(), lines.size()));
            }
        }
        return out;
    }

    private static void waitForWrites(Writer writer, int writes) throws IOException, InterruptedException {
        while (writer.process().isAlive() && lines(writer.said()).size() < writes) {
            Thread.sleep(1);
        }
    }

    private record Writer(Process process, Path said, Path complained) {}

    private Writer start(Path store) throws IOException {
        Path said = Files.createTempFile(folder, "writer", ".out");
        Path complained = Files.createTempFile(folder, "writer", ".err");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        "-XX:TieredStopAtLevel=1",
                        "-Xshare:auto",
                        "--enable-native-access=ALL-UNNAMED",
                        // The driver unpacks its library for each run; a killed one leaves it there.
                        "-Dorg.sqlite.tmpdir=" + folder,
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledWriter.class.getName(),
                        store.toString())
                .redirectOutput(said.toFile())
                .redirectError(complained.toFile())
                .start();
        return new Writer(process, said, complained);
    }

    /** The whole lines; a last one without its end was not an acknowledgement. */
    private static List<String> lines(Path said) throws IOException {
        String text = Files.readString(said);
        return text.substring(0, text.lastIndexOf("\n") + 1).lines().toList();
    }

    private static void verify(Path file, Map<JobId, Integer> told) {
        if (!Files.exists(file)) {
            assertThat(told).isEmpty();
            return;
        }
        try (JobStore store = StoreFile.open(file, Clock.systemUTC())) {
            told.forEach((id, steps) -> {
                KeptJob kept = store.find(id).orElseThrow();
                assertThat(kept.text()).isEqualTo(KilledWriter.text());
                // The write that was under way may have come through without its acknowledgement, no more than that
                // one.
                assertThat(kept.times().steps()).isBetween(steps, steps + 1);
                assertThat(kept.pieces()).hasSize(kept.times().steps() == 1 ? 0 : 3);
                assertThat(kept.pieces().stream()
                                .map(each -> each.piece().mass())
                                .distinct())
                        .hasSizeLessThanOrEqualTo(1);
            });
        }
    }

    /** Every job of the file step by step, also of writers that had heard nothing yet. */
    private static void examine(Path file, Map<JobId, Integer> told) {
        if (!Files.exists(file)) {
            assertThat(told).isEmpty();
            return;
        }
        StoreReport report = StoreFile.check(file);
        assertThat(report.faults()).isEmpty();
        assertThat(report.jobs()).isGreaterThanOrEqualTo(told.size());
        try (JobStore store = StoreFile.open(file, Clock.systemUTC())) {
            store.list().forEach(card -> store.give(card.id()).orElseThrow().history().stream()
                    .skip(1)
                    .forEach(KillIT::isWhole));
        }
        try (Stream<Path> all = Files.list(file.resolveSibling("backups"))) {
            all.filter(each -> each.toString().endsWith(".backup"))
                    .forEach(each -> assertThat(StoreFile.check(each).faults()).isEmpty());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static void isWhole(Step step) {
        assertThat(step.did()).isEqualTo(KilledWriter.did(step.number()));
        assertThat(step.changes()).hasSize(3);
        if (step.did() == Step.Did.EDIT) {
            assertThat(step.changes()).allSatisfy(change -> assertThat(change.document())
                    .contains("{\"mass_g\":%d}".formatted(step.number())));
        }
    }
}
