package turnalike.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

class WorkForecastTest {
    private static List<Timing> each(double... minutes) {
        List<Timing> out = new ArrayList<>();
        for (double each : minutes) {
            out.add(new Timing(each, 1));
        }
        return out;
    }

    @Test
    void nine_of_ten_shops_keep_the_range_of_one_stage_and_of_two_together() {
        SplittableRandom random = new SplittableRandom(7);
        int shops = Seeds.times(500);
        int held = 0;
        int heldTogether = 0;
        int below = 0;
        for (int shop = 0; shop < shops; shop++) {
            int timed = 4 + random.nextInt(12);
            int wanted = timed + 1 + random.nextInt(25);
            Shop turning = new Shop(random, 60, timed, wanted);
            Shop sanding = new Shop(random, 15, timed, wanted);
            Map<String, List<Timing>> told = new LinkedHashMap<>();
            told.put("turning", turning.told(timed));
            told.put("sanding", sanding.told(timed));
            WorkForecast forecast = WorkForecast.of(told, wanted);
            StageForecast first = forecast.stages().get(0);
            held += isIn(first.range().orElseThrow(), turning.total()) ? 1 : 0;
            heldTogether += isIn(forecast.range().orElseThrow(), turning.total() + sanding.total()) ? 1 : 0;
            below += turning.total() < first.total() ? 1 : 0;
        }
        // Of 500 shops the share scatters by 1.3 %.
        assertThat(held / (double) shops).isBetween(0.875, 0.925);
        // Two independent ranges of the scatters' own uncertainty hold a little more together.
        assertThat(heldTogether / (double) shops).isBetween(0.875, 0.94);
        assertThat(below / (double) shops).isBetween(0.45, 0.55);
    }

    private static boolean isIn(Range range, double total) {
        return range.from() <= total && total <= range.to();
    }

    /** A shop that learns as the curve says, its times scattered about it. */
    private static final class Shop {
        private final List<Double> minutes = new ArrayList<>();

        Shop(SplittableRandom random, double first, int timed, int wanted) {
            LearningCurve curve =
                    new LearningCurve(first * (0.5 + random.nextDouble()), 0.75 + 0.25 * random.nextDouble());
            double scatter = 0.05 + 0.2 * random.nextDouble();
            for (int i = 1; i <= Math.max(timed, wanted); i++) {
                minutes.add(curve.at(i) * Math.exp(scatter * random.nextGaussian()));
            }
        }

        List<Timing> told(int count) {
            return minutes.subList(0, count).stream()
                    .map(each -> new Timing(each, 1))
                    .toList();
        }

        double total() {
            return minutes.stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    @Test
    void times_on_a_curve_give_that_curve_and_its_sum() {
        LearningCurve curve = new LearningCurve(50, 0.9);
        WorkForecast forecast = WorkForecast.of(
                Map.of("turning", each(curve.at(1), curve.at(2), curve.at(3), curve.at(4), curve.at(5))), 20);
        StageForecast stage = forecast.stages().get(0);
        assertThat(stage.curve().orElseThrow().first()).isCloseTo(50, within(1e-9));
        assertThat(stage.curve().orElseThrow().rate()).isCloseTo(0.9, within(1e-12));
        assertThat(stage.total()).isCloseTo(curve.total(1, 20), within(1e-6));
        assertThat(forecast.total()).isCloseTo(curve.total(1, 20), within(1e-6));
    }

    @Test
    void the_order_of_the_pieces_counts() {
        WorkForecast learning = WorkForecast.of(Map.of("turning", each(60, 50, 45, 40, 38)), 20);
        WorkForecast tiring = WorkForecast.of(Map.of("turning", each(38, 40, 45, 50, 60)), 20);
        assertThat(learning.total()).isLessThan(0.7 * tiring.total());
    }

    @Test
    void few_times_are_taken_at_their_mean_without_a_range() {
        WorkForecast forecast = WorkForecast.of(Map.of("turning", each(40, 30, 20)), 10);
        assertThat(forecast.total()).isCloseTo(300, within(1e-9));
        assertThat(forecast.range()).isEmpty();
        assertThat(forecast.stages().get(0).curve()).isEmpty();
    }

    @Test
    void pieces_done_in_one_go_and_what_is_done_once() {
        Map<String, List<Timing>> told = new LinkedHashMap<>();
        told.put("set-up", List.of(new Timing(75, 0)));
        told.put("milling", List.of(new Timing(60, 6), new Timing(30, 4)));
        WorkForecast forecast = WorkForecast.of(told, 20);
        assertThat(forecast.stages().get(0).total()).isEqualTo(75);
        assertThat(forecast.stages().get(0).isOnce()).isTrue();
        assertThat(forecast.stages().get(1).total()).isCloseTo(180, within(1e-9));
        assertThat(forecast.total()).isCloseTo(255, within(1e-9));
    }

    @Test
    void what_is_all_timed_is_its_sum() {
        WorkForecast forecast = WorkForecast.of(Map.of("turning", each(50, 45, 40, 41, 39)), 5);
        assertThat(forecast.total()).isCloseTo(215, within(1e-9));
        assertThat(forecast.range()).isEmpty();
        assertThat(WorkForecast.of(Map.of("turning", each(50, 45, 40, 41, 39)), 3)
                        .total())
                .isCloseTo(215, within(1e-9));
    }

    @Test
    void all_equal_one_and_ten_thousand_end() {
        WorkForecast equal = WorkForecast.of(Map.of("turning", each(30, 30, 30, 30)), 100);
        assertThat(equal.total()).isCloseTo(3000, within(1e-6));
        assertThat(equal.range().orElseThrow().to()).isCloseTo(3000, within(1e-6));
        assertThat(WorkForecast.of(Map.of("turning", each(30)), 1).total()).isEqualTo(30);
        List<Timing> many = Collections.nCopies(10_000, new Timing(1.5, 1));
        assertThat(WorkForecast.of(Map.of("turning", many), 10_400).total()).isCloseTo(15_600, within(1e-3));
    }

    @Test
    void the_same_times_give_the_same_range() {
        Map<String, List<Timing>> told = Map.of("turning", each(60, 50, 45, 46, 38));
        assertThat(WorkForecast.of(told, 20)).isEqualTo(WorkForecast.of(told, 20));
    }
}
