package turnalike.cli.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.effort.Progress;

class ConsoleProgressTest {
    private final StringWriter seen = new StringWriter();

    @Test
    void each_line_takes_the_place_of_the_one_before_and_is_cleared_for_the_result() {
        try (ConsoleProgress waiter = ConsoleProgress.at(new PrintWriter(seen), true)) {
            Effort effort = Deadline.inSeconds(60, waiter);
            effort.report(new Progress("fewest divider settings", 12, 9));
            effort.share(0.5).report(new Progress("unbalance", 5.6912, 0));
            waiter.found();
        }
        String first = "fewest divider settings: 12 found, at least 9; Ctrl-C takes what is found";
        String second = "unbalance: 5.691 found, at least 0; Ctrl-C takes what is found";
        int shorter = first.length() - second.length();
        assertThat(seen.toString())
                .isEqualTo(
                        "\r" + first + "\r" + second + " ".repeat(shorter) + "\r" + " ".repeat(second.length()) + "\r");
    }

    @Test
    void nothing_is_shown_where_no_terminal_is() {
        try (ConsoleProgress waiter = ConsoleProgress.at(new PrintWriter(seen), false)) {
            waiter.show(new Progress("fewest divider settings", 12, 9));
            assertThat(waiter.hasEnough()).isFalse();
        }
        assertThat(seen.toString()).isEmpty();
    }
}
