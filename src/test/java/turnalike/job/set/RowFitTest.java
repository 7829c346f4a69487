package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.answer.PlanJson;
import turnalike.job.fields.Json;
import turnalike.job.read.JobReader;
import turnalike.turning.Cut;
import turnalike.units.Length;
import turnalike.units.MassUnit;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** A row of plain cylinders, where everything follows from a division; and what is said to mend it does. */
class RowFitTest {
    private static final double RADIUS = 15;
    private static final double TALL = 700;

    /** Cylinders 30 mm thick and 700 high between tenons, in a row as told. */
    private static ObjectNode tree(Consumer<ObjectNode> frame) {
        ObjectNode root = Json.object()
                .put("format", "turnalike-job")
                .put("version", 1)
                .put("title", "Plain rail (invented)")
                .put("units", "mm");
        ObjectNode pattern = root.putObject("pattern").put("name", "Rod");
        pattern.putObject("stock").put("section", "square").put("size", 40).put("length", 760);
        var members = pattern.putArray("members");
        members.addObject().put("kind", "tenon").put("length", 25).put("diameter", 18);
        members.addObject().put("kind", "cylinder").put("length", TALL).put("diameter", 2 * RADIUS);
        members.addObject().put("kind", "tenon").put("length", 20).put("diameter", 16);
        root.putObject("wood").put("density_kg_m3", 650);
        frame.accept(root.putObject("frame").put("kind", "row"));
        return root;
    }

    private static Job job(Consumer<ObjectNode> frame) {
        return JobReader.read(Json.print(tree(frame))).job().orElseThrow();
    }

    private static List<Problem> problems(Consumer<ObjectNode> frame) {
        return JobReader.read(Json.print(tree(frame))).problems();
    }

    private static RowFit fit(Consumer<ObjectNode> frame) {
        Job job = job(frame);
        return (RowFit) job.frame()
                .orElseThrow()
                .fit(job.pattern(), job.wood().density(), UnitSystem.METRIC)
                .orElseThrow();
    }

