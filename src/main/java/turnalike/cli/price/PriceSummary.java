package turnalike.cli.price;

import java.util.Locale;
import turnalike.job.price.PriceReport;
import turnalike.price.Charges;
import turnalike.price.Quote;
import turnalike.price.StageForecast;
import turnalike.units.Article;

/** What a job takes and comes to, as text. */
final class PriceSummary {
    private PriceSummary() {}

    static String text(PriceReport report, Charges charges) {
        StringBuilder out = new StringBuilder();
        out.append(report.job().title()).append("\n\n");
        out.append("Made       ").append(report.goods()).append('\n');
        int spare = report.work().wanted() - report.job().count();
        out.append("Time       %s for %s%s%n"
                .formatted(
                        report.whole(),
                        Article.count(report.work().wanted(), "blank"),
                        spare == 0 ? "" : ", %d of them spare".formatted(spare)));
        for (StageForecast stage : report.work().stages()) {
            out.append(String.format(Locale.ROOT, "  %-20s %s%n", stage.stage(), report.line(stage)));
        }
        report.notes().forEach(note -> out.append("  ").append(note).append('\n'));
        report.quote().ifPresent(quote -> quote(out, quote));
        report.markup(charges).ifPresent(words -> out.append("  ").append(words).append('\n'));
        return out.toString().replace(System.lineSeparator(), "\n");
    }

    private static void quote(StringBuilder out, Quote quote) {
        out.append("\nPrice      ").append(money(quote, quote.total().toPlainString()));
        out.append(quote.tax().signum() == 0 ? "" : ", tax in it");
        out.append("; %s a piece%s%n"
                .formatted(quote.perPiece().toPlainString(), quote.tax().signum() == 0 ? "" : " before tax"));
        for (Quote.Line line : quote.lines()) {
            String how = line.unit().isEmpty()
                    ? ""
                    : "   %s %s at %s"
                            .formatted(
                                    line.quantity().toPlainString(),
                                    line.unit(),
                                    line.each().toPlainString());
            row(out, line.item(), line.amount().toPlainString() + how);
        }
        if (quote.tax().signum() != 0) {
            row(out, "tax", quote.tax().toPlainString());
        }
        out.append("  ").append(PriceReport.CAUTION).append('\n');
    }

    private static void row(StringBuilder out, String item, String amount) {
        out.append(String.format(Locale.ROOT, "  %-20s %s%n", item, amount));
    }

    private static String money(Quote quote, String amount) {
        return quote.currency().isEmpty() ? amount : quote.currency() + " " + amount;
    }
}
