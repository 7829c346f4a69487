package turnalike.job.price;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import turnalike.price.Timing;

/** What was typed and what the bench view timed must not count the same minutes twice. */
class LoggedTimesTest {
    private static final Map<String, Duration> CLOCK = Map.of("7", Duration.ofMinutes(30));

    private static Timing typed(double minutes, int pieces, String piece) {
        return new Timing(minutes, pieces, Optional.of(piece).filter(text -> !text.isEmpty()));
    }

    @Test
    void a_typed_time_counts_beside_the_clock_only_where_it_is_other_work() {
        Timing again = typed(31, 1, "7");
        Timing nobodys = typed(90, 3, "");
        Timing another = typed(28, 1, "8");
        Timing once = typed(15, 0, "");
        Timing sanding = typed(6, 1, "7");
        LoggedTimes times = LoggedTimes.of(
                Map.of("Turning", List.of(again, nobodys, another, once), "sanding", List.of(sanding)), CLOCK);
        assertThat(times.stages().get("Turning")).containsExactly(another, once, typed(30, 1, "7"));
        assertThat(times.stages().get("sanding")).containsExactly(sanding);
        assertThat(times.stages()).hasSize(2);
        assertThat(times.aside()).isEqualTo(2);
        assertThat(times.note().orElseThrow()).startsWith("Not counted: 2 times typed for");
    }

    @Test
    void without_a_clock_everything_typed_counts_and_without_typing_the_clock() {
        Map<String, List<Timing>> typed = Map.of(LoggedTimes.STAGE, List.of(typed(31, 1, "7"), typed(90, 3, "")));
        assertThat(LoggedTimes.of(typed, Map.of())).isEqualTo(new LoggedTimes(typed, 0));
        assertThat(LoggedTimes.of(Map.of(), CLOCK).stages())
                .isEqualTo(Map.of(LoggedTimes.STAGE, List.of(typed(30, 1, "7"))));
        assertThat(LoggedTimes.of(typed, Map.of()).note()).isEmpty();
    }

    @Test
    void a_stage_that_is_wholly_counted_by_the_clock_keeps_its_own_name() {
        Map<String, List<Timing>> typed = Map.of("Turning", List.of(typed(90, 3, "")));
        assertThat(LoggedTimes.of(typed, CLOCK).stages()).containsOnlyKeys("Turning");
    }
}