    /** The widest ball may pass beside a post and nowhere else: the limit holds there too. */
    @Test
    void a_limit_that_only_the_opening_beside_a_post_breaks_is_not_kept() {
        Consumer<ObjectNode> wideEnds =
                frame -> frame.put("places", 8).put("clear", 900).put("end", 160);
        RowFit fit = fit(wideEnds);
        Length between = fit.between().orElseThrow().diameter();
        assertThat(fit.end().diameter()).isGreaterThan(between);
        assertThat(fit.widest()).isEqualTo(fit.end().diameter());
        assertThat(fit.isKept(between)).isFalse();
        assertThat(fit(wideEnds.andThen(frame -> frame.put("largest_opening", between.mm() + 1)))
                        .facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(line -> line.endsWith(": not kept"));
    }

    /** A limit is kept by a ball just as large as it allows, and by none larger. */
    @Test
    void a_limit_holds_exactly_at_the_widest_ball() {
        RowFit fit = fit(frame -> frame.put("places", 6).put("clear", 900).put("rake_deg", 30));
        assertThat(fit.isKept(fit.widest())).isTrue();
        assertThat(fit.isKept(fit.widest().minus(Length.ofMm(0.01)))).isFalse();
        // And it is said so from there on, not a little later.
        for (double less : new double[] {0, 0.001, 0.01}) {
            double limit = fit.widest().mm() - less;
            RowFit held = fit(frame ->
                    frame.put("places", 6).put("clear", 900).put("rake_deg", 30).put("largest_opening", limit));
            assertThat(held.misfits().stream().anyMatch(each -> each.what().contains("more than your limit")))
                    .as("%s mm less", less)
                    .isEqualTo(less > 0);
        }
    }

    /** What the row says the blank must have is laid in front of the datum and not sawn off at the lathe. */
    @Test
    void the_order_of_cuts_leaves_a_sloping_end_its_wood() {
        List<String> raked = cuts(45);
        assertThat(raked)
                .anyMatch(cut ->
                        cut.contains("from the stick, laid 20 mm (25/32 in) from the blank's start end, with square"));
        assertThat(raked).anyMatch(cut -> cut.startsWith("lay the stick 20 mm (25/32 in) from the blank's start end"));
        assertThat(raked)
                .last()
                .asString()
                .contains(
                        "cut both ends to their slope, parallel to one another, through the start line and the far end's line",
                        "20 mm (25/32 in) beyond each line");
        List<String> level = cuts(0);
        assertThat(level).anyMatch(cut -> cut.contains("from the stick with square and knife"));
        assertThat(level).anyMatch(cut -> cut.startsWith("lay the stick against the drive end"));
        assertThat(level).last().asString().contains("saw the spare length off at the far end's line");
    }

    @Test
    void the_slope_of_the_start_end_alone_is_told_when_the_tenon_comes_off_its_spare_length() {
        assertThat(cuts(45, members -> members.addObject()
                        .put("kind", "tenon")
                        .put("length", 100)
                        .put("diameter", 20)))
                .last()
                .asString()
                .startsWith("part down at the far end's line")
                .endsWith(
                        "; on the bench, cut the end to its slope through the start line: the longer side reaches 20 mm (25/32 in) beyond it");
    }

    /** What the frame tells of the slope, what the blank keeps for it and where the stick is laid are one figure, in steps of a rule. */
    @Test
    void the_slope_is_one_figure_wherever_it_is_told() {
        // Half of 40 mm times tan 37 degrees is 15.07 mm: the next half millimetre is 15.5.
        Plan raked =
                plan(37, members -> members.addObject().put("kind", "square").put("length", 100));
        List<String> cuts = raked.turning().cuts().stream().map(Cut::what).toList();
        assertThat(raked.frame().orElseThrow().facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(line -> line.contains("the longer side reaches 15.5 mm (39/64 in) at each end"));
        assertThat(cuts).anyMatch(cut -> cut.startsWith("lay the stick 15.5 mm (39/64 in) from the blank's start end"));
        assertThat(cuts).last().asString().contains("15.5 mm (39/64 in) beyond each line");
    }

    private static List<String> cuts(double rake) {
        return cuts(rake, members -> members.addObject().put("kind", "square").put("length", 100));
    }

    private static List<String> cuts(double rake, Consumer<ArrayNode> last) {
        return plan(rake, last).turning().cuts().stream().map(Cut::what).toList();
    }

    private static Plan plan(double rake, Consumer<ArrayNode> last) {
        ObjectNode root =
                tree(frame -> frame.put("places", 9).put("clear", 1000).put("rake_deg", rake));
        var members = (ArrayNode) root.at("/pattern/members");
        members.removeAll();
        members.addObject().put("kind", "square").put("length", 100);
        members.addObject().put("kind", "cylinder").put("length", 500).put("diameter", 30);
        last.accept(members);
        return Plan.of(JobReader.read(Json.print(root)).job().orElseThrow(), Effort.ofAsks(200));
    }

    /** A square end lies on a sloping rail only when it is cut to the slope: at 45 degrees half its side further on the longer side. */
    @Test
    void an_end_without_a_tenon_is_cut_to_the_slope_and_takes_its_wood_from_the_blank() {
        ObjectNode root =
                tree(frame -> frame.put("places", 9).put("clear", 1000).put("rake_deg", 45));
        var members = (ArrayNode) root.at("/pattern/members");
        members.removeAll();
        members.addObject().put("kind", "square").put("length", 100);
        members.addObject().put("kind", "cylinder").put("length", 500).put("diameter", 30);
        members.addObject().put("kind", "tenon").put("length", 20).put("diameter", 16);
        RowFit fit = squareEnded(root, 640);
        assertThat(fit.cuts()).singleElement().satisfies(cut -> {
            assertThat(cut.upper()).isFalse();
            assertThat(cut.beyond().mm()).isCloseTo(20, within(1e-9));
        });
        assertThat(fit.facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(line -> line.contains("no tenon at the lower end: cut it on the slope, 45° off square"));
        assertThat(fit.misfits()).isEmpty();
        assertThat(squareEnded(root, 639).misfits()).singleElement().satisfies(misfit -> assertThat(misfit.sentence())
                .contains("too short", "640 mm"));
        assertThat(fit(frame -> frame.put("places", 9).put("clear", 1000).put("rake_deg", 45))
                        .cuts())
                .isEmpty();
    }

    private static RowFit squareEnded(ObjectNode root, int blank) {
        ((ObjectNode) root.at("/pattern/stock")).put("length", blank);
        Job job = JobReader.read(Json.print(root)).job().orElseThrow();
        return (RowFit) job.frame()
                .orElseThrow()
                .fit(job.pattern(), job.wood().density(), UnitSystem.METRIC)
                .orElseThrow();
    }

    @Test
    void the_gap_is_the_same_beside_a_post_as_between_two() {
        RowFit fit = fit(frame -> frame.put("places", 9).put("clear", 1000));
        double pitch = (1000 + 2 * RADIUS) / 10;
        assertThat(fit.stand().pitch().orElseThrow().mm()).isCloseTo(pitch, within(1e-9));
        assertThat(fit.stand().places().stream().map(Length::mm)).satisfies(at -> IntStream.range(0, 9)
                .forEach(i -> assertThat(at.get(i)).isCloseTo(pitch - RADIUS + i * pitch, within(1e-9))));
        assertThat(fit.between().orElseThrow().diameter().mm()).isCloseTo(pitch - 2 * RADIUS, within(2e-6));
        assertThat(fit.end().diameter().mm()).isCloseTo(pitch - 2 * RADIUS, within(2e-6));
        assertThat(fit.misfits()).isEmpty();
        assertThat(fit.buildable()).isTrue();
    }

    @Test
    void a_told_end_spreads_the_rest_between() {
        RowFit fit = fit(frame -> frame.put("places", 9).put("clear", 1000).put("end", 60));
        assertThat(fit.stand().pitch().orElseThrow().mm()).isCloseTo(880.0 / 8, within(1e-9));
        assertThat(fit.end().diameter().mm()).isCloseTo(45, within(2e-6));
        RowFit one = fit(frame -> frame.put("places", 1).put("clear", 1000).put("end", 60));
        assertThat(one.stand().pitch()).isEmpty();
        assertThat(one.between()).isEmpty();
        // The wider end is what is left on the other side, but no wider than the rails.
        assertThat(one.end().diameter().mm()).isCloseTo(TALL, within(2e-6));
    }

    /** n cylinders keep a ball of s out when (clear - n d) / (n + 1) is no more than s. */
    @ParameterizedTest
    @CsvSource({"1000, 100, 0", "1000, 99.9, 0", "1830, 101.6, 0", "1830, 101.6, 33", "300, 290, 0", "2400, 60, 20"})
    void the_fewest_follow_from_the_largest_opening(double clear, double ball, double rake) {
        Job job = job(
                frame -> frame.put("clear", clear).put("largest_opening", ball).put("rake_deg", rake));
        int fewest = 1;
        while ((clear - fewest * 2 * RADIUS) / (fewest + 1) > ball) {
            fewest++;
        }
        assertThat(job.frame().orElseThrow().pieces()).isEqualTo(fewest);
        assertThat(job.count()).isEqualTo(fewest);
    }

    @Test
    void a_count_that_differs_is_told() {
        ObjectNode tree = tree(frame -> frame.put("clear", 1000).put("largest_opening", 100));
        tree.put("count", 5);
        Plan plan = Plan.of(JobReader.read(Json.print(tree)).job().orElseThrow(), Effort.ofAsks(1000));
        assertThat(plan.job().count()).isEqualTo(5);
        assertThat(plan.warnings().get(0).what()).contains("7 pieces keep the largest opening, but count says 5");
    }

    @Test
    void pieces_that_touch_cannot_be_built_and_what_is_said_mends_it() {
        RowFit fit = fit(frame -> frame.put("places", 40).put("clear", 1000));
        assertThat(fit.buildable()).isFalse();
        Misfit misfit = fit.misfits().get(0);
        assertThat(misfit.forbids()).isTrue();
        assertThat(misfit.what())
                .contains(fit.touches().orElseThrow().format(UnitSystem.METRIC) + " (63/64 in) from the start end");
        int most = number(misfit.mend(), "(\\d+) places at most");
        int wider = number(misfit.mend(), "posts ([\\d.]+) mm");
        assertThat(fit(frame -> frame.put("places", most).put("clear", 1000)).buildable())
                .isTrue();
        assertThat(fit(frame -> frame.put("places", most).put("clear", 1000)).touches())
                .isEmpty();
        assertThat(fit(frame -> frame.put("places", most + 1).put("clear", 1000))
                        .buildable())
                .isFalse();
        assertThat(fit(frame -> frame.put("places", 40).put("clear", wider)).buildable())
                .isTrue();
        assertThat(fit(frame -> frame.put("places", 40).put("clear", wider - 4)).buildable())
                .isFalse();
    }

    private static int number(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        assertThat(matcher.find()).as(text).isTrue();
        return (int) Double.parseDouble(matcher.group(1));
    }

    @Test
    void an_opening_above_the_limit_says_how_many_keep_it() {
        RowFit fit = fit(frame -> frame.put("places", 5).put("clear", 1000).put("largest_opening", 100));
        assertThat(fit.buildable()).isTrue();
        assertThat(fit.misfits()).hasSize(1);
        int places = number(fit.misfits().get(0).mend(), "(\\d+) places keep it");
        assertThat(fit(frame -> frame.put("places", places).put("clear", 1000).put("largest_opening", 100))
                        .misfits())
                .isEmpty();
        assertThat(fit(frame -> frame.put("places", places - 1)
                                .put("clear", 1000)
                                .put("largest_opening", 100))
                        .misfits())
                .isNotEmpty();
    }

    @Test
    void an_end_too_far_from_the_post_says_how_near_it_may_be_and_how_many_then() {
        RowFit fit = fit(frame ->
                frame.put("places", 5).put("clear", 1000).put("end", 140).put("largest_opening", 100));
        String mend = fit.misfits().get(0).mend();
        int end = number(mend, "first axis ([\\d.]+) mm");
        int places = number(mend, "(\\d+) places keep it");
        assertThat(end).isEqualTo(115);
        assertThat(fit(frame -> frame.put("places", places)
                                .put("clear", 1000)
                                .put("end", end)
                                .put("largest_opening", 100))
                        .misfits())
                .isEmpty();
    }

    @Test
    void the_answer_has_the_names_that_are_promised() {
        Job job = job(frame -> frame.put("places", 3)
                .put("clear", 500)
                .put("largest_opening", 150)
                .put("rake_deg", 30));
        JsonNode frame = Json.parse(
                        PlanJson.print(Plan.of(job, Effort.ofAsks(1000))), new turnalike.job.fields.Reading())
                .orElseThrow()
                .path("frame");
        assertThat(frame.path("kind").asText()).isEqualTo("row");
        assertThat(frame.path("count").asInt()).isEqualTo(3);
        assertThat(frame.path("pitch_mm").asDouble()).isCloseTo(132.5, within(1e-9));
        assertThat(frame.path("end_mm").asDouble()).isCloseTo(117.5, within(1e-9));
        assertThat(frame.path("places").path(2).path("place").asInt()).isEqualTo(3);
        assertThat(frame.path("places").path(2).path("at_mm").asDouble()).isCloseTo(382.5, within(1e-9));
        assertThat(frame.path("places").path(2).path("along_rail_mm").asDouble())
                .isCloseTo(382.5 / Math.cos(Math.PI / 6), within(1e-9));
        assertThat(frame.path("openings").path("between_mm").asDouble()).isCloseTo(102.5, within(2e-6));
        assertThat(frame.path("openings").path("end_mm").asDouble()).isCloseTo(102.5, within(2e-6));
        assertThat(frame.path("openings").path("widest_mm").asDouble()).isCloseTo(102.5, within(2e-6));
        assertThat(frame.path("limit_mm").asDouble()).isEqualTo(150);
        assertThat(frame.path("limit_from").asText()).isEqualTo("yours");
        assertThat(frame.path("buildable").asBoolean()).isTrue();
    }

    /** The code's figure is told with its place and never taken for a limit. */
    @Test
    void a_code_is_offered_and_never_the_default() {
        RowFit fit = fit(frame -> frame.put("places", 2).put("clear", 1000));
        assertThat(fit.limit()).isEmpty();
        assertThat(fit.misfits()).isEmpty();
        assertThat(fit.workings()).anySatisfy(working -> {
            assertThat(working.how()).contains("4 in (102 mm)").contains("4 3/8 in (111 mm)");
            assertThat(working.source()).isEqualTo("International Residential Code 2018, R312.1.3");
            assertThat(working.sureness()).contains("check with your local authority");
        });
        assertThat(fit.facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(line -> line.contains("check with your local authority"))
                .noneMatch(line -> line.contains("R312"));
    }

    private static boolean isCautioned(double tallMm, Consumer<ObjectNode> frame) {
        ObjectNode tree = tree(row -> frame.accept(row.put("places", 4).put("clear", 600)));
        ((ObjectNode) tree.at("/pattern/members/1")).put("length", tallMm);
        Job job = JobReader.read(Json.print(tree)).job().orElseThrow();
        RowFit fit = (RowFit) job.frame()
                .flatMap(each -> each.fit(job.pattern(), job.wood().density(), job.units()))
                .orElseThrow();
        String caution = "check with your local authority";
        boolean worked =
                fit.workings().stream().anyMatch(each -> each.sureness().contains(caution));
        boolean told = fit.facts(UnitSystem.METRIC, MassUnit.GRAM).stream().anyMatch(line -> line.contains(caution));
        assertThat(worked).isEqualTo(told);
        return told;
    }

    /** A gallery on a desk is no guard; whatever might be one is cautioned of, however low. */
    @Test
    void only_what_might_guard_a_drop_is_sent_to_the_local_authority() {
        assertThat(isCautioned(60, row -> {})).isFalse();
        assertThat(isCautioned(150, row -> {})).isFalse();
        assertThat(isCautioned(199, row -> {})).isFalse();
        assertThat(isCautioned(200, row -> {})).isTrue();
        assertThat(isCautioned(TALL, row -> {})).isTrue();
        assertThat(isCautioned(150, row -> row.put("rake_deg", 35))).isTrue();
        assertThat(isCautioned(150, row -> row.put("largest_opening", 100))).isTrue();
        assertThat(isCautioned(150, row -> {
                    row.remove("places");
                    ArrayNode lengths = row.putArray("lengths");
                    lengths.addObject().put("stretch", 1).put("length", 150).put("count", 2);
                    lengths.addObject().put("stretch", 1).put("length", 180).put("count", 2);
                }))
                .isTrue();
    }

    @Test
    void what_cannot_be_meant_is_told_with_its_mend() {
        assertThat(problems(frame -> frame.put("places", 3).put("clear", 500).put("rails_apart", 701)))
                .extracting(Problem::line)
                .containsExactly(
                        "frame: rails_apart: is 701 mm, but only 700 mm of the piece stands between its shoulders;"
                                + " give 700 mm at most, or lengthen the piece");
        assertThat(problems(frame -> frame.put("places", 3)
                        .put("clear", 2500)
                        .put("rails_apart", 600)
                        .put("largest_opening", 601)))
                .extracting(Problem::line)
                .containsExactly(
                        "frame: largest_opening: is 601 mm, but between the rails there is only 600 mm: such a ball"
                                + " never passes; give 600 mm at most");
    }
}
