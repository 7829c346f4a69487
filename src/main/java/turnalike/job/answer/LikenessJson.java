package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.job.fields.Json;
import turnalike.job.pieces.LikenessReport;
import turnalike.job.pieces.QuestionsJson;
import turnalike.pieces.Likeness;
import turnalike.pieces.Slip;

/** How alike the pieces are, as the one JSON object that {@code likeness --json} prints. */
public final class LikenessJson {
    private LikenessJson() {}

    /**
     * The likeness as JSON: each piece beside the pattern with what it is off by, and its nearest; then the pairs, the most alike first.
     * How far off a part is stands as {@code off_mm} or {@code off_g}; a column judged by eye has a plain {@code off}.
     *
     * @param report what comparing found
     * @param questions figures of the pieces file that read like slips
     * @return the object's text, ended by a line end
     */
    public static String print(LikenessReport report, List<Slip> questions) {
        ObjectNode root = Json.object();
        ArrayNode pieces = root.putArray("pieces");
        for (LikenessReport.PieceLikeness entry : report.pieces()) {
            ObjectNode piece = pieces.addObject()
                    .put("piece", entry.figure().piece())
                    .put("figure", entry.figure().figure())
                    .put("words", entry.words());
            ArrayNode parts = piece.putArray("parts");
            entry.figure().parts().forEach(part -> part(parts.addObject(), part));
            entry.nearest().ifPresent(pair -> piece.putObject("most_like")
                    .put("piece", pair.other())
                    .put("difference", pair.difference())
                    .put("shared", pair.shared())
                    .put("measures", entry.measures()));
            piece.put("compared", entry.figure().parts().size());
        }
        ArrayNode pairs = root.putArray("pairs");
        for (LikenessReport.Pair pair : report.pairs()) {
            pairs.addObject()
                    .put("piece", pair.piece())
                    .put("other", pair.other())
                    .put("difference", pair.difference())
                    .put("shared", pair.shared());
        }
        QuestionsJson.put(root, questions);
        PlanJson.workings(root.putArray("workings"), report.workings());
        return Json.print(root);
    }

    private static void part(ObjectNode node, Likeness.Part part) {
        node.put("column", part.name());
        String unit =
                part.column().map(each -> each.isMass() ? "off_g" : "off_mm").orElse("off");
        node.put(unit, part.off()).put("counts", part.counts());
    }
}
