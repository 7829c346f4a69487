package turnalike.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.StepSummary;

/** Many at once: whoever was told that something is kept finds it kept, once. */
class TogetherTest {
    private static final int CLIENTS = 12;

    @TempDir
    private Path folder = Path.of("");

    private static List<Integer> together(List<Callable<Integer>> deeds) throws Exception {
        ExecutorService clients = Executors.newFixedThreadPool(deeds.size());
        try {
            List<Integer> answers = new ArrayList<>();
            for (Future<Integer> each : clients.invokeAll(deeds)) {
                answers.add(each.get());
            }
            return answers;
        } finally {
            clients.shutdownNow();
        }
    }

    @Test
    void one_entry_sent_by_many_at_once_is_kept_once() throws Exception {
        try (Served served = Served.in(folder)) {
            JobId demo = served.demo();
            served.entry(demo, "00000000000000aa", "a", 140);
            List<Callable<Integer>> deeds = IntStream.range(0, CLIENTS)
                    .<Callable<Integer>>mapToObj(i -> () -> served.entry(demo, "00000000000000bb", "crossed", 140)
                            .statusCode())
                    .toList();
            assertThat(together(deeds)).containsOnly(200);
            assertThat(served.store().done(served.demo()))
                    .extracting(StepSummary::what)
                    .filteredOn(what -> what.contains("00000000000000bb"))
                    .hasSize(1);
        }
    }

    /** Edits of different members of one job, and entries of different pieces into it, none in the way of another. */
    @Test
    void edits_and_entries_of_many_into_one_job_are_all_kept() throws Exception {
        try (Served served = Served.in(folder)) {
            JobId demo = served.demo();
            String job = "/jobs/" + demo.text();
            served.get(job); // every client's token is the one that the first reads
            served.post(job + "/units", "units=mm");
            KeptJob before = served.store().find(demo).orElseThrow();
            List<Callable<Integer>> deeds = new ArrayList<>();
            for (int i = 0; i < CLIENTS; i++) {
                int number = i;
                String title = "title=Together " + i;
                deeds.add(() -> served.entry(demo, "%016x".formatted(0xc0 + number), "t" + number, 130 + number)
                        .statusCode());
                deeds.add(() -> served.post(job + "/fields", title).statusCode());
            }
            List<Integer> answers = together(deeds);
            KeptJob after = served.store().find(demo).orElseThrow();
            // Of two titles that cross, the later one may be asked about instead of kept; entries never.
            assertThat(answers).containsOnly(200, 303, 409);
            assertThat(IntStream.range(0, CLIENTS).map(i -> answers.get(2 * i))).containsOnly(200);
            long kept =
                    answers.stream().filter(each -> each == 200 || each == 303).count();
            assertThat(after.times().steps() - before.times().steps()).isEqualTo((int) kept);
            assertThat(after.pieces())
                    .extracting(KeptPiece::label)
                    .containsAll(
                            IntStream.range(0, CLIENTS).mapToObj(i -> "t" + i).toList());
        }
    }
}
