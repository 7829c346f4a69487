package turnalike.job;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.frame.Counterweight;
import turnalike.match.Candidate;
import turnalike.match.Placement;
import turnalike.match.Seat;
import turnalike.pieces.Piece;
import turnalike.units.Mass;

/** A placed set as the one JSON object that {@code match --json} prints. */
public final class MatchJson implements SetMatch.Cases<ObjectNode> {
    private MatchJson() {}

    public static String print(SetMatch match) {
        ObjectNode root = match.match(new MatchJson());
        ArrayNode warnings = root.putArray("warnings");
        match.warnings().forEach(warnings::add);
        PlanJson.workings(root.putArray("workings"), match.workings());
        return Json.print(root);
    }

    @Override
    public ObjectNode wheel(WheelSet set) {
        Placement placement = set.placement();
        ObjectNode root = Json.object();
        ArrayNode places = root.putArray("places");
        for (Seat seat : placement.seats()) {
            places.addObject()
                    .put("place", seat.place())
                    .put("angle_deg", seat.angle().degrees())
                    .put("piece", seat.piece().label())
                    .put("mass_g", seat.piece().mass().grams())
                    .put("radius_mm", seat.piece().reach().mm());
        }
        spares(root, placement.spares().stream().map(Candidate::label).toList());
        root.put("unbalance_g_mm", placement.unbalance().gMm());
        root.put("heavy_at_deg", placement.unbalance().at().degrees());
        root.put("noise_floor_g_mm", placement.noiseFloorGMm());
        root.put("best_proven", placement.bestProven());
        root.put("mass_spread_g", placement.massSpread().grams());
        set.frame().counterweightRadius().ifPresent(radius -> {
            Counterweight weight = placement.unbalance().counterweight(radius);
            root.putObject("counterweight")
                    .put("radius_mm", weight.radius().mm())
                    .put("at_deg", weight.at().degrees())
                    .put("mass_g", weight.mass().grams())
                    .put("or_remove_at_deg", weight.removeAt().degrees());
        });
        return root;
    }

    @Override
    public ObjectNode row(RowSet set) {
        ObjectNode root = Json.object();
        ArrayNode places = root.putArray("places");
        List<Piece> order = set.inOrder();
        for (int i = 0; i < order.size(); i++) {
            ObjectNode place = places.addObject();
            place.put("place", i + 1).put("piece", order.get(i).label());
            order.get(i).mass().map(Mass::grams).ifPresent(grams -> place.put("mass_g", grams));
        }
        spares(root, set.spares().stream().map(Piece::label).toList());
        root.put("total_difference", set.placement().totalDifference());
        root.put("at_least", set.placement().bound());
        root.put("best_proven", set.placement().bestProven());
        return root;
    }

    private static void spares(ObjectNode root, List<String> labels) {
        ArrayNode spares = root.putArray("spares");
        labels.forEach(spares::add);
    }
}
