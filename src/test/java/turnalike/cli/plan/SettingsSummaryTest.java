package turnalike.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import turnalike.job.InventedLeg;

class SettingsSummaryTest {
    @Test
    void marks_from_the_stick_pins_and_second_uses_are_told_in_words() {
        String text = SettingsSummary.text(InventedLeg.plan("\"settings\": {\"pin\": [20, 17], \"stick\": [6]},", ""));
        assertThat(text)
                .contains("no dividers needed, taken from the marking stick:")
                .contains("mark 6, 4 taper | 5 fillet")
                .contains("pinned  serves no mark here")
                .contains("serves again: width of 2 bead, 3 cove; calipers for 1 tenon");
    }

    @Test
    void each_mark_s_error_is_told_worst_case_and_root_sum_square() {
        String text = SettingsSummary.text(InventedLeg.plan("", ""));
        assertThat(text)
                .contains("2 steps: off by 0.5 mm at worst, 0.35 mm root-sum-square: mark")
                .contains("1 step: off by 0.25 mm at worst, 0.25 mm root-sum-square: mark");
    }
}
