package turnalike.job.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.fields.Json;
import turnalike.job.pieces.MatchJob;
import turnalike.job.read.JobReader;
import turnalike.language.Language;
import turnalike.language.Speech;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;

/** A wheel of plain cylinders, where everything is told by a line of trigonometry; and what is said to mend it does. */
class WheelFitTest {
    /** Cylinders 30 mm thick and 300 long between tenons of 18 by 25, by hub radius and places; changed as told. */
    private static Job job(int places, double hubRadius, Consumer<ObjectNode> frame) {
        return job(places, hubRadius, frame, "tenon");
    }

    /** @param first its first member: a tenon, or a taper of the same size at its thick end */
    private static Job job(int places, double hubRadius, Consumer<ObjectNode> frame, String first) {
        return job(places, hubRadius, frame, first, 30, 18);
    }

    private static Job job(
            int places, double hubRadius, Consumer<ObjectNode> frame, String first, double thick, double hubTenon) {
        ObjectNode root =
                Json.object().put("format", "turnalike-job").put("version", 1).put("title", "Plain wheel (invented)");
        root.put("units", "mm").put("count", places);
        ObjectNode pattern = root.putObject("pattern").put("name", "Rod");
        pattern.putObject("stock").put("section", "square").put("size", 40).put("length", 360);
        var members = pattern.putArray("members");
        ObjectNode hubEnd = members.addObject().put("kind", first).put("length", 25);
        if (first.equals("tenon")) {
            hubEnd.put("diameter", hubTenon);
        } else {
            hubEnd.put("from", 15).put("to", 18);
        }
        members.addObject().put("kind", "cylinder").put("length", 300).put("diameter", thick);
        members.addObject().put("kind", "tenon").put("length", 20).put("diameter", 16);
        root.putObject("wood").put("density_kg_m3", 650);
        ObjectNode wheel = root.putObject("frame")
                .put("kind", "wheel")
                .put("places", places)
                .put("hub_radius", hubRadius);
        frame.accept(wheel);
        return JobReader.read(Json.print(root)).job().orElseThrow();
    }

    private static WheelFit fit(Job job) {
        return (WheelFit) job.frame()
                .orElseThrow()
                .fit(job.pattern(), job.wood().density(), UnitSystem.METRIC)
                .orElseThrow();
    }

    private static WheelFit fit(int places, double hubRadius, Consumer<ObjectNode> frame) {
        return fit(job(places, hubRadius, frame));
    }

    @Test
    void an_end_that_nothing_holds_is_told_where_hub_or_rim_is_told() {
        String butts =
                "hub: the piece has no tenon at that end and is taken to butt on the hub's face: glue alone does not hold";
        Function<Job, List<String>> said = job -> fit(job).misfits().stream()
                .map(each -> each.where() + ": " + each.said())
                .filter(each -> each.contains("to butt on"))
                .toList();
        assertThat(said.apply(job(6, 90, wheel -> wheel.put("hub_length", 60), "taper")))
                .singleElement()
                .asString()
                .startsWith(butts)
                .contains("let the end in and pin it");
        assertThat(said.apply(job(6, 90, wheel -> wheel.put("axle_hole", 12), "taper")))
                .hasSize(1);
        assertThat(said.apply(job(6, 90, wheel -> wheel.put("rim_width", 40), "taper")))
                .as("nothing is told of the hub, and the rim end has its tenon")
                .isEmpty();
        assertThat(said.apply(job(6, 90, wheel -> wheel.put("rim_width", 40).put("tenon_at", "end"), "taper")))
                .singleElement()
                .asString()
                .startsWith("rim: the piece has no tenon at that end and is taken to butt on the rim's inside");
        assertThat(said.apply(job(6, 90, wheel -> wheel.put("hub_length", 60).put("rim_thickness", 30))))
                .isEmpty();
    }

