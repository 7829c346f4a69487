package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.edit.NewJob;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJobs;
import turnalike.units.UnitSystem;

class SchemaIT {
    private static final String FIRST = Schema.SHIPPED.scripts().get(0);
    private static final String SECOND = Schema.SHIPPED.scripts().get(1);
    private static final String THIRD = Schema.SHIPPED.scripts().get(2);
    private static final Schema NEXT = new Schema(List.of(
            FIRST,
            SECOND,
            THIRD,
            "ALTER TABLE job ADD COLUMN customer TEXT; UPDATE job SET customer = 'nobody';",
            "CREATE TABLE note (text TEXT) STRICT;"));

    @TempDir
    private Path folder = Path.of("");

    private final Folder.SetClock clock = new Folder.SetClock();

    private Path file() {
        return folder.resolve("shop.db");
    }

    private int version() {
        try (SqliteConnection db = SqliteConnection.open(file(), SqliteConnection.Use.READ)) {
            return Schema.version(db);
        }
    }

    @Test
    void an_older_store_is_copied_and_brought_up_with_everything_in_it() {
        JobId id = Folder.fill(file(), 2, clock).get(0);
        GivenJob before;
        try (KeptJobs store = StoreFile.openToRead(file())) {
            before = store.give(id).orElseThrow();
        }
        try (JobStore store = StoreFile.open(file(), clock, NEXT)) {
            assertThat(store.give(id)).contains(before);
            assertThat(store.edit(id, Folder.log("after", 12))).isPresent();
        }
        assertThat(version()).isEqualTo(5);
        assertThat(Folder.names(folder.resolve("backups"))).contains("shop.db-schema-3-2026-03-01.backup");
        try (KeptJobs copy = StoreFile.openToRead(folder.resolve("backups/shop.db-schema-3-2026-03-01.backup"))) {
            assertThat(copy.give(id)).contains(before);
        }
    }

    @Test
    void a_script_that_fails_leaves_the_version_before_it() {
        Folder.fill(file(), 1, clock);
        Schema broken = new Schema(
                List.of(FIRST, SECOND, THIRD, "CREATE TABLE one (a TEXT);", "CREATE TABLE two (a TEXT); NONSENSE;"));
        assertThatThrownBy(() -> StoreFile.open(file(), clock, broken)).isInstanceOf(IllegalStateException.class);
        assertThat(version()).isEqualTo(4);
        try (SqliteConnection db = SqliteConnection.open(file(), SqliteConnection.Use.READ)) {
            assertThat(db.number("SELECT count(*) FROM sqlite_schema WHERE name = 'one'"))
                    .isEqualTo(1);
            assertThat(db.number("SELECT count(*) FROM sqlite_schema WHERE name = 'two'"))
                    .isZero();
        }
    }

    @Test
    void two_programs_that_bring_it_up_at_once_do_it_once() {
        Folder.fill(file(), 1, clock);
        CompletableFuture<?>[] programs = IntStream.range(0, 4)
                .mapToObj(i -> CompletableFuture.runAsync(() -> {
                    try (SqliteConnection db = SqliteConnection.open(file(), SqliteConnection.Use.WRITE)) {
                        NEXT.migrate(db);
                    }
                }))
                .toArray(CompletableFuture[]::new);
        CompletableFuture.allOf(programs).join();
        assertThat(version()).isEqualTo(5);
    }

    /** A store of before there was a bin: it is read as it is, and brought up with nothing lost when it is opened. */
    @Test
    void a_store_without_a_bin_is_read_and_gets_one() {
        Schema before = new Schema(List.of(FIRST));
        StoreFile.make(file(), before);
        JobId id;
        try (JobStore store = StoreFile.open(file(), clock, before)) {
            id = store.keep(NewJob.in(UnitSystem.METRIC));
        }
        try (KeptJobs store = StoreFile.openToRead(file())) {
            assertThat(store.list()).hasSize(1);
            assertThat(store.binned()).isEmpty();
        }
        try (JobStore store = StoreFile.open(file(), clock)) {
            assertThat(store.bin(id)).isTrue();
            assertThat(store.bin(id)).isFalse();
            assertThat(store.list()).isEmpty();
            assertThat(store.binned()).hasSize(1);
            assertThat(store.restore(id)).isTrue();
            assertThat(store.restore(id)).isFalse();
            assertThat(store.list()).hasSize(1);
            store.bin(id);
            assertThat(store.emptyBin()).isEqualTo(1);
            assertThat(store.binned()).isEmpty();
            assertThat(store.list()).isEmpty();
            GivenJob given = store.give(id).orElseThrow(); // the history stays
            assertThat(store.keep(given)).isEqualTo(id);
            assertThat(store.list()).hasSize(1); // who brings it back sees it
        }
        assertThat(version()).isEqualTo(3);
    }

    /** Of a store of before steps bore names: all of its seals hold, and the next step bears one. */
    @Test
    void a_store_without_names_goes_on_with_them() {
        Schema before = new Schema(List.of(FIRST, SECOND));
        StoreFile.make(file(), before);
        JobId id;
        try (JobStore store = StoreFile.open(file(), clock, before)) {
            id = store.keep(NewJob.in(UnitSystem.METRIC));
            store.edit(id, Folder.log("1", 5));
        }
        assertThat(StoreFile.check(file()).faults()).isEmpty();
        try (JobStore store = StoreFile.open(file(), clock)) {
            store.signedBy(() -> Optional.of("Anna's telephone")).edit(id, Folder.log("2", 5));
            assertThat(store.done(id).stream().map(step -> step.who().orElse("nobody")))
                    .containsExactly("nobody", "nobody", "Anna's telephone");
        }
        assertThat(StoreFile.check(file()).faults()).isEmpty();
    }

    @Test
    void the_third_script_is_as_it_was_shipped() {
        assertThat(Digest.of(THIRD)).isEqualTo("d4d0060335b53ae162b8c8025f8d9cd9be676798ce78472bd34516273dee679c");
    }

    @Test
    void the_second_script_is_as_it_was_shipped() {
        assertThat(Digest.of(SECOND)).isEqualTo("f367b8e4a086bb1ef693b740587d164f3cb33a29eaaea265ec48c33f74216c6b");
    }

    /** A shipped script never changes: stores in the world were made by it. Its digest is written down here when it ships. */
    @Test
    void the_first_script_is_as_it_was_shipped() {
        assertThat(Digest.of(FIRST)).isEqualTo("fa9223f6cdb5f35e581fe4359a87aca10d877f7176587f728243bb489403e998");
    }
}
