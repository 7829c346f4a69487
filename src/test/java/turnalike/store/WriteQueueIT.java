package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.StoreException;
import turnalike.units.Problem;

/** Writes that come while another is under way, on a real file. */
class WriteQueueIT {
    private static final int WRITERS = 12;
    private static final int TAKEN_BACK = 7;

    @TempDir
    private Path folder = Path.of("");

    private static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /** What came of the writers that waited together, the statements that were said, and the rows that are there afterwards. */
    private record Outcome(List<String> told, List<String> said, List<Integer> rows) {}

    private interface Deed {
        void write(SqliteConnection db, int number);
    }

    /**
     * Holds the turn until all writers wait, then lets them go.
     *
     * @param fails told of each statement before it is run, and may throw
     */
    private Outcome together(Deed deed, Consumer<String> fails) throws Exception {
        ReentrantLock turn = new ReentrantLock(true);
        List<String> said = new ArrayList<>();
        ExecutorService threads = Executors.newFixedThreadPool(WRITERS);
        try (SqliteConnection db = SqliteConnection.open(folder.resolve("queue.db"), SqliteConnection.Use.MAKE)) {
            db.script("CREATE TABLE entry (number INTEGER PRIMARY KEY)");
            WriteQueue queue = new WriteQueue(turn, new WriteQueue.InWords(sql -> {
                said.add(sql);
                fails.accept(sql);
                db.script(sql);
            }));
            List<Future<String>> waiting = new ArrayList<>();
            turn.lock();
            try {
                for (int i = 0; i < WRITERS; i++) {
                    int number = i;
                    waiting.add(threads.submit(() -> queue.write(() -> {
                        deed.write(db, number);
                        return "kept";
                    })));
                }
                while (turn.getQueueLength() < WRITERS) {
                    Thread.onSpinWait();
                }
            } finally {
                turn.unlock();
            }
            List<String> told = new ArrayList<>();
            for (Future<String> each : waiting) {
                told.add(told(each));
            }
            return new Outcome(told, said, db.list("SELECT number FROM entry ORDER BY number", row -> row.getInt(1)));
        } finally {
            threads.shutdownNow();
        }
    }

    private static String told(Future<String> each) throws Exception {
        try {
            return each.get(30, TimeUnit.SECONDS);
        } catch (java.util.concurrent.ExecutionException thrown) {
            return String.valueOf(thrown.getCause());
        }
    }

    private static void insert(SqliteConnection db, int number) {
        db.run("INSERT INTO entry (number) VALUES (?)", number);
    }

    @Test
    void those_who_wait_together_are_written_together() throws Exception {
        Outcome outcome = together(WriteQueueIT::insert, sql -> {});
        assertThat(outcome.told()).containsOnly("kept");
        assertThat(outcome.rows()).hasSize(WRITERS);
        assertThat(outcome.said()).filteredOn("COMMIT"::equals).hasSize(1);
    }

    @Test
    void what_one_throws_takes_back_its_own_and_nobody_elses() throws Exception {
        Outcome outcome = together(
                (db, number) -> {
                    insert(db, number);
                    if (number == TAKEN_BACK) {
                        throw new Refused();
                    }
                },
                sql -> {});
        assertThat(outcome.told().get(TAKEN_BACK)).contains("Refused");
        assertThat(outcome.told()).filteredOn("kept"::equals).hasSize(WRITERS - 1);
        assertThat(outcome.rows())
                .isEqualTo(IntStream.range(0, WRITERS)
                        .filter(each -> each != TAKEN_BACK)
                        .boxed()
                        .toList());
    }

    @Test
    void nobody_is_told_kept_when_the_disk_refuses_in_the_end() throws Exception {
        Outcome outcome = together(
                (db, number) -> {
                    insert(db, number);
                    if (number == TAKEN_BACK) {
                        throw new Refused();
                    }
                },
                sql -> {
                    if (sql.equals("COMMIT")) {
                        throw new StoreException(new Problem("disk", "is full", "make room"));
                    }
                });
        assertThat(outcome.rows()).isEmpty();
        assertThat(outcome.told().get(TAKEN_BACK)).contains("Refused");
        assertThat(outcome.told()).filteredOn(each -> each.contains("is full")).hasSize(WRITERS - 1);
    }

    /** On a full disk SQLite takes the whole transaction back by itself; what is said to end it then is refused. */
    @Test
    void everybody_is_told_why_when_the_file_has_taken_all_back_by_itself() throws Exception {
        Outcome outcome = together(
                (db, number) -> {
                    insert(db, number);
                    if (number == TAKEN_BACK) {
                        db.script("ROLLBACK");
                        throw new StoreException(new Problem("disk", "is full", "make room"));
                    }
                },
                sql -> {});
        assertThat(outcome.rows()).isEmpty();
        assertThat(outcome.told()).allMatch(each -> each.contains("is full"));
    }

    @Test
    void an_error_in_one_is_told_to_all_and_nothing_is_kept() throws Exception {
        Outcome outcome = together(
                (db, number) -> {
                    insert(db, number);
                    if (number == TAKEN_BACK) {
                        throw new StackOverflowError();
                    }
                },
                sql -> {});
        assertThat(outcome.told()).doesNotContain("kept");
        assertThat(outcome.rows()).isEmpty();
    }
}
