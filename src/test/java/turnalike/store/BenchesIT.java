package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreReport;

/**
 * Eight benches write to one database, while the server's processes are killed, and it as a whole, and benches too. Whatever was acknowledged
 * must be there once, and nothing twice. Some edits here, by benches within this program; {@code ./campaign benches} makes 2,000, by programs
 * of their own that are killed as well.
 */
class BenchesIT {
    private static final int EDITS = Integer.getInteger("turnalike.benches", 160);
    private static final boolean WHOLE = EDITS > 500;
    private static final int BENCHES = 8;
    private static final int JOBS = 4;

    @TempDir
    private Path folder = Path.of("");

    private final Random random = new Random(20261129);
    private final List<String> acknowledged = new CopyOnWriteArrayList<>();
    private final List<String> faults = new CopyOnWriteArrayList<>();

    @Test
    void every_acknowledged_edit_of_eight_benches_is_there_once_whatever_is_killed() throws Exception {
        try (PostgresServer server = PostgresServer.start("")) {
            PostgresAddress address = server.makeDatabase();
            StorePlace place = new StoreInPostgres(address);
            List<JobId> jobs;
            try (JobStore store = place.openOrMake(Clock.systemUTC())) {
                jobs = IntStream.range(0, JOBS)
                        .mapToObj(i -> store.keep(Histories.job("Job " + i, 22.5)))
                        .toList();
            }
            int broken = WHOLE ? byPrograms(server, address, jobs) : byThreads(server, address, jobs);
            assertThat(faults).isEmpty();
            List<String> kept = labels(place, jobs);
            assertThat(kept).doesNotHaveDuplicates().containsAll(acknowledged);
            // Of each bench that was killed, one edit may have come through without its acknowledgement.
            assertThat(kept.size() - acknowledged.size()).isBetween(0, broken);
            assertThat(acknowledged.size()).isGreaterThanOrEqualTo(EDITS - broken - BENCHES);
            StoreReport report = place.check();
            assertThat(report.faults()).isEmpty();
            assertThat(report.pieces()).isEqualTo(kept.size());
        }
    }

    private static List<String> labels(StorePlace place, List<JobId> jobs) {
        try (KeptJobs store = place.openToRead()) {
            return jobs.stream()
                    .flatMap(job -> store.done(job).stream().skip(1))
                    .map(step -> step.what().replace("log piece ", ""))
                    .toList();
        }
    }

    private int byThreads(PostgresServer server, PostgresAddress address, List<JobId> jobs) throws Exception {
        List<Thread> benches = IntStream.range(0, BENCHES)
                .mapToObj(bench -> new Thread(() -> {
                    try {
                        BenchWriter.write(address, "bench" + bench, EDITS / BENCHES, jobs, acknowledged::add);
                    } catch (RuntimeException wrong) {
                        faults.add(String.valueOf(wrong));
                    }
                }))
                .toList();
        benches.forEach(Thread::start);
        for (int part = 1; part <= 3; part++) {
            while (acknowledged.size() < EDITS * part / 4 && benches.stream().anyMatch(Thread::isAlive)) {
                Thread.sleep(1);
            }
            if (part == 2) {
                server.killAndStart();
            } else {
                killOne(server, address);
            }
        }
        for (Thread each : benches) {
            each.join();
        }
        return 0;
    }

    /** One of the server's own processes, without warning; the server then throws everybody out and mends itself. */
    private void killOne(PostgresServer server, PostgresAddress address) throws IOException, InterruptedException {
        List<Integer> all = new ArrayList<>();
        try (Connection connection = server.connect("postgres");
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(
                        "SELECT pid FROM pg_stat_activity WHERE datname = '%s'".formatted(address.database()))) {
            while (rows.next()) {
                all.add(rows.getInt(1));
            }
        } catch (SQLException mendsItself) {
            return;
        }
        if (!all.isEmpty()) {
            String one = String.valueOf(all.get(random.nextInt(all.size())));
            new ProcessBuilder("kill", "-KILL", one).start().waitFor();
        }
    }

    private record Bench(Process process, Path said, Path complained) {}

    /** How many benches were killed before their end. */
    private int byPrograms(PostgresServer server, PostgresAddress address, List<JobId> jobs) throws Exception {
        List<Bench> running = new ArrayList<>();
        List<Bench> all = new ArrayList<>();
        int killed = 0;
        int named = 0;
        for (int said = 0; said < EDITS; said = said(all)) {
            running.removeIf(each -> !each.process().isAlive());
            while (running.size() < BENCHES) {
                Bench bench = start(server, address, "bench" + named++, jobs);
                running.add(bench);
                all.add(bench);
            }
            Thread.sleep(500 + random.nextInt(1500));
            switch (random.nextInt(5)) {
                case 0 -> server.killAndStart();
                case 1, 2 -> killOne(server, address);
                default -> {
                    Process one = running.get(random.nextInt(running.size())).process();
                    killed += one.isAlive() ? 1 : 0;
                    one.destroyForcibly();
                }
            }
        }
        for (Bench each : running) {
            killed += each.process().isAlive() ? 1 : 0;
            each.process().destroyForcibly();
        }
        for (Bench each : all) {
            assertThat(each.process().waitFor(60, TimeUnit.SECONDS)).isTrue();
            faults.addAll(Files.readAllLines(each.complained()));
            acknowledged.addAll(lines(each.said()));
        }
        Files.writeString(
                Path.of("target/benches.txt"),
                "%d edits acknowledged by %d programs, %d of them killed%n"
                        .formatted(acknowledged.size(), named, killed));
        return killed;
    }

    private static int said(List<Bench> all) throws IOException {
        int count = 0;
        for (Bench each : all) {
            count += lines(each.said()).size();
        }
        return count;
    }

    /** The whole lines; a last one without its end was not an acknowledgement. */
    private static List<String> lines(Path said) throws IOException {
        String text = Files.readString(said);
        return text.substring(0, text.lastIndexOf("\n") + 1).lines().toList();
    }

    private Bench start(PostgresServer server, PostgresAddress address, String name, List<JobId> jobs)
            throws IOException {
        Path said = Files.createTempFile(folder, name, ".out");
        Path complained = Files.createTempFile(folder, name, ".err");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                BenchWriter.class.getName(),
                server.text(address.database()),
                name,
                String.valueOf(EDITS)));
        jobs.forEach(each -> command.add(each.text()));
        return new Bench(
                new ProcessBuilder(command)
                        .redirectOutput(said.toFile())
                        .redirectError(complained.toFile())
                        .start(),
                said,
                complained);
    }
}