    @Test
    void a_wheel_of_cylinders_is_told_as_trigonometry_has_it() {
        WheelFit fit = fit(10, 90, frame -> frame.put("rim_width", 35).put("segments", 10));
        double sin = Math.sin(Math.PI / 10);
        double cos = Math.cos(Math.PI / 10);
        assertThat(fit.buildable()).isTrue();
        assertThat(fit.misfits()).isEmpty();
        assertThat(fit.neighbours().gap().mm()).isCloseTo(2 * (90 * sin - 15 * cos), within(1e-9));
        assertThat(fit.neighbours().at().mm()).isEqualTo(25);
        assertThat(fit.neighbours().member()).isEqualTo(1);
        assertThat(fit.hub().orElseThrow().wall().mm()).isCloseTo(2 * (65 * sin - 9 * cos), within(1e-9));
        assertThat(fit.rimSeats().orElseThrow().wall().mm()).isCloseTo(2 * (390 * sin - 8 * cos), within(1e-9));
        assertThat(fit.outside().orElseThrow().mm()).isCloseTo(15, within(1e-9));
        assertThat(fit.strip().mm()).isCloseTo(2 * Math.PI * 90, within(1e-9));
        assertThat(fit.innerRadius().mm()).isCloseTo(390, within(1e-9));
        assertThat(fit.outerRadius().orElseThrow().mm()).isCloseTo(425, within(1e-9));
        assertThat(fit.rim().orElseThrow().chord().orElseThrow().mm())
                .isCloseTo(2 * 425 * Math.sin(Math.PI / 10), within(1e-9));
    }

    @Test
    void turned_end_for_end_only_the_place_is_counted_from_the_other_end() {
        WheelFit start = fit(10, 90, frame -> {});
        WheelFit end = fit(10, 90, frame -> frame.put("tenon_at", "end")
                .put("hub_seat", 25)
                .put("rim_seat", 20));
        assertThat(end.neighbours().gap()).isEqualTo(start.neighbours().gap());
        assertThat(end.neighbours().at().mm()).isCloseTo(325, within(1e-9));
        assertThat(end.hub().orElseThrow().hole().mm()).isEqualTo(16);
    }

    /** Just below zero is told as what cannot be built, just above as what is thin, and a quarter of an inch as enough. */
    @Test
    void the_bounds_are_where_they_are_said_to_be() {
        double sin = Math.sin(Math.PI / 10);
        double cos = Math.cos(Math.PI / 10);
        double touching = 15 * cos / sin;
        double enough = (15 * cos + 6.35 / 2) / sin;
        Consumer<ObjectNode> shallow = frame -> frame.put("hub_seat", 1);
        assertThat(fit(10, touching - 1e-6, shallow).buildable()).isFalse();
        assertThat(fit(10, touching - 1e-6, shallow).touches())
                .contains(fit(10, touching, shallow).neighbours().at());
        assertThat(fit(10, touching + 1e-6, shallow).touches()).isEmpty();
        assertThat(fit(10, touching + 1e-6, shallow).misfits())
                .singleElement()
                .matches(misfit -> !misfit.forbids() && misfit.what().contains("leave 0 mm"));
        assertThat(fit(10, enough - 1e-6, shallow).misfits()).hasSize(1);
        assertThat(fit(10, enough + 1e-6, shallow).misfits()).isEmpty();
        double walls = 25 + (9 * cos + 6.35 / 2) / sin;
        Consumer<ObjectNode> noGap = frame -> frame.put("least_gap", 0);
        assertThat(fit(10, walls - 1e-6, noGap).misfits()).hasSize(1);
        assertThat(fit(10, walls + 1e-6, noGap).misfits()).isEmpty();
    }

