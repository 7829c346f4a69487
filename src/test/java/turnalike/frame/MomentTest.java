package turnalike.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.units.Angle;
import turnalike.units.Length;

class MomentTest {
    @Test
    void its_size_is_told_without_a_power_of_ten() {
        assertThat(new Moment(1234.4, Angle.ofDegrees(0)).format()).isEqualTo("1230 g·mm");
        assertThat(new Moment(67, Angle.ofDegrees(0)).format()).isEqualTo("67.0 g·mm");
        assertThat(Moment.figure(0.123456)).isEqualTo("0.123");
        assertThat(Moment.figure(0.00004)).isEqualTo("under 0.001");
        assertThat(Moment.figure(0)).isEqualTo("0");
    }

    @Test
    void its_components_are_toward_nought_and_ninety_degrees() {
        Moment moment = new Moment(10, Angle.ofDegrees(30));
        assertThat(moment.xGMm()).isCloseTo(10 * Math.sqrt(3) / 2, within(1e-12));
        assertThat(moment.yGMm()).isCloseTo(5, within(1e-12));
        assertThat(Moment.ofComponents(0, -7).at().degrees()).isEqualTo(270);
        assertThat(Moment.ofComponents(-3, -4).gMm()).isEqualTo(5);
    }

    @Test
    void components_and_back_is_the_same_moment() {
        Seeds.each(100, random -> {
            Moment moment = new Moment(1 + 1000 * random.nextDouble(), Angle.ofDegrees(360 * random.nextDouble()));
            Moment back = Moment.ofComponents(moment.xGMm(), moment.yGMm());
            assertThat(back.gMm()).isCloseTo(moment.gMm(), within(1e-9));
            assertThat(back.at().degrees()).isCloseTo(moment.at().degrees(), within(1e-9));
        });
    }

    @Test
    void with_its_opposite_nothing_is_left() {
        Moment moment = new Moment(12, Angle.ofDegrees(250));
        assertThat(moment.opposite()).isEqualTo(new Moment(12, Angle.ofDegrees(70)));
        assertThat(Moment.sum(List.of(moment, moment.opposite())).gMm()).isCloseTo(0, within(1e-12));
    }

    /** Taking the counterweight off at the other side does what adding it at its own side does. */
    @Test
    void removed_at_the_heavy_side_or_added_opposite_the_counterweight_ends_the_moment() {
        Seeds.each(100, random -> {
            Moment heavy = new Moment(1 + 1000 * random.nextDouble(), Angle.ofDegrees(360 * random.nextDouble()));
            Counterweight weight = heavy.counterweight(Length.ofMm(50 + 400 * random.nextDouble()));
            double pull = weight.mass().grams() * weight.radius().mm();
            Moment added = new Moment(pull, weight.at());
            assertThat(Moment.sum(List.of(heavy, added)).gMm()).isCloseTo(0, within(1e-9));
            Moment there = new Moment(pull, weight.removeAt());
            assertThat(heavy.xGMm() - there.xGMm()).isCloseTo(0, within(1e-9));
            assertThat(heavy.yGMm() - there.yGMm()).isCloseTo(0, within(1e-9));
        });
    }

    @Test
    void a_size_below_nothing_or_without_end_is_refused() {
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new Moment(bad, Angle.ofDegrees(0))).hasMessageContaining("moment");
        }
        assertThatThrownBy(() -> new Moment(1, Angle.ofDegrees(0)).counterweight(Length.ofMm(-1)))
                .hasMessageContaining("radius");
        assertThat(new Moment(-0.0, Angle.ofDegrees(0))).isEqualTo(Moment.NONE);
    }
}
