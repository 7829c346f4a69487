package turnalike.job.answer;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import turnalike.job.fields.Json;
import turnalike.job.pieces.BlanksReport;
import turnalike.pieces.blanks.BlankForecast;
import turnalike.units.Problem;

/** What weighed blanks will give, as the one JSON object that {@code blanks --json} prints: masses in g. */
public final class BlanksJson {
    private BlanksJson() {}

    /**
     * {@return the object's text, ended by a line end}
     *
     * @param report on the blanks
     */
    public static String print(BlanksReport report) {
        BlankForecast forecast = report.forecast();
        ObjectNode root = Json.object();
        ArrayNode blanks = root.putArray("blanks");
        for (BlankForecast.Forecast each : forecast.blanks()) {
            ObjectNode blank = blanks.addObject()
                    .put("blank", each.label())
                    .put("density_kg_m3", each.measured().density().kgPerM3())
                    .put("finished_g", each.finished().grams())
                    .put("from_g", each.from().grams())
                    .put("to_g", each.to().grams())
                    .put("is_finished", each.isFinished());
            each.measured().unusable().ifPresent(why -> blank.put("unusable", why));
        }
        labels(root.putArray("choose"), forecast.choose());
        root.put("spread_g", forecast.spread().grams());
        root.put("expected_spread_g", forecast.expectedSpread().grams());
        labels(root.putArray("spares"), forecast.spares());
        root.put("missing", forecast.missing());
        root.put("share_mean", forecast.law().mean());
        root.put("share_scatter", forecast.law().scatter());
        root.put("loss_rate", report.losses().rate());
        root.put("chance_of_enough", report.chanceOfEnough());
        ArrayNode questions = root.putArray("questions");
        for (Problem question : report.questions()) {
            questions
                    .addObject()
                    .put("where", question.where())
                    .put("question", question.what())
                    .put("mend", question.mend());
        }
        PlanJson.workings(root.putArray("workings"), report.workings());
        return Json.print(root);
    }

    private static void labels(ArrayNode list, List<BlankForecast.Forecast> blanks) {
        blanks.forEach(each -> list.add(each.label()));
    }
}
