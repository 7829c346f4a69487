package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.job.Job;
import turnalike.job.read.JobReader;

/** What a wheel's frame may tell beside its places, held against formulas worked by hand. */
class WheelFrameTest {
    private final SmallWheel wheel = SmallWheel.random(new Random(21), 6);

    private JsonNode match(String keys) {
        return SmallWheel.match(wheel.job(0.1, keys), wheel.csv(), true);
    }

    /**
     * U = 4π² I / (g T²): compound pendulum, Encyclopaedia Britannica, 11th ed., Mechanics (VERIFIED). A ring of 2300 g at 400 mm has
     * I = 3.68e8 g·mm²; with T = 6.4 s that is 36 168.2… g·mm.
     */
    @Test
    void a_rocking_test_counts_like_a_given_moment_of_the_pendulum_formula() {
        double gMm = 4 * Math.PI * Math.PI * 2300 * 400 * 400 / (9806.65 * 6.4 * 6.4);
        JsonNode rocked = match(
                "\"rocking\": {\"period_s\": 6.4, \"rim_mass_g\": 2300, \"rim_radius\": \"400 mm\", \"rests_at_deg\": 120}");
        assertThat(rocked.at("/rocking/g_mm").doubleValue()).isCloseTo(gMm, withinPercentage(1e-9));
        assertThat(rocked.at("/rocking/at_deg").doubleValue()).isCloseTo(120, within(1e-9));
        JsonNode given = match("\"given_moments\": [{\"g_mm\": %s, \"at_deg\": 120}]".formatted(gMm));
        assertThat(rocked.get("places")).isEqualTo(given.get("places"));
        assertThat(rocked.get("unbalance_g_mm").doubleValue())
                .isCloseTo(given.get("unbalance_g_mm").doubleValue(), withinPercentage(1e-9));
        assertThat(rocked.get("unbalance_g_mm").doubleValue())
                .isCloseTo(
                        wheel.unbalance(
                                SmallWheel.order(rocked.get("places")),
                                gMm * Math.cos(Math.toRadians(120)),
                                gMm * Math.sin(Math.toRadians(120))),
                        withinPercentage(1e-8));
        assertThat(rocked.get("workings").toString()).contains("Britannica", "thin ring", "T = 6.4");
        JsonNode inertia = match("\"rocking\": {\"period_s\": 6.4, \"inertia_g_mm2\": 3.68e8, \"rests_at_deg\": 120}");
        assertThat(inertia.at("/rocking/g_mm").doubleValue()).isCloseTo(gMm, withinPercentage(1e-9));
        assertThat(inertia.get("workings").toString()).doesNotContain("thin ring");
    }

    /** A swing of 60° lasts 1.07318 times a small one (complete elliptic integral, K(sin 30°)·2/π, from memory). */
    @Test
    void a_wide_swing_is_corrected() {
        JsonNode wide = match("\"rocking\": {\"period_s\": 10.7318, \"inertia_g_mm2\": 3.68e8, \"amplitude_deg\": 60,"
                + " \"rests_at_deg\": 0}");
        double small = 4 * Math.PI * Math.PI * 3.68e8 / (9806.65 * 100);
        assertThat(wide.at("/rocking/g_mm").doubleValue()).isCloseTo(small, withinPercentage(0.1));
    }

