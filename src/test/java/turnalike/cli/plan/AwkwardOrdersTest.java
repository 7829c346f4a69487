package turnalike.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.cli.Ran;
import turnalike.job.Job;
import turnalike.job.fields.Json;
import turnalike.job.fields.Reading;
import turnalike.job.read.JobReader;
import turnalike.outline.Section;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/**
 * Five orders, invented, each awkward in its own way: balusters with squares on a rake in two lengths, a seven-foot post, a finial in a chuck, three
 * splayed legs, a measured copy in a wheel of two rows. What a turner looks at first holds for whatever the plan says; nothing is compared with
 * an earlier run. That no words overlap or leave the page is seen by {@code LongestJobsTest} on the same orders.
 */
class AwkwardOrdersTest {
    private static final Path ORDERS = Path.of("src/test/resources/turnalike/sheets/orders");
    private static final double NOISE = 1e-6;
    private static final double CEILING_RPM = 3500;

    @TempDir
    private Path folder = Path.of("");

    /** One length that the pieces are made in, the order itself where there is one, and its plan. */
    private record Way(Pattern pattern, JsonNode plan) {
        static List<Way> of(Job job, JsonNode plan) {
            List<Way> out = new ArrayList<>();
            plan.path("lengths")
                    .forEach(each -> out.add(new Way(
                            job.pattern()
                                    .stretched(
                                            "one length",
                                            each.get("stretch").asInt(),
                                            Length.ofMm(each.get("length_mm").asDouble())),
                            each)));
            return out.isEmpty() ? List.of(new Way(job.pattern(), plan)) : out;
        }

        List<PlacedMember> squares() {
            return pattern.placed().stream()
                    .filter(placed -> placed.member().section() == Section.SQUARE)
                    .toList();
        }

        /** Whether some of what lies from one place to another is square, its shoulders not counted. */
        boolean onSquare(double fromMm, double toMm) {
            return squares().stream()
                    .anyMatch(square -> Math.max(fromMm, toMm) > square.start().mm() + NOISE
                            && Math.min(fromMm, toMm) < square.end().mm() - NOISE);
        }

        List<JsonNode> cuts(String phase) {
            List<JsonNode> out = new ArrayList<>();
            plan.at("/turning/cuts").forEach(cut -> {
                if (cut.get("phase").asText().equals(phase)) {
                    out.add(cut);
                }
            });
            return out;
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"balusters", "post", "finial", "legs", "wheel"})
    void nothing_in_it_would_make_a_turner_laugh(String order) throws IOException {
        Path file = ORDERS.resolve(order + ".job.json");
        Ran ran = Ran.here("plan", file.toString(), "--json", "--out", folder.toString(), "--seconds", "2");
        assertThat(ran.code()).as(ran.err()).isZero();
        String text = Files.readString(file);
        assertThat(text).contains("(invented order)");
        Job job = JobReader.read(text).job().orElseThrow();
        JsonNode plan = Json.parse(ran.out(), new Reading()).orElseThrow();
        assertThat(ran.out()).doesNotContain("NaN", "Infinity");
        List<Way> ways = Way.of(job, plan);
        ways.forEach(AwkwardOrdersTest::layout);
        ways.forEach(AwkwardOrdersTest::sizes);
        ways.forEach(AwkwardOrdersTest::speeds);
        ways.forEach(AwkwardOrdersTest::order);
        totals(job, plan, ways);
        frame(plan);
        sheets();
    }

    /** No opening wider than the turner's dividers, none stepped over or on a square, and every mark there once. */
    private static void layout(Way way) {
        JsonNode settings = way.plan().get("settings");
        JsonNode marks = way.plan().get("marks");
        Set<Integer> reached = new TreeSet<>(List.of(0, marks.size() - 1));
        settings.get("shoulders").forEach(mark -> reached.add(mark.asInt()));
        settings.get("on_the_stick").forEach(mark -> reached.add(mark.asInt()));
        for (JsonNode divider : settings.get("dividers")) {
            double opening = divider.get("mm").asDouble();
            assertThat(opening).isLessThanOrEqualTo(settings.get("largest_mm").asDouble() + NOISE);
            for (JsonNode step : divider.get("steps")) {
                double from = step.get("from_mm").asDouble();
                double to = step.get("to_mm").asDouble();
                assertThat(Math.abs(to - from)).isCloseTo(opening, within(0.1 + NOISE));
                assertThat(way.onSquare(from, to)).as("step %s to %s", from, to).isFalse();
                assertThat(reached.add(step.get("to").asInt()))
                        .as("struck twice: %s", step)
                        .isTrue();
            }
        }
        assertThat(reached).hasSize(marks.size());
    }

