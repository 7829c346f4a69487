package turnalike.cli.pieces;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import turnalike.job.pieces.BlanksReport;
import turnalike.pieces.blanks.BlankForecast;
import turnalike.units.Article;
import turnalike.units.Listing;
import turnalike.units.PlainNumber;
import turnalike.units.WeighingScale;

/** What weighed blanks will give, as text. */
final class BlanksSummary {
    /** More rows than fit a screen or two help nobody; all are in the JSON. */
    private static final int MOST_ROWS = 60;

    private final BlanksReport report;
    private final BlankForecast forecast;
    private final WeighingScale scale;
    private final StringBuilder out = new StringBuilder();

    private BlanksSummary(BlanksReport report) {
        this.report = report;
        this.forecast = report.forecast();
        this.scale = report.job().tolerances().weighing();
    }

    static String text(BlanksReport report) {
        BlanksSummary summary = new BlanksSummary(report);
        summary.choice();
        summary.table();
        summary.questions();
        return summary.out.toString();
    }

    private void line(String text, Object... values) {
        out.append(String.format(Locale.ROOT, text, values)).append('\n');
    }

    private void choice() {
        if (forecast.missing() > 0) {
            line(
                    "Too few blanks: %s that can be used, for %s wanted",
                    Article.count(forecast.choose().size(), "blank"),
                    Article.count(report.job().count(), "piece"));
        }
        List<BlankForecast.Forecast> turn =
                forecast.choose().stream().filter(each -> !each.isFinished()).toList();
        line("Turn       %s", labels(turn));
        int done = forecast.choose().size() - turn.size();
        if (done > 0) {
            line(
                    "Finished   %s, in the set",
                    labels(forecast.choose().stream()
                            .filter(BlankForecast.Forecast::isFinished)
                            .toList()));
        }
        line("Spares     %s%s", labels(forecast.spares()), forecast.spares().isEmpty() ? "" : ", the best first");
        double mean = report.meanOfChosen().grams();
        line(
                "Spread     %s of %s by the blanks' weights (%.1f %%); %s (%.1f %%) to expect once turned, %s %% wanted",
                scale.apart(forecast.spread()),
                scale.reading(report.meanOfChosen()),
                percent(forecast.spread().grams(), mean),
                scale.apart(forecast.expectedSpread()),
                percent(forecast.expectedSpread().grams(), mean),
                PlainNumber.exact(report.job().tolerances().massPct()));
        line(
                "Losses     %.1f %% to expect (%.1f %% told; %d lost, %d good so far): the set comes out with a chance of %.0f %%, weights aside",
                100 * report.losses().rate(),
                100 * report.losses().told(),
                report.losses().lost(),
                report.losses().good(),
                100 * Math.floor(100 * report.chanceOfEnough()) / 100);
    }

    private void table() {
        Set<String> chosen =
                forecast.choose().stream().map(BlankForecast.Forecast::label).collect(Collectors.toSet());
        line("");
        String unit = scale.unit().symbol();
        line("%-12s %9s %9s %11s   %s", "blank", "weighs " + unit, "kg/m3", "finished " + unit, "nine in ten between");
        forecast.blanks().stream()
                .limit(MOST_ROWS)
                .forEach(each -> line(
                        "%-12s %9s %9.0f %11s   %s",
                        each.label(),
                        scale.figure(each.measured().blank().mass()),
                        each.measured().density().kgPerM3(),
                        scale.figure(each.finished()),
                        note(each, chosen.contains(each.label()))));
        if (forecast.blanks().size() > MOST_ROWS) {
            line("… and %d more; --json has them all", forecast.blanks().size() - MOST_ROWS);
        }
    }

    private String note(BlankForecast.Forecast each, boolean chosen) {
        if (each.measured().unusable().isPresent()) {
            return each.measured().unusable().get();
        }
        if (each.isFinished()) {
            return chosen ? "finished" : "finished, left out: too far from the others";
        }
        return "%s and %s%s".formatted(scale.figure(each.from()), scale.figure(each.to()), chosen ? "" : "   spare");
    }

    private void questions() {
        if (report.questions().isEmpty()) {
            return;
        }
        line("");
        line("Please check");
        report.questions().forEach(each -> line("  %s: %s (%s)", each.where(), each.what(), each.mend()));
    }

    private static String labels(List<BlankForecast.Forecast> blanks) {
        return blanks.isEmpty()
                ? "none"
                : Listing.of(blanks.stream().map(BlankForecast.Forecast::label).toList(), MOST_ROWS);
    }

    private static double percent(double part, double whole) {
        return whole == 0 ? 0 : 100 * part / whole;
    }
}
