package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import turnalike.Seeds;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.language.Language;
import turnalike.match.TradeOff;
import turnalike.pieces.PiecesFile;
import turnalike.units.UnitSystem;

/** The choice between balance and roundness, held against every order of small wheels. */
class RoundnessTest {
    /** Coarse enough that many orders are balanced as far as the scale can tell. */
    private static final double COARSE_G = 0.5;

    @Test
    void below_the_scales_noise_the_roundest_order_is_placed_and_said_not_to_be_the_best_balanced() {
        boolean[] chosen = new boolean[1];
        Seeds.each(6, random -> {
            SmallWheel wheel = SmallWheel.random(random, 5 + random.nextInt(2));
            JsonNode match = SmallWheel.match(wheel.job(COARSE_G, wheel.depthsKey()), wheel.csv(), false);
            int[] placed = SmallWheel.order(match.get("places"));
            assertThat(match.get("noise_floor_g_mm").doubleValue())
                    .isCloseTo(wheel.noiseFloor(COARSE_G, placed), within(1e-6));
            double least = wheel.everyOrder().stream()
                    .mapToDouble(order -> wheel.unbalance(order, 0, 0))
                    .min()
                    .orElseThrow();
            double roundest = wheel.everyOrder().stream()
                    .filter(order ->
                            wheel.unbalance(order, 0, 0) <= Math.max(wheel.noiseFloor(COARSE_G, order), least + 1e-6))
                    .mapToDouble(wheel::runOut)
                    .min()
                    .orElseThrow();
            double unbalance = wheel.unbalance(placed, 0, 0);
            assertThat(match.get("unbalance_g_mm").doubleValue()).isCloseTo(unbalance, within(1e-6));
            assertThat(wheel.runOut(placed)).isCloseTo(roundest, within(2e-6));
            assertThat(match.at("/rim/run_out_mm").doubleValue()).isCloseTo(roundest, within(2e-6));
            boolean more = unbalance > least + 1e-6;
            chosen[0] |= more;
            assertThat(match.get("best_proven").booleanValue()).isEqualTo(!more);
            assertThat(match.get("chosen_by").textValue()).isEqualTo(more ? "roundness" : "balance");
            assertThat(match.get("warnings").toString().contains("below the scale's noise too"))
                    .isEqualTo(more);
        });
        assertThat(chosen[0]).as("roundness had a say at least once").isTrue();
    }

    @Test
    void strictly_or_above_the_noise_the_best_balanced_order_is_placed_and_proven() {
        Seeds.each(4, random -> {
            SmallWheel wheel = SmallWheel.random(random, 6);
            double least = wheel.everyOrder().stream()
                    .mapToDouble(order -> wheel.unbalance(order, 0, 0))
                    .min()
                    .orElseThrow();
            JsonNode strict = SmallWheel.match(wheel.job(COARSE_G, ""), wheel.csv(), true);
            JsonNode fine = SmallWheel.match(wheel.job(0, ""), wheel.csv(), false);
            for (JsonNode match : List.of(strict, fine)) {
                assertThat(match.get("unbalance_g_mm").doubleValue()).isCloseTo(least, within(1e-6));
                assertThat(match.get("best_proven").booleanValue()).isTrue();
                assertThat(match.get("chosen_by").textValue()).isEqualTo("balance");
            }
        });
    }

    @Test
    void lengths_that_are_all_alike_or_not_measured_change_nothing() {
        SmallWheel wheel = SmallWheel.random(new Random(3), 6);
        String bare = wheel.csv().replaceAll("(?m),[^,\\n]*$", "");
        String alike = wheel.csv().replaceAll("(?m)^(p\\d.*),[^,\\n]*$", "$1,130");
        String job = wheel.job(COARSE_G, "");
        JsonNode without = SmallWheel.match(job, bare, false);
        JsonNode same = SmallWheel.match(job, alike, false);
        assertThat(same.get("places")).isEqualTo(without.get("places"));
        assertThat(same.get("unbalance_g_mm")).isEqualTo(without.get("unbalance_g_mm"));
        assertThat(same.get("best_proven")).isEqualTo(without.get("best_proven"));
        assertThat(without.has("rim")).isFalse();
        assertThat(same.at("/rim/run_out_mm").doubleValue()).isCloseTo(0, within(1e-9));
        // 60 of hub and 130 of piece, less 20 of hub tenon and 10 of rim tenon.
        assertThat(same.at("/rim/radius_mm").doubleValue()).isCloseTo(160, within(1e-9));
        assertThat(same.get("trade_off")).hasSize(1);
        JsonNode turned = SmallWheel.match(wheel.job(COARSE_G, "\"tenon_at\": \"end\""), alike, false);
        assertThat(turned.at("/rim/radius_mm").doubleValue()).isCloseTo(160, within(1e-9));
    }

