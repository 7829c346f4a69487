package turnalike.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import turnalike.job.edit.Starter;
import turnalike.job.kept.JobText;

/** {@code turnalike new}: an empty job, or one from a starter pattern. */
class NewCommandTest {
    private static JobText job(Ran ran) {
        assertThat(ran.code()).as(ran.err()).isZero();
        JobText.Read read = JobText.read(ran.out());
        assertThat(read.problems()).isEmpty();
        return read.text().orElseThrow();
    }

    @Test
    void every_name_of_the_list_makes_a_job_that_can_be_planned() {
        Ran list = Ran.here("new", "--list");
        assertThat(list.code()).isZero();
        assertThat(list.out().lines()).hasSize(Starter.values().length);
        for (Starter starter : Starter.values()) {
            assertThat(list.out()).contains(starter.word());
            job(Ran.here("new", "--from", starter.word()));
        }
    }

    @Test
    void a_pattern_comes_out_at_the_length_and_from_the_blank_asked_for() {
        JobText inches = job(Ran.here("new", "--from", "plain-spoke", "--length", "18 1/2", "--size", "2"));
        assertThat(inches.job().pattern().length().inches()).isCloseTo(18.5, within(1e-9));
        assertThat(inches.job().pattern().stock().size().inches()).isEqualTo(2);
        JobText metric = job(Ran.here("new", "--from", "plain-spoke", "--length", "470", "--units", "mm"));
        assertThat(metric.job().pattern().length().mm()).isCloseTo(470, within(1e-9));
        assertThat(job(Ran.here("new")).job().pattern().members()).isNotEmpty();
    }

    @Test
    void what_cannot_be_is_told_in_a_line() {
        refused("no starter pattern 'oak'", "new", "--from", "oak");
        refused("is not given", "new", "--length", "12");
        refused("--length", "new", "--from", "plain-spoke", "--length", "long");
        refused("--from plain-spoke", "new", "--from", "plain-spoke", "--length", "1");
        refused("give in or mm", "new", "--units", "cubits");
    }

    private static void refused(String words, String... arguments) {
        Ran ran = Ran.here(arguments);
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains(words).hasLineCount(1);
        assertThat(ran.out()).isEmpty();
    }
}
