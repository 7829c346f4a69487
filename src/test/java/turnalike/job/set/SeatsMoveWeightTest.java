package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

/**
 * Every figure told of a wheel is the one after the advice beside it is followed: read back from what {@code match} prints, each piece moved
 * by its seat as it lies and as it is to be bored, the pulls added up anew.
 */
@Tag("long-sums")
class SeatsMoveWeightTest {
    private static final double SCALE_G = 0.1;

    @Test
    void every_figure_told_is_the_one_with_the_seats_as_told() {
        boolean[] bored = new boolean[1];
        Seeds.each(6, random -> {
            SmallWheel wheel = SmallWheel.random(random, 8 + random.nextInt(4));
            int places = wheel.masses.length - random.nextInt(3);
            double givenGMm = random.nextBoolean() ? 0 : 200;
            String keys = random.nextBoolean() ? ", " + depths(random, places) : "";
            String will = random.nextInt(4) > 0 ? ", \"run_out\": 0.3" : "";
            String given =
                    givenGMm == 0 ? "" : ", \"given_moments\": [{\"g_mm\": %s, \"at_deg\": 30}]".formatted(givenGMm);
            String job = SmallWheel.framed(
                    SCALE_G,
                    "{\"kind\": \"wheel\", \"places\": %d, \"hub_radius\": 60, \"counterweight_radius\": 80%s%s%s}"
                            .formatted(places, keys, will, given));
            double[] depths = depths(keys, places);
            JsonNode match = SmallWheel.match(job, wheel.csv(), false);
            int[] order = SmallWheel.order(match.get("places"));
            double[] deepen = numbers(match.at("/rim/seat_deepen_mm"));
            double[] pull = pull(wheel, order, depths, deepen, givenGMm);
            double gMm = Math.hypot(pull[0], pull[1]);
            assertThat(match.get("unbalance_g_mm").doubleValue()).isCloseTo(gMm, within(1e-6));
            double at = Math.toDegrees(Math.atan2(pull[1], pull[0]));
            assertThat(Math.IEEEremainder(match.get("heavy_at_deg").doubleValue() - at, 360))
                    .isCloseTo(0, within(1e-6 / Math.max(1e-3, gMm) * 60));
            double weight = match.at("/counterweight/mass_g").doubleValue() * 80;
            double weightAt = Math.toRadians(match.at("/counterweight/at_deg").doubleValue());
            assertThat(Math.hypot(pull[0] + weight * Math.cos(weightAt), pull[1] + weight * Math.sin(weightAt)))
                    .isCloseTo(0, within(1e-6));
            assertThat(match.at("/rim/run_out_mm").doubleValue())
                    .isCloseTo(SmallWheel.runOut(radii(wheel, order, depths, deepen)), within(1e-6));
            for (JsonNode place : match.get("places")) {
                int k = place.get("place").intValue() - 1;
                assertThat(place.get("radius_mm").doubleValue())
                        .isCloseTo(40 + wheel.balances[order[k]] - depths[k] - deepen[k], within(1e-9));
            }
            bored[0] |= Arrays.stream(deepen).anyMatch(mm -> mm > 0.05);
            for (JsonNode way : match.get("with_boring")) {
                int[] pieces = SmallWheel.order(way.get("places"));
                double[] seats = numbers(way.get("seat_deepen_mm"));
                double[] left = pull(wheel, pieces, depths, seats, givenGMm);
                assertThat(way.get("unbalance_g_mm").doubleValue())
                        .isCloseTo(Math.hypot(left[0], left[1]), within(1e-6));
                assertThat(way.get("run_out_mm").doubleValue())
                        .isCloseTo(SmallWheel.runOut(radii(wheel, pieces, depths, seats)), within(1e-6));
                assertThat(way.get("bored_mm").doubleValue())
                        .isCloseTo(Arrays.stream(seats).sum(), within(1e-9));
            }
        });
        assertThat(bored[0]).as("boring was advised at least once").isTrue();
    }

