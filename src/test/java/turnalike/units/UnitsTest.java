package turnalike.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
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
    void an_angle_reads_as_it_is_set_in_a_shop() {
        assertThat(Angle.ofDegrees(36).format()).isEqualTo("36°");
        assertThat(Angle.ofDegrees(22.5).format()).isEqualTo("22 1/2°");
        assertThat(Angle.ofDegrees(11.25).format()).isEqualTo("11 1/4°");
        assertThat(Angle.ofDegrees(0.75).format()).isEqualTo("3/4°");
        assertThat(Angle.ofDegrees(-22.5).format()).isEqualTo("-22 1/2°");
        assertThat(Angle.ofDegrees(360.0 / 7).format()).isEqualTo("51.4°");
        assertThat(Angle.ofDegrees(59.99).format()).isEqualTo("60.0°");
        assertThat(Angle.ofRadians(Math.atan(Math.sqrt(3))).format()).isEqualTo("60°");
        assertThat(Angle.ofDegrees(-0.01).format()).isEqualTo("0.0°");
        assertThat(Angle.ofDegrees(0).format()).isEqualTo("0°");
    }

    @Test
    void a_direction_is_told_to_a_whole_degree_below_a_full_turn() {
        assertThat(Angle.ofDegrees(327.6).formatDirection()).isEqualTo("328°");
        assertThat(Angle.ofDegrees(359.6).formatDirection()).isEqualTo("0°");
        assertThat(Angle.ofDegrees(-90).formatDirection()).isEqualTo("270°");
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
        LengthMessage told = LengthMessage.of("%s of %s is more than %s", 3, Length.ofMm(50.8), Length.ofMm(25.4));
        assertThat(told.in(UnitSystem.INCH)).isEqualTo("3 of 2 in (50.8 mm) is more than 1 in (25.4 mm)");
        assertThat(told.in(UnitSystem.METRIC)).isEqualTo("3 of 50.8 mm (2 in) is more than 25.4 mm (1 in)");
    }

    @Test
    void a_sentence_begins_with_a_capital() {
        assertThat(SentenceCase.capital("belly")).isEqualTo("Belly");
        assertThat(SentenceCase.capital("übung")).isEqualTo("Übung");
        assertThat(SentenceCase.capital("3 beads")).isEqualTo("3 beads");
        assertThat(SentenceCase.capital("")).isEmpty();
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

    /** An inch is 25.4 mm, a foot 12 of them; the degree is a 180th of π. */
    @Test
    void conversions_go_both_ways() {
        assertThat(Length.ofInches(2).mm()).isEqualTo(50.8);
        assertThat(Length.ofMm(50.8).inches()).isEqualTo(2);
        assertThat(Angle.ofRadians(Math.PI / 2).degrees()).isEqualTo(90);
        assertThat(Angle.ofDegrees(-45).radians()).isEqualTo(-Math.PI / 4);
        assertThat(Density.ofKgPerM3(1000).gramsPerMm3()).isCloseTo(1e-3, within(1e-18));
        assertThat(UnitSystem.INCH.length(2)).isEqualTo(Length.ofMm(50.8));
        assertThat(UnitSystem.METRIC.length(3)).isEqualTo(Length.ofMm(3));
    }

    @Test
    void lengths_and_masses_add_up() {
        Length seven = Length.ofMm(7);
        Length two = Length.ofMm(2);
        assertThat(seven.plus(two)).isEqualTo(Length.ofMm(9));
        assertThat(seven.minus(two)).isEqualTo(Length.ofMm(5));
        assertThat(two.minus(seven)).isEqualTo(Length.ofMm(-5));
        assertThat(two.minus(seven).abs()).isEqualTo(Length.ofMm(5));
        assertThat(seven.times(3)).isEqualTo(Length.ofMm(21));
        assertThat(Mass.ofGrams(7).plus(Mass.ofGrams(2))).isEqualTo(Mass.ofGrams(9));
        assertThat(Mass.ofGrams(7).minus(Mass.ofGrams(9))).isEqualTo(Mass.ofGrams(-2));
        assertThat(Speed.ofRpm(800).times(0.5)).isEqualTo(Speed.ofRpm(400));
    }

    @Test
    void only_what_is_above_zero_is_positive() {
        assertThat(Length.ofMm(1e-300).isPositive()).isTrue();
        assertThat(Length.ZERO.isPositive()).isFalse();
        assertThat(Length.ofMm(-1).isPositive()).isFalse();
    }

    private static <T extends Comparable<T>> void assertOrdered(T less, T more) {
        assertThat(less.compareTo(more)).isNegative();
        assertThat(more.compareTo(less)).isPositive();
    }

    @Test
    void quantities_are_ordered_by_size() {
        assertOrdered(Length.ofMm(-1), Length.ofMm(1));
        assertOrdered(Mass.ofGrams(1), Mass.ofGrams(2));
        assertOrdered(Angle.ofDegrees(-90), Angle.ofDegrees(10));
        assertOrdered(Speed.ofRpm(500), Speed.ofRpm(501));
        assertOrdered(Force.ofNewtons(1), Force.ofNewtons(2));
        assertThat(Length.ofMm(25.4)).isEqualByComparingTo(Length.ofInches(1));
        assertThat(Speed.ofRpm(500).orSlower(Speed.ofRpm(700))).isEqualTo(Speed.ofRpm(500));
        assertThat(Speed.ofRpm(700).orSlower(Speed.ofRpm(500))).isEqualTo(Speed.ofRpm(500));
    }

    @Test
    void what_is_nothing_or_endless_is_refused_where_it_cannot_be() {
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> Density.ofKgPerM3(bad)).hasMessageContaining("density");
            assertThatThrownBy(() -> Speed.ofRpm(bad)).hasMessageContaining("speed");
            assertThatThrownBy(() -> Force.ofNewtons(bad)).hasMessageContaining("force");
        }
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatThrownBy(() -> Angle.ofDegrees(bad)).hasMessageContaining("angle");
            assertThatThrownBy(() -> Mass.ofGrams(bad)).hasMessageContaining("mass");
            assertThatThrownBy(() -> Length.ofMm(bad)).hasMessageContaining("length");
        }
        assertThat(Mass.ofGrams(-0.0)).isEqualTo(Mass.ofGrams(0));
    }

    @Test
    void an_angle_of_less_than_a_turn_stays_as_it_is() {
        assertThat(Angle.ofDegrees(359).aroundOnce()).isEqualTo(Angle.ofDegrees(359));
        assertThat(Angle.ofDegrees(365).aroundOnce()).isEqualTo(Angle.ofDegrees(5));
        assertThat(Angle.ofDegrees(-725).aroundOnce()).isEqualTo(Angle.ofDegrees(355));
    }

    @Test
    void a_system_of_units_is_found_by_its_word_alone() {
        for (UnitSystem system : UnitSystem.values()) {
            assertThat(UnitSystem.find(system.symbol())).contains(system);
            assertThat(system.other()).isNotEqualTo(system);
            assertThat(system.other().other()).isEqualTo(system);
        }
        assertThat(UnitSystem.INCH.symbol()).isEqualTo("in");
        assertThat(UnitSystem.METRIC.symbol()).isEqualTo("mm");
        assertThat(UnitSystem.find("cm")).isEmpty();
        assertThat(UnitSystem.find("IN")).isEmpty();
    }

    @Test
    void a_lathes_steps_are_told_in_its_own_whole_numbers() {
        assertThat(Speed.ofLathe(List.of(Speed.ofRpm(500)))).isEqualTo("lathe step 500");
        assertThat(Speed.ofLathe(List.of(Speed.ofRpm(500), Speed.ofRpm(1250.4))))
                .isEqualTo("lathe steps 500, 1250");
    }

    @Test
    void a_sentence_can_carry_what_is_no_length() {
        assertThat(LengthMessage.of("%s beads of %s", 2, "oak").in(UnitSystem.INCH))
                .isEqualTo("2 beads of oak");
    }

    @Test
    void what_was_read_is_a_value_or_the_reason_why_not() {
        Parsed<Integer> good = Parsed.of(7);
        Parsed<Integer> bad = Parsed.refused("no number", "write one");
        assertThat(good.isValue()).isTrue();
        assertThat(bad.isValue()).isFalse();
        assertThat(good.<String>fold(value -> "read " + value, (what, mend) -> what))
                .isEqualTo("read 7");
        assertThat(bad.<String>fold(value -> "read " + value, (what, mend) -> what + ": " + mend))
                .isEqualTo("no number: write one");
        assertThat(good.orElse(refused -> 0)).isEqualTo(7);
        assertThat(bad.orElse(refused -> refused.mend().length())).isEqualTo(9);
        assertThat(good.get()).isEqualTo(7);
        assertThatThrownBy(bad::get)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no number; write one");
    }

    @Test
    void a_speed_is_told_as_a_turner_tells_it_and_the_fastest_never_faster() {
        assertThat(Speed.ofRpm(1027).about()).isEqualTo("1050");
        assertThat(Speed.ofRpm(1027).noFaster()).isEqualTo("1000");
        assertThat(Speed.ofRpm(699).about()).isEqualTo("700");
        assertThat(Speed.ofRpm(699).noFaster()).isEqualTo("690");
        assertThat(Speed.ofRpm(600 - 1e-9).noFaster()).isEqualTo("600");
        assertThat(Speed.ofRpm(45.6).noFaster()).isEqualTo("45");
    }

    @Test
    void a_rests_place_is_told_roughly() {
        assertThat(Length.ofInches(18 + 31 / 64.0).formatRoughly(UnitSystem.INCH))
                .isEqualTo("about 18 1/2 in");
        assertThat(Length.ofMm(146.7).formatRoughly(UnitSystem.METRIC)).isEqualTo("about 145 mm");
    }

    /** A seven-foot post of 297.6 oz is weighed by nobody; sixteen ounces are a pound. */
    @Test
    void a_pound_and_more_is_told_in_pounds_and_ounces() {
        assertThat(Mass.ofOunces(15.94).formatOunces(1)).isEqualTo("15.9 oz");
        assertThat(Mass.ofOunces(15.96).formatOunces(1)).isEqualTo("1 lb 0.0 oz");
        assertThat(Mass.ofOunces(297.61).formatOunces(2)).isEqualTo("18 lb 9.61 oz");
        assertThat(Mass.ofOunces(31.97).formatOunces(1)).isEqualTo("2 lb 0.0 oz");
        assertThat(Mass.ofGrams(8437.1).formatGrams()).isEqualTo("8437 g");
        assertThat(Mass.ofGrams(12_437).formatGrams()).isEqualTo("12.44 kg");
    }

    /** A tailstock is wound up in pounds where the piece is measured in inches. */
    @Test
    void a_force_is_told_in_pounds_beside_newtons_where_inches_are() {
        assertThat(Force.ofNewtons(20).format(UnitSystem.METRIC)).isEqualTo("20 N");
        assertThat(Force.ofNewtons(20).format(UnitSystem.INCH)).isEqualTo("4.5 lbf (20 N)");
        assertThat(Force.ofNewtons(1.52).format(UnitSystem.METRIC)).isEqualTo("1.5 N");
        assertThat(Force.ofNewtons(444.8).format(UnitSystem.INCH)).isEqualTo("100 lbf (445 N)");
        assertThat(Force.ofNewtons(994).formatRoughly(UnitSystem.METRIC)).isEqualTo("990 N");
        assertThat(Force.ofNewtons(996).formatRoughly(UnitSystem.METRIC)).isEqualTo("1 kN");
        assertThat(Force.ofNewtons(47_300).formatRoughly(UnitSystem.INCH)).isEqualTo("11000 lbf (47 kN)");
    }

    /** Room must not be said too large, nor what passes too small: 6.21 mm are 15.6 sixty-fourths. */
    @Test
    void a_rule_shows_room_rounded_down_and_what_passes_rounded_up() {
        assertThat(Length.ofMm(6.29).formatDownBoth(UnitSystem.METRIC)).isEqualTo("6.2 mm (15/64 in)");
        assertThat(Length.ofMm(6.21).formatUpBoth(UnitSystem.METRIC)).isEqualTo("6.3 mm (1/4 in)");
        assertThat(Length.ofInches(4).formatDownBoth(UnitSystem.INCH)).isEqualTo("4 in (101.6 mm)");
        assertThat(Length.ofInches(4 + 1e-9).formatUpBoth(UnitSystem.INCH)).isEqualTo("4 in (101.6 mm)");
        assertThat(Length.ofInches(4.001).formatUpBoth(UnitSystem.INCH)).isEqualTo("4 1/64 in (101.7 mm)");
        assertThat(Length.ofMm(0.05).formatDownBoth(UnitSystem.METRIC)).isEqualTo("0.05 mm (0.002 in)");
        assertThat(Length.ofMm(22.25).formatWrittenBoth(UnitSystem.METRIC)).isEqualTo("22.25 mm (7/8 in)");
        assertThat(Length.ofMm(0.42).formatWrittenBoth(UnitSystem.METRIC)).isEqualTo("0.42 mm (0.017 in)");
    }
}
