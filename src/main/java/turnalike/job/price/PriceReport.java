package turnalike.job.price;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.price.Charges;
import turnalike.price.Quote;
import turnalike.price.Range;
import turnalike.price.StageForecast;
import turnalike.price.WorkForecast;
import turnalike.units.Working;

/**
 * What a job takes and comes to.
 *
 * @param job the order
 * @param work what it takes: of all blanks, those that will be lost too
 * @param quote what it comes to, where a rate for the hour was told
 * @param notes what of the times is not counted, and why
 */
public record PriceReport(Job job, WorkForecast work, Optional<Quote> quote, List<String> notes) {
    /** What everyone who gives a price to another has to be told. */
    public static final String CAUTION =
            "A price made of the times told and the turner's own rates, nothing more: taxes, insurance and what a"
                    + " quote binds you to are for local law and whoever keeps your books.";

    public PriceReport {
        notes = List.copyOf(notes);
    }

    /**
     * {@return the report}
     *
     * @param job the order
     * @param times the timings of each stage, one or more
     * @param charges what the turner charges
     */
    public static PriceReport of(Job job, LoggedTimes times, Charges charges) {
        int blanks = Plan.stock(job).spares().blanks();
        WorkForecast work = WorkForecast.of(times.stages(), blanks);
        Optional<Quote> quote = charges.hourly().map(rate -> Quote.of(work.total(), charges, job.count()));
        return new PriceReport(job, work, quote, times.note().stream().toList());
    }

    /** {@return what was delivered for the money: {@code 14 of Fair wheel spindle, White ash, 15 in long}} */
    public String goods() {
        return "%d of %s, %s, %s long"
                .formatted(
                        job.count(),
                        job.pattern().name(),
                        job.wood().text(),
                        job.pattern().length().format(job.units()));
    }

    /**
     * {@return a stage in a line: what it takes, and how that is known}
     *
     * @param stage of this report
     */
    public String line(StageForecast stage) {
        if (stage.isOnce()) {
            return "%s, once for the order".formatted(time(stage.total()));
        }
        String whole = stage.pieces() >= work.wanted()
                ? "%s, timed".formatted(time(stage.total()))
                : "%s for %d%s".formatted(time(stage.total()), work.wanted(), within(stage.range()));
        String how = stage.curve()
                .map(curve -> String.format(
                        Locale.ROOT,
                        "; the first %s, the last %s: each doubling takes %.0f %% (%d timed)",
                        time(curve.first()),
                        time(curve.at(Math.max(work.wanted(), stage.pieces()))),
                        100 * curve.rate(),
                        stage.pieces()))
                .orElse("; %s each at the mean of %d timed"
                        .formatted(time(stage.done() / stage.pieces()), stage.pieces()));
        return whole + how;
    }

    private static String within(Optional<Range> range) {
        return range.map(each -> " (%s to %s in nine of ten)".formatted(time(each.from()), time(each.to())))
                .orElse("");
    }

    /** {@return the whole in a line, with what its range leaves out} */
    public String whole() {
        List<String> means = work.stages().stream()
                .filter(stage -> stage.range().isEmpty() && !stage.isOnce() && stage.pieces() < work.wanted())
                .map(StageForecast::stage)
                .toList();
        String taken = work.range().isEmpty() || means.isEmpty()
                ? ""
                : ", " + String.join(" and ", means) + " taken at the mean";
        return time(work.total()) + within(work.range()) + taken;
    }

    /**
     * {@return a time as a shop says it: {@code 52 min}, {@code 11 h 05 min}}
     *
     * @param minutes of it
     */
    public static String time(double minutes) {
        long whole = Math.round(minutes);
        if (minutes < 10) {
            return String.format(Locale.ROOT, "%.1f min", minutes);
        }
        return whole < 100 ? whole + " min" : "%d h %02d min".formatted(whole / 60, whole % 60);
    }

    /**
     * {@return how much of the price is the markup, for the turner alone: on the quote it has no line; empty where there is none}
     *
     * @param charges what was charged
     */
    public Optional<String> markup(Charges charges) {
        return quote.filter(each -> each.markup().signum() != 0)
                .map(each -> "The markup of %s %%, %s, is spread into these prices; the quote has no line of it."
                        .formatted(
                                charges.markupPct().stripTrailingZeros().toPlainString(),
                                each.markup().toPlainString()));
    }

    /** {@return how the figures were found} */
    public List<Working> workings() {
        List<Working> out = new ArrayList<>();
        out.add(new Working(
                "time of a stage timed piece by piece",
                "y(n) = y₁·n^b through the logarithms of at least 4 times by least squares; the rest of the order drawn 2,000 times from the"
                        + " line's predictive law, the middle and nine in ten told",
                "learning curve (T. P. Wright 1936), for the single piece",
                "the scatter about the curve is taken for lognormal and the same from first to last; a pause, a new tool or other wood starts it"
                        + " anew"));
        out.add(new Working(
                "time of other stages",
                "the mean of what was timed, for every blank of the order, spares too; once what is done once",
                Working.COMMON_PRACTICE,
                "no range is told: too little was timed for one"));
        if (quote.isPresent()) {
            out.add(new Working(
                    "price",
                    "hours at your rate, what you charge besides, the markup spread into each of these prices, the tax on all; each line rounded to a"
                            + " hundredth",
                    Working.COMMON_PRACTICE,
                    "rates, markup and tax are yours: none is proposed"));
        }
        return out;
    }
}