    @Test
    void every_order_is_covered_by_the_curve_and_its_points_are_true() {
        SmallWheel wheel = SmallWheel.random(new Random(8), 6);
        JsonNode match = SmallWheel.match(
                wheel.job(0.01, wheel.depthsKey() + ", \"given_moments\": [{\"g_mm\": 60, \"at_deg\": 90}]"),
                wheel.csv(),
                true);
        JsonNode curve = match.get("trade_off");
        assertThat(curve.size()).isGreaterThan(2);
        List<double[]> points = new ArrayList<>();
        for (JsonNode point : curve) {
            int[] order = SmallWheel.order(point.get("places"));
            double[] figures = {
                point.get("unbalance_g_mm").doubleValue(),
                point.get("run_out_mm").doubleValue()
            };
            assertThat(figures[0]).isCloseTo(wheel.unbalance(order, 0, 60), within(1e-6));
            assertThat(figures[1]).isCloseTo(wheel.runOut(order), within(1e-6));
            points.add(figures);
        }
        for (int[] order : wheel.everyOrder()) {
            double unbalance = wheel.unbalance(order, 0, 60);
            double runOut = wheel.runOut(order);
            assertThat(points).anyMatch(point -> point[0] <= unbalance + 1e-6 && point[1] <= runOut + 2e-6);
        }
    }

    @Test
    void seats_deepened_as_told_make_the_rim_round_about_the_axle() {
        SmallWheel wheel = SmallWheel.random(new Random(9), 6);
        JsonNode match = SmallWheel.match(wheel.job(0.01, wheel.depthsKey()), wheel.csv(), true);
        JsonNode way = match.get("with_boring").get(match.get("with_boring").size() - 1);
        int[] order = SmallWheel.order(way.get("places"));
        for (int place = 0; place < order.length; place++) {
            double deepen = way.at("/seat_deepen_mm/" + place).doubleValue();
            assertThat(deepen).isGreaterThanOrEqualTo(0);
            wheel.depths[place] += deepen;
        }
        double[] radii = wheel.radii(order);
        for (double radius : radii) {
            assertThat(radius).isCloseTo(radii[0], within(1e-9));
        }
    }

    /** "At most", and "add up to": seats are bored at random as far off as the job allows, and every rim is turned past the gauge. */
    @Test
    void the_gauge_reads_no_more_than_told_wherever_the_seats_come_out() {
        SmallWheel wheel = SmallWheel.random(new Random(9), 6);
        Job job = JobReader.read(wheel.job(0.01, wheel.depthsKey())).job().orElseThrow();
        WheelSet set = (WheelSet) MatchJob.of(
                job, PiecesFile.parse(wheel.csv(), UnitSystem.METRIC).pieces(), false, Effort.ofAsks(10_000));
        Roundness roundness = set.roundness().orElseThrow();
        double seat = roundness.seat().mm();
        assertThat(seat).isEqualTo(0.25);
        List<TradeOff.Point> ways = new ArrayList<>(roundness.bored());
        ways.add(roundness.placed());
        assertThat(ways).hasSizeGreaterThan(1);
        Random random = new Random(11);
        for (TradeOff.Point way : ways) {
            double told = roundness.aboutAxle(way).mm();
            int[] order = roundness.labels(way).stream()
                    .mapToInt(label -> Integer.parseInt(label.substring(1)))
                    .toArray();
            double[] radii = wheel.radii(order);
            double most = 0;
            for (int trial = 0; trial < 2000; trial++) {
                double[] built = radii.clone();
                for (int place = 0; place < built.length; place++) {
                    built[place] -= way.deepenings().get(place).mm();
                    built[place] += seat * (trial == 0 ? 0 : 2 * random.nextDouble() - 1);
                }
                double read = Arrays.stream(built).max().orElseThrow()
                        - Arrays.stream(built).min().orElseThrow();
                assertThat(read).isLessThanOrEqualTo(told + (trial == 0 ? 0 : 2 * seat) + 1e-9);
                most = Math.max(most, read);
            }
            assertThat(most).as("the seats' share is needed").isGreaterThan(told);
        }
    }