    @Test
    void a_mortise_that_comes_to_the_axle_cannot_be_bored() {
        assertThat(fit(3, 60, frame -> frame.put("hub_seat", 61))
                        .misfits()
                        .get(0)
                        .said())
                .startsWith("cannot be built: a mortise 61 mm")
                .contains("passes the axle");
        assertThat(fit(3, 60, frame -> frame.put("axle_hole", 24).put("hub_seat", 48))
                        .buildable())
                .isFalse();
        assertThat(fit(3, 60, frame -> frame.put("axle_hole", 24).put("hub_seat", 47.9))
                        .misfits())
                .singleElement()
                .matches(misfit -> !misfit.forbids() && misfit.what().startsWith("0.1 mm (0.004 in) is left from"))
                // What mends it leaves a quarter of an inch to the axle's hole: 60 - 12 - 6.35 mm deep, in halves of a
                // millimetre.
                .matches(misfit -> misfit.mend().contains("mortises 41.5 mm (1 41/64 in) deep at most")
                        && misfit.mend().contains("a hub of 68 mm"));
        assertThat(fit(3, 60, frame -> frame.put("axle_hole", 24).put("hub_seat", 41.6))
                        .misfits())
                .isEmpty();
    }

    @Test
    void a_mortise_that_nothing_enters_is_told_of_a_piece_without_a_tenon() {
        WheelFit fit = fit(job(10, 90, frame -> frame.put("hub_seat", 25), "taper"));
        assertThat(fit.misfits())
                .singleElement()
                .matches(misfit -> misfit.where().equals("hub") && !misfit.forbids())
                .matches(misfit -> misfit.what().startsWith("a mortise 25 mm"))
                .matches(misfit -> misfit.mend().contains("a tenon"));
        assertThat(fit(job(10, 90, frame -> {}, "taper")).misfits()).isEmpty();
    }

    /** A hole as wide as the hub is long is thin and can be bored; a hair wider it runs out. */
    @Test
    void mortises_run_out_only_below_nothing() {
        assertThat(fit(10, 90, frame -> frame.put("hub_length", 18)).buildable())
                .isTrue();
        assertThat(fit(10, 90, frame -> frame.put("hub_length", 18 - 1e-6)).buildable())
                .isFalse();
        assertThat(fit(10, 90, frame -> frame.put("hub_length", 18)).misfits())
                .anyMatch(misfit -> misfit.what().startsWith("0 mm"));
    }

    /** Below zero it cannot be built; spokes that just touch, and mortises that just do, can be, and are warned of. */
    @Test
    void a_gap_and_a_wall_of_just_nothing_can_be_built_and_are_warned_of() {
        WheelFit touching = justNothing(15, "gap_mm", fit -> fit.neighbours().gap());
        assertThat(touching.misfits()).anyMatch(each -> each.where().equals(WheelFit.SPOKES) && !each.forbids());
        WheelFit meeting =
                justNothing(9, "wall_mm", fit -> fit.hub().orElseThrow().wall());
        assertThat(meeting.misfits())
                .anyMatch(each -> !each.forbids() && each.what().contains("leave 0 mm (0 in) of wood between them"));
    }

    /** The wheel of cylinders whose figure comes to 0.0 exactly, found by trying the doubles about it; a little smaller it is negative. */
    private static WheelFit justNothing(double radius, String what, Function<WheelFit, Length> figure) {
        // Of mortises as of spokes: 2·(s·sin − r·cos), for mortises from their bottoms, 3 mm below the hub's face.
        boolean wall = what.equals("wall_mm");
        for (int places = 5; places < 16; places++) {
            double depth = wall ? 3 : 0;
            double hub = radius / Math.tan(Math.PI / places) + depth;
            for (int ulps = -20; ulps <= 20; ulps++) {
                double tried = hub + ulps * Math.ulp(hub);
                WheelFit fit = slim(places, tried, wall);
                if (figure.apply(fit).mm() == 0) {
                    WheelFit less = slim(places, tried - 1e-6, wall);
                    assertThat(figure.apply(less).mm()).isNegative();
                    assertThat(less.buildable()).isFalse();
                    assertThat(fit.buildable()).as(what).isTrue();
                    return fit;
                }
            }
        }
        throw new AssertionError("no wheel with a %s of just nothing".formatted(what));
    }