    /** What run-out will do is kept to, and the balance is as good as the scale can tell; else nothing is bored. */
    @Test
    void seats_are_bored_only_for_the_run_out_that_is_asked_for() {
        int[] times = new int[2];
        Seeds.each(4, random -> {
            SmallWheel wheel = SmallWheel.random(random, 9);
            JsonNode asked = SmallWheel.match(wheel.job(SCALE_G, "\"run_out\": 0.3"), wheel.csv(), false);
            JsonNode free = SmallWheel.match(wheel.job(SCALE_G, ""), wheel.csv(), false);
            JsonNode strict = SmallWheel.match(wheel.job(SCALE_G, "\"run_out\": 0.3"), wheel.csv(), true);
            assertThat(numbers(free.at("/rim/seat_deepen_mm"))).containsOnly(0);
            assertThat(numbers(strict.at("/rim/seat_deepen_mm"))).containsOnly(0);
            boolean bored =
                    Arrays.stream(numbers(asked.at("/rim/seat_deepen_mm"))).anyMatch(mm -> mm > 0);
            times[bored ? 1 : 0]++;
            assertThat(asked.get("warnings").toString().contains("no way of boring was found"))
                    .isEqualTo(asked.at("/rim/run_out_mm").doubleValue() > 0.3 + 1e-6);
            if (bored) {
                assertThat(asked.at("/rim/run_out_mm").doubleValue()).isLessThanOrEqualTo(0.3 + 1e-6);
                assertThat(asked.get("unbalance_g_mm").doubleValue())
                        .isLessThanOrEqualTo(Math.max(
                                        free.get("noise_floor_g_mm").doubleValue(),
                                        strict.get("unbalance_g_mm").doubleValue())
                                + 1e-6);
                assertThat(asked.get("best_proven").booleanValue()).isFalse();
            }
        });
        assertThat(times[1]).isGreaterThan(0);
    }

    /** Over all sets and orders, not those of one set: held against each of them. */
    @Test
    void of_all_sets_and_orders_balanced_alike_the_roundest_is_placed() {
        boolean[] otherSet = new boolean[1];
        Seeds.each(5, random -> {
            int places = 4 + random.nextInt(2);
            SmallWheel wheel = SmallWheel.random(random, places + 2);
            String job = SmallWheel.framed(
                    0.5, "{\"kind\": \"wheel\", \"places\": %d, \"hub_radius\": 60}".formatted(places));
            JsonNode match = SmallWheel.match(job, wheel.csv(), false);
            Arrays.fill(wheel.depths, 0);
            double least = Double.POSITIVE_INFINITY;
            Set<Integer> leastSet = Set.of();
            for (int[] order : wheel.everyOrder(places)) {
                if (passes(wheel, order) && wheel.unbalance(order, 0, 0) < least) {
                    least = wheel.unbalance(order, 0, 0);
                    leastSet = set(order);
                }
            }
            double limit = least + 1e-6;
            double roundest = wheel.everyOrder(places).stream()
                    .filter(order -> passes(wheel, order))
                    .filter(order -> wheel.unbalance(order, 0, 0) <= Math.max(limit, wheel.noiseFloor(0.5, order)))
                    .mapToDouble(wheel::runOut)
                    .min()
                    .orElseThrow();
            assertThat(match.at("/rim/run_out_mm").doubleValue()).isCloseTo(roundest, within(2e-6));
            otherSet[0] |= !set(SmallWheel.order(match.get("places"))).equals(leastSet);
        });
        assertThat(otherSet[0]).as("another set was rounder at least once").isTrue();
    }

    private static boolean passes(SmallWheel wheel, int[] order) {
        double[] masses =
                Arrays.stream(order).mapToDouble(p -> wheel.masses[p]).sorted().toArray();
        double mean = Arrays.stream(masses).average().orElseThrow();
        return masses[masses.length - 1] - masses[0] <= 0.1 * mean + 1e-9;
    }

    private static Set<Integer> set(int[] order) {
        Set<Integer> set = new HashSet<>();
        Arrays.stream(order).forEach(set::add);
        return set;
    }

    private static double[] pull(SmallWheel wheel, int[] order, double[] depths, double[] deepen, double givenGMm) {
        double x = givenGMm * Math.cos(Math.toRadians(30));
        double y = givenGMm * Math.sin(Math.toRadians(30));
        for (int k = 0; k < order.length; k++) {
            double moment = wheel.masses[order[k]] * (60 + wheel.balances[order[k]] - 20 - depths[k] - deepen[k]);
            x += moment * Math.cos(2 * Math.PI * k / order.length);
            y += moment * Math.sin(2 * Math.PI * k / order.length);
        }
        return new double[] {x, y};
    }

    private static double[] radii(SmallWheel wheel, int[] order, double[] depths, double[] deepen) {
        double[] radii = new double[order.length];
        for (int k = 0; k < order.length; k++) {
            radii[k] = 60 - depths[k] - deepen[k] + wheel.lengths[order[k]] - 20 - 10;
        }
        return radii;
    }

    private static String depths(Random random, int places) {
        StringBuilder each = new StringBuilder();
        for (int k = 0; k < places; k++) {
            each.append(k == 0 ? "" : ", ").append(Math.round(80 * random.nextDouble()) / 100.0);
        }
        return "\"seat_depths\": [" + each + "]";
    }

    private static double[] depths(String keys, int places) {
        if (keys.isEmpty()) {
            return new double[places];
        }
        String inside = keys.substring(keys.indexOf('[') + 1, keys.indexOf(']'));
        return Arrays.stream(inside.split(", "))
                .mapToDouble(Double::parseDouble)
                .toArray();
    }

    private static double[] numbers(JsonNode list) {
        double[] out = new double[list.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = list.get(i).doubleValue();
        }
        return out;
    }
}
