package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.answer.PlanJson;
import turnalike.job.read.JobReader;
import turnalike.units.Problem;

/** A rim of uneven segments: its own pull joins the balance, and what is left is told part by part. */
class RimSegmentsTest {
    private static final double[] GRAMS = {412, 405.5, 409, 417};

    private static final String RIM = "\"segments\": 4, \"rim_width\": 40, \"rim_segments_g\": [412, 405.5, 409, 417]";

    /**
     * The rim's pull by another route: the line of balance points of thin arcs, each sin(h)/h of its radius away, weighed by radius. Four
     * segments and five places: joints repeat every 18 degrees, so the first stands 9 degrees after place 1, the first segment's middle 54.
     */
    private static double[] rim() {
        double inner = 60 + 100;
        double outer = inner + 40;
        double half = Math.PI / 4;
        double over = 0;
        double under = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            double radius = inner + (outer - inner) * (i + 0.5) / steps;
            over += radius * radius * Math.sin(half) / half;
            under += radius;
        }
        double[] out = new double[2];
        for (int i = 0; i < 4; i++) {
            double at = Math.toRadians(54 + 90 * i);
            out[0] += GRAMS[i] * over / under * Math.cos(at);
            out[1] += GRAMS[i] * over / under * Math.sin(at);
        }
        return out;
    }

    @Test
    void the_pieces_are_placed_against_the_rims_own_pull() {
        SmallWheel wheel = SmallWheel.random(new Random(4), 5);
        JsonNode json = SmallWheel.match(wheel.job(0.1, RIM), wheel.csv(), true);
        double[] rim = rim();
        double least = wheel.everyOrder().stream()
                .mapToDouble(order -> wheel.unbalance(order, rim[0], rim[1]))
                .min()
                .orElseThrow();
        JsonNode parts = json.get("unbalance_from");
        assertThat(parts).hasSize(2);
        assertThat(parts.get(1).get("from").textValue()).isEqualTo("the rim's segments");
        assertThat(parts.get(1).get("g_mm").doubleValue()).isCloseTo(Math.hypot(rim[0], rim[1]), within(1e-3));
        int[] order = SmallWheel.order(json.get("places"));
        assertThat(parts.get(0).get("g_mm").doubleValue()).isCloseTo(wheel.unbalance(order, 0, 0), within(1e-6));
        assertThat(wheel.unbalance(order, rim[0], rim[1]))
                .isCloseTo(json.get("unbalance_g_mm").doubleValue(), within(1e-3));
        assertThat(json.get("unbalance_g_mm").doubleValue()).isCloseTo(least, within(1e-3));
        // Blind to the rim the same pieces would stand otherwise, and the rim's pull would come on top.
        JsonNode blind = SmallWheel.match(wheel.job(0.1, ""), wheel.csv(), true);
        assertThat(blind.has("unbalance_from")).isFalse();
        assertThat(wheel.unbalance(SmallWheel.order(blind.get("places")), rim[0], rim[1]))
                .isGreaterThan(least + 10);
    }

    @Test
    void parts_add_up_to_what_is_left() {
        SmallWheel wheel = SmallWheel.random(new Random(9), 5);
        JsonNode json = SmallWheel.match(
                wheel.job(0.1, RIM + ", \"given_moments\": [{\"g_mm\": 900, \"at_deg\": 200}]"), wheel.csv(), false);
        double x = 0;
        double y = 0;
        for (JsonNode part : json.get("unbalance_from")) {
            double at = Math.toRadians(part.get("at_deg").doubleValue());
            x += part.get("g_mm").doubleValue() * Math.cos(at);
            y += part.get("g_mm").doubleValue() * Math.sin(at);
        }
        assertThat(json.get("unbalance_from")).hasSize(3);
        assertThat(Math.hypot(x, y)).isCloseTo(json.get("unbalance_g_mm").doubleValue(), within(1e-6));
    }

    @Test
    void the_rim_weighs_what_its_segments_do_less_its_mortises() throws IOException {
        Job job = JobReader.read(SmallWheel.framed(
                        0.1,
                        "{\"kind\": \"wheel\", \"places\": 5, \"hub_radius\": 60, \"rim_thickness\": 30, %s}"
                                .formatted(RIM)))
                .job()
                .orElseThrow();
        FrameFit fit = job.frame()
                .orElseThrow()
                .fit(job.pattern(), job.wood().density(), job.units())
                .orElseThrow();
        double grams = 412 + 405.5 + 409 + 417;
        double ring = Math.PI * (200.0 * 200 - 160.0 * 160) * 30;
        double holes = 5 * Math.PI / 4 * 12 * 12 * 10;
        assertThat(((WheelFit) fit).whole().rim().orElseThrow().grams())
                .isCloseTo(grams * (ring - holes) / ring, within(1e-6));
        assertThat(fit.sentences(job.units(), job.tolerances().masses()))
                .anyMatch(line -> line.contains("its segments pull"));
        assertThat(new ObjectMapper()
                        .readTree(PlanJson.print(Plan.of(job, Effort.ofAsks(500))))
                        .get("frame")
                        .get("rim")
                        .get("segments_pull")
                        .get("g_mm")
                        .doubleValue())
                .isCloseTo(Math.hypot(rim()[0], rim()[1]), within(1e-3));
    }

    @Test
    void masses_that_cannot_be_are_refused_in_words() throws IOException {
        assertThat(problems("\"rim_segments_g\": [1, 2, 3]"))
                .singleElement()
                .asString()
                .contains("rim_segments_g", "give segments and rim_width");
        assertThat(problems("\"segments\": 4, \"rim_width\": 40, \"rim_segments_g\": [1, 2, 3]"))
                .singleElement()
                .asString()
                .contains("has 3 masses for 4 segments");
        String good = Files.readString(Path.of("src/test/resources/turnalike/job/good/wheel.job.json"))
                .replace("\"segments\": 5", "\"segments\": 5, \"rim_segments_g\": [400, 401, 402, 403, 404]");
        assertThat(JobReader.read(good).problems())
                .singleElement()
                .extracting(Problem::line)
                .asString()
                .contains("stands beside rocking");
        assertThat(JobReader.read(good.replaceFirst("(?s),\\s*\"rocking\": \\{.*?}", ""))
                        .problems())
                .isEmpty();
    }

    private static List<String> problems(String keys) {
        return JobReader.read(SmallWheel.framed(
                        0.1, "{\"kind\": \"wheel\", \"places\": 5, \"hub_radius\": 60, " + keys + "}"))
                .problems()
                .stream()
                .map(Problem::line)
                .toList();
    }
}
