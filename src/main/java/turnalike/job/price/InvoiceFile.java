package turnalike.job.price;

import java.util.List;
import turnalike.csv.CsvText;
import turnalike.price.Quote;

/** The quote as a table that a bookkeeping program or a spreadsheet takes: a line for each charge, the tax last; the amounts add up. */
public final class InvoiceFile {
    private InvoiceFile() {}

    /**
     * {@return the table's text}
     *
     * @param quote what the order comes to
     */
    public static String text(Quote quote) {
        StringBuilder out =
                new StringBuilder(CsvText.row(List.of("item", "quantity", "unit", "unit_price", "amount", "currency")));
        for (Quote.Line line : quote.lines()) {
            out.append(CsvText.row(List.of(
                    line.item(),
                    line.quantity().toPlainString(),
                    line.unit(),
                    line.each().toPlainString(),
                    line.amount().toPlainString(),
                    quote.currency())));
        }
        if (quote.tax().signum() != 0) {
            String tax = quote.tax().toPlainString();
            out.append(CsvText.row(List.of("tax", "1", "", tax, tax, quote.currency())));
        }
        return out.toString();
    }
}
