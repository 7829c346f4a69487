package turnalike.release;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RenewalTest {
    private static final Release OLD = new Release(LocalDate.of(2026, 11, 1), "0.1.0");
    private static final Release SAME_DAY = new Release(LocalDate.of(2026, 11, 1), "0.1.1");
    private static final Release NEW = new Release(LocalDate.of(2026, 12, 1), "0.1.1");

    @TempDir
    private Path folder;

    private Path store() {
        return folder.resolve("shop.db");
    }

    private Renewal served(Release now) {
        return Renewal.of(
                store(), new Renewal.Age(false, () -> Optional.of(OLD.day().minusDays(1))), now);
    }

    @Test
    void of_a_new_store_nothing_is_told() {
        Renewal renewal = Renewal.of(store(), new Renewal.Age(true, Optional::empty), OLD);
        assertThat(renewal.line()).isEmpty();
        assertThat(renewal.unread()).isEmpty();
        assertThat(served(OLD).line()).isEmpty();
    }

    @Test
    void a_later_release_is_told_once_on_the_line_and_until_it_is_closed_on_the_page() {
        Renewal.of(store(), new Renewal.Age(true, Optional::empty), OLD);
        Renewal first = served(NEW);
        assertThat(first.line()).hasValueSatisfying(line -> assertThat(line)
                .contains("0.1.1 of 2026-12-01", "it was 0.1.0 of 2026-11-01", "jobs are as they were"));
        assertThat(first.unread()).contains(NEW);
        Renewal second = served(NEW);
        assertThat(second.line()).isEmpty();
        assertThat(second.unread()).contains(NEW);
        second.read();
        assertThat(second.unread()).isEmpty();
        assertThat(served(NEW).unread()).isEmpty();
        assertThat(served(NEW).line()).isEmpty();
    }

    @Test
    void another_version_of_the_same_day_is_told_too() {
        Renewal.of(store(), new Renewal.Age(true, Optional::empty), OLD);
        assertThat(served(SAME_DAY).line()).isPresent();
    }

    @Test
    void an_earlier_program_between_takes_nothing_back() {
        Renewal.of(store(), new Renewal.Age(true, Optional::empty), NEW);
        assertThat(served(OLD).line()).isEmpty();
        assertThat(served(OLD).unread()).isEmpty();
        assertThat(served(NEW).line()).isEmpty();
        assertThat(served(NEW).unread()).isEmpty();
    }

    /** It was served by a program that knew nothing of this. */
    @Test
    void of_a_store_that_remembers_nothing_it_is_told_that_this_is_another() {
        assertThat(served(NEW).line())
                .hasValueSatisfying(line -> assertThat(line).doesNotContain("before"));
    }

    @Test
    void of_a_store_that_no_earlier_release_can_have_served_here_nothing_is_told() {
        for (Optional<LocalDate> oldest : List.of(Optional.of(NEW.day()), Optional.<LocalDate>empty())) {
            Renewal renewal = Renewal.of(store(), new Renewal.Age(false, () -> oldest), NEW);
            assertThat(renewal.line()).isEmpty();
            assertThat(renewal.unread()).isEmpty();
        }
    }

    @Test
    void what_is_remembered_counts_however_young_the_jobs_are() {
        served(OLD);
        Renewal renewal = Renewal.of(store(), new Renewal.Age(false, () -> Optional.of(NEW.day())), NEW);
        assertThat(renewal.line()).isPresent();
        assertThat(renewal.unread()).contains(NEW);
    }

    @Test
    void what_cannot_be_read_or_written_is_told_once_more_and_harms_nothing() throws Exception {
        Files.write(folder.resolve("shop.db.release"), new byte[] {(byte) 0xff, 0, 1, '\n'});
        assertThat(served(NEW).unread()).contains(NEW);
        Files.delete(folder.resolve("shop.db.release"));
        Files.createDirectory(folder.resolve("shop.db.release"));
        Renewal renewal = served(NEW);
        renewal.read();
        assertThat(renewal.unread()).isEmpty();
        assertThat(served(NEW).unread()).contains(NEW);
    }

    @Test
    void the_changes_since_a_day_are_those_of_each_day_after_it() {
        List<Changes> all = Changes.parse("""
                # Changes

                Words before.

                ## 2026-11-29

                ### Added

                - One thing, in
                  two lines.
                - Another, `--with` words.

                ### Mended

                - A third.

                ## 2026-11-28

                ### Added

                - Older.
                """);
        assertThat(all).hasSize(2);
        assertThat(all.get(0).groups())
                .containsExactly(
                        new Changes.Group("Added", List.of("One thing, in two lines.", "Another, `--with` words.")),
                        new Changes.Group("Mended", List.of("A third.")));
    }

    @Test
    void this_release_bears_the_day_of_the_newest_change() throws Exception {
        String first = Files.readAllLines(Path.of("CHANGELOG.md")).stream()
                .filter(line -> line.startsWith("## "))
                .findFirst()
                .orElseThrow();
        assertThat(Release.now().day()).isEqualTo(LocalDate.parse(first.substring(3)));
        assertThat(Changes.since(Release.now().day())).hasSize(1);
        assertThat(Changes.since(Release.now().day().minusDays(1))).hasSize(1);
        assertThat(Changes.since(LocalDate.of(2026, 1, 1)).size()).isGreaterThan(1);
    }
}
