package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import turnalike.frame.DividingHead;
import turnalike.job.set.FrameFit;
import turnalike.job.set.FrameKind;
import turnalike.job.set.LegsFit;
import turnalike.job.set.Misfit;
import turnalike.job.set.RowFit;
import turnalike.job.set.WheelFit;
import turnalike.job.set.WholeWheel;
import turnalike.units.Length;

/** How the pattern stands in its frame, as the {@code frame} of a plan's JSON. */
final class FrameJson implements FrameFit.Cases<ObjectNode> {
    private final ObjectNode node;

    private FrameJson(ObjectNode node) {
        this.node = node;
    }

    static void write(ObjectNode node, FrameFit fit) {
        fit.match(new FrameJson(node));
        node.put("buildable", fit.buildable());
        ArrayNode misfits = node.putArray("misfits");
        for (Misfit misfit : fit.misfits()) {
            misfits.addObject()
                    .put("forbids", misfit.forbids())
                    .put("where", misfit.where())
                    .put("what", misfit.what())
                    .put("mend", misfit.mend());
        }
    }

    @Override
    public ObjectNode wheel(WheelFit fit) {
        node.put("kind", FrameKind.WHEEL.word());
        node.put("places", fit.places());
        node.put("pitch_deg", fit.pitch().degrees());
        node.put("stagger_mm", fit.stagger().mm());
        node.putObject("neighbours")
                .put("gap_mm", fit.neighbours().gap().mm())
                .put("at_mm", fit.neighbours().at().mm())
                .put("member", fit.neighbours().member())
                .put("places_apart", fit.neighbours().apart());
        fit.hub().ifPresent(seats -> seats(node.putObject("hub_seats"), seats));
        fit.rimSeats().ifPresent(seats -> {
            ObjectNode rim = node.putObject("rim_seats");
            seats(rim, seats);
            fit.outside().ifPresent(left -> rim.put("outside_mm", left.mm()));
        });
        node.putObject("hub_strip")
                .put("length_mm", fit.strip().mm())
                .put("step_mm", fit.stripStep().mm());
        ArrayNode heads = node.putArray("dividing_heads");
        DividingHead.serving(fit.places())
                .forEach(head -> heads.addObject().put("holes", head.holes()).put("every", head.every()));
        ObjectNode rim = node.putObject("rim");
        rim.put("inner_radius_mm", fit.innerRadius().mm());
        fit.outerRadius().ifPresent(radius -> rim.put("outer_radius_mm", radius.mm()));
        fit.rim().ifPresent(segments -> {
            rim.put("segments", segments.segments());
            rim.put("mitre_deg", segments.mitre().degrees());
            segments.chord().ifPresent(chord -> rim.put("chord_mm", chord.mm()));
            segments.boardWidth().ifPresent(width -> rim.put("board_width_mm", width.mm()));
            rim.put("first_joint_deg", segments.jointAt().degrees());
            rim.put("joint_to_mortise_mm", segments.jointClear().mm());
        });
        fit.whole().segmentsPull().ifPresent(pull -> rim.putObject("segments_pull")
                .put("g_mm", pull.gMm())
                .put("at_deg", pull.at().degrees()));
        ObjectNode whole = node.putObject("whole");
        whole.put("spokes_g", fit.whole().spokes().grams());
        fit.whole().hub().ifPresent(mass -> whole.put("hub_g", mass.grams()));
        fit.whole().rim().ifPresent(mass -> whole.put("rim_g", mass.grams()));
        whole.put("mass_g", fit.whole().mass().grams());
        whole.put("inertia_g_mm2", fit.whole().inertiaGMm2());
        fit.whole().rockingPeriodS().ifPresent(period -> {
            whole.put("rocking_g_mm", fit.whole().pull().gMm());
            whole.put("rocking_at_deg", fit.whole().pull().at().degrees());
            whole.put("rocking_period_s", period);
        });
        whole.put("inertia_of_all", fit.whole().rocks());
        fit.whole().periodS(fit.whole().trialGMm()).ifPresent(period -> whole.putObject("trial")
                .put("mass_g", WholeWheel.TRIAL.grams())
                .put("radius_mm", fit.whole().trialAt().mm())
                .put("rocking_period_s", period));
        if (!fit.whole().permitted().isEmpty()) {
            ArrayNode grades = whole.putArray("balance_grades");
            fit.whole().permitted().forEach(each -> grades.addObject()
                    .put("grade_mm_s", each.grade().mmPerS())
                    .put("unbalance_g_mm", each.gMm())
                    .put("rocking_period_s", fit.whole().periodS(each.gMm()).orElseThrow()));
        }
        return node;
    }

