package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.answer.PlanJson;
import turnalike.job.fields.Json;
import turnalike.job.fields.Reading;
import turnalike.job.read.JobReader;
import turnalike.units.Length;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;

/** Plain rods as legs, against points and vectors worked out here. */
class LegsFitTest {
    private static Job job(Consumer<ObjectNode> frame) {
        return job(
                members -> {
                    members.addObject().put("kind", "tenon").put("length", 30).put("diameter", 24);
                    members.addObject()
                            .put("kind", "cylinder")
                            .put("length", 450)
                            .put("diameter", 36);
                },
                frame);
    }

    private static Job job(Consumer<ArrayNode> members, Consumer<ObjectNode> frame) {
        ObjectNode root = Json.object()
                .put("format", "turnalike-job")
                .put("version", 1)
                .put("title", "Plain stool (invented)")
                .put("units", "mm");
        ObjectNode pattern = root.putObject("pattern").put("name", "Rod");
        pattern.putObject("stock").put("section", "square").put("size", 45).put("length", 520);
        members.accept(pattern.putArray("members"));
        root.putObject("wood").put("density_kg_m3", 650);
        frame.accept(root.putObject("frame").put("kind", "legs"));
        return JobReader.read(Json.print(root)).job().orElseThrow();
    }

    private static LegsFit fit(Consumer<ObjectNode> frame) {
        return fit(job(frame));
    }

    private static LegsFit fit(Job job) {
        return (LegsFit) job.frame()
                .orElseThrow()
                .fit(job.pattern(), job.wood().density(), UnitSystem.METRIC)
                .orElseThrow();
    }

    private static Consumer<ObjectNode> four(double rake, double splay) {
        return frame -> {
            frame.put("places", 4).put("rake_deg", rake).put("splay_deg", splay).put("height", 400);
            frame.putArray("apart").add(260).add(300);
            frame.putArray("stretchers").add(150);
        };
    }

    private static double[] minus(double[] one, double[] other) {
        return new double[] {one[0] - other[0], one[1] - other[1], one[2] - other[2]};
    }

    private static double size(double[] vector) {
        return Math.sqrt(dot(vector, vector));
    }

    private static double dot(double[] one, double[] other) {
        return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
    }

    /** A leg's point at a height over the floor: from where it enters straight to its foot. */
    private static double[] at(LegsFit.Foot foot, double high, double up) {
        double part = (high - up) / high;
        return new double[] {
            foot.front().mm() + part * foot.movesFront().mm(),
            foot.side().mm() + part * foot.movesSide().mm(),
            up
        };
    }

    private static void assertStretcher(LegsFit.Stretcher told, LegsFit.Foot one, LegsFit.Foot other) {
        double[] from = at(one, 400, 150);
        double[] to = at(other, 400, 150);
        double[] along = minus(to, from);
        double[] leg = minus(at(one, 400, 0), at(one, 400, 400));
        double angle = Math.toDegrees(Math.acos(Math.abs(dot(along, leg)) / size(along) / size(leg)));
        assertThat(told.axes().mm()).isCloseTo(size(along), within(1e-9));
        assertThat(told.angle().degrees()).isCloseTo(angle, within(1e-9));
        assertThat(told.along().mm()).isCloseTo(size(minus(from, at(one, 400, 400))), within(1e-9));
        assertThat(told.clear().mm()).isCloseTo(size(along) - 36 / Math.sin(Math.toRadians(angle)), within(1e-9));
    }

    @Test
    void stretchers_of_four_legs_are_as_their_points_have_it() {
        LegsFit fit = fit(four(11, 7));
        assertStretcher(fit.stretchers().get(0), fit.feet().get(0), fit.feet().get(3));
        assertStretcher(fit.stretchers().get(1), fit.feet().get(0), fit.feet().get(1));
        assertThat(fit.bearings().get(0).degrees())
                .isCloseTo(fit.angles().sight().degrees(), within(1e-9));
    }

    @Test
    void of_three_legs_each_leans_from_the_middle() {
        LegsFit fit = fit(frame -> {
            frame.put("places", 3).put("rake_deg", 16).put("height", 400);
            frame.putArray("apart").add(240);
            frame.putArray("stretchers").add(150);
        });
        assertThat(fit.stretchers()).hasSize(1);
        for (int i = 0; i < 3; i++) {
            assertStretcher(
                    fit.stretchers().get(0), fit.feet().get(i), fit.feet().get((i + 1) % 3));
            assertThat(fit.bearings().get(i).degrees()).isCloseTo(120.0 * i, within(1e-9));
        }
        assertThat(size(minus(at(fit.feet().get(0), 400, 400), at(fit.feet().get(1), 400, 400))))
                .isCloseTo(240, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4})
    void the_answer_has_the_names_that_are_promised(int places) {
        Job job = job(frame -> frame.put("places", places)
                .put("rake_deg", 14)
                .put("splay_deg", 9)
                .put("height", 380)
                .put("seat_thickness", 40));
        JsonNode frame = Json.parse(PlanJson.print(Plan.of(job, Effort.ofAsks(1000))), new Reading())
                .orElseThrow()
                .path("frame");
        double rake = Math.tan(Math.toRadians(14));
        double splay = Math.tan(Math.toRadians(9));
        double lean = Math.toDegrees(Math.atan(Math.sqrt(rake * rake + splay * splay)));
        assertThat(frame.path("kind").asText()).isEqualTo("legs");
        assertThat(frame.path("lean_deg").asDouble()).isCloseTo(lean, within(1e-9));
        assertThat(frame.path("sight_deg").asDouble()).isCloseTo(Math.toDegrees(Math.atan(splay / rake)), within(1e-9));
        assertThat(frame.path("leg_mm").asDouble()).isCloseTo(380 / Math.cos(Math.toRadians(lean)), within(1e-9));
        assertThat(frame.path("bevel_deg").asDouble()).isCloseTo(lean, within(1e-9));
        assertThat(frame.path("buildable").asBoolean()).isTrue();
    }

