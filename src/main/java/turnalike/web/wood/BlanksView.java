package turnalike.web.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import turnalike.job.pieces.BlankLog;
import turnalike.job.pieces.BlanksReport;
import turnalike.pieces.blanks.BlankForecast;
import turnalike.pieces.blanks.BlankForecast.Forecast;
import turnalike.stock.LossRecord;
import turnalike.stock.Spares;
import turnalike.units.Article;
import turnalike.units.Listing;
import turnalike.units.MassUnit;
import turnalike.units.PlainNumber;
import turnalike.units.WeighingScale;
import turnalike.units.Working;

/**
 * What the weighed blanks will give.
 *
 * @param sentences which to turn, how far the set will spread, how many will be lost
 * @param rows what is told of each blank, in the order of the table
 * @param questions what looks like a slip
 * @param workings how it was found
 */
public record BlanksView(
        List<String> sentences, List<List<String>> rows, List<String> questions, List<Working> workings) {
    private static final int MOST_LABELS = 40;

    /** What is told of each, from its density on. */
    static List<String> heads(MassUnit masses) {
        return List.of("kg/m³", "Will give, " + masses.symbol(), "Nine in ten between", "Do");
    }

    public BlanksView {
        sentences = List.copyOf(sentences);
        rows = rows.stream().map(List::copyOf).toList();
        questions = List.copyOf(questions);
        workings = List.copyOf(workings);
    }

    static BlanksView of(BlanksReport report, BlankLog log) {
        BlankForecast forecast = report.forecast();
        Set<String> chosen = forecast.choose().stream().map(Forecast::label).collect(Collectors.toSet());
        WeighingScale scale = report.job().tolerances().weighing();
        return new BlanksView(
                sentences(report, log),
                forecast.blanks().stream()
                        .map(each -> row(each, scale, chosen.contains(each.label())))
                        .toList(),
                report.questions().stream()
                        .map(each -> "%s: %s (%s)".formatted(each.where(), each.what(), each.mend()))
                        .toList(),
                report.workings());
    }

    private static List<String> row(Forecast each, WeighingScale scale, boolean chosen) {
        boolean usable = each.measured().unusable().isEmpty();
        String between = usable && !each.isFinished()
                ? "%s to %s".formatted(scale.figure(each.from()), scale.figure(each.to()))
                : "";
        String deed = each.measured().unusable().orElseGet(() -> deed(each, chosen));
        return List.of(
                String.format(Locale.ROOT, "%.0f", each.measured().density().kgPerM3()),
                usable ? scale.figure(each.finished()) : "",
                between,
                deed);
    }

    private static String deed(Forecast each, boolean chosen) {
        if (each.isFinished()) {
            return chosen ? "finished, in the set" : "finished, left out: too far from the others";
        }
        return chosen ? "turn" : "keep as a spare";
    }

    private static List<String> sentences(BlanksReport report, BlankLog log) {
        BlankForecast forecast = report.forecast();
        List<String> out = new ArrayList<>();
        if (forecast.missing() > 0) {
            out.add("Too few blanks: %s that can be used, for %s wanted."
                    .formatted(
                            Article.count(forecast.choose().size(), "blank"),
                            Article.count(report.job().count(), "piece")));
        }
        out.add("Turn: %s."
                .formatted(labels(forecast.choose().stream()
                        .filter(each -> !each.isFinished())
                        .toList())));
        List<Forecast> done =
                forecast.choose().stream().filter(Forecast::isFinished).toList();
        if (!done.isEmpty()) {
            out.add("Finished, in the set: %s.".formatted(labels(done)));
        }
        out.add("Keep as spares%s: %s."
                .formatted(forecast.spares().size() > 1 ? ", the best first" : "", labels(forecast.spares())));
        double mean = report.meanOfChosen().grams();
        WeighingScale scale = report.job().tolerances().weighing();
        out.add(String.format(
                Locale.ROOT,
                "Spread: %s of %s (%.1f %%) by the blanks' weights, %s (%.1f %%) to expect once turned; %s %% is wanted.",
                scale.apart(forecast.spread()),
                scale.reading(report.meanOfChosen()),
                percent(forecast.spread().grams(), mean),
                scale.apart(forecast.expectedSpread()),
                percent(forecast.expectedSpread().grams(), mean),
                PlainNumber.exact(report.job().tolerances().massPct())));
        out.add(String.format(
                Locale.ROOT,
                "These blanks give enough good pieces with a chance of %.0f %%, weights aside.",
                Math.floor(100 * report.chanceOfEnough())));
        Set<String> known = forecast.blanks().stream().map(Forecast::label).collect(Collectors.toSet());
        long others = log.weighed().keySet().stream()
                .filter(label -> !known.contains(label))
                .count();
        if (others > 0) {
            out.add("Not reckoned with: %s whose blank was not weighed."
                    .formatted(Article.count((int) others, "logged piece")));
        }
        return out;
    }

    /** What the log says of losses, and what it makes of the spares. */
    static List<String> losses(LossRecord losses, BlankLog log, int count) {
        List<String> out = new ArrayList<>();
        out.add(String.format(
                Locale.ROOT,
                "Losses: %.1f %% to expect, of %.1f %% told, %d lost and %d good so far.",
                100 * losses.rate(),
                100 * losses.told(),
                losses.lost(),
                losses.good()));
        if (!log.spoiled().isEmpty()) {
            out.add("Spoiled, by the log: %s.".formatted(String.join(", ", log.spoiled())));
        }
        if (losses.lost() + losses.good() > 0 && losses.rate() <= 0.9) {
            int told = Spares.of(count, losses.told()).spares();
            int seen = Spares.of(count, losses.rate()).spares();
            out.add(
                    seen == told
                            ? "For losses alone %s, as planned.".formatted(Article.count(seen, "spare") + " will do")
                            : "For losses alone %s would do, where %d are planned."
                                    .formatted(Article.count(seen, "spare"), told));
        }
        return out;
    }

    private static String labels(List<Forecast> blanks) {
        return blanks.isEmpty()
                ? "none"
                : Listing.of(blanks.stream().map(Forecast::label).toList(), MOST_LABELS);
    }

    private static double percent(double part, double whole) {
        return whole == 0 ? 0 : 100 * part / whole;
    }
}
