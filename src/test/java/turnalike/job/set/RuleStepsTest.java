package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

class RuleStepsTest {
    @Test
    void what_no_rule_shows_is_told_as_less_than_it_does() {
        RuleSteps metric = new RuleSteps(UnitSystem.METRIC);
        assertThat(metric.left(Length.ofMm(0.05))).isEqualTo("less than 0.1 mm (0.004 in)");
        assertThat(metric.left(Length.ofMm(0.1))).startsWith("0.1 mm");
        assertThat(metric.left(Length.ofMm(20.0).minus(Length.ofMm(19.9)))).startsWith("0.1 mm");
        assertThat(metric.left(Length.ofMm(1e-9))).isEqualTo("0 mm (0 in)");
        assertThat(metric.left(Length.ofMm(5.09))).isEqualTo("5 mm (3/16 in)");
        assertThat(new RuleSteps(UnitSystem.INCH).left(Length.ofMm(0.05))).isEqualTo("less than 0.004 in (0.1 mm)");
    }
}
