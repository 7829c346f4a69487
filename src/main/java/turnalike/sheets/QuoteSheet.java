package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.piece.SpindleDrawing;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.Table;
import turnalike.drawing.svg.Table.Column;
import turnalike.job.price.PriceReport;
import turnalike.price.Quote;
import turnalike.units.Length;

/** What the order comes to, on paper for whoever ordered it: the piece, what is charged, the sums. */
public final class QuoteSheet {
    private static final double QUANTITY_MM = 26;
    private static final double MONEY_MM = 34;
    private static final double TALLEST_MM = 60;

    private QuoteSheet() {}

    /**
     * The sheet.
     *
     * @param report with a quote
     * @param date as it is to be printed
     */
    public static Sheet of(PriceReport report, String date, Paper paper) {
        Quote quote = report.quote().orElseThrow();
        PageFlow flow = new PageFlow("quote", report.job().title(), paper, paper.portrait());
        List<Flowing> parts = new ArrayList<>();
        parts.add(flow.head("Quote: " + report.job().title(), date));
        parts.add(flow.sentences("What is made", List.of(report.goods() + ".")));
        Svg piece = SpindleDrawing.filling(
                        report.job().pattern(),
                        report.job().units(),
                        Length.ofMm(flow.widthMm()),
                        Length.ofMm(TALLEST_MM))
                .svg();
        parts.add(Flowing.whole(piece.shapes(), piece.height().mm() + 4));
        String currency = quote.currency().isEmpty() ? "" : ", " + quote.currency();
        parts.add(new FlowingRows("What it comes to" + currency, table(quote, flow.widthMm()), 0, 1, flow.widthMm()));
        parts.add(flow.sentences("Note", List.of(PriceReport.CAUTION)));
        return flow.sheet(parts);
    }

    private static Table table(Quote quote, double widthMm) {
        List<Column> columns = List.of(
                new Column("", widthMm - QUANTITY_MM - 2 * MONEY_MM, Lettering.BODY, false, true),
                new Column("quantity", QUANTITY_MM, Lettering.BODY, true, false),
                new Column("each", MONEY_MM, Lettering.BODY, true, false),
                new Column("amount", MONEY_MM, Lettering.STRONG, true, false));
        List<List<String>> rows = new ArrayList<>();
        for (Quote.Line line : quote.lines()) {
            String quantity = line.unit().isEmpty() ? "" : line.quantity().toPlainString() + " " + line.unit();
            String each = line.unit().isEmpty() ? "" : line.each().toPlainString();
            rows.add(List.of(line.item(), quantity, each, line.amount().toPlainString()));
        }
        if (quote.tax().signum() != 0) {
            rows.add(List.of("before tax", "", "", quote.net().toPlainString()));
            rows.add(List.of("tax", "", "", quote.tax().toPlainString()));
        }
        rows.add(List.of("together", "", "", quote.total().toPlainString()));
        rows.add(List.of(
                quote.tax().signum() == 0 ? "one piece of them" : "one piece of them, before tax",
                "",
                "",
                quote.perPiece().toPlainString()));
        return new Table(columns, rows);
    }
}
