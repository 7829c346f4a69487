package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import turnalike.job.fields.Json;
import turnalike.job.price.PriceReport;
import turnalike.price.Quote;
import turnalike.price.Range;
import turnalike.price.StageForecast;

/** What a job takes and comes to, as the one JSON object that {@code price --json} prints: times in minutes, money as text to a hundredth. */
public final class PriceJson {
    private PriceJson() {}

    /**
     * {@return the object's text, ended by a line end}
     *
     * @param report on the job
     */
    public static String print(PriceReport report) {
        ObjectNode root = Json.object();
        root.put("pieces", report.job().count());
        root.put("blanks", report.work().wanted());
        ArrayNode stages = root.putArray("stages");
        for (StageForecast stage : report.work().stages()) {
            ObjectNode each = stages.addObject()
                    .put("stage", stage.stage())
                    .put("timed_minutes", stage.done())
                    .put("timed_pieces", stage.pieces())
                    .put("total_minutes", stage.total());
            stage.curve().ifPresent(curve -> each.put("first_minutes", curve.first())
                    .put("doubling_pct", 100 * curve.rate()));
            range(each, stage.range());
        }
        root.put("total_minutes", report.work().total());
        range(root, report.work().range());
        report.quote().ifPresent(quote -> quote(root.putObject("quote"), quote));
        ArrayNode notes = root.putArray("notes");
        report.notes().forEach(notes::add);
        PlanJson.workings(root.putArray("workings"), report.workings());
        return Json.print(root);
    }

    private static void range(ObjectNode at, Optional<Range> range) {
        range.ifPresent(each -> at.put("from_minutes", each.from()).put("to_minutes", each.to()));
    }

    private static void quote(ObjectNode at, Quote quote) {
        ArrayNode lines = at.putArray("lines");
        for (Quote.Line line : quote.lines()) {
            lines.addObject()
                    .put("item", line.item())
                    .put("quantity", line.quantity().toPlainString())
                    .put("unit", line.unit())
                    .put("each", line.each().toPlainString())
                    .put("amount", line.amount().toPlainString());
        }
        at.put("net", quote.net().toPlainString());
        at.put("markup", quote.markup().toPlainString());
        at.put("tax", quote.tax().toPlainString());
        at.put("total", quote.total().toPlainString());
        at.put("per_piece", quote.perPiece().toPlainString());
        at.put("currency", quote.currency());
    }
}
