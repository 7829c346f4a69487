package turnalike.web.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import turnalike.effort.Ending;
import turnalike.job.kept.KeptJob;
import turnalike.web.Served;

/** What goes on beside the pages ends with them: nobody can ask for it any more. */
class SearchesEndTest {
    @Test
    void searches_of_ten_minutes_for_a_set_and_for_the_rest_of_one_are_stopped(@TempDir Path folder) throws Exception {
        try (Served served = Served.in(folder)) {
            KeptJob kept = served.store().find(served.demo()).orElseThrow();
            SetSearches searches = new SetSearches();
            SetSearch set = searches.begin(kept, 600, true);
            SetSearch rest = searches.beginRest(kept, 600, true);
            assertThat(set.spent() || rest.spent()).isFalse();
            searches.close();
            assertThat(set.spent() && rest.spent()).isTrue();
            assertThat(set.cause()).isEqualTo(Ending.STOPPED);
            assertThat(rest.cause()).isEqualTo(Ending.STOPPED);
        }
    }
}
