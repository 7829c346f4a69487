package turnalike.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class RoughFigureTest {
    @Test
    void three_figures_are_kept_of_any_number() {
        assertThat(RoughFigure.of(17466)).isEqualTo(17500);
        assertThat(RoughFigure.of(65626)).isEqualTo(65600);
        assertThat(RoughFigure.of(999.6)).isEqualTo(1000);
        assertThat(RoughFigure.of(84.27)).isEqualTo(84.3);
        assertThat(RoughFigure.of(0.012345)).isEqualTo(0.0123);
        assertThat(RoughFigure.of(-1234)).isEqualTo(-1230);
        assertThat(RoughFigure.of(0)).isZero();
    }

    @Test
    void a_force_that_is_worked_out_is_told_with_as_many_in_either_unit() {
        Force force = Force.ofNewtons(17509);
        assertThat(force.formatRoughly(UnitSystem.INCH)).isEqualTo("3940 lbf (17500 N)");
        assertThat(force.formatRoughly(UnitSystem.METRIC)).isEqualTo("17500 N");
        assertThat(force.format(UnitSystem.METRIC)).isEqualTo("17509 N");
    }
}