    /** With mortises 3 mm deep; spokes 30 mm thick and mortises of 2 mm, or spokes of 10 mm and mortises of 18. */
    private static WheelFit slim(int places, double hubRadius, boolean wall) {
        return fit(job(places, hubRadius, frame -> frame.put("hub_seat", 3), "tenon", wall ? 10 : 30, wall ? 18 : 2));
    }

    @Test
    void fewer_than_six_segments_have_short_grain_at_their_joints() {
        for (int segments = 3; segments <= 12; segments++) {
            int many = segments;
            List<Misfit> misfits = fit(12, 160, frame -> frame.put("segments", many)).misfits().stream()
                    .filter(each -> each.what().contains("short grain"))
                    .toList();
            assertThat(misfits).hasSize(segments < 6 ? 1 : 0);
            assertThat(misfits).noneMatch(Misfit::forbids);
        }
        assertThat(fit(12, 160, frame -> frame.put("segments", 4)).misfits())
                .anyMatch(each ->
                        each.what().startsWith("of 4 segments the grain runs out of the rim at 45° at each joint")
                                && each.mend().startsWith("common practice, no source: six segments and more"));
    }

    @Test
    void segments_that_cannot_keep_off_the_mortises_are_told() {
        assertThat(fit(20, 160, frame -> frame.put("segments", 19)).misfits())
                .anyMatch(misfit -> !misfit.forbids() && misfit.what().contains("of 19 segments"));
        assertThat(fit(20, 160, frame -> frame.put("segments", 10)).misfits()).isEmpty();
    }

    @Test
    void a_hub_too_short_for_two_rows_is_told() {
        assertThat(fit(10, 90, frame -> frame.put("stagger", 30).put("hub_length", 60))
                        .misfits())
                .singleElement()
                .matches(misfit -> misfit.mend().contains("62 mm"));
        assertThat(fit(10, 90, frame -> frame.put("stagger", 30).put("hub_length", 62))
                        .misfits())
                .isEmpty();
    }

    private static final Pattern HUB = Pattern.compile("a hub of ([0-9.]+) mm");
    private static final Pattern PLACES = Pattern.compile("(\\d+) places at most");
    private static final Pattern THICK = Pattern.compile("no more than ([0-9.]+) mm");
    private static final Pattern DEEP = Pattern.compile("mortises ([0-9.]+) mm \\([^)]*\\) deep at most");
    private static final Pattern OFF = Pattern.compile("set off by ([0-9.]+) mm");

    private static List<Double> found(Pattern pattern, WheelFit fit) {
        List<Double> out = new ArrayList<>();
        fit.misfits().forEach(misfit -> {
            Matcher matcher = pattern.matcher(misfit.mend());
            if (matcher.find()) {
                out.add(Double.valueOf(matcher.group(1)));
            }
        });
        return out;
    }

    /** Each mend is followed, alone: nothing is left to say; and a step less does not do. */
    @Test
    void each_way_to_mend_it_does_and_a_step_less_does_not() {
        Consumer<ObjectNode> none = frame -> {};
        WheelFit bad = fit(14, 60, none);
        assertThat(bad.buildable()).isFalse();
        double hub = found(HUB, bad).get(0);
        assertThat(fit(14, hub, none).misfits()).isEmpty();
        assertThat(fit(14, hub - 2, none).misfits()).isNotEmpty();
        int places = found(PLACES, bad).get(0).intValue();
        assertThat(fit(places, 60, none).misfits()).isEmpty();
        assertThat(fit(places + 1, 60, none).misfits()).isNotEmpty();
        double off = found(OFF, bad).get(0);
        assertThat(fit(14, 60, frame -> frame.put("stagger", off)).misfits()).isEmpty();
        assertThat(fit(14, 60, frame -> frame.put("stagger", off - 0.5)).misfits())
                .isNotEmpty();

        WheelFit deep = fit(14, 90, frame -> frame.put("hub_seat", 50));
        double depth = found(DEEP, deep).get(0);
        assertThat(fit(14, 90, frame -> frame.put("hub_seat", depth)).misfits())
                .noneMatch(misfit -> misfit.where().equals("hub"));

        WheelFit thick = fit(14, 75, frame -> frame.put("hub_seat", 5));
        double slim = found(THICK, thick).get(0);
        double sin = Math.sin(Math.PI / 14);
        double cos = Math.cos(Math.PI / 14);
        assertThat(2 * (75 * sin - slim / 2 * cos)).isGreaterThanOrEqualTo(6.35);
        assertThat(2 * (75 * sin - (slim + 0.5) / 2 * cos)).isLessThan(6.35);
    }