    /** No caliper over the stock or over what roughing has left, none on a square, the widest first. */
    private static void sizes(Way way) {
        double stock = way.plan().at("/stock/blank/size_mm").asDouble();
        way.plan()
                .at("/settings/calipers")
                .forEach(each -> assertThat(each.get("mm").asDouble()).isLessThanOrEqualTo(stock));
        double roughed = way.cuts("square to round").stream()
                .mapToDouble(cut -> cut.get("setting_mm").asDouble())
                .max()
                .orElseThrow();
        assertThat(roughed).isLessThan(stock);
        double before = roughed;
        for (JsonNode cut : way.cuts("sizing cuts")) {
            assertThat(cut.get("setting_mm").asDouble()).isLessThanOrEqualTo(before + NOISE);
            before = cut.get("setting_mm").asDouble();
            cut.get("places_mm").forEach(place -> assertThat(way.onSquare(place.asDouble(), place.asDouble()))
                    .as("sized at %s", place)
                    .isFalse());
        }
        way.cuts("square to round").forEach(cut -> assertThat(way.onSquare(
                        cut.get("from_mm").asDouble(), cut.get("to_mm").asDouble()))
                .isFalse());
        way.cuts("parting off").stream()
                .filter(cut -> cut.get("tool").asText().equals("parting tool"))
                .forEach(cut -> assertThat(way.squares())
                        .as("a square parted down")
                        .noneMatch(square -> square.end().mm()
                                        >= cut.get("from_mm").asDouble() - NOISE
                                && square.start().mm() <= cut.get("from_mm").asDouble() + NOISE));
    }

    private static void speeds(Way way) {
        JsonNode turning = way.plan().get("turning");
        assertThat(turning.get("speed_offered").asBoolean()).isTrue();
        for (String which : List.of("speed_rpm", "roughing_rpm")) {
            JsonNode range = turning.get(which);
            double to = range.get("to").asDouble();
            assertThat(range.get("from").asDouble()).isPositive().isLessThan(to);
            assertThat(to).isLessThanOrEqualTo(CEILING_RPM);
            assertThat(to).isLessThanOrEqualTo(turning.get("whip_limit_rpm").asDouble() + NOISE);
            range.get("lathe_steps").forEach(step -> assertThat(step.asDouble()).isLessThanOrEqualTo(to + NOISE));
        }
        assertThat(turning.at("/roughing_rpm/to").asDouble())
                .isLessThanOrEqualTo(turning.at("/speed_rpm/to").asDouble() + NOISE);
        turning.at("/strength/strains")
                .forEach(each -> assertThat(each.get("borne").asBoolean()).isTrue());
    }

    /** Numbered without a gap, every round member cut to its shape once. */
    private static void order(Way way) {
        JsonNode cuts = way.plan().at("/turning/cuts");
        Set<Integer> shaped = new TreeSet<>();
        for (int i = 0; i < cuts.size(); i++) {
            assertThat(cuts.get(i).get("order").asInt()).isEqualTo(i + 1);
            assertThat(cuts.get(i).get("what").asText()).isNotBlank().doesNotContain("null", "  ");
            String phase = cuts.get(i).get("phase").asText();
            boolean shapes = !Set.of(
                            "square to round", "sizing cuts", "sanding", "shoulders of the square", "parting off")
                    .contains(phase);
            if (shapes) {
                cuts.get(i).get("members").forEach(member -> shaped.add(member.asInt()));
            }
        }
        for (PlacedMember placed : way.pattern().placed()) {
            boolean round = placed.member().section() == Section.ROUND;
            assertThat(shaped.contains(placed.number() - 1) || !round)
                    .as(placed.where())
                    .isTrue();
        }
    }

    private static void totals(Job job, JsonNode plan, List<Way> ways) {
        assertThat(plan.get("count").asInt()).isEqualTo(job.count());
        int pieces = 0;
        int blanks = 0;
        for (Way way : ways) {
            JsonNode stock = way.plan().get("stock");
            int count = way.plan().get("count").asInt();
            assertThat(stock.get("blanks").asInt() - stock.get("spares").asInt())
                    .isEqualTo(count);
            double length = way.pattern().length().mm();
            JsonNode marks = way.plan().get("marks");
            assertThat(marks.get(marks.size() - 1).get("mm").asDouble()).isCloseTo(length, within(NOISE));
            assertThat(stock.at("/blank/length_mm").asDouble()).isGreaterThanOrEqualTo(length);
            JsonNode solid = way.plan().get("solid");
            assertThat(solid.get("mass_g").asDouble())
                    .isCloseTo(
                            solid.get("volume_mm3").asDouble()
                                    * solid.get("density_kg_m3").asDouble()
                                    / 1e6,
                            within(1e-3));
            pieces += count;
            blanks += stock.get("blanks").asInt();
        }
        assertThat(pieces).isEqualTo(job.count());
        if (ways.size() > 1) {
            assertThat(plan.at("/lengths_total/count").asInt()).isEqualTo(pieces);
            assertThat(plan.at("/lengths_total/blanks").asInt()).isEqualTo(blanks);
        }
    }

    private static void frame(JsonNode plan) {
        if (plan.has("frame")) {
            assertThat(plan.at("/frame/buildable").asBoolean()).isTrue();
            if (plan.at("/frame/openings").isObject()) {
                assertThat(plan.at("/frame/openings/widest_mm").asDouble())
                        .isLessThanOrEqualTo(plan.at("/frame/limit_mm").asDouble());
            }
        }
    }

    private void sheets() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path each : files.toList()) {
                byte[] bytes = Files.readAllBytes(each);
                String name = each.getFileName().toString();
                String start = name.endsWith(".pdf") ? "%PDF" : name.endsWith(".svg") ? "<svg" : "";
                assertThat(new String(bytes, StandardCharsets.UTF_8))
                        .as(name)
                        .contains(start)
                        .doesNotContain("NaN");
            }
        }
        assertThat(Files.exists(folder.resolve("outline.dxf"))).isTrue();
    }
}
