package turnalike.store;

import java.io.IOException;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.Replay;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * What large tables and long histories cost the store, by size: each figure must grow no faster than the size. Beside a paste, in the same run,
 * the same rows written by nothing but prepared statements. CPU time of this thread, since a busy machine's clock says little; what the disk
 * takes is not in it. {@code StoreBench 1000,2000 500,5000}: pieces, then steps.
 */
final class StoreBench {
    private StoreBench() {}

    private static Edit table(int pieces) {
        Random random = new Random(pieces);
        return new Edit(
                "log %d pieces".formatted(pieces),
                IntStream.rangeClosed(1, pieces)
                        .mapToObj(i -> Change.of(piece(String.valueOf(i), random)))
                        .toList());
    }

    private static KeptPiece piece(String label, Random random) {
        Measures measures = Measures.ofMass(Mass.ofGrams(150 + random.nextInt(600) / 10.0))
                .with(Column.LENGTH, Length.ofMm(400 + random.nextInt(20) / 10.0))
                .with(Column.diameter(1), Length.ofMm(30 + random.nextInt(20) / 10.0))
                .with(Column.diameter(2), Length.ofMm(20 + random.nextInt(20) / 10.0));
        return KeptPiece.of(Piece.of(label, measures));
    }

    interface Work {
        void run();
    }

    private static double ms(Work work) {
        long began = THREADS.getCurrentThreadCpuTime();
        work.run();
        return (THREADS.getCurrentThreadCpuTime() - began) / 1e6;
    }

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** Every row of a store, put into an empty one by prepared statements in one transaction, without asking anything. */
    private static double bare(Path file, Path copy) {
        StoreFile.make(copy, Schema.SHIPPED);
        try (SqliteConnection from = SqliteConnection.open(file, SqliteConnection.Use.READ);
                SqliteConnection to = SqliteConnection.open(copy, SqliteConnection.Use.WRITE)) {
            Map<String, List<Object[]>> rows = new LinkedHashMap<>();
            for (String table : List.of("job", "document", "step", "change", "standing", "figure")) {
                rows.put(table, from.list("SELECT * FROM " + table, row -> {
                    Object[] cells = new Object[row.getMetaData().getColumnCount()];
                    for (int i = 0; i < cells.length; i++) {
                        cells[i] = row.getObject(i + 1);
                    }
                    return cells;
                }));
            }
            return ms(() -> to.write(() -> {
                rows.forEach((table, all) -> {
                    String marks = String.join(", ", Collections.nCopies(all.get(0).length, "?"));
                    all.forEach(cells -> to.run("INSERT INTO %s VALUES (%s)".formatted(table, marks), cells));
                });
                return rows.size();
            }));
        }
    }

    private static void tables(Path folder, int pieces, StoreCurve curve) {
        Path file = folder.resolve("table-%d-%d.db".formatted(pieces, System.nanoTime()));
        StringBuilder line = new StringBuilder("%6d pieces:".formatted(pieces));
        JobId id;
        try (JobStore store = StoreFile.openOrMake(file, Clock.systemUTC())) {
            id = store.keep(Histories.job("Table", 22.5));
            JobId job = id;
            Edit table = table(pieces);
            double paste = ms(() -> store.edit(job, kept -> table));
            double bare = bare(file, file.resolveSibling(file.getFileName() + ".bare"));
            say(line, "paste", paste);
            curve.put("a paste", pieces, paste);
            line.append(String.format(Locale.ROOT, " (%.1f times the bare rows)", paste / bare));
            say(line, "find", ms(() -> store.find(job)));
            Random random = new Random(1);
            List<Double> more = new ArrayList<>();
            for (int i = 1; i <= 7; i++) {
                String label = "more " + i;
                more.add(ms(
                        () -> store.edit(job, kept -> Edit.of("log piece " + label, Change.of(piece(label, random))))));
            }
            curve.put("one more", pieces, more.stream().sorted().toList().get(3));
            say(line, "one more", more.stream().sorted().toList().get(3));
            say(line, "undo", ms(() -> store.undo(job)));
        }
        say(line, "open+backup", ms(() -> StoreFile.open(file, Clock.systemUTC())
                .close()));
        say(line, "open", ms(() -> StoreFile.open(file, Clock.systemUTC()).close()));
        double check = ms(() -> StoreFile.check(file));
        curve.put("check", pieces, check);
        say(line, "check", check);
        try (KeptJobs store = StoreFile.openToRead(file)) {
            double give = ms(() -> store.give(id, Writer.nullWriter()));
            curve.put("give", pieces, give);
            say(line, "give", give);
        }
        System.out.println(line);
    }

    private static void say(StringBuilder line, String what, double ms) {
        line.append(String.format(Locale.ROOT, "  %s %.3g ms", what, ms));
    }

    private static void history(Path folder, int steps) throws IOException {
        Path file = folder.resolve("history-%d.db".formatted(steps));
        StringBuilder line = new StringBuilder("%6d steps:".formatted(steps));
        Random random = new Random(7);
        Replay replay = new Replay();
        Instant at = Instant.parse("2026-03-01T08:00:00Z");
        for (int i = 0; i < steps; i++) {
            at = at.plusSeconds(60);
            Edit edit = i == 0 || random.nextBoolean()
                    ? Edit.of("another diameter", Change.of(Histories.job("Leg", 20 + i / 5000.0)))
                    : Edit.of("log", Change.of(piece(String.valueOf(random.nextInt(200)), random)));
            replay.edit(at, edit);
        }
        JobId id;
        try (JobStore store = StoreFile.openOrMake(file, Clock.systemUTC())) {
            List<JobId> got = new ArrayList<>();
            GivenJob given = new GivenJob(JobId.parse("0000-0000-0000").get(), replay.history());
            say(line, "keep", ms(() -> got.add(store.keep(given))));
            id = got.get(0);
        }
        say(line, "open", ms(() -> StoreFile.open(file, Clock.systemUTC()).close()));
        say(line, "check", ms(() -> StoreFile.check(file)));
        try (KeptJobs store = StoreFile.openToRead(file)) {
            say(line, "find", ms(() -> store.find(id)));
            say(line, "give", ms(() -> store.give(id, Writer.nullWriter())));
        }
        line.append("  file %d kB".formatted(Files.size(file) / 1000));
        System.out.println(line);
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("turnalike-store");
        tables(folder, 2000, new StoreCurve()); // for the compilers
        StoreCurve curve = new StoreCurve();
        for (String size :
                arguments.length > 0 ? arguments[0].split(",") : new String[] {"1000", "2000", "4000", "10000"}) {
            tables(folder, Integer.parseInt(size), curve);
        }
        Files.writeString(Path.of("docs", "store-scaling.svg"), curve.svg());
        for (String size : arguments.length > 1 ? arguments[1].split(",") : new String[] {"500", "5000", "20000"}) {
            history(folder, Integer.parseInt(size));
        }
    }
}