    /** What gives the spokes room must not take hub or rim apart: it leaves enough beyond both rows, or is not offered. */
    @Test
    void a_stagger_is_offered_only_where_hub_and_rim_hold_both_rows() {
        double off = found(OFF, fit(14, 60, frame -> {})).get(0);
        for (boolean hub : new boolean[] {true, false}) {
            double least = 2 * 6.35 + (hub ? 18 : 16) + off;
            Consumer<ObjectNode> enough = along(hub, least + 1e-6);
            Consumer<ObjectNode> thin = along(hub, least - 1e-3);
            assertThat(found(OFF, fit(14, 60, enough)).get(0)).isEqualTo(off);
            assertThat(fit(14, 60, enough.andThen(frame -> frame.put("stagger", off)))
                            .misfits())
                    .isEmpty();
            assertThat(found(OFF, fit(14, 60, thin))).isEmpty();
            assertThat(found(PLACES, fit(14, 60, thin))).isNotEmpty();
        }
    }

    private static Consumer<ObjectNode> along(boolean hub, double mm) {
        return frame -> {
            if (hub) {
                frame.put("hub_length", mm);
            } else {
                frame.put("rim_width", 60).put("rim_thickness", mm);
            }
        };
    }

    @Test
    void the_plan_says_first_what_cannot_be_built() {
        Plan plan = Plan.of(job(14, 60, frame -> {}), Effort.ofAsks(1000));
        assertThat(plan.warnings().get(0).what()).startsWith("cannot be built: member 2");
        assertThat(plan.warnings().get(0).where()).isEqualTo("spokes");
        assertThat(plan.workings()).anyMatch(working -> working.figure().equals("between neighbours"));
        assertThat(plan.job().pattern().length()).isEqualTo(Length.ofMm(345));
    }

    /** Hub, rim and rods, each by its own elementary formula. */
    @Test
    void the_whole_wheel_weighs_what_its_parts_do() {
        WholeWheel whole = fit(10, 90, frame -> {
                    frame.put("rim_width", 35)
                            .put("rim_thickness", 30)
                            .put("hub_length", 100)
                            .put("axle_hole", 20);
                    frame.putObject("rim_wood").put("density_kg_m3", 500);
                    frame.putObject("hub_wood").put("density_kg_m3", 800);
                })
                .whole();
        double rod = Math.PI / 4 * (18 * 18 * 25 + 30 * 30 * 300 + 16 * 16 * 20) * 650e-6;
        assertThat(whole.spokes().grams()).isCloseTo(10 * rod, within(1e-6));
        double hub = (Math.PI * (90 * 90 - 10 * 10) * 100 - 10 * Math.PI / 4 * 18 * 18 * 25) * 800e-6;
        assertThat(whole.hub().orElseThrow().grams()).isCloseTo(hub, within(1e-6));
        double rim = (Math.PI * (425 * 425 - 390 * 390) * 30 - 10 * Math.PI / 4 * 16 * 16 * 20) * 500e-6;
        assertThat(whole.rim().orElseThrow().grams()).isCloseTo(rim, within(1e-6));
        // The inertia by small parts along each radius: rings of hub and rim, slices of the rods and of the holes.
        double inertia = 0;
        int steps = 200_000;
        for (int i = 0; i < steps; i++) {
            double s = (i + 0.5) * 430 / steps;
            double ds = 430.0 / steps;
            double ring = 2 * Math.PI * s * s * s * ds;
            inertia += s > 10 && s < 90 ? 800e-6 * 100 * ring : 0;
            inertia += s > 390 && s < 425 ? 500e-6 * 30 * ring : 0;
            double d = s > 65 && s < 90 ? 18 : s > 390 && s < 410 ? 16 : s > 90 && s < 390 ? 30 : 0;
            double wood = s < 90 ? 650e-6 - 800e-6 : s < 390 ? 650e-6 : 650e-6 - 500e-6;
            inertia += 10 * wood * Math.PI / 4 * d * d * (s * s + d * d / 16) * ds;
        }
        assertThat(whole.inertiaGMm2()).isCloseTo(inertia, withinPercentage(1e-3));
    }

