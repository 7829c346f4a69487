package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.Seeds;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreException;
import turnalike.job.kept.StoreReport;
import turnalike.units.Problem;

/** A damaged file is told of, with what can be read, and never written to. */
class DamageIT {
    private static final int JOBS = 6;

    @TempDir
    private Path folder = Path.of("");

    private final Folder.SetClock clock = new Folder.SetClock();
    private List<JobId> ids = List.of();
    private byte[] whole = {};

    private Path file() {
        return folder.resolve("shop.db");
    }

    @BeforeEach
    void fill() {
        ids = Folder.fill(file(), JOBS, clock);
        whole = Folder.bytes(file());
    }

    private String refusal(byte[] bytes) {
        Folder.write(file(), bytes);
        StoreException open = catchThrowableOfType(StoreException.class, () -> StoreFile.open(file(), clock));
        StoreException make = catchThrowableOfType(StoreException.class, () -> StoreFile.openOrMake(file(), clock));
        assertThat(make.problem()).isEqualTo(open.problem());
        assertThat(StoreFile.check(file()).sound()).isFalse();
        assertThat(StoreFile.check(file()).faults())
                .allSatisfy(fault -> assertThat(fault.line()).doesNotContain("\n", "Exception", "turnalike."));
        assertThat(Folder.bytes(file())).as("left as it is").isEqualTo(bytes);
        return open.problem().what();
    }

    @Test
    void an_empty_file_is_no_store() {
        assertThat(refusal(new byte[0])).isEqualTo("is empty, 0 bytes long");
    }

    @Test
    void text_is_no_store() {
        byte[] text = "{\"format\": \"turnalike-job\"}".repeat(30).getBytes(StandardCharsets.UTF_8);
        assertThat(refusal(text)).startsWith("is no store");
        assertThat(refusal(new byte[] {'S', 'Q'})).startsWith("is no store");
    }

    @Test
    void another_programs_sqlite_file_is_no_store() {
        Path other = folder.resolve("other.db");
        try (SqliteConnection db = SqliteConnection.open(other, SqliteConnection.Use.MAKE)) {
            db.script("CREATE TABLE job (id TEXT); PRAGMA user_version = 1;");
        }
        assertThat(refusal(Folder.bytes(other))).startsWith("is a file of another program");
    }

    @Test
    void a_later_programs_store_is_left_to_it() {
        byte[] later = whole.clone();
        later[63] = 99;
        assertThat(refusal(later)).isEqualTo("was written by a later Turnalike (schema 99, this one knows 3)");
    }

    @Test
    void a_file_cut_short_anywhere_is_refused() {
        for (int size : new int[] {50, 100, 4096, whole.length / 2, whole.length - 4096, whole.length - 1}) {
            assertThat(refusal(Arrays.copyOf(whole, size))).contains("is damaged", "bytes are there");
        }
    }

    @Test
    void a_file_that_is_not_there_or_a_folder_is_told_so() {
        assertThatThrownBy(() -> StoreFile.open(folder.resolve("none.db"), clock))
                .hasMessageContaining("no such file");
        assertThatThrownBy(() -> StoreFile.check(folder.resolve("none.db"))).hasMessageContaining("no such file");
        assertThatThrownBy(() -> StoreFile.openOrMake(folder, clock)).hasMessageContaining("is a folder");
        assertThatThrownBy(() -> StoreFile.openOrMake(folder.resolve("no/shop.db"), clock))
                .hasMessageContaining("its folder does not exist");
        assertThat(folder.resolve("none.db")).doesNotExist();
    }