    @Override
    public ObjectNode row(RowFit fit) {
        RowFit.Stand stand = fit.stand();
        node.put("kind", FrameKind.ROW.word());
        node.put("count", stand.places().size());
        stand.pitch().ifPresent(pitch -> node.put("pitch_mm", pitch.mm()));
        node.put("end_mm", stand.places().get(0).mm());
        node.put("clear_mm", stand.clear().mm());
        node.put("rails_apart_mm", stand.height().mm());
        node.put("rake_deg", stand.rake().degrees());
        ArrayNode places = node.putArray("places");
        for (int i = 0; i < stand.places().size(); i++) {
            Length at = stand.places().get(i);
            places.addObject()
                    .put("place", i + 1)
                    .put("at_mm", at.mm())
                    .put("along_rail_mm", stand.alongRail(at).mm())
                    .put("up_mm", stand.rise(at).mm());
        }
        ObjectNode openings = node.putObject("openings");
        fit.between()
                .ifPresent(ball -> openings.put("between_mm", ball.diameter().mm()));
        if (!fit.besides().isEmpty()) {
            ArrayNode besides = openings.putArray("by_lengths");
            fit.besides().forEach(each -> besides.addObject()
                    .put("left", each.left())
                    .put("right", each.right())
                    .put("foot_rise_mm", each.rise().mm())
                    .put("ball_mm", each.ball().mm()));
        }
        openings.put("end_mm", fit.end().diameter().mm());
        openings.put("widest_mm", fit.widest().mm());
        fit.gap().ifPresent(gap -> node.put("gap_mm", gap.left().mm()));
        node.putObject("code_figure")
                .put("ball_mm", RowFit.CODE.ball().mm())
                .put("open_stair_ball_mm", RowFit.CODE.openStair().mm())
                .put("from", RowFit.CODE.from())
                .put("status", RowFit.CODE.status());
        fit.limit().ifPresent(limit -> node.put("limit_mm", limit.mm()).put("limit_from", RowFit.YOURS));
        return node;
    }

    @Override
    public ObjectNode legs(LegsFit fit) {
        node.put("kind", FrameKind.LEGS.word());
        node.put("places", fit.places());
        node.put("rake_deg", fit.angles().rake().degrees());
        node.put("splay_deg", fit.angles().splay().degrees());
        node.put("lean_deg", fit.angles().lean().degrees());
        node.put("sight_deg", fit.angles().sight().degrees());
        fit.length().ifPresent(leg -> node.put("leg_mm", leg.mm()));
        node.put("bevel_deg", fit.angles().lean().degrees());
        node.put("foot_below_mm", fit.footBelow().mm());
        ArrayNode bearings = node.putArray("bearings_deg");
        fit.bearings().forEach(bearing -> bearings.add(bearing.degrees()));
        fit.seat().ifPresent(seat -> {
            ObjectNode bored = node.putObject("seat")
                    .put("hole_mm", seat.hole().mm())
                    .put("tenon_mm", seat.tenon().mm());
            seat.along().ifPresent(along -> bored.put("along_mm", along.mm()).put("through", seat.isThrough()));
        });
        ArrayNode stretchers = node.putArray("stretchers");
        for (LegsFit.Stretcher each : fit.stretchers()) {
            stretchers
                    .addObject()
                    .put("between", each.between())
                    .put("height_mm", each.height().mm())
                    .put("axes_mm", each.axes().mm())
                    .put("clear_mm", each.clear().mm())
                    .put("angle_deg", each.angle().degrees())
                    .put("down_leg_mm", each.along().mm());
        }
        return node;
    }

    private static void seats(ObjectNode node, WheelFit.Seats seats) {
        node.put("hole_mm", seats.hole().mm());
        node.put("depth_mm", seats.depth().mm());
        node.put("wall_mm", seats.wall().mm());
    }
}
