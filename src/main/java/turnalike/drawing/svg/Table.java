package turnalike.drawing.svg;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.TextLine.Anchor;

/**
 * Rows of text under headings, every other row tinted.
 *
 * @param columns from left to right
 * @param rows each with as many cells as there are columns
 */
public record Table(List<Column> columns, List<List<String>> rows) {
    private static final double PAD_MM = 1;

    /** A column of words gives no more of its width away than leaves it this. */
    private static final double LEAST_WRAPPED_MM = 18;

    /** How high the headings stand. */
    public static final double HEAD_MM = 5;

    /**
     * One column.
     *
     * @param heading what stands over it, on one line
     * @param widthMm with the air beside it; more is taken from the columns that wrap where its heading or its figures need it
     * @param right whether its text stands at the right, as figures do
     * @param wraps whether a long text goes on below; else it is cut short with dots
     */
    public record Column(String heading, double widthMm, Lettering lettering, boolean right, boolean wraps) {
        private Column wide(double mm) {
            return new Column(heading, mm, lettering, right, wraps);
        }
    }

    public Table {
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(
                        "a row has %d cells, the table %d columns".formatted(row.size(), columns.size()));
            }
        }
        columns = widened(columns, rows);
    }

    /**
     * Columns whose heading or figures are wider than they, wide enough, at the cost of those whose words go on below: how wide they are depends on
     * the language. Names stay cut short, as long as they may be.
     */
    private static List<Column> widened(List<Column> columns, List<List<String>> rows) {
        List<Column> out = new ArrayList<>(columns);
        for (int i = 0; i < columns.size(); i++) {
            double more = neededMm(columns.get(i), i, rows) - columns.get(i).widthMm();
            for (int giver = 0; giver < out.size() && more > 0; giver++) {
                Column gives = out.get(giver);
                if (giver != i && gives.wraps()) {
                    double given = Math.max(0, Math.min(more, gives.widthMm() - LEAST_WRAPPED_MM));
                    out.set(giver, gives.wide(gives.widthMm() - given));
                    out.set(i, out.get(i).wide(out.get(i).widthMm() + given));
                    more -= given;
                }
            }
        }
        return List.copyOf(out);
    }

    private static double neededMm(Column column, int at, List<List<String>> rows) {
        double heading = column.heading().isEmpty() ? 0 : Lettering.SMALL.widthMm(column.heading()) + 2 * PAD_MM;
        if (column.wraps() || !column.right()) {
            return heading;
        }
        return rows.stream()
                .mapToDouble(row -> column.lettering().widthMm(row.get(at)) + 2 * PAD_MM)
                .reduce(heading, Math::max);
    }

    /** The height of that row, in millimetres. */
    public double rowMm(int row) {
        double height = 0;
        for (int i = 0; i < columns.size(); i++) {
            double line = lineMm(columns.get(i).lettering());
            height = Math.max(height, lines(row, i).size() * line + 1);
        }
        return height;
    }

    private static double lineMm(Lettering lettering) {
        return lettering.sizeMm() * 1.22;
    }

    private List<String> lines(int row, int column) {
        Column c = columns.get(column);
        double room = c.widthMm() - 2 * PAD_MM;
        String text = rows.get(row).get(column);
        return c.wraps() ? TextWrap.wrap(text, c.lettering(), room) : List.of(TextWrap.cut(text, c.lettering(), room));
    }

    public double widthMm() {
        return columns.stream().mapToDouble(Column::widthMm).sum();
    }

    /** Headings and the rows from one to before another, their top left at the origin. */
    public List<Shape> shapes(int fromRow, int toRow) {
        List<Shape> out = new ArrayList<>();
        double x = 0;
        for (Column column : columns) {
            String heading = TextWrap.cut(column.heading(), Lettering.SMALL, column.widthMm() - PAD_MM);
            out.add(cell(column, Lettering.SMALL, x, HEAD_MM - 1.4, heading));
            x += column.widthMm();
        }
        out.add(Path.line(Pen.LINE, 0, HEAD_MM, widthMm(), HEAD_MM));
        double top = HEAD_MM;
        for (int row = fromRow; row < toRow; row++) {
            double height = rowMm(row);
            if ((row - fromRow) % 2 == 1) {
                out.add(Path.rectangle(Pen.TINT, 0, top, widthMm(), height));
            }
            x = 0;
            for (int i = 0; i < columns.size(); i++) {
                Column column = columns.get(i);
                double baseline = top + 0.5 + column.lettering().sizeMm() * 0.95;
                for (String line : lines(row, i)) {
                    out.add(cell(column, column.lettering(), x, baseline, line));
                    baseline += lineMm(column.lettering());
                }
                x += column.widthMm();
            }
            top += height;
        }
        return out;
    }

    private static TextLine cell(Column column, Lettering lettering, double x, double baseline, String text) {
        double at = column.right() ? x + column.widthMm() - PAD_MM : x + PAD_MM;
        return new TextLine(lettering, at, baseline, column.right() ? Anchor.END : Anchor.START, false, text);
    }
}
