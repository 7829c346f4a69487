package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import turnalike.frame.Counterweight;
import turnalike.frame.Moment;
import turnalike.frame.RimFit;
import turnalike.job.fields.Json;
import turnalike.job.set.Roundness;
import turnalike.job.set.SpeedGrade;
import turnalike.job.set.WheelSet;
import turnalike.match.Expected;
import turnalike.match.Seat;
import turnalike.match.TradeOff;
import turnalike.match.WheelPlacement;
import turnalike.units.Length;

/** A placed wheel as JSON. */
final class WheelJson {
    private WheelJson() {}

    static ObjectNode of(WheelSet set) {
        WheelPlacement placement = set.placement();
        ObjectNode root = Json.object();
        ArrayNode places = root.putArray("places");
        for (Seat seat : placement.seats()) {
            places.addObject()
                    .put("place", seat.place())
                    .put("angle_deg", seat.angle().degrees())
                    .put("piece", seat.piece().label())
                    .put("mass_g", seat.piece().mass().grams())
                    .put("radius_mm", seat.reach().mm());
        }
        MatchJson.labels(root.putArray("spares"), set.spareLabels());
        root.put("unbalance_g_mm", placement.unbalance().gMm());
        root.put("heavy_at_deg", placement.unbalance().at().degrees());
        if (!set.parts().isEmpty()) {
            ArrayNode parts = root.putArray("unbalance_from");
            set.parts().forEach(part -> parts.addObject()
                    .put("from", part.from())
                    .put("g_mm", part.moment().gMm())
                    .put("at_deg", part.moment().at().degrees()));
        }
        root.put("noise_floor_g_mm", placement.noiseFloorGMm());
        expected(root, placement);
        root.put("best_proven", placement.bestProven());
        root.put("chosen_by", set.chosenBy().word());
        root.put("mass_spread_g", placement.massSpread().grams());
        set.frame().counterweightRadius().ifPresent(radius -> counterweight(root, placement.unbalance(), radius));
        set.frame().bare().rocking().ifPresent(rocking -> {
            Moment found = rocking.unbalance();
            root.putObject("rocking")
                    .put("g_mm", found.gMm())
                    .put("at_deg", found.at().degrees())
                    .put("inertia_g_mm2", rocking.inertiaGMm2());
        });
        Expected expected = placement.expected();
        set.whole().periodS(expected.meanGMm()).ifPresent(period -> {
            ObjectNode built = root.putObject("built")
                    .put("inertia_g_mm2", set.whole().inertiaGMm2())
                    .put("rocking_period_s", period);
            set.whole().periodS(expected.fromGMm()).ifPresent(slow -> set.whole()
                    .periodS(expected.toGMm())
                    .ifPresent(quick ->
                            built.putArray("rocking_range_s").add(quick).add(slow)));
        });
        set.roundness().ifPresent(roundness -> roundness(root, roundness));
        set.grade().ifPresent(grade -> grade(root.putObject("balance_grade"), grade));
        return root;
    }

    private static void expected(ObjectNode root, WheelPlacement placement) {
        Expected expected = placement.expected();
        root.put("expected_unbalance_g_mm", expected.meanGMm());
        root.putArray("unbalance_range_g_mm").add(expected.fromGMm()).add(expected.toGMm());
        root.put("within_scale", placement.isWithinScale());
        double squares = expected.noiseGMm() * expected.noiseGMm();
        ArrayNode scatter = root.putArray("scatter");
        for (Expected.Share share : expected.shares()) {
            double part = squares == 0 ? 0 : share.rmsGMm() * share.rmsGMm() / squares;
            scatter.addObject()
                    .put("from", share.from())
                    .put("rms_g_mm", share.rmsGMm())
                    .put("share", part)
                    .put("stated", share.stated());
        }
        expected.next().ifPresent(next -> {
            ObjectNode node = root.putObject("measure_next");
            MatchJson.labels(node.putArray("balance_of"), next.pieces());
            node.put("expected_unbalance_g_mm", next.expectedGMm());
        });
    }

    private static void counterweight(ObjectNode root, Moment unbalance, Length radius) {
        Counterweight weight = unbalance.counterweight(radius);
        root.putObject("counterweight")
                .put("radius_mm", weight.radius().mm())
                .put("at_deg", weight.at().degrees())
                .put("mass_g", weight.mass().grams())
                .put("or_remove_at_deg", weight.removeAt().degrees());
    }

    private static void roundness(ObjectNode root, Roundness roundness) {
        RimFit fit = roundness.placed().rim();
        ObjectNode rim = root.putObject("rim")
                .put("run_out_mm", fit.runOut().mm())
                .put("offset_mm", fit.offset().mm())
                .put("offset_at_deg", fit.offsetAt().degrees())
                .put("radius_mm", fit.radius().mm());
        ArrayNode deepen = rim.putArray("seat_deepen_mm");
        roundness.deepenings().forEach(each -> deepen.add(each.mm()));
        ArrayNode curve = root.putArray("trade_off");
        for (TradeOff.Point point : roundness.curve()) {
            way(curve.addObject(), roundness, point);
        }
        ArrayNode bored = root.putArray("with_boring");
        for (TradeOff.Point point : roundness.bored()) {
            ObjectNode node = bored.addObject();
            way(node, roundness, point);
            node.put("heavy_at_deg", point.unbalance().at().degrees())
                    .put("bored_mm", point.bored().mm());
            ArrayNode seats = node.putArray("seat_deepen_mm");
            point.deepenings().forEach(each -> seats.add(each.mm()));
        }
    }

    private static void way(ObjectNode node, Roundness roundness, TradeOff.Point point) {
        node.put("unbalance_g_mm", point.unbalance().gMm())
                .put("run_out_mm", point.rim().runOut().mm());
        MatchJson.labels(node.putArray("places"), roundness.labels(point));
    }

    private static void grade(ObjectNode node, SpeedGrade grade) {
        node.put("rpm", grade.revPerMin())
                .put("mass_g", grade.mass().grams())
                .put("reached_mm_s", grade.reached().mmPerS());
        ArrayNode permitted = node.putArray("permitted");
        grade.permitted().forEach(each -> permitted
                .addObject()
                .put("grade_mm_s", each.grade().mmPerS())
                .put("unbalance_g_mm", each.gMm()));
    }
}
