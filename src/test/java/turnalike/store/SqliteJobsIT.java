package turnalike.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.job.kept.Histories;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.StoreReport;

class SqliteJobsIT extends StoreContract {
    @TempDir
    private Path folder = Path.of("");

    private Path file(String name) {
        return folder.resolve(name);
    }

    @Override
    int seeds() {
        return 8;
    }

    @Override
    StorePlace place(String name) {
        return new StoreInFile(file(name));
    }

    @Test
    void the_figures_of_a_photograph_stand_in_rows_of_their_own() {
        try (JobStore store = open("shop.db")) {
            JobId id = store.keep(Histories.job("Leg", 22.5));
            readPhotograph(store, id);
        }
        try (SqliteConnection db = SqliteConnection.open(file("shop.db"), SqliteConnection.Use.READ)) {
            assertThat(db.list(
                            "SELECT name, value, source, photo, accuracy_mm, step FROM figure ORDER BY name",
                            row -> IntStream.rangeClosed(1, 6)
                                    .mapToObj(i -> string(row, i))
                                    .toList()))
                    .containsExactly(
                            List.of("d1_mm", "22.4", "photo", "bench 1.jpg", "0.3", "2"),
                            List.of("turning_s", "1320.0", "hand", "null", "null", "2"));
        }
    }

    private static String string(java.sql.ResultSet row, int column) {
        try {
            return String.valueOf(row.getString(column));
        } catch (java.sql.SQLException wrong) {
            throw new AssertionError(wrong);
        }
    }

    @Test
    void nothing_half_made_is_left_where_programs_make_it_at_once() {
        CompletableFuture<?>[] programs = IntStream.range(0, 4)
                .mapToObj(program -> CompletableFuture.runAsync(() -> {
                    try (JobStore store = StoreFile.openOrMake(file("new.db"), new Folder.SetClock())) {
                        store.keep(Histories.job("Job " + program, 22.5));
                    }
                }))
                .toArray(CompletableFuture[]::new);
        CompletableFuture.allOf(programs).join();
        assertThat(StoreFile.check(file("new.db"))).isEqualTo(new StoreReport(4, 0, List.of()));
        assertThat(Folder.names(folder)).doesNotContain(".part").contains("new.db");
        assertThat(Folder.names(folder)).noneMatch(name -> name.endsWith(".part"));
    }

    @Test
    void history_cannot_be_altered_even_by_sql() {
        Folder.fill(file("shop.db"), 1, clock);
        try (SqliteConnection db = SqliteConnection.open(file("shop.db"), SqliteConnection.Use.WRITE)) {
            for (String sql : List.of("DELETE FROM step", "UPDATE change SET name = ''", "DELETE FROM document")) {
                assertThatThrownBy(() -> db.script(sql)).hasStackTraceContaining("history is only added to");
            }
        }
        assertSound("shop.db");
    }

    @Test
    void names_that_sqlite_or_an_address_would_read_otherwise_are_only_names() {
        for (String name : List.of("what? mode=memory.db", "100%25 ö#.db", "a b&c.db")) {
            try (JobStore store = open(name)) {
                store.keep(Histories.job("Leg", 22.5));
            }
            assertThat(file(name)).exists();
            assertThat(StoreFile.check(file(name))).as(name).isEqualTo(new StoreReport(1, 0, List.of()));
        }
    }
}
