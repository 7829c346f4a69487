package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;

/** Where no lengths are measured, sets that the scale cannot tell apart in balance are told apart by likeness: every one gone through. */
class AlikerSetTest {
    private static final int PLACES = 5;
    private static final double DIAMETER = 0.4;

    /** The scale shows half grams, so many sets are balanced alike. */
    private static final String JOB =
            SmallWheel.framed(0.5, "{\"kind\": \"wheel\", \"places\": 5, \"hub_radius\": 60}");

    private static String csv(SmallWheel wheel, double[] diameters) {
        StringBuilder csv = new StringBuilder("piece,mass_g,balance,d1\n");
        for (int i = 0; i < diameters.length; i++) {
            csv.append(
                    String.format(Locale.ROOT, "p%d,%s,%s,%s%n", i, wheel.masses[i], wheel.balances[i], diameters[i]));
        }
        return csv.toString();
    }

    /** By the formula of the file format: length tolerance is the mark's usual 0.25 mm, the mass tolerance 10 % of the mean of all. */
    private static double unlike(SmallWheel wheel, double[] diameters, int[] set) {
        double tolerance = 0.1 * Arrays.stream(wheel.masses).average().orElseThrow();
        double sum = 0;
        for (int i = 0; i < set.length; i++) {
            for (int j = 0; j < i; j++) {
                sum += Math.abs(wheel.masses[set[i]] - wheel.masses[set[j]]) / tolerance
                        + 3 * Math.abs(wheel.balances[set[i]] - wheel.balances[set[j]]) / 0.25
                        + 2 * Math.abs(diameters[set[i]] - diameters[set[j]]) / DIAMETER;
            }
        }
        return sum;
    }

    @Test
    void the_set_most_alike_of_those_balanced_alike_is_placed_and_said_to_be() {
        int[] byLikeness = {0};
        Seeds.each(20, random -> {
            SmallWheel wheel = SmallWheel.random(random, 7);
            double[] diameters = diameters(random);
            double least = Double.POSITIVE_INFINITY;
            for (int[] order : wheel.everyOrder(PLACES)) {
                if (wheel.unbalance(order, 0, 0) <= wheel.noiseFloor(0.5, order)) {
                    least = Math.min(least, unlike(wheel, diameters, order));
                }
            }
            JsonNode match = SmallWheel.match(JOB, csv(wheel, diameters), false);
            int[] placed = SmallWheel.order(match.get("places"));
            if (least < Double.POSITIVE_INFINITY) {
                assertThat(match.get("unbalance_g_mm").doubleValue())
                        .isLessThanOrEqualTo(match.get("noise_floor_g_mm").doubleValue());
                assertThat(unlike(wheel, diameters, placed)).isCloseTo(least, within(1e-9));
            }
            boolean likeness = match.get("chosen_by").asText().equals("likeness");
            assertThat(match.get("warnings").toString().contains(AlikerSet.CHOSEN))
                    .isEqualTo(likeness);
            if (likeness) {
                assertThat(match.get("best_proven").asBoolean()).isFalse();
                byLikeness[0]++;
            }
            JsonNode strict = SmallWheel.match(JOB, csv(wheel, diameters), true);
            assertThat(strict.get("chosen_by").asText()).isEqualTo("balance");
            assertThat(strict.get("unbalance_g_mm").doubleValue())
                    .isLessThanOrEqualTo(match.get("unbalance_g_mm").doubleValue() + 1e-9);
        });
        assertThat(byLikeness[0]).isGreaterThan(5);
    }

    private static double[] diameters(Random random) {
        return random.doubles(7, 29.5, 30.5)
                .map(d -> Math.round(d * 100) / 100.0)
                .toArray();
    }

    @Test
    void where_all_are_alike_the_best_balanced_stays() {
        StringBuilder csv = new StringBuilder("piece,mass_g\n");
        for (int i = 0; i < 8; i++) {
            csv.append("p%d,50.5%n".formatted(i));
        }
        JsonNode match = SmallWheel.match(JOB, csv.toString(), false);
        assertThat(match.get("chosen_by").asText()).isEqualTo("balance");
        assertThat(match.get("best_proven").asBoolean()).isTrue();
    }

    @Test
    void of_many_pieces_too_the_same_set_is_chosen_again_and_is_more_alike_than_the_best_balanced() {
        Random random = new Random(8);
        StringBuilder csv = new StringBuilder("piece,mass_g,d1\n");
        for (int i = 0; i < 40; i++) {
            csv.append(String.format(
                    Locale.ROOT,
                    "p%d,%.1f,%.2f%n",
                    i,
                    50 + 0.8 * random.nextGaussian(),
                    30 + 0.3 * random.nextGaussian()));
        }
        String job = SmallWheel.framed(0.5, "{\"kind\": \"wheel\", \"places\": 12, \"hub_radius\": 60}");
        JsonNode match = SmallWheel.match(job, csv.toString(), false);
        assertThat(match.get("chosen_by").asText()).isEqualTo("likeness");
        assertThat(SmallWheel.match(job, csv.toString(), false)).isEqualTo(match);
        assertThat(match.get("unbalance_g_mm").doubleValue())
                .isLessThanOrEqualTo(match.get("noise_floor_g_mm").doubleValue());
    }

    /** More pieces than sets that are made more alike: the only ones that are alike stand last in the list, apart from one another. */
    @Test
    void the_set_most_alike_is_found_among_more_pieces_than_are_gone_through() {
        Random random = new Random(9);
        StringBuilder csv = new StringBuilder("piece,mass_g,d1\n");
        for (int i = 0; i < 400; i++) {
            boolean alike = i > 300 && i % 15 == 0;
            csv.append(String.format(
                    Locale.ROOT,
                    "%s%d,%.1f,%.4f%n",
                    alike ? "a" : "p",
                    i,
                    50 + (alike ? 0.02 : 0.8) * random.nextGaussian(),
                    alike ? 32 + 1e-5 * i : 29 + 2 * random.nextDouble()));
        }
        String job = SmallWheel.framed(0.5, "{\"kind\": \"wheel\", \"places\": 6, \"hub_radius\": 60}");
        JsonNode match = SmallWheel.match(job, csv.toString(), false);
        assertThat(match.get("chosen_by").asText()).isEqualTo("likeness");
        assertThat(match.get("places"))
                .allMatch(place -> place.get("piece").asText().startsWith("a"));
    }
}