    /** Nobody weighs less than nothing, whatever the axle's hole or the mortises take away. */
    @Test
    void a_hub_of_which_nothing_is_left_is_not_weighed() {
        WheelFit hollow = fit(10, 90, frame -> frame.put("hub_length", 100).put("axle_hole", 200));
        assertThat(hollow.whole().hub()).isEmpty();
        assertThat(hollow.buildable()).isFalse();
        assertThat(fit(400, 90, frame -> frame.put("hub_length", 20)).whole().hub())
                .isEmpty();
    }

    @Test
    void a_mortise_wider_than_hub_or_rim_forbids_them_and_one_that_comes_through_is_told_without_a_sign() {
        WheelFit hub = fit(10, 90, frame -> frame.put("hub_length", 15));
        assertThat(hub.misfits())
                .anyMatch(each -> each.forbids()
                        && each.what().startsWith("the mortises run out of its ends, 1.5 mm")
                        && each.mend().startsWith("a hub 32 mm"));
        WheelFit rim = fit(10, 90, frame -> frame.put("rim_width", 18).put("rim_thickness", 14));
        assertThat(rim.misfits())
                .anyMatch(each -> each.forbids()
                        && each.where().equals("rim")
                        && each.what().startsWith("the mortises run out of its faces, 1 mm")
                        && each.mend().startsWith("a rim 30 mm"));
        assertThat(rim.facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(line -> line.contains("coming out at the rim's outside by 2 mm"));
        assertThat(fit(10, 90, frame -> frame.put("rim_width", 35).put("rim_thickness", 20))
                        .misfits())
                .anyMatch(each -> !each.forbids() && each.what().startsWith("2 mm (5/64 in) is left between"));
    }

    /** A pendulum's balance of energy, step by step: the wheel let go from a small angle. */
    @Test
    void the_whole_wheel_rocks_in_the_period_that_letting_it_go_takes() {
        Consumer<ObjectNode> built = frame -> frame.put("rim_width", 35)
                .put("rim_thickness", 30)
                .put("hub_length", 100)
                .put("axle_hole", 20);
        assertThat(fit(10, 90, built).whole().rockingPeriodS()).isEmpty();
        WholeWheel whole = fit(10, 90, built.andThen(frame -> {
                    var moments = frame.putArray("given_moments");
                    moments.addObject().put("g_mm", 3000).put("at_deg", 90);
                    moments.addObject().put("g_mm", 4000).put("at_deg", 0);
                }))
                .whole();
        assertThat(whole.pull().gMm()).isCloseTo(5000, within(1e-9));
        double angle = 0.01;
        double speed = 0;
        double time = 0;
        double step = 1e-4;
        while (angle > 0) {
            speed -= 9806.65 * 5000 / whole.inertiaGMm2() * Math.sin(angle) * step;
            angle += speed * step;
            time += step;
        }
        assertThat(whole.rockingPeriodS().orElseThrow()).isCloseTo(4 * time, withinPercentage(0.01));
    }

    /** The same swing, of a weight stuck on and of what a grade allows, each by a pendulum let go. */
    @Test
    void a_plan_tells_before_anything_is_built_how_the_wheel_would_rock() {
        WheelFit fit = fit(10, 90, frame -> frame.put("rim_width", 35)
                .put("rim_thickness", 30)
                .put("hub_length", 100)
                .put("rpm", 45)
                .put("counterweight_radius", 380));
        WholeWheel whole = fit.whole();
        double trial = swingS(whole.inertiaGMm2(), 10 * 380);
        double allowed = 16 * whole.mass().grams() / (2 * Math.PI * 45 / 60);
        double grade = swingS(whole.inertiaGMm2(), allowed);
        assertThat(whole.periodS(whole.trialGMm()).orElseThrow()).isCloseTo(trial, withinPercentage(0.01));
        assertThat(whole.permitted().get(0).gMm()).isCloseTo(allowed, within(1e-6));
        assertThat(whole.periodS(allowed).orElseThrow()).isCloseTo(grade, withinPercentage(0.01));
        assertThat(fit.facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(line -> line.contains(
                        "10 g stuck on 380 mm (14 61/64 in) from the axle would rock it in %.0f s there and back"
                                .formatted(trial)))
                .anyMatch(line -> line.contains(
                        "at 45 turns a minute balance grade G16 allows %.0f g·mm (a swing of %.1f s), balance grade G40"
                                .formatted(100 * Math.rint(allowed / 100), grade)));
        assertThat(fit.workings()).anyMatch(working -> working.figure().equals("rocking of the whole wheel"));
    }

    /** Whose scale shows ounces reads pounds and ounces first, beside millimetres too. */
    @Test
    void the_whole_wheel_weighs_what_the_jobs_scale_would_say() {
        WheelFit fit = fit(10, 90, frame -> frame.put("rim_width", 120)
                .put("rim_thickness", 60)
                .put("hub_length", 100)
                .put("counterweight_radius", 380));
        String pounds = "%.2f lb".formatted(fit.whole().mass().pounds());
        String grams = fit.whole().mass().formatGrams();
        assertThat(grams).endsWith(" kg");
        assertThat(fit.facts(UnitSystem.INCH, MassUnit.OUNCE))
                .anyMatch(line -> line.startsWith("  whole    %s (%s): spokes ".formatted(pounds, grams)))
                .anyMatch(line -> line.contains("once balanced, 0.4 oz (10 g) stuck on"));
        assertThat(fit.facts(UnitSystem.INCH, MassUnit.GRAM))
                .anyMatch(line -> line.startsWith("  whole    %s (%s): spokes ".formatted(grams, pounds)));
        assertThat(fit.facts(UnitSystem.METRIC, MassUnit.GRAM))
                .anyMatch(line -> line.startsWith("  whole    %s: spokes ".formatted(grams)));
        for (MassUnit masses : MassUnit.values()) {
            assertThat(fit.sentences(UnitSystem.INCH, masses).stream()
                            .map(line -> Speech.in(Language.GERMAN, () -> Speech.of(line))))
                    .anyMatch(line -> line.startsWith("Das Ganze: ") && line.contains(": Speichen "))
                    .noneMatch(line -> line.contains("Whole") || line.contains("rim ") || line.contains("hub "));
        }
    }

    /** A wheel let go from a small angle, four quarters of its swing. */
    private static double swingS(double inertiaGMm2, double gMm) {
        double angle = 0.01;
        double speed = 0;
        double time = 0;
        double step = 1e-4;
        while (angle > 0) {
            speed -= 9806.65 * gMm / inertiaGMm2 * Math.sin(angle) * step;
            angle += speed * step;
            time += step;
        }
        return 4 * time;
    }

    @Test
    void a_wheel_of_which_hub_or_rim_is_not_told_asks_for_them() {
        assertThat(fit(10, 90, frame -> {}).facts(UnitSystem.METRIC, MassUnit.GRAM))
                .noneMatch(line -> line.contains("rock it"))
                .anyMatch(line -> line.contains("once the hub's length and the rim's width and thickness are told"));
    }

    /** The inertia told with the rocking of the bare wheel stands for hub and rim, spokes are added as drawn. */
    @Test
    void a_bare_wheel_that_was_rocked_needs_no_sizes_of_hub_and_rim() {
        WholeWheel whole = fit(10, 90, frame -> frame.putObject("rocking")
                        .put("period_s", 12)
                        .put("rests_at_deg", 30)
                        .put("inertia_g_mm2", 3e8))
                .whole();
        double spokes = fit(10, 90, frame -> {}).whole().inertiaGMm2();
        assertThat(whole.inertiaGMm2()).isCloseTo(3e8 + spokes, within(1.0));
        // The bare wheel's own pull, on a wheel that is the heavier by its spokes: T grows as the root of the inertia.
        assertThat(whole.rockingPeriodS().orElseThrow())
                .isCloseTo(12 * Math.sqrt(1 + spokes / 3e8), withinPercentage(1e-6));
        assertThat(whole.complete()).isFalse();
    }

    /** Pieces twice as heavy as drawn are twice the spokes' inertia; hub and rim stay. */
    @Test
    void a_set_tells_how_the_wheel_would_rock_with_its_own_pieces() {
        Consumer<ObjectNode> built =
                frame -> frame.put("hub_length", 80).put("rim_width", 40).put("rim_thickness", 30);
        WheelSet set = set(built, 120);
        WholeWheel drawn = fit(8, 120, built).whole();
        double pieces = (8 * 170 + 0.4 * 28) / drawn.spokes().grams();
        assertThat(set.whole().inertiaGMm2())
                .isCloseTo(drawn.restGMm2() + pieces * drawn.spokesGMm2(), withinPercentage(1e-9));
        double expected = set.placement().expected().meanGMm();
        double swing = 2 * Math.PI * Math.sqrt(set.whole().inertiaGMm2() / (9806.65 * expected));
        assertThat(set.rockingInWords().orElseThrow()).contains("there and back in %.0f s by".formatted(swing));
        assertThat(set.verdict().sentences()).contains(set.rockingInWords().orElseThrow());
        assertThat(set(frame -> {}, 120).rockingInWords()).isEmpty();
    }

    private static WheelSet set(Consumer<ObjectNode> frame, double hubRadius) {
        Job job = job(8, hubRadius, frame);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
            pieces.add(Piece.of(String.valueOf(i), Measures.ofMass(Mass.ofGrams(170 + 0.4 * i))));
        }
        return (WheelSet) MatchJob.of(job, pieces, false, Effort.ofAsks(2000));
    }

    @Test
    void a_set_for_a_wheel_that_cannot_be_built_says_so_first() {
        assertThat(set(frame -> {}, 35).warnings().get(0)).startsWith("spokes: cannot be built: ");
        assertThat(set(frame -> {}, 120).warnings()).noneMatch(each -> each.contains("cannot be built"));
    }

    @Test
    void a_balance_grade_counts_hub_and_rim_once_both_are_told() {
        SpeedGrade alone = set(frame -> frame.put("rpm", 60), 120).grade().orElseThrow();
        SpeedGrade half = set(frame -> frame.put("rpm", 60).put("hub_length", 80), 120)
                .grade()
                .orElseThrow();
        SpeedGrade whole = set(
                        frame -> frame.put("rpm", 60)
                                .put("hub_length", 80)
                                .put("rim_width", 40)
                                .put("rim_thickness", 30),
                        120)
                .grade()
                .orElseThrow();
        assertThat(half.mass()).isEqualTo(alone.mass());
        assertThat(whole.whole()).isTrue();
        assertThat(whole.mass().grams()).isGreaterThan(2 * alone.mass().grams());
    }
}