    /** Three splayed legs: two mirror one another, the third cannot; four do in two pairs. */
    @Test
    void of_splayed_legs_that_are_no_pairs_it_is_told_whose_the_angles_are() {
        LegsFit three = fit(frame ->
                frame.put("places", 3).put("rake_deg", 12).put("splay_deg", 9).put("height", 330));
        assertThat(three.isPairOnly()).isTrue();
        assertThat(three.facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(line ->
                        line.startsWith("           two that mirror one another stand so; of 3 legs the others lean"));
        LegsFit four = fit(four(12, 9));
        assertThat(four.isPairOnly()).isFalse();
        assertThat(four.facts(UnitSystem.METRIC, MassUnit.GRAM)).noneMatch(line -> line.contains("mirror"));
    }

    @Test
    void foot_moves_say_the_angles() {
        LegsFit fit = fit(frame -> {
            frame.put("places", 4).put("height", 360);
            frame.putArray("foot_moves").add(90).add(120);
        });
        assertThat(Math.tan(fit.angles().lean().radians())).isCloseTo(150.0 / 360, within(1e-12));
        assertThat(fit.length().orElseThrow().mm()).isCloseTo(390, within(1e-9));
    }

    @Test
    void a_leg_too_short_says_by_how_much_and_how_high_it_reaches() {
        LegsFit fit = fit(frame -> frame.put("places", 4).put("rake_deg", 10).put("height", 450));
        double lean = Math.toRadians(10);
        assertThat(fit.buildable()).isTrue();
        // The rod's foot, 36 mm thick, reaches that much further on its longer side.
        double below = 18 * Math.tan(lean);
        double reached = (450 - below) * Math.cos(lean);
        assertThat(fit.misfits().get(0).mend())
                .contains("%.1f mm".formatted(450 / Math.cos(lean) + below - 450))
                .contains(Length.ofMm(reached).format(UnitSystem.METRIC) + " (");
        assertThat(fit(frame -> frame.put("places", 4).put("rake_deg", 10).put("height", reached - 0.01))
                        .misfits())
                .isEmpty();
        assertThat(fit(frame -> frame.put("places", 4).put("rake_deg", 10).put("height", reached + 0.01))
                        .misfits())
                .hasSize(1);
    }

    /** A tenon of 24 by 30 in a leaning hole: its end stands 12·tan(lean) proud of the axis' place before all of it is out. */
    @Test
    void a_through_tenon_that_comes_out_on_one_side_only_is_told() {
        double lean = Math.toRadians(20);
        double all = (30 - 12 * Math.tan(lean)) * Math.cos(lean);
        assertThat(seat(20, all - 0.01).misfits()).isEmpty();
        assertThat(seat(20, all + 0.01).misfits())
                .singleElement()
                .matches(
                        misfit -> misfit.where().equals("seat") && misfit.what().contains("on one side"));
        assertThat(seat(0, 29.9).misfits()).isEmpty();
    }

    private static LegsFit seat(double rake, double thick) {
        return fit(frame ->
                frame.put("places", 4).put("rake_deg", rake).put("height", 400).put("seat_thickness", thick));
    }

    /** Whatever else is told of legs, this stands last. */
    @Test
    void what_bears_people_is_left_to_licensed_practice() {
        assertThat(seat(20, 50).facts(UnitSystem.METRIC, MassUnit.GRAM))
                .last()
                .asString()
                .contains("bore a scrap", "licensed practice");
    }

    /** The shoulder of 36 mm is square to the leg: tipped by the lean, its far edge stands 36·tan(lean) off. */
    @Test
    void how_far_a_shoulder_stands_off_is_told_and_that_stretchers_at_one_height_meet() {
        assertThat(seat(20, 50).standsOff().orElseThrow().mm())
                .isCloseTo(36 * Math.tan(Math.toRadians(20)), within(1e-9));
        assertThat(seat(0, 50).standsOff()).isEmpty();
        assertThat(seat(20, 50).facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(line -> line.contains("stands off by 13.1 mm"));
        assertThat(fit(four(11, 7)).facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(line -> line.contains("they meet inside the leg"));
        assertThat(seat(20, 50).facts(UnitSystem.METRIC, MassUnit.GRAM)).noneMatch(line -> line.contains("they meet"));
    }

    @Test
    void a_blind_hole_whose_far_corner_comes_out_is_told() {
        Consumer<ObjectNode> thick = frame ->
                frame.put("places", 4).put("rake_deg", 20).put("height", 400).put("seat_thickness", 32);
        double lean = Math.toRadians(20);
        double left = 32 - 30 * Math.cos(lean) - 12 * Math.sin(lean);
        assertThat(left).isNegative();
        assertThat(fit(thick).misfits()).singleElement().satisfies(misfit -> {
            assertThat(misfit.where()).isEqualTo("seat");
            assertThat(misfit.what()).contains("breaks through its top");
        });
        // The corner stays inside, but 5.1 mm along the axis a bit's point does not.
        assertThat(fit(thick.andThen(frame -> frame.put("seat_thickness", 33))).misfits())
                .singleElement()
                .satisfies(misfit -> {
                    assertThat(misfit.where()).isEqualTo("seat");
                    assertThat(misfit.what()).contains("only 5.1 mm (13/64 in) of it is left", "prick through the top");
                    assertThat(misfit.mend()).startsWith("bore 1.2 mm (3/64 in) less deep");
                });
        assertThat(fit(thick.andThen(frame -> frame.put("seat_thickness", 35))).misfits())
                .isEmpty();
    }

    @Test
    void a_job_that_says_nothing_of_how_legs_stand_is_asked_nothing() {
        Job job = job(frame -> frame.put("places", 4));
        assertThat(job.frame().orElseThrow().fit(job.pattern(), job.wood().density(), UnitSystem.METRIC))
                .isEmpty();
    }

    /** A hall table may stand on round tenons like a stool: only who makes it knows. */
    @Test
    void legs_on_round_tenons_stand_under_a_table_top_if_they_are_said_to() {
        Consumer<ObjectNode> stool = frame -> frame.put("places", 4)
                .put("rake_deg", 12)
                .put("height", 470)
                .put("seat_thickness", 20)
                .putArray("apart")
                .add(400);
        List<String> seat = fit(stool).facts(UnitSystem.METRIC, MassUnit.GRAM);
        LegsFit table = fit(stool.andThen(frame -> frame.put("under", "table_top")));
        List<String> told = table.facts(UnitSystem.METRIC, MassUnit.GRAM);
        assertThat(seat).anyMatch(each -> each.startsWith("  seat     bore 24 mm"));
        assertThat(told)
                .anyMatch(each -> each.startsWith("  top      bore 24 mm"))
                .anyMatch(each -> each.contains("meets the table top on one side first"))
                .anyMatch(each -> each.contains("try the tenon in it"));
        assertThat(told.toString() + table.misfits()).doesNotContain("seat").contains("table top's underside");
        // The words alone differ.
        assertThat(told)
                .map(each -> each.replace("table top", "seat").replace("  top      ", "  seat     "))
                .isEqualTo(seat);
        LegsFit held = fit(stool.andThen(frame -> frame.put("under", "seat")));
        assertThat(held.facts(UnitSystem.METRIC, MassUnit.GRAM)).isEqualTo(seat);
    }

    @Test
    void a_leg_with_a_square_head_stands_under_a_table_and_is_told_of_no_seat() {
        Consumer<ArrayNode> table = members -> {
            members.addObject().put("kind", "square").put("length", 80);
            members.addObject().put("kind", "cylinder").put("length", 400).put("diameter", 36);
        };
        Consumer<ObjectNode> high = frame -> frame.put("places", 4).put("height", 500);
        LegsFit fit = fit(job(table, high));
        List<String> told = new ArrayList<>(fit.facts(UnitSystem.METRIC, MassUnit.GRAM));
        assertThat(told).anyMatch(fact -> fact.contains("from the table top's underside to the floor"));
        assertThat(told).noneMatch(fact -> fact.contains("bore "));
        fit.misfits().forEach(misfit -> told.add(misfit.sentence()));
        fit.workings().forEach(each -> told.add(each.how() + each.sureness()));
        assertThat(fit.misfits()).singleElement().satisfies(misfit -> assertThat(misfit.sentence())
                .contains("it has 480 mm", "wanted from the table top's underside"));
        assertThat(told).noneMatch(each -> each.contains("seat") || each.contains("tenon"));

        // One that leans is bored for all the same, and the same leg with a tenon stands under a seat.
        assertThat(fit(job(table, high.andThen(frame -> frame.put("rake_deg", 8))))
                        .facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(fact -> fact.contains("bore     8° from upright"));
        assertThat(fit(high).facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(fact -> fact.contains("from the seat's underside to the floor"))
                .anyMatch(fact -> fact.contains("try the tenon in it"));
    }
}