    /** Seats that nobody would bore so little deeper are counted, and add no more than told to what the gauge reads when left as they are. */
    @Test
    void seats_bored_by_less_than_can_be_set_are_left_out_and_what_they_add_is_told() {
        int leftOut = 0;
        for (int seed = 0; seed < 12; seed++) {
            SmallWheel wheel = SmallWheel.random(new Random(seed), 6);
            Job job = JobReader.read(wheel.job(0.01, wheel.depthsKey())).job().orElseThrow();
            WheelSet set = (WheelSet) MatchJob.of(
                    job, PiecesFile.parse(wheel.csv(), UnitSystem.METRIC).pieces(), false, Effort.ofAsks(10_000));
            Roundness roundness = set.roundness().orElseThrow();
            for (TradeOff.Point way : roundness.bored()) {
                double[] bored = wheel.radii(roundness.labels(way).stream()
                        .mapToInt(label -> Integer.parseInt(label.substring(1)))
                        .toArray());
                int left = 0;
                for (int place = 0; place < bored.length; place++) {
                    double by = way.deepenings().get(place).mm();
                    bored[place] -= by < 0.1 ? 0 : by;
                    left += by > 1e-6 && by < 0.1 ? 1 : 0;
                }
                String told = roundness.seats(way);
                Matcher words = LEFT_OUT.matcher(told);
                assertThat(words.find()).as(told).isEqualTo(left > 0 && roundness.deepened(way) > 0);
                assertThat(told).doesNotContain("by 0.0");
                assertThat(Language.GERMAN.knows("so these seats are to be bored deeper: " + told))
                        .isTrue();
                if (left > 0 && roundness.deepened(way) > 0) {
                    leftOut += left;
                    assertThat(words.group(1)).isEqualTo(String.valueOf(left));
                    double read = Arrays.stream(bored).max().orElseThrow()
                            - Arrays.stream(bored).min().orElseThrow();
                    assertThat(read)
                            .isLessThanOrEqualTo(
                                    roundness.aboutAxle(way).mm() + Double.parseDouble(words.group(2)) + 1e-9);
                }
            }
        }
        assertThat(leftOut).isPositive();
    }

    private static final Pattern LEFT_OUT =
            Pattern.compile("; (\\d+) by less than 0.1 mm left out, which adds (0\\.\\d+) mm at most to what a gauge");

    @Test
    void a_large_wheel_has_a_curve_even_when_the_effort_is_gone() {
        SmallWheel wheel = SmallWheel.random(new Random(10), 24);
        Job job = JobReader.read(wheel.job(0.01, "")).job().orElseThrow();
        SetMatch match = MatchJob.of(
                job, PiecesFile.parse(wheel.csv(), UnitSystem.METRIC).pieces(), true, Effort.ofAsks(0));
        Roundness roundness = ((WheelSet) match).roundness().orElseThrow();
        assertThat(roundness.curve()).hasSizeGreaterThan(3);
        for (int i = 1; i < roundness.curve().size(); i++) {
            assertThat(roundness.curve().get(i).unbalance().gMm())
                    .isGreaterThan(roundness.curve().get(i - 1).unbalance().gMm());
            assertThat(roundness.curve().get(i).rim().runOut())
                    .isLessThan(roundness.curve().get(i - 1).rim().runOut());
        }
    }

    @Test
    void lengths_missing_or_read_wrong_are_told_and_the_set_is_placed_all_the_same() {
        SmallWheel wheel = SmallWheel.random(new Random(11), 6);
        String job = wheel.job(0.1, "");
        String missing = wheel.csv().replaceAll("(?m)^(p2.*),[^,\\n]*$", "$1,");
        String slip = wheel.csv().replaceAll("(?m)^(p4.*),[^,\\n]*$", "$1,13");
        String far = wheel.csv().replaceAll("(?m)^(p4.*),[^,\\n]*$", "$1,1300");
        assertThat(told(SmallWheel.match(job, missing, false))).contains("no length measured on piece p2");
        assertThat(told(SmallWheel.match(job, slip, false))).contains("piece p4 is no longer than its tenons");
        assertThat(told(SmallWheel.match(job, far, false))).contains("piece p4 is far from as long as the others");
        String deep = "\"seat_depths\": [0, 0, 90, 0, 0, 0]";
        assertThat(told(SmallWheel.match(wheel.job(0.1, deep), wheel.csv(), false)))
                .contains("the seat of place 3 is deeper than any slip");
        assertThat(told(SmallWheel.match(wheel.job(0.1, deep), wheel.csv().replaceAll("(?m),[^,\\n]*$", ""), false)))
                .contains("no length measured on piece");
    }

    private static String told(JsonNode match) {
        assertThat(match.get("places")).hasSize(6);
        assertThat(match.has("rim")).isFalse();
        assertThat(match.has("trade_off")).isFalse();
        return match.get("warnings").toString();
    }

    /** The roughest rims that are still judged: a circle must be found for each. */
    @Test
    void a_rim_as_rough_as_is_let_through_has_a_circle() {
        Seeds.each(40, random -> {
            SmallWheel wheel = SmallWheel.random(random, 3 + random.nextInt(7));
            for (int i = 0; i < wheel.lengths.length; i++) {
                wheel.lengths[i] = i < 2 ? 130 : random.nextBoolean() ? 111 : 149;
                wheel.depths[i] = random.nextBoolean() ? 19 : 0;
            }
            String csv = wheel.csv();
            JsonNode match = SmallWheel.match(wheel.job(0.1, wheel.depthsKey()), csv, true);
            if (match.has("rim")) {
                int[] order = SmallWheel.order(match.get("places"));
                assertThat(match.at("/rim/run_out_mm").doubleValue()).isCloseTo(wheel.runOut(order), within(1e-3));
            } else {
                assertThat(match.get("warnings").toString()).contains("far from as long");
            }
        });
    }
}
