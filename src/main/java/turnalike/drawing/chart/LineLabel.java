package turnalike.drawing.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.LabelSpacing;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;

/**
 * A level line of a chart with its name and figure at its right end.
 *
 * @param value where it lies
 * @param ticks of its axis: its figure is one decimal finer than theirs
 */
record LineLabel(String name, double value, Pen pen, Ticks ticks) {
    private static final double STEP_MM = 4.2;
    private static final double GAP_MM = 3;

    private String text() {
        return name + " " + ticks.finer(value);
    }

    /** The room it takes right of the field. */
    double widthMm() {
        return GAP_MM + Lettering.SMALL.widthMm(text());
    }

    /** The lines across the field and, moved apart where they crowd, their labels. */
    static List<Shape> shapes(List<LineLabel> lines, Plot plot) {
        List<LineLabel> down = lines.stream()
                .sorted(Comparator.comparingDouble(LineLabel::value).reversed())
                .toList();
        Box field = plot.field();
        List<Double> wanted = down.stream().map(line -> plot.yMm(line.value())).toList();
        double[] places = LabelSpacing.apart(wanted, STEP_MM, field.top(), field.bottom());
        List<Shape> out = new ArrayList<>();
        for (int i = 0; i < down.size(); i++) {
            LineLabel line = down.get(i);
            double at = plot.yMm(line.value());
            out.add(Path.line(line.pen(), field.left(), at, field.right(), at));
            out.add(Path.line(Pen.FINE, field.right(), at, field.right() + GAP_MM - 0.6, places[i]));
            double baseline = places[i] + Lettering.SMALL.capHeightMm() / 2;
            out.add(TextLine.of(Lettering.SMALL, field.right() + GAP_MM, baseline, line.text()));
        }
        return out;
    }
}