    /**
     * A page of rubbish anywhere but the first: told by check, refused for writing, and what is given of the jobs is what was in them. Pages
     * of no consequence (free ones) would pass; there are none in this file.
     */
    @Test
    void a_page_overwritten_anywhere_is_noticed_and_what_can_be_read_is_given() {
        List<GivenJob> before = new ArrayList<>();
        try (KeptJobs store = StoreFile.openToRead(file())) {
            ids.forEach(id -> before.add(store.give(id).orElseThrow()));
        }
        int pages = whole.length / 4096;
        int given = 0;
        int asTheyStand = 0;
        for (int page = 1; page < pages; page++) {
            byte[] damaged = whole.clone();
            byte[] rubbish = new byte[4096];
            new Random(page).nextBytes(rubbish);
            System.arraycopy(rubbish, 0, damaged, page * 4096, 4096);
            assertThat(refusal(damaged)).as("page %d", page).startsWith("is damaged");
            StoreReport report = StoreFile.check(file());
            assertThat(report.jobs()).isBetween(0, JOBS);
            try (KeptJobs store = StoreFile.openToRead(file())) {
                for (int i = 0; i < JOBS; i++) {
                    int outcome = salvage(store, before.get(i));
                    given += outcome == 2 ? 1 : 0;
                    asTheyStand += outcome == 1 ? 1 : 0;
                }
            }
            assertThat(Folder.bytes(file())).as("left as it is").isEqualTo(damaged);
        }
        assertThat(given).as("jobs given whole out of damaged files").isPositive();
        assertThat(asTheyStand).as("jobs given without their history").isPositive();
    }

    /** 2: given whole; 1: as it stands; 0: cannot be read. Anything given must be what was kept. */
    private static int salvage(KeptJobs store, GivenJob before) {
        try {
            GivenJob now = store.give(before.id()).orElse(null);
            if (now == null) {
                return 0;
            }
            assertThat(now.kept().pieces()).isEqualTo(before.kept().pieces());
            assertThat(now.kept().text()).isEqualTo(before.kept().text());
            return now.equals(before) ? 2 : 1;
        } catch (StoreException gone) {
            return 0;
        }
    }

    /** One letter of a text altered: SQLite cannot know, the digest does. */
    @Test
    void one_bit_of_a_text_is_noticed() {
        Seeds.each(40, random -> {
            Folder.write(file(), oneBitOfATextAltered(random));
            assertThat(StoreFile.check(file()).faults()).isNotEmpty().first().satisfies(fault -> assertThat(
                            fault.what())
                    .contains("is not as it was written"));
        });
    }

    private byte[] oneBitOfATextAltered(Random random) {
        Folder.write(file(), whole);
        List<String> rows;
        try (SqliteConnection db = SqliteConnection.open(file(), SqliteConnection.Use.READ)) {
            rows = db.list(
                    "SELECT digest || body FROM document WHERE length(body) BETWEEN 10 AND 300",
                    row -> row.getString(1));
        }
        byte[] row = rows.get(random.nextInt(rows.size())).getBytes(StandardCharsets.UTF_8);
        int letter = 64 + random.nextInt(row.length - 64);
        byte[] damaged = whole.clone();
        // Wherever the row was before, too: an old copy in the unused part of a page cannot be told from the one that
        // counts.
        for (int at = 0; at + row.length <= whole.length; at++) {
            if (Arrays.equals(whole, at, at + row.length, row, 0, row.length)) {
                damaged[at + letter] ^= 1;
            }
        }
        assertThat(damaged).isNotEqualTo(whole);
        return damaged;
    }

    /** The next opening looks at every text before it makes the day's backup, and then refuses. */
    @Test
    void a_text_that_is_not_as_written_is_not_backed_up() {
        byte[] damaged = oneBitOfATextAltered(new Random(1));
        Folder.write(file(), damaged);
        assertThatThrownBy(() -> StoreFile.open(file(), clock))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("is not as it was written");
        assertThat(folder.resolve("backups")).doesNotExist();
        assertThat(Folder.bytes(file())).isEqualTo(damaged);
    }

    private record Told(Optional<Problem> unsound, Duration took) {}

    private JobStore atOnce(CompletableFuture<Told> told) {
        return StoreFile.openAtOnce(file(), clock, (took, unsound) -> told.complete(new Told(unsound, took)));
    }

