package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import turnalike.frame.DividingHead;
import turnalike.job.set.FrameFit;
import turnalike.job.set.FrameKind;
import turnalike.job.set.Misfit;
import turnalike.job.set.WheelFit;

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
        ObjectNode whole = node.putObject("whole");
        whole.put("spokes_g", fit.whole().spokes().grams());
        fit.whole().hub().ifPresent(mass -> whole.put("hub_g", mass.grams()));
        fit.whole().rim().ifPresent(mass -> whole.put("rim_g", mass.grams()));
        whole.put("mass_g", fit.whole().mass().grams());
        whole.put("inertia_g_mm2", fit.whole().inertiaGMm2());
        return node;
    }

    private static void seats(ObjectNode node, WheelFit.Seats seats) {
        node.put("hole_mm", seats.hole().mm());
        node.put("depth_mm", seats.depth().mm());
        node.put("wall_mm", seats.wall().mm());
    }
}
