package turnalike.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

class CalipersTest {
    private static final Offset<Double> NOISE = Offset.offset(1e-9);

    @Test
    void equal_diameters_share_exactly_the_opening_they_want() {
        List<CaliperSetting> settings = group(0.4, 0.8, 30, 20, 30);
        assertThat(settings)
                .containsExactly(
                        new CaliperSetting(
                                Length.ofMm(20.8),
                                Length.ofMm(20),
                                Length.ofMm(20.8).minus(Length.ofMm(20)),
                                List.of(1)),
                        new CaliperSetting(
                                Length.ofMm(30.8),
                                Length.ofMm(30),
                                Length.ofMm(30.8).minus(Length.ofMm(30)),
                                List.of(0, 2)));
    }

    @Test
    void diameters_up_to_twice_the_tolerance_apart_share_as_large_an_opening_as_the_least_allows() {
        CaliperSetting setting = group(0.4, 0.8, 20, 20.8).get(0);
        assertThat(setting.members()).containsExactly(0, 1);
        assertThat(setting.finished().mm()).isEqualTo(20.4, NOISE);
        assertThat(setting.opening().mm()).isEqualTo(21.2, NOISE);
        assertThat(setting.leastLeft().mm()).isEqualTo(0.4, NOISE);
        assertThat(group(0.4, 0.8, 20, 20.81)).hasSize(2);
    }

    @Test
    void diameters_no_further_apart_than_the_tolerance_are_all_left_the_whole_allowance() {
        CaliperSetting setting = group(0.4, 0.8, 20, 20.4).get(0);
        assertThat(setting.opening().mm()).isEqualTo(21.2, NOISE);
        assertThat(setting.leastLeft().mm()).isEqualTo(0.8, NOISE);
    }

    @Test
    void no_opening_goes_below_a_finished_diameter_even_with_a_wide_tolerance() {
        CaliperSetting setting = group(1.0, 0.2, 20, 21).get(0);
        assertThat(setting.members()).containsExactly(0, 1);
        assertThat(setting.opening().mm()).isEqualTo(21.2, NOISE);
        assertThat(setting.leastLeft().mm()).isEqualTo(0.2, NOISE);
        CaliperSetting farApart = group(1.0, 0.2, 20, 21.2).get(0);
        assertThat(farApart.members()).containsExactly(0, 1);
        assertThat(farApart.opening().mm()).isEqualTo(21.2, NOISE);
        assertThat(farApart.leastLeft().mm()).isEqualTo(0, NOISE);
        assertThat(group(1.0, 0.2, 20, 21.21)).hasSize(2);
    }

    @Test
    void no_caliper_is_set_to_less_than_two_millimetres_or_five_sixty_fourths() {
        assertThat(Calipers.canSize(Length.ofMm(2))).isTrue();
        assertThat(Calipers.canSize(Length.ofInches(5 / 64.0))).isTrue();
        assertThat(Calipers.canSize(Length.ofInches(1 / 16.0))).isFalse();
        assertThat(Calipers.LEAST.formatBoth(UnitSystem.METRIC)).isEqualTo("2 mm (5/64 in)");
    }

    @Test
    void nothing_to_size_needs_no_calipers() {
        assertThat(group(0.4, 0.8)).isEmpty();
    }

    @Test
    void a_member_with_two_like_diameters_is_named_once() {
        List<SizedDiameter> twice =
                List.of(new SizedDiameter(3, Length.ofMm(20)), new SizedDiameter(3, Length.ofMm(20.1)));
        assertThat(Calipers.group(twice, Length.ofMm(0.4), Length.ZERO.plus(Length.ofMm(0.8)))
                        .get(0)
                        .members())
                .containsExactly(3);
    }

    @Test
    void bad_figures_are_refused() {
        assertThatThrownBy(() -> group(-0.1, 0.8, 20)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> group(0.1, -0.8, 20)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SizedDiameter(0, Length.ZERO)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void no_split_of_the_diameters_has_fewer_openings() {
        Seeds.each(200, random -> {
            double[] finished = IntStream.range(0, 1 + random.nextInt(7))
                    .mapToDouble(i -> 20 + random.nextInt(12) / 4.0)
                    .toArray();
            double tolerance = random.nextInt(4) / 4.0;
            double allowance = random.nextInt(4) / 4.0;
            List<CaliperSetting> settings = group(tolerance, allowance, finished);
            assertThat(settings).hasSize(fewest(finished, tolerance, allowance));
            List<Integer> served = new ArrayList<>();
            for (CaliperSetting setting : settings) {
                served.addAll(setting.members());
                for (int member : setting.members()) {
                    double off = setting.opening().mm() - (finished[member] + allowance);
                    assertThat(Math.abs(off)).isLessThanOrEqualTo(tolerance + 1e-9);
                    assertThat(setting.opening().mm()).isGreaterThanOrEqualTo(finished[member] - 1e-9);
                    assertThat(setting.leastLeft().mm())
                            .isLessThanOrEqualTo(setting.opening().mm() - finished[member] + 1e-9);
                }
            }
            assertThat(served)
                    .containsExactlyInAnyOrderElementsOf(
                            IntStream.range(0, finished.length).boxed().toList());
        });
    }

    /** Tries every set of openings out of the ends of the allowed intervals: if any point meets some intervals, so does an end of one. */
    private static int fewest(double[] finished, double tolerance, double allowance) {
        double[] points =
                Arrays.stream(finished).map(d -> d + allowance + tolerance).toArray();
        return IntStream.range(0, 1 << points.length)
                .filter(set -> Arrays.stream(finished).allMatch(d -> IntStream.range(0, points.length)
                        .anyMatch(i -> (set >> i & 1) == 1
                                && Math.abs(points[i] - d - allowance) <= tolerance + 1e-9
                                && points[i] >= d - 1e-9)))
                .map(Integer::bitCount)
                .min()
                .orElseThrow();
    }

    private static List<CaliperSetting> group(double tolerance, double allowance, double... finished) {
        List<SizedDiameter> diameters = IntStream.range(0, finished.length)
                .mapToObj(i -> new SizedDiameter(i, Length.ofMm(finished[i])))
                .toList();
        return Calipers.group(diameters, Length.ofMm(tolerance), Length.ofMm(allowance));
    }
}
