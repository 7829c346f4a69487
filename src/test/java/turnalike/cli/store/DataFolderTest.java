package turnalike.cli.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataFolderTest {
    private static final Path HOME = Path.of("/home/ann");

    @Test
    void each_system_keeps_it_where_it_keeps_such_things() {
        assertThat(DataFolder.of("Linux", HOME, Map.of())).isEqualTo(HOME.resolve(".local/share/turnalike"));
        assertThat(DataFolder.of("Mac OS X", HOME, Map.of()))
                .isEqualTo(HOME.resolve("Library/Application Support/turnalike"));
        assertThat(DataFolder.of("Windows 11", HOME, Map.of())).isEqualTo(HOME.resolve("AppData/Local/turnalike"));
    }

    @Test
    void what_the_user_set_wins_when_it_can() {
        assertThat(DataFolder.of("Linux", HOME, Map.of("XDG_DATA_HOME", "/data")))
                .isEqualTo(Path.of("/data/turnalike"));
        assertThat(DataFolder.of("Linux", HOME, Map.of("XDG_DATA_HOME", "data")))
                .isEqualTo(HOME.resolve(".local/share/turnalike"));
    }
}
