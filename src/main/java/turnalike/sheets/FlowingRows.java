package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Table;

/**
 * A headed table that breaks between rows, in one column or several side by side.
 *
 * @param heading repeated on each page
 * @param table all its rows
 * @param fromRow the first that is not laid yet
 * @param columns how many stand side by side
 * @param columnMm from one column's left edge to the next one's
 */
record FlowingRows(String heading, Table table, int fromRow, int columns, double columnMm) implements Flowing {
    private static final double AFTER_MM = 4;

    /** A table is not begun at the foot of a page for fewer. */
    private static final int LEAST_ROWS = 3;

    @Override
    public Optional<Laid> lay(double roomMm, boolean freshPage) {
        PartHeading head = PartHeading.of(
                fromRow == 0 ? heading : heading + ", continued", (columns - 1) * columnMm + table.widthMm());
        double room = roomMm - head.heightMm() - Table.HEAD_MM - AFTER_MM;
        int rows = table.rows().size();
        int even = (rows - fromRow + columns - 1) / columns;
        List<Shape> out = new ArrayList<>(head.shapes());
        double tallest = 0;
        int row = fromRow;
        for (int column = 0; column < columns && row < rows; column++) {
            int end = row;
            double height = 0;
            while (end < rows && end - row < even && (height + table.rowMm(end) <= room || (freshPage && end == row))) {
                height += table.rowMm(end++);
            }
            boolean tooFew = !freshPage && column == 0 && end - row < Math.min(LEAST_ROWS, even);
            if (end == row || tooFew) {
                return Optional.empty();
            }
            out.add(Group.at(column * columnMm, head.heightMm(), table.shapes(row, end)));
            tallest = Math.max(tallest, height);
            row = end;
        }
        Optional<Flowing> rest =
                row < rows ? Optional.of(new FlowingRows(heading, table, row, columns, columnMm)) : Optional.empty();
        return Optional.of(new Laid(out, head.heightMm() + Table.HEAD_MM + tallest + AFTER_MM, rest));
    }
}
