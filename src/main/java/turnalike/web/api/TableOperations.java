package turnalike.web.api;

import static turnalike.web.api.Operation.Verb.POST;

import java.util.List;
import java.util.Map;
import turnalike.job.Job;
import turnalike.job.answer.BlanksJson;
import turnalike.job.answer.PriceJson;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.ShopLog;
import turnalike.job.pieces.BlanksReport;
import turnalike.job.price.LoggedTimes;
import turnalike.job.price.PriceReport;
import turnalike.job.price.TimesFile;
import turnalike.pieces.blanks.BlanksFile;
import turnalike.web.api.Operation.Reply;
import turnalike.web.kit.Refusal;

/** What follows from a job and a table that is sent along, in place of the job's own. */
final class TableOperations {
    private static final String BLANKS = "blank,mass_g,moisture_pct\na,520,9\nb,505,9\nc,540,9\n";
    private static final String TIMES = "stage,minutes,pieces\nmilling,30,4\nturning,42,1\nturning,37,1\n";

    private TableOperations() {}

    static List<Operation> list() {
        return List.of(
                Operation.of(
                                POST,
                                "/jobs/{job}/blanks",
                                "forecastBlanks",
                                "Tells what the blanks of a table will give and which to turn, as `blanks --json`. Nothing is kept.",
                                Reply.json("The forecast.", "blanks", "choose", "spread_g"),
                                TableOperations::blanks)
                        .sending(
                                schema(
                                        "blanks",
                                        "CSV as of `blanks`: blank and mass_g or mass_oz; length, size, moisture_pct, finished_g and lost if known"),
                                Map.of("blanks", BLANKS)),
                Operation.of(
                                POST,
                                "/jobs/{job}/price",
                                "priceTimes",
                                "Tells what the job takes and comes to by the times of a table, at the job's own rates, as `price --json`."
                                        + " Nothing is kept.",
                                Reply.json("Times and price.", "stages", "total_minutes", "notes"),
                                TableOperations::price)
                        .sending(
                                schema("times", "CSV as of `price --times`: stage and minutes; pieces if several"),
                                Map.of("times", TIMES)));
    }

    private static Map<String, ?> schema(String key, String about) {
        return Map.of(
                "type",
                "object",
                "required",
                List.of(key),
                "properties",
                Map.of(key, Map.of("type", "string", "description", about)));
    }

    private static String table(Call call, String key) {
        Object sent = call.object().getOrDefault(key, "");
        if (!(sent instanceof String table) || table.isBlank()) {
            throw Refusal.of(422, key, "is no table", "send it as the text of a CSV file");
        }
        return table;
    }

    private static Answer blanks(Call call) {
        KeptJob kept = call.job();
        BlanksFile.Read read =
                BlanksFile.parse(table(call, "blanks"), kept.text().job().units());
        Job job = kept.text().job().toldIn(read.massUnit());
        Call.refuse(read.problems());
        Call.refuse(BlanksReport.problems(job, read.blanks()));
        ShopLog log = ShopLog.of(kept, call.store().done(kept.id()));
        return Answer.json(BlanksJson.print(BlanksReport.of(job, read.blanks(), log.blanks())));
    }

    private static Answer price(Call call) {
        Job job = call.job().text().job();
        TimesFile.Read read = TimesFile.parse(table(call, "times"));
        Call.refuse(read.problems());
        LoggedTimes times = LoggedTimes.of(read.stages(), Map.of());
        return Answer.json(PriceJson.print(PriceReport.of(job, times, job.shop().charges())));
    }
}
