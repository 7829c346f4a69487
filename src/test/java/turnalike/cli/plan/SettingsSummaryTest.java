package turnalike.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import turnalike.job.InventedLeg;

class SettingsSummaryTest {
    @Test
    void marks_from_the_stick_pins_and_second_uses_are_told_in_words() {
        String text = SettingsSummary.text(InventedLeg.plan("\"settings\": {\"pin\": [20, 17], \"stick\": [6]},", ""));
        assertThat(text)
                .contains("taken from the marking stick, as you wish:")
                .contains("mark 6, 4 taper | 5 fillet")
                .contains("pinned  serves no mark here")
                .contains("serves again: width of 2 bead, 3 cove; calipers for 1 tenon");
    }

    @Test
    void what_no_opening_reaches_is_told_with_its_reason() {
        // Two openings of at most 20 mm carry no end mark over the taper of 100 mm, nor past the bead: 70 mm in three
        // steps is too far.
        String text = SettingsSummary.text(InventedLeg.plan("\"settings\": {\"largest\": 20},", ""));
        assertThat(text)
                .contains("taken from the marking stick, since no chain of openings from 1.5 mm (1/16 in) to 20 mm")
                .contains("in 3 steps (no fewer will do):");
    }

    @Test
    void what_sizing_leaves_on_is_told_or_that_it_leaves_nothing() {
        assertThat(SettingsSummary.text(InventedLeg.plan("", "")))
                .contains("openings, at finished sizes, nothing left on for sanding, within 0.4 mm (1/64 in)");
        assertThat(SettingsSummary.text(InventedLeg.plan("\"allowances\": {\"sizing\": 0.8},", "")))
                .contains("openings, sizing allowance 0.8 mm (1/32 in) included, within");
    }

    @Test
    void each_mark_s_error_is_told_worst_case_and_root_sum_square() {
        String text = SettingsSummary.text(InventedLeg.plan("", ""));
        assertThat(text)
                .contains("2 steps: off by 0.5 mm at worst, 0.35 mm root-sum-square: mark")
                .contains("1 step: off by 0.25 mm at worst, 0.25 mm root-sum-square: mark");
    }

    @Test
    void what_openings_miss_is_told_and_the_worst_is_not_rounded_down() {
        // The pinned opening serves the 30 mm of either tenon.
        String text = SettingsSummary.text(InventedLeg.plan("\"settings\": {\"pin\": [30.074]},", ""));
        assertThat(text)
                .contains("1 step: off by 0.33 mm at worst (up to 0.08 mm of it since openings miss)")
                .doesNotContain("0.07 mm");
    }
}
