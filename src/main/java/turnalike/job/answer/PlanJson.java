package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.job.MemberWeight;
import turnalike.job.Plan;
import turnalike.job.fields.Json;
import turnalike.pattern.Mark;
import turnalike.solid.Solid;
import turnalike.stock.Blank;
import turnalike.stock.CornerCut;
import turnalike.stock.StockPlan;
import turnalike.units.Working;
import turnalike.wood.Wood;

/** A plan as the one JSON object that {@code plan --json} prints: lengths in mm, masses in g, each number at full precision. */
public final class PlanJson {
    private PlanJson() {}

    /**
     * The plan as JSON. Its keys end in the unit of what they hold; what hangs on a stiffness that nobody knows is left out.
     *
     * @param plan of the job; its turning is worked out for it
     * @return the object's text, ended by a line end
     */
    public static String print(Plan plan) {
        ObjectNode root = Json.object();
        root.put("title", plan.job().title());
        root.put("count", plan.job().count());
        root.put("length_mm", plan.job().pattern().length().mm());
        solid(root.putObject("solid"), plan.solid(), plan.job().wood());
        ArrayNode marks = root.putArray("marks");
        for (Mark mark : plan.marks()) {
            marks.addObject().put("mm", mark.place().mm()).put("label", mark.label());
        }
        SettingsJson.write(root.putObject("settings"), plan);
        stock(root.putObject("stock"), plan.stock());
        TurningJson.write(root.putObject("turning"), plan.turning());
        weights(root.putArray("weights"), plan.weights());
        plan.frame().ifPresent(fit -> FrameJson.write(root.putObject("frame"), fit));
        root.put("ended_by", plan.endedBy().word());
        LengthsJson.write(root, plan.lengths());
        SpreadJson.write(root.putObject("spread"), plan.spread());
        plan.year().ifPresent(year -> YearJson.write(root, year));
        warnings(root, plan);
        workings(root.putArray("workings"), plan.workings());
        return Json.print(root);
    }

    static void warnings(ObjectNode root, Plan plan) {
        ArrayNode warnings = root.putArray("warnings");
        plan.warnings()
                .forEach(warning ->
                        warnings.addObject().put("where", warning.where()).put("what", warning.what()));
    }

    static void solid(ObjectNode node, Solid solid, Wood wood) {
        node.put("volume_mm3", solid.volumeMm3());
        node.put("density_kg_m3", solid.density().kgPerM3());
        wood.densityUncertainty().ifPresent(half -> node.put("density_uncertainty_kg_m3", half.kgPerM3()));
        node.put("mass_g", solid.mass().grams());
        node.put("balance_mm", solid.balance().mm());
        node.put("spin_inertia_g_mm2", solid.spinInertiaGMm2());
        node.put("swing_inertia_g_mm2", solid.swingInertiaGMm2());
    }

    static void stock(ObjectNode node, StockPlan stock) {
        blank(node.putObject("blank"), stock.finished());
        blank(node.putObject("rough"), stock.rough());
        CornerCut corner = stock.cornerCut();
        node.putObject("octagon")
                .put("face_mm", corner.face().mm())
                .put("mark_in_mm", corner.markIn().mm())
                .put("depth_mm", corner.depth().mm());
        node.put("blanks", stock.spares().blanks());
        node.put("spares", stock.spares().spares());
        node.put("chance", stock.spares().chance());
        node.put("board_feet", stock.timber().boardFeet());
        node.put("cubic_metres", stock.timber().cubicMetres());
        node.put("rough_mass_g", stock.roughMass().grams());
    }

    private static void blank(ObjectNode node, Blank blank) {
        node.put("section", blank.section() == turnalike.outline.Section.ROUND ? "round" : "square");
        node.put("size_mm", blank.size().mm());
        node.put("length_mm", blank.length().mm());
    }

    private static void weights(ArrayNode list, List<MemberWeight> weights) {
        for (MemberWeight each : weights) {
            list.addObject()
                    .put("member", each.placed().number() - 1)
                    .put("name", each.placed().member().title())
                    .put("mass_g", each.mass().grams())
                    .put("step_mm", each.step().mm())
                    .put("g_per_step", each.perStep().grams());
        }
    }

    static void workings(ArrayNode list, List<Working> workings) {
        for (Working working : workings) {
            list.addObject()
                    .put("figure", working.figure())
                    .put("how", working.how())
                    .put("source", working.source())
                    .put("sureness", working.sureness());
        }
    }
}
