package turnalike.web.wood;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import turnalike.job.Job;
import turnalike.job.edit.ShopTable;
import turnalike.job.edit.TypedFields;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.ShopLog;
import turnalike.job.price.LoggedTimes;
import turnalike.job.price.PriceReport;
import turnalike.price.Quote;
import turnalike.price.StageForecast;
import turnalike.units.Article;
import turnalike.units.Problem;
import turnalike.units.Working;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.JobSteps;

/**
 * What an order takes and comes to, as its page shows it.
 *
 * @param kept the job
 * @param typed a row that could not be kept
 * @param charged what was typed of the charges and could not be kept, by key; empty when nothing was
 * @param problems why
 * @param woodCost what the boards cost that the last cutting takes, if it is known
 */
public record PriceView(
        KeptJob kept, TypedRow typed, Map<String, String> charged, List<Problem> problems, Optional<String> woodCost) {
    /** The keys of the charges with what stands beside their fields. */
    private static final List<Field> FIELDS = List.of(
            Field.empty("rate", "Your rate for an hour", "without it no price is made"),
            Field.empty("others", "What you charge besides, for the whole order", "a line each: wood ; 62.50"),
            Field.empty("markup_pct", "Markup, %", "spread into the prices; left empty: none"),
            Field.empty("tax_pct", "Tax, %", "on all of it, as you have to charge it; left empty: none"),
            Field.empty("currency", "Currency", "stands beside the figures"));

    /**
     * One field of the charges.
     *
     * @param name its key
     * @param label what it is called
     * @param hint what stands below it
     * @param value as kept or as typed
     * @param wrong what is wrong with it
     */
    public record Field(String name, String label, String hint, String value, String wrong) {
        static Field empty(String name, String label, String hint) {
            return new Field(name, label, hint, "", "");
        }

        public boolean isLines() {
            return name.equals("others");
        }

        public boolean isFigure() {
            return !isLines() && !name.equals("currency");
        }
    }

    public PriceView {
        charged = Map.copyOf(charged);
        problems = List.copyOf(problems);
    }

    private Job job() {
        return kept.text().job();
    }

    public String address() {
        return JobAddress.address(kept.id());
    }

    public String here() {
        return address() + "/wood";
    }

    public String title() {
        return job().title();
    }

    /** What can be taken back here. */
    public JobSteps steps() {
        return JobSteps.of(kept);
    }

    public TableView times() {
        return TableView.of(ShopTable.TIMES, kept.text(), typed);
    }

    /** The stages named so far, to choose from. */
    public TreeSet<String> stages() {
        TreeSet<String> out = new TreeSet<>(List.of("milling", "sanding", "finishing"));
        out.addAll(job().shop().times().keySet());
        return out;
    }

    private Map<String, Duration> turned() {
        return ShopLog.turned(kept);
    }

    private LoggedTimes counted() {
        return LoggedTimes.of(job().shop().times(), turned());
    }

    /** What of the typed times is not counted; empty where all are. */
    public String aside() {
        return counted().note().orElse("");
    }

    /** How many pieces the bench view timed. */
    public String bench() {
        int count = turned().size();
        return count == 0
                ? "The bench view times each piece at the lathe; none is timed yet."
                : "The bench view timed %s at the lathe: they count as the stage “%s”."
                        .formatted(Article.count(count, "piece"), LoggedTimes.STAGE);
    }

    /** What it all takes and comes to; empty while nothing is timed. */
    public Optional<PriceReport> report() {
        LoggedTimes times = counted();
        return times.stages().isEmpty()
                ? Optional.empty()
                : Optional.of(PriceReport.of(job(), times, job().shop().charges()));
    }

    /** Each stage with what it takes. */
    public Map<String, String> lines(PriceReport report) {
        Map<String, String> out = new LinkedHashMap<>();
        for (StageForecast stage : report.work().stages()) {
            out.put(stage.stage(), report.line(stage));
        }
        return out;
    }

    /** The whole in a line. */
    public String whole(PriceReport report) {
        int spare = report.work().wanted() - job().count();
        return "%s for %s%s."
                .formatted(
                        report.whole(),
                        Article.count(report.work().wanted(), "blank"),
                        spare == 0 ? "" : ", %d of them spare".formatted(spare));
    }

    public Optional<Quote> quote() {
        return report().flatMap(PriceReport::quote);
    }

    /** What only the turner is told. */
    public Optional<String> markup() {
        return report().flatMap(report -> report.markup(job().shop().charges()));
    }

    public String money(Quote quote, java.math.BigDecimal amount) {
        return quote.currency().isEmpty() ? amount.toPlainString() : quote.currency() + " " + amount.toPlainString();
    }

    public String caution() {
        return PriceReport.CAUTION;
    }

    public List<Working> workings() {
        return report().map(PriceReport::workings).orElse(List.of());
    }

    /** The charges as they are typed. */
    public List<Field> fields() {
        Map<String, String> written = TypedFields.job(kept.text());
        List<Field> out = new ArrayList<>();
        for (Field field : FIELDS) {
            String value = charged.getOrDefault(field.name(), written.getOrDefault("price." + field.name(), ""));
            String wrong = problems.stream()
                    .filter(problem -> problem.where().startsWith("price: " + field.name()))
                    .map(problem -> problem.what() + "; " + problem.mend())
                    .findFirst()
                    .orElse("");
            out.add(new Field(field.name(), field.label(), field.hint(), value, wrong));
        }
        return out;
    }

    /** The names of the fields. */
    static List<String> names() {
        return FIELDS.stream().map(Field::name).toList();
    }
}
