package turnalike.cli.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class FaultLogsTest {
    private final FaultLogs logs = new FaultLogs();
    private final List<Path> written = new ArrayList<>();

    @AfterEach
    void clear() throws IOException {
        for (Path each : written) {
            Files.deleteIfExists(each);
        }
    }

    private boolean isLogged(Exception fault) {
        Optional<String> file = logs.log(fault);
        file.map(Path::of).ifPresent(written::add);
        return file.isPresent();
    }

    private static Exception from(int line) {
        IllegalStateException fault = new IllegalStateException("invented");
        fault.setStackTrace(
                new StackTraceElement[] {new StackTraceElement("turnalike.Invented", "made", "Invented.java", line)});
        return fault;
    }

    @Test
    void a_fault_is_written_down_once_however_often_it_comes() throws IOException {
        assertThat(isLogged(from(1))).isTrue();
        for (int i = 0; i < 100; i++) {
            assertThat(isLogged(from(1))).isFalse();
        }
        assertThat(isLogged(from(2))).isTrue();
        assertThat(written).hasSize(2);
        assertThat(Files.readString(written.get(0))).contains("invented", "Invented.java:1");
    }

    @Test
    void no_more_than_a_few_are_written_down_in_all() {
        for (int i = 0; i < 10 * FaultLogs.MOST; i++) {
            isLogged(from(i));
        }
        assertThat(written).hasSize(FaultLogs.MOST);
    }

    @Test
    void a_fault_that_says_nowhere_it_came_from_is_one_too() {
        Exception nowhere = new IllegalStateException("invented");
        nowhere.setStackTrace(new StackTraceElement[0]);
        assertThat(isLogged(nowhere)).isTrue();
        assertThat(isLogged(nowhere)).isFalse();
    }
}