    /** G = U·ω / m and U = G·m / ω: ISO 21940-11 (formula VERIFIED in a tooling catalogue). */
    @Test
    void the_grade_at_a_speed_is_told_with_a_caution() {
        JsonNode match = match("\"rpm\": 90");
        double mass = 0;
        for (double each : wheel.masses) {
            mass += each;
        }
        double radPerS = 90 * 2 * Math.PI / 60;
        JsonNode grade = match.get("balance_grade");
        assertThat(grade.get("mass_g").doubleValue()).isCloseTo(mass, within(1e-9));
        assertThat(grade.get("reached_mm_s").doubleValue())
                .isCloseTo(match.get("unbalance_g_mm").doubleValue() * radPerS / mass, withinPercentage(1e-9));
        assertThat(grade.at("/permitted/0/grade_mm_s").doubleValue()).isEqualTo(16);
        assertThat(grade.at("/permitted/0/unbalance_g_mm").doubleValue())
                .isCloseTo(16 * mass / radPerS, withinPercentage(1e-9));
        assertThat(grade.at("/permitted/1/unbalance_g_mm").doubleValue())
                .isCloseTo(40 * mass / radPerS, withinPercentage(1e-9));
        assertThat(match.get("warnings").toString()).contains("for information").doesNotContain("safe", "complies");
        assertThat(match("").has("balance_grade")).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "\"rpm\": 0 | frame: rpm: was 0; give a number from",
                "\"rpm\": \"fast\" | frame: rpm: was 'fast'; give a number from",
                "\"seat_depths\": 3 | frame: seat_depths: is no list, was 3; give one depth for each of the 6 places",
                "\"seat_depths\": [0, 1] | frame: seat_depths: has 2 depths for 6 places; give one depth for each of the 6 places, 0 for",
                "\"seat_depths\": [0, 0, -1, 0, 0, 0] | frame: seat_depths 3: is negative, was -1; give",
                "\"seat_depths\": [0, 0, 0, 0, \"x\", 0] | frame: seat_depths 5: ",
                "\"rocking\": 6 | frame: rocking: is no object, was 6; write it like",
                "\"rocking\": {\"rests_at_deg\": 0, \"inertia_g_mm2\": 9} | frame: rocking: period_s: is missing; give a number",
                "\"rocking\": {\"period_s\": 0, \"rests_at_deg\": 0, \"inertia_g_mm2\": 9} | frame: rocking: period_s: was 0; give",
                "\"rocking\": {\"period_s\": 5, \"inertia_g_mm2\": 9} | frame: rocking: rests_at_deg: is missing; give a number",
                "\"rocking\": {\"period_s\": 5, \"rests_at_deg\": 0} | frame: rocking: has no inertia; give inertia_g_mm2, or rim_mass_g",
                "\"rocking\": {\"period_s\": 5, \"rests_at_deg\": 0, \"inertia_g_mm2\": 9, \"rim_radius\": 9} | frame: rocking:"
                        + " has an inertia and a rim",
                "\"rocking\": {\"period_s\": 5, \"rests_at_deg\": 0, \"rim_radius\": 9} | frame: rocking: rim_mass_g: is missing; give",
                "\"rocking\": {\"period_s\": 5, \"rests_at_deg\": 0, \"rim_mass_g\": 9} | frame: rocking: rim_radius: is missing; give",
                "\"rocking\": {\"period_s\": 0.5, \"rests_at_deg\": 0, \"rim_mass_g\": 9, \"rim_radius\": 400} | frame: rocking:"
                        + " period_s: is quicker than any ring of that radius swings, was 0.5; time one full swing",
                "\"rocking\": {\"period_s\": 5, \"rests_at_deg\": 0, \"inertia_g_mm2\": 9, \"amplitude_deg\": 90} | frame:"
                        + " rocking: amplitude_deg: was 90; give a number from 0 to 60",
                "\"rocking\": {\"period_s\": 5, \"rests_at_deg\": 0, \"inertia_g_mm2\": 9, \"swing\": 9} | frame: rocking: has"
                        + " an unknown key 'swing'; remove it or use one of period_s, amplitude_deg",
            })
    void what_makes_no_sense_is_told_with_place_and_mend(String keys, String line) {
        Job.Read read = JobReader.read(wheel.job(0.1, keys));
        assertThat(read.problems()).hasSize(1);
        assertThat(read.problems().get(0).line()).startsWith(line);
    }

    /** Spares of 50, 50.4 and 52 g toward six pieces within 10 %: all three, and three more of a range sure to pass at its corners. */
    @Test
    void spares_are_put_aside_for_the_next_set() {
        String csv = "piece,mass_g\na,60\nb,60\nc,60\nd,60\ne,60\nf,60\ng,50\nh,50.4\ni,52\n";
        JsonNode match = SmallWheel.match(wheel.job(0.1, ""), csv, false);
        JsonNode next = match.get("next_set");
        assertThat(match.get("spares")).hasSize(3);
        assertThat(next.get("pieces")).hasSize(3);
        assertThat(next.get("pieces").get(0).textValue()).isEqualTo("g");
        assertThat(next.get("missing").intValue()).isEqualTo(3);
        double from = next.get("aim_from_g").doubleValue();
        double to = next.get("aim_to_g").doubleValue();
        for (int low = 0; low <= 3; low++) {
            double least = low > 0 ? Math.min(from, 50) : 50;
            double most = low < 3 ? Math.max(to, 52) : 52;
            assertThat((most - least) * 6 / (152.4 + low * from + (3 - low) * to))
                    .isLessThanOrEqualTo(0.1 + 1e-9);
        }
        // The work runs at 56.9 g, so the range reaches as high as the spares let it.
        assertThat(next.get("work_runs_at_g").doubleValue()).isCloseTo(512.4 / 9, within(1e-9));
        assertThat(to).isBetween(55.0, 56.0);
        assertThat(SmallWheel.match(wheel.job(0.1, ""), csv.replaceAll("[ghi],.*\n", ""), false)
                        .has("next_set"))
                .isFalse();
    }
}
