package turnalike.job.nudge;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import turnalike.job.edit.NudgeEdit.Shift;
import turnalike.job.fields.Json;

/** Nudges as the one JSON object that {@code nudge --json} prints. */
public final class NudgeJson {
    private NudgeJson() {}

    /**
     * {@return the object's text, ended by a line end} Moves are in millimetres, longer and thicker above zero; members are counted from 0.
     *
     * @param nudges found for a job
     */
    public static String print(Nudges nudges) {
        ObjectNode root = Json.object();
        ArrayNode list = root.putArray("nudges");
        for (int i = 0; i < nudges.nudges().size(); i++) {
            nudge(list.addObject().put("number", i + 1), nudges.nudges().get(i));
        }
        root.put("tried", nudges.tried());
        root.put("left", nudges.left());
        root.put("stopped", nudges.stopped());
        root.put("fewest_proven", nudges.fewestProven());
        return Json.print(root);
    }

    private static void nudge(ObjectNode node, Nudge nudge) {
        node.put("saves", nudge.saves() == Nudge.Saving.DIVIDERS ? "dividers" : "calipers");
        node.put("before", nudge.before());
        node.put("after", nudge.after());
        node.put("cost", nudge.cost());
        node.put("what", nudge.words());
        ArrayNode moves = node.putArray("moves");
        for (Shift shift : nudge.edit().shifts()) {
            moves.addObject()
                    .put("member", shift.number() - 1)
                    .put("key", shift.key())
                    .put("by_mm", shift.by().mm());
        }
    }
}