    @Test
    void a_damaged_store_that_many_have_open_can_be_read_and_is_not_written_to() {
        byte[] damaged = oneBitOfATextAltered(new Random(3));
        Folder.write(file(), damaged);
        CompletableFuture<Told> told = new CompletableFuture<>();
        try (JobStore store = atOnce(told)) {
            assertThat(store.list()).hasSize(JOBS);
            for (JobId id : ids) {
                assertThatThrownBy(() -> store.edit(id, Folder.log("7", 1)))
                        .isInstanceOf(StoreException.class)
                        .hasMessageContaining("is damaged")
                        .hasMessageContaining("turnalike give");
                assertThatThrownBy(() -> store.undo(id)).hasMessageContaining("is damaged");
            }
            assertThatThrownBy(() -> store.keep(Histories.job("Next", 22))).hasMessageContaining("is damaged");
        }
        assertThat(told.join().unsound()).isPresent();
        assertThat(folder.resolve("backups")).doesNotExist();
        assertThat(Folder.bytes(file())).isEqualTo(damaged);
    }

    @Test
    void a_sound_store_that_many_have_open_is_looked_through_before_the_first_write() {
        CompletableFuture<Told> told = new CompletableFuture<>();
        try (JobStore store = atOnce(told)) {
            assertThat(store.edit(ids.get(0), Folder.log("7", 1))).isPresent();
            assertThat(told.join().unsound()).isEmpty();
            assertThat(told.join().took()).isPositive();
            assertThat(store.notes()).isEmpty();
        }
        assertThat(Folder.names(folder.resolve("backups"))).containsExactly("shop.db-2026-03-01.backup");
        assertThat(StoreFile.check(folder.resolve("backups/shop.db-2026-03-01.backup"))
                        .sound())
                .isTrue();
    }

    @Test
    void a_damaged_store_pushes_out_no_sound_backup() {
        for (int day = 0; day < 3; day++) {
            StoreFile.open(file(), clock).close();
            clock.goOn(Duration.ofDays(1));
        }
        List<String> sound = Folder.names(folder.resolve("backups"));
        Folder.write(file(), oneBitOfATextAltered(new Random(2)));
        for (int day = 0; day < 20; day++) {
            assertThatThrownBy(() -> StoreFile.open(file(), clock)).isInstanceOf(StoreException.class);
            clock.goOn(Duration.ofDays(1));
        }
        assertThat(Folder.names(folder.resolve("backups"))).isEqualTo(sound).hasSize(3);
    }

    /** What SQLite itself finds nothing wrong with: only what the rows must come to tells. */
    @Test
    void a_row_altered_by_another_program_is_noticed() {
        for (String sql : List.of(
                "UPDATE job SET made_at = '2020-01-01T00:00:00Z'",
                "UPDATE job SET title = 'Another'",
                "DROP TRIGGER step_stays",
                "CREATE INDEX another ON job (title)",
                "UPDATE figure SET value = value + 1",
                "DELETE FROM figure WHERE piece = '1'",
                "UPDATE standing SET document = NULL WHERE kind = 'piece'",
                "DROP TRIGGER step_stays; UPDATE step SET at = '2020-01-01T00:00:00Z' WHERE number = 3",
                "DROP TRIGGER step_stays; UPDATE step SET what = 'nothing' WHERE number = 3",
                "DROP TRIGGER change_is_not_lost; DELETE FROM change WHERE step = 2")) {
            Folder.write(file(), whole);
            try (SqliteConnection db = SqliteConnection.open(file(), SqliteConnection.Use.WRITE)) {
                db.script(sql);
            }
            byte[] altered = Folder.bytes(file());
            assertThat(StoreFile.check(file()).faults()).as(sql).isNotEmpty();
            assertThatThrownBy(() -> StoreFile.open(file(), clock))
                    .as(sql)
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("is damaged");
            assertThat(Folder.bytes(file())).as(sql).isEqualTo(altered);
            assertThat(folder.resolve("backups")).as(sql).doesNotExist();
        }
    }

    @Test
    void a_sound_store_is_said_to_be_sound() {
        StoreReport report = StoreFile.check(file());
        assertThat(report.sound()).isTrue();
        assertThat(report.jobs()).isEqualTo(JOBS);
        try (JobStore store = StoreFile.open(file(), clock)) {
            int pieces = ids.stream()
                    .mapToInt(id -> store.find(id).orElseThrow().pieces().size())
                    .sum();
            assertThat(report.pieces()).isEqualTo(pieces).isPositive();
        }
    }
}
