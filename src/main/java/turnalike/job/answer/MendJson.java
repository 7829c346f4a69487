package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.job.fields.Json;
import turnalike.job.pieces.MendJob;
import turnalike.job.pieces.QuestionsJson;
import turnalike.pieces.Slip;
import turnalike.pieces.mend.MendCut;
import turnalike.pieces.mend.MendPlan;

/** What to do about a piece, as the one JSON object that {@code mend --json} prints. */
public final class MendJson implements MendPlan.Cases<ObjectNode> {
    private final MendJob mend;

    private MendJson(MendJob mend) {
        this.mend = mend;
    }

    /**
     * The way as JSON: {@code plan} is one of {@code leave}, {@code cut}, {@code light} and {@code make another}. Masses in g, places and
     * cuts in mm, a cut as what it takes off the diameter.
     *
     * @param mend the piece and what to do about it
     * @param questions figures of the pieces file that read like slips
     * @return the object's text, ended by a line end
     */
    public static String print(MendJob mend, List<Slip> questions) {
        ObjectNode root = mend.plan().match(new MendJson(mend));
        root.put("piece", mend.piece().label());
        root.put("mass_g", mend.mass().grams());
        root.put("target_g", mend.target().grams());
        root.put("balance_after_mm", mend.balanceAfter().mm());
        ArrayNode sizes = root.putArray("sizes");
        for (MendJob.Size size : mend.sizes()) {
            sizes.addObject()
                    .put("member", size.member())
                    .put("name", size.name())
                    .put("off_diameter_mm", size.offMm())
                    .put("off_diameter_sd_mm", size.deviationMm())
                    .put("measured", size.measured());
        }
        QuestionsJson.put(root, questions);
        PlanJson.workings(root.putArray("workings"), mend.workings());
        return Json.print(root);
    }

    private ObjectNode without(String plan) {
        ObjectNode root = Json.object().put("plan", plan);
        root.putArray("cuts");
        return root.put("mass_after_g", mend.mass().grams()).put("likeness_cost", 0.0);
    }

    @Override
    public ObjectNode leave(MendPlan.Leave leave) {
        return without("leave").put("off_g", leave.off().grams());
    }

    @Override
    public ObjectNode cuts(MendPlan.Cuts plan) {
        ObjectNode root = Json.object().put("plan", "cut");
        ArrayNode cuts = root.putArray("cuts");
        for (MendCut cut : plan.cuts()) {
            cuts.addObject()
                    .put("member", cut.member())
                    .put("name", cut.name())
                    .put("from_mm", cut.from().mm())
                    .put("to_mm", cut.to().mm())
                    .put("take_off_diameter_mm", cut.takeOff().mm())
                    .put("within_tolerance", cut.sure());
        }
        return root.put("mass_after_g", plan.massAfter().grams())
                .put("likeness_cost", plan.likenessCost())
                .put("unseen", plan.gentle());
    }

    @Override
    public ObjectNode light(MendPlan.Light light) {
        ObjectNode root = without("light").put("lacking_g", light.lacking().grams());
        ArrayNode ways = root.putArray("ways");
        mend.lightWays().forEach(ways::add);
        return root;
    }

    @Override
    public ObjectNode makeAnother(MendPlan.MakeAnother another) {
        return without("make another")
                .put("too_much_g", another.tooMuch().grams())
                .put("cuts_take_off_g", another.cutsTakeOff().grams());
    }
}
