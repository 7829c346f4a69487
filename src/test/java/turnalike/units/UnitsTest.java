package turnalike.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class UnitsTest {
    @Test
    void no_length_is_not_a_number() {
        assertThatThrownBy(() -> Length.ofMm(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Length.ofMm(Double.POSITIVE_INFINITY)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Mass.ofGrams(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Density.ofKgPerM3(0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void minus_zero_is_zero() {
        assertThat(Length.ofMm(-0.0)).isEqualTo(Length.ZERO);
        assertThat(Angle.ofDegrees(-0.0)).isEqualTo(Angle.ofDegrees(0));
    }

    @Test
    void an_ounce_is_a_sixteenth_of_a_pound() {
        assertThat(Mass.ofOunces(16).grams()).isEqualTo(453.59237);
        assertThat(Mass.ofGrams(453.59237).ounces()).isEqualTo(16);
    }

    @Test
    void an_angle_comes_round_into_one_turn() {
        assertThat(Angle.ofDegrees(-90).aroundOnce().degrees()).isEqualTo(270);
        assertThat(Angle.ofDegrees(720).aroundOnce().degrees()).isZero();
        assertThat(Angle.ofDegrees(-1e-20).aroundOnce().degrees()).isZero();
    }

    @Test
    void a_length_in_both_units_has_the_own_one_in_front() {
        assertThat(Length.ofInches(1.5).formatBoth(UnitSystem.INCH)).isEqualTo("1 1/2 in (38.1 mm)");
        assertThat(Length.ofInches(1.5).formatBoth(UnitSystem.METRIC)).isEqualTo("38.1 mm (1 1/2 in)");
    }

    @Test
    void a_fine_length_is_a_fraction_where_it_was_written_as_one() {
        Length sixtyFourth = Length.ofInches(1 / 64.0);
        assertThat(sixtyFourth.formatFine(UnitSystem.INCH)).isEqualTo("1/64 in");
        assertThat(sixtyFourth.formatFine(UnitSystem.METRIC)).isEqualTo("0.4 mm");
        assertThat(sixtyFourth.formatFinestBoth(UnitSystem.METRIC)).isEqualTo("0.397 mm (1/64 in)");
        assertThat(Length.ofMm(0.2).formatFineBoth(UnitSystem.INCH)).isEqualTo("0.008 in (0.2 mm)");
        assertThat(Length.ofMm(28.448).formatFinest(UnitSystem.INCH)).isEqualTo("1.12 in");
        assertThat(Length.ZERO.formatFine(UnitSystem.INCH)).isEqualTo("0 in");
        assertThat(Length.ofMm(0.001).formatFine(UnitSystem.INCH)).isEqualTo("0 in");
    }

    @Test
    void a_told_sentence_has_its_lengths_in_the_readers_units() {
        Told told = Told.of("%s of %s is more than %s", 3, Length.ofMm(50.8), Length.ofMm(25.4));
        assertThat(told.in(UnitSystem.INCH)).isEqualTo("3 of 2 in (50.8 mm) is more than 1 in (25.4 mm)");
        assertThat(told.in(UnitSystem.METRIC)).isEqualTo("3 of 50.8 mm (2 in) is more than 25.4 mm (1 in)");
    }

    @Test
    void a_sentence_begins_with_a_capital() {
        assertThat(Sentence.capital("belly")).isEqualTo("Belly");
        assertThat(Sentence.capital("übung")).isEqualTo("Übung");
        assertThat(Sentence.capital("3 beads")).isEqualTo("3 beads");
        assertThat(Sentence.capital("")).isEmpty();
    }

    @Test
    void a_problem_reads_as_where_what_mend() {
        assertThat(new Problem("member 3 (bead): crown", "must exceed the root", "make it larger").line())
                .isEqualTo("member 3 (bead): crown: must exceed the root; make it larger");
    }

    /** 60 mm at 1000 rpm: π · 0.06 m · 1000 / 60 s, and 12 in at 100 rpm are π · 100 feet a minute. */
    @Test
    void a_speed_passes_the_tool_by_its_circumference() {
        assertThat(Speed.ofRpm(1000).surfaceMetresPerSecond(Length.ofMm(60))).isCloseTo(Math.PI, within(1e-12));
        assertThat(Speed.ofRpm(100).surfaceFeetPerMinute(Length.ofInches(12))).isCloseTo(100 * Math.PI, within(1e-9));
        assertThat(Speed.ofRadiansPerSecond(2 * Math.PI).rpm()).isCloseTo(60, within(1e-12));
    }

    @Test
    void no_speed_and_no_force_is_nothing_or_endless() {
        assertThatThrownBy(() -> Speed.ofRpm(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Speed.ofRpm(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Force.ofNewtons(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Force.ofNewtons(Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
