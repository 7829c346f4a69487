package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.effort.Ending;
import turnalike.job.boards.BoardNotes;
import turnalike.job.boards.JobBlanks;
import turnalike.job.boards.WoodToBuy;
import turnalike.job.fields.Json;
import turnalike.stock.boards.CuttingPlan;
import turnalike.stock.boards.CuttingPlan.CutBlank;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.stock.boards.CuttingPlan.LeftOver;
import turnalike.stock.boards.CuttingPlan.Missing;
import turnalike.stock.boards.CuttingPlan.Rip;
import turnalike.stock.boards.CuttingPlan.Strip;
import turnalike.stock.boards.SawCut;
import turnalike.stock.boards.Wanted;
import turnalike.units.UnitSystem;

/** Blanks cut out of boards as the one JSON object that {@code boards --json} prints: lengths in mm, at full precision. */
public final class BoardsJson {
    private BoardsJson() {}

    /**
     * The plan as JSON.
     *
     * @param jobs whose blanks they are
     * @param plan how they are cut
     * @param ended why the search ended
     * @return the object's text, ended by a line end
     */
    public static String print(List<JobBlanks.Named> jobs, CuttingPlan plan, Ending ended) {
        UnitSystem units = JobBlanks.units(jobs);
        ObjectNode root = Json.object();
        ArrayNode missing = root.putArray("missing");
        for (Missing each : plan.missing()) {
            missing(missing.addObject(), plan, each, units);
        }
        ArrayNode boards = root.putArray("boards");
        plan.boards().forEach(each -> board(boards.addObject(), each, plan));
        root.put("used", plan.used());
        root.put("priced", plan.order().isPriced());
        root.put("cost", plan.cost());
        root.put("bound", plan.bound());
        root.put("bound_of", plan.order().isPriced() ? "cost" : "boards");
        root.put("proven", plan.proven());
        root.put("ended_by", ended.word());
        ArrayNode left = root.putArray("left_over");
        plan.leftOver().forEach(each -> leftOver(left.addObject(), each, plan));
        root.put("longest_left_over_bound_mm", plan.longest().mm());
        root.put("longest_left_over_proven", plan.longestProven());
        root.put("keep_from_mm", plan.keep().mm());
        root.put("yield", plan.shareUsed());
        root.putObject("sawing")
                .put("kerf_mm", plan.order().sawing().kerf().mm())
                .put("edge_mm", plan.order().sawing().edge().mm())
                .put("end_mm", plan.order().sawing().end().mm());
        jobs(root.putArray("jobs"), jobs, plan);
        ArrayNode notes = root.putArray("notes");
        BoardNotes.of(jobs, plan.order()).forEach(notes::add);
        ArrayNode cautions = root.putArray("cautions");
        BoardNotes.CAUTIONS.forEach(cautions::add);
        return Json.print(root);
    }

    private static void missing(ObjectNode node, CuttingPlan plan, Missing missing, UnitSystem units) {
        node.put("job", missing.of().job());
        node.put("count", missing.count());
        missing.nearest().ifPresent(nearest -> node.putObject("nearest")
                .put("board", nearest.board().name())
                .put("lacks", nearest.lack().words())
                .put("by_mm", nearest.by().mm()));
        node.put("why", WoodToBuy.missing(plan, missing, units));
        node.put("buy", WoodToBuy.buy(plan.order(), missing, units));
    }

    private static void board(ObjectNode node, CutBoard cut, CuttingPlan plan) {
        node.put("board", cut.label());
        ArrayNode strips = node.putArray("strips");
        for (Rip rip : cut.rips()) {
            for (int layer = 0; layer < rip.strips().size(); layer++) {
                Strip strip = rip.strips().get(layer);
                if (!strip.blanks().isEmpty()) {
                    ObjectNode out = strips.addObject();
                    strip(out, strip);
                    out.put("across_mm", rip.from().mm());
                    out.put("layer", layer);
                }
            }
        }
        ArrayNode cuts = node.putArray("cuts");
        for (SawCut each : SawCut.of(cut, plan.order().sawing())) {
            cuts.addObject()
                    .put("cut", each.number())
                    .put("kind", each.kind().word())
                    .put("rip", each.rip())
                    .put("layer", each.layer())
                    .put("at_mm", each.at().mm());
        }
    }

    private static void strip(ObjectNode node, Strip strip) {
        List<String> jobs =
                strip.blanks().stream().map(each -> each.of().job()).distinct().toList();
        if (jobs.size() == 1) {
            node.put("job", jobs.get(0));
        }
        node.put("size_mm", strip.size().mm());
        ArrayNode blanks = node.putArray("blanks");
        for (CutBlank each : strip.blanks()) {
            blanks.addObject()
                    .put("job", each.of().job())
                    .put("from_mm", each.from().mm())
                    .put("length_mm", each.of().length().mm());
        }
    }

    private static void leftOver(ObjectNode node, LeftOver each, CuttingPlan plan) {
        node.put("board", each.label());
        node.put("from_mm", each.from().mm());
        node.put("across_mm", each.across().mm());
        node.put("layer", each.layer());
        node.put("width_mm", each.width().mm());
        node.put("length_mm", each.length().mm());
        node.put("keep", each.length().compareTo(plan.keep()) >= 0);
    }

    private static void jobs(ArrayNode list, List<JobBlanks.Named> jobs, CuttingPlan plan) {
        for (JobBlanks.Named job : jobs) {
            for (Wanted each : plan.order().wanted()) {
                if (each.job().equals(job.name())) {
                    list.addObject()
                            .put("job", job.name())
                            .put("file", job.file())
                            .put("size_mm", each.size().mm())
                            .put("length_mm", each.length().mm())
                            .put("blanks", each.count());
                }
            }
        }
    }
}
