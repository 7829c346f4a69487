package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.GivenJob;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJobs;

class BackupsIT {
    @TempDir
    private Path folder = Path.of("");

    private final Folder.SetClock clock = new Folder.SetClock();

    private Path file() {
        return folder.resolve("shop.db");
    }

    private List<String> backups() {
        return Folder.names(folder.resolve("backups"));
    }

    private void openOnce() {
        StoreFile.open(file(), clock).close();
    }

    @Test
    void the_first_opening_of_a_day_keeps_a_copy_with_everything_in_it() {
        JobId id = Folder.fill(file(), 2, clock).get(0);
        openOnce();
        assertThat(backups()).containsExactly("shop.db-2026-03-01.backup");
        Path copy = folder.resolve("backups/shop.db-2026-03-01.backup");
        assertThat(StoreFile.check(copy)).isEqualTo(StoreFile.check(file()));
        try (KeptJobs kept = StoreFile.openToRead(file());
                KeptJobs backed = StoreFile.openToRead(copy)) {
            assertThat(backed.give(id)).isEqualTo(kept.give(id)).isPresent();
        }
    }

    @Test
    void a_store_and_its_backups_are_read_by_nobody_else() throws IOException {
        Folder.fill(file(), 1, clock);
        openOnce();
        for (Path each : List.of(file(), folder.resolve("backups/shop.db-2026-03-01.backup"))) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(each)))
                    .as(each.toString())
                    .isEqualTo("rw-------");
        }
    }

    private static String permissions(Path file) {
        try {
            return PosixFilePermissions.toString(Files.getPosixFilePermissions(file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Earlier programs, and whoever copies a file, leave them to everybody. */
    @Test
    void a_store_and_backups_that_others_may_read_are_the_owners_alone_once_it_is_opened() throws IOException {
        Folder.fill(file(), 1, clock);
        openOnce();
        Path backup = folder.resolve("backups/shop.db-2026-03-01.backup");
        Path notOurs = Files.writeString(folder.resolve("backups/notes.txt"), "mine");
        for (Path each : List.of(file(), backup, notOurs)) {
            Files.setPosixFilePermissions(each, PosixFilePermissions.fromString("rw-r--r--"));
        }
        StoreFile.openToRead(file()).close();
        assertThat(permissions(file())).as("a look changes nothing").isEqualTo("rw-r--r--");
        openOnce();
        assertThat(permissions(file())).isEqualTo("rw-------");
        assertThat(permissions(backup)).isEqualTo("rw-------");
        assertThat(permissions(notOurs)).isEqualTo("rw-r--r--");
        assertThat(permissions(folder.resolve("backups"))).isEqualTo("rwx------");
    }

    @Test
    void a_backup_is_never_written_over() {
        JobId id = Folder.fill(file(), 1, clock).get(0);
        openOnce();
        byte[] first = Folder.bytes(folder.resolve("backups/shop.db-2026-03-01.backup"));
        try (JobStore store = StoreFile.open(file(), clock)) {
            store.edit(id, Folder.log("another", 100));
        }
        openOnce();
        assertThat(Folder.bytes(folder.resolve("backups/shop.db-2026-03-01.backup")))
                .isEqualTo(first);
    }

    @Test
    void the_last_fourteen_days_stay_and_nothing_else_in_the_folder_goes() throws IOException {
        Folder.fill(file(), 1, clock);
        Files.createDirectories(folder.resolve("backups"));
        List<String> others = List.of("notes.txt", "shop.db-2020-99-01.backup", "other.db-2020-01-01.backup");
        for (String other : others) {
            Files.writeString(folder.resolve("backups").resolve(other), "mine");
        }
        for (int day = 0; day < 20; day++) {
            openOnce();
            clock.goOn(Duration.ofDays(1));
        }
        assertThat(backups()).containsAll(others).hasSize(14 + others.size());
        assertThat(backups()).contains("shop.db-2026-03-07.backup", "shop.db-2026-03-20.backup");
        assertThat(backups()).doesNotContain("shop.db-2026-03-06.backup");
    }

    @Test
    void an_empty_store_and_a_look_at_one_make_none() {
        StoreFile.openOrMake(file(), clock).close();
        openOnce();
        Folder.fill(folder.resolve("full.db"), 1, clock);
        StoreFile.openToRead(folder.resolve("full.db")).close();
        StoreFile.check(folder.resolve("full.db"));
        assertThat(folder.resolve("backups")).doesNotExist();
    }

    @Test
    void a_backup_that_cannot_be_made_is_told_and_stops_nothing() throws IOException {
        JobId id = Folder.fill(file(), 1, clock).get(0);
        Files.writeString(folder.resolve("backups"), "a file where the folder should be");
        try (JobStore store = StoreFile.open(file(), clock)) {
            assertThat(store.notes()).singleElement().satisfies(note -> assertThat(note.what())
                    .startsWith("no backup was made today"));
            assertThat(store.edit(id, Folder.log("7", 1))).isPresent();
        }
    }

    @Test
    void a_damaged_store_names_its_newest_backup() {
        GivenJob given;
        JobId id = Folder.fill(file(), 1, clock).get(0);
        try (JobStore store = StoreFile.open(file(), clock)) {
            given = store.give(id).orElseThrow();
        }
        Folder.write(file(), new byte[0]);
        assertThatThrownBy(() -> StoreFile.open(file(), clock))
                .hasMessageContaining("the newest backup is")
                .hasMessageContaining("shop.db-2026-03-01.backup");
        Path anew = folder.resolve("anew.db");
        Folder.write(anew, Folder.bytes(folder.resolve("backups/shop.db-2026-03-01.backup")));
        try (JobStore store = StoreFile.open(anew, clock)) {
            assertThat(store.give(id)).contains(given);
            assertThat(store.keep(Histories.job("Next", 22))).isNotEqualTo(id);
        }
    }
}
