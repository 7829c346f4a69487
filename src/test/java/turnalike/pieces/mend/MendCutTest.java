package turnalike.pieces.mend;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** A cut that brings a piece to weight, as it is told at the lathe. */
class MendCutTest {
    private static String told(double inches) {
        return new MendCut(1, "cove", Length.ZERO, Length.ofInches(1), Length.ofInches(inches), true)
                .words(UnitSystem.INCH);
    }

    @Test
    void whole_sixty_fourths_are_told_once_and_thousandths_as_a_rule_shows_them_too() {
        assertThat(told(3.0 / 64)).isEqualTo("take 3/64 in off the diameter of the cove");
        assertThat(told(1.0 / 64)).isEqualTo("take 1/64 in off the diameter of the cove");
        assertThat(told(0.04))
                .isEqualTo("take 0.04 in off the diameter of the cove: between 1/32 in and 3/64 in on the rule");
        assertThat(told(0.008)).isEqualTo("take 0.008 in off the diameter of the cove: less than 1/64 in on the rule");
        assertThat(told(0.033)).isEqualTo("take 0.033 in off the diameter of the cove: about 1/32 in on the rule");
        assertThat(told(0.013)).isEqualTo("take 0.013 in off the diameter of the cove: about 1/64 in on the rule");
        assertThat(told(0.003)).isEqualTo("take 0.003 in off the diameter of the cove");
    }
}
