package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.job.fields.Json;
import turnalike.job.pieces.QuestionsJson;
import turnalike.job.set.ByHand;
import turnalike.job.set.HandWork;
import turnalike.job.set.LegsSet;
import turnalike.job.set.NextPieces;
import turnalike.job.set.RowSet;
import turnalike.job.set.SetMatch;
import turnalike.job.set.WheelSet;
import turnalike.match.NextSet;
import turnalike.pieces.Piece;
import turnalike.pieces.Slip;
import turnalike.units.Mass;

/** A placed set as the one JSON object that {@code match --json} prints. */
public final class MatchJson implements SetMatch.Cases<ObjectNode> {
    private MatchJson() {}

    /**
     * The set as JSON: places or groups by the pieces' labels, the spares, how good it is and whether that is proven. Masses in g, lengths
     * in mm, directions in degrees, moments in g·mm; likeness in tolerances' worths, weighted.
     *
     * @param match the set, placed in its frame
     * @param questions figures of the pieces file that read like slips
     * @return the object's text, ended by a line end
     */
    public static String print(SetMatch match, List<Slip> questions) {
        ObjectNode root = match.match(new MatchJson());
        root.put("ended_by", match.endedBy().word());
        byHand(root, match.handWork());
        match.nextSet().ifPresent(next -> nextSet(root.putObject("next_set"), next));
        ArrayNode warnings = root.putArray("warnings");
        match.warnings().forEach(warnings::add);
        QuestionsJson.put(root, questions);
        PlanJson.workings(root.putArray("workings"), match.workings());
        return Json.print(root);
    }

    @Override
    public ObjectNode wheel(WheelSet set) {
        return WheelJson.of(set);
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
            if (i < set.unlike().size()) {
                place.put("difference_to_next", set.unlike().get(i));
            }
            if (!set.lengths().isEmpty()) {
                place.put("length", set.lengths().get(i));
            }
        }
        labels(root.putArray("spares"), set.spareLabels());
        root.put("total_difference", set.placement().totalDifference());
        root.put("at_least", set.placement().bound());
        root.put("best_proven", set.placement().bestProven());
        return root;
    }

    @Override
    public ObjectNode legs(LegsSet set) {
        ObjectNode root = Json.object();
        ArrayNode groups = root.putArray("groups");
        set.groups().forEach(group -> pieces(groups.addArray(), group));
        labels(root.putArray("spares"), set.spareLabels());
        root.put("total_difference", set.grouping().totalDifference());
        root.put("best_proven", set.grouping().bestProven());
        return root;
    }

    /** What a person settled; nothing where all was searched. */
    private static void byHand(ObjectNode root, HandWork work) {
        ByHand hand = work.hand();
        if (!hand.isAny()) {
            return;
        }
        ObjectNode node = root.putObject("by_hand").put("stands", hand.stands());
        ArrayNode held = node.putArray("held");
        hand.held()
                .forEach((place, label) -> held.addObject().put("place", place).put("piece", label));
        if (!hand.stands()) {
            node.put("best_of_rest_proven", work.leastOfRest());
        }
    }

    private static void nextSet(ObjectNode node, NextPieces pieces) {
        NextSet next = pieces.next();
        labels(node.putArray("pieces"), pieces.pieces());
        node.put("missing", next.missing());
        node.put("aim_from_g", next.aimFrom().grams());
        node.put("aim_to_g", next.aimTo().grams());
        node.put("aim_g", next.aim().grams());
        next.turning().ifPresent(turning -> {
            node.put("work_runs_at_g", turning.work().meanG());
            node.put("work_scatter_g", turning.work().scatterG());
            turning.asItRuns().ifPresent(number -> node.put("turn_for_95_pct", number));
            turning.aimed().ifPresent(number -> node.put("turn_for_95_pct_aimed", number));
        });
    }

    private static void pieces(ArrayNode node, List<Piece> pieces) {
        labels(node, pieces.stream().map(Piece::label).toList());
    }

    static void labels(ArrayNode node, List<String> labels) {
        labels.forEach(node::add);
    }
}
