package turnalike.cli.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.cli.Ran;
import turnalike.job.edit.NewJob;
import turnalike.job.kept.JobStore;
import turnalike.store.StoreFile;
import turnalike.units.UnitSystem;

/** A store that a later program wrote is told of on one line and left as it is, whatever is asked of it. */
class LaterStoreTest {
    /** Where a SQLite file keeps its user_version (SQLite, "Database File Format", 1.3; from memory). */
    private static final int VERSION_AT = 60;

    @TempDir
    private Path folder;

    @Test
    void a_later_store_is_never_opened_by_an_earlier_program() throws Exception {
        Path file = folder.resolve("shop.db");
        String id;
        try (JobStore store = StoreFile.openOrMake(file, Clock.systemUTC())) {
            id = store.keep(NewJob.in(UnitSystem.METRIC)).text();
        }
        byte[] bytes = Files.readAllBytes(file);
        ByteBuffer.wrap(bytes).putInt(VERSION_AT, ByteBuffer.wrap(bytes).getInt(VERSION_AT) + 1);
        Files.write(file, bytes);
        List<String> before = names();
        String store = file.toString();
        for (String[] asked : List.of(
                new String[] {"serve", "--port", "0", "--store", store},
                new String[] {"keep", "src/main/resources/turnalike/demo/fair-wheel.job.json", "--store", store},
                new String[] {"log", id, "--store", store, "--piece", "1", "--mass", "100"},
                new String[] {"undo", id, "--store", store},
                new String[] {"history", id, "--store", store},
                new String[] {"give", id, "--store", store})) {
            Ran ran = Ran.here(asked);
            assertThat(ran.code()).as(asked[0]).isEqualTo(2);
            assertThat(ran.err())
                    .as(asked[0])
                    .hasLineCount(1)
                    .contains("shop.db", "was written by a later Turnalike", "use that Turnalike");
        }
        assertThat(Files.readAllBytes(file)).isEqualTo(bytes);
        assertThat(names()).isEqualTo(before);
    }

    private List<String> names() throws Exception {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.map(Path::toString).sorted().toList();
        }
    }
}
