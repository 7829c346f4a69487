package turnalike.web.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.web.Served;

class PageWarmUpTest {
    @Test
    void it_shows_what_it_says_and_keeps_nothing(@TempDir Path folder) throws Exception {
        try (Served served = Served.in(folder)) {
            var before = served.store().list();
            assertThat(served.rehearse(80).join()).isEqualTo(80);
            assertThat(served.store().list()).isEqualTo(before);
        }
    }
}
