package turnalike.drawing.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.TextWrap;
import turnalike.pieces.control.ChartPoint;
import turnalike.pieces.control.ControlChart;
import turnalike.pieces.control.RunRule;
import turnalike.pieces.control.Signal;
import turnalike.units.Article;
import turnalike.units.Length;
import turnalike.units.PlainNumber;

/**
 * A control chart: single values above, moving ranges below, over the pieces in the order they were turned. A piece at which a rule
 * speaks is ringed and carries its label; the lines carry their figures.
 */
public final class ControlChartDrawing {
    private static final double CAPTION_MM = 4.6;
    private static final double RING_MM = 2;
    private static final double LONGEST_LABEL_MM = 20;
    private static final int MOST_TICKS = 6;

    private final ControlChart chart;
    private final String unit;
    private final Box paper;
    private final PieceAxis axis;
    private final Map<String, List<Signal>> valueSignals = new LinkedHashMap<>();
    private final Map<String, List<Signal>> rangeSignals = new LinkedHashMap<>();
    private int unlettered;

    private ControlChartDrawing(ControlChart chart, String unit, Box paper) {
        this.chart = chart;
        this.unit = unit;
        this.paper = paper;
        this.axis = new PieceAxis(chart.points().stream().map(ChartPoint::piece).toList());
        for (Signal signal : chart.signals()) {
            Map<String, List<Signal>> of = signal.rule() == RunRule.RANGE_BEYOND ? rangeSignals : valueSignals;
            of.computeIfAbsent(signal.piece(), piece -> new ArrayList<>()).add(signal);
        }
    }

    /**
     * The chart as a picture.
     *
     * @param title what is charted, in words; cut short when it is longer than the picture; may be empty where a heading stands elsewhere
     * @param unit of the values, such as {@code g}; may be empty
     * @param width of the picture, 80 mm or more
     * @param height of the picture, 70 mm or more; less is refused with {@link IllegalArgumentException}
     */
    public static Svg svg(ControlChart chart, String title, String unit, Length width, Length height) {
        if (width.mm() < 80 || height.mm() < 70) {
            throw new IllegalArgumentException(
                    "a control chart needs 80 × 70 mm or more, was %s × %s mm".formatted(width.mm(), height.mm()));
        }
        Box paper = new Box(0, 0, width.mm(), height.mm());
        List<Shape> shapes = new ControlChartDrawing(chart, unit, paper).shapes(title);
        String words = "control chart%s, %s, %s"
                .formatted(
                        title.isBlank() ? "" : ": " + title,
                        Article.count(chart.points().size(), "piece"),
                        Article.count(chart.signals().size(), "signal"));
        return new Svg(width, height, words, shapes);
    }

    private List<Shape> shapes(String title) {
        double headMm = title.isBlank() ? 1 : 9;
        Plot.Span values = valueSpan();
        Plot.Span ranges = rangeSpan();
        Ticks valueTicks = Ticks.between(values.least(), values.most(), MOST_TICKS);
        Ticks rangeTicks = Ticks.between(0, ranges.most(), MOST_TICKS - 2);
        List<LineLabel> valueLines = List.of(
                new LineLabel("upper", chart.upper(), Pen.DASHED, valueTicks),
                new LineLabel("centre", chart.centre(), Pen.LINE, valueTicks),
                new LineLabel("lower", chart.lower(), Pen.DASHED, valueTicks));
        List<LineLabel> rangeLines = List.of(
                new LineLabel("limit", chart.rangeUpper(), Pen.DASHED, rangeTicks),
                new LineLabel("mean", chart.meanMovingRange(), Pen.LINE, rangeTicks));

        double left = 1 + Math.max(Plot.ticksWidthMm(valueTicks), Plot.ticksWidthMm(rangeTicks));
        double right = paper.right() - 3 - Math.max(widest(valueLines), widest(rangeLines));
        Plot.Span along = new Plot.Span(0.4, chart.points().size() + 0.6);
        PieceAxis.Laid labels = axis.lay((right - left) / (along.most() - along.least()), LONGEST_LABEL_MM);
        double foot = labels.heightMm() + footLines(chart.points().size()).size() * CAPTION_MM + 1;
        double room = paper.bottom() - headMm - foot - 2 * CAPTION_MM - 4;
        double split = headMm + CAPTION_MM + room * 0.64;
        Plot above = new Plot(new Box(left, headMm + CAPTION_MM, right, split), along, values);
        Plot below = new Plot(new Box(left, split + CAPTION_MM + 4, right, paper.bottom() - foot), along, ranges);

        List<Shape> out = new ArrayList<>();
        if (!title.isBlank()) {
            out.add(TextLine.of(Lettering.HEADING, 0, 5, TextWrap.cut(title, Lettering.HEADING, paper.width())));
        }
        out.addAll(zones(above));
        out.addAll(panel(new Panel(
                above, "single values" + inUnit(), valueTicks, valueLines, valuePlaces(above), valueSignals)));
        String caption = "moving ranges, from piece to piece" + inUnit();
        out.addAll(panel(new Panel(below, caption, rangeTicks, rangeLines, rangePlaces(below), rangeSignals)));
        out.addAll(labels.shapes(below));
        out.addAll(foot(below.field().bottom() + labels.heightMm() + CAPTION_MM - 0.6));
        return out;
    }

    private String inUnit() {
        return unit.isBlank() ? "" : ", " + TextWrap.cut(unit.strip(), Lettering.SMALL, 30);
    }

    private Plot.Span valueSpan() {
        double least =
                chart.points().stream().mapToDouble(ChartPoint::value).min().orElse(chart.centre());
        double most =
                chart.points().stream().mapToDouble(ChartPoint::value).max().orElse(chart.centre());
        return Plot.Span.around(Math.min(least, chart.lower()), Math.max(most, chart.upper()), 0.09);
    }

    private Plot.Span rangeSpan() {
        double most =
                chart.ranges().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        double top = Math.max(most, chart.rangeUpper());
        return new Plot.Span(0, top > 0 ? top * 1.14 : 1);
    }

    /** A point of a panel with the piece it belongs to. */
    private record Place(String piece, double x, double y, String tip) {}

    private List<Place> valuePlaces(Plot plot) {
        return IntStream.range(0, chart.points().size())
                .mapToObj(i -> place(plot, i, chart.points().get(i).value(), ""))
                .toList();
    }

    private List<Place> rangePlaces(Plot plot) {
        return IntStream.range(1, chart.points().size())
                .mapToObj(i -> place(plot, i, chart.ranges().get(i - 1), " from the one before"))
                .toList();
    }

    /** To nine figures: a difference of two readings is no finer, whatever its binary digits say. */
    private static String figure(double value) {
        return PlainNumber.toFigures(value, 9);
    }

    private Place place(Plot plot, int index, double value, String how) {
        String piece = chart.points().get(index).piece();
        String tip = "piece %s: %s%s%s".formatted(piece, figure(value), unit.isBlank() ? "" : " " + unit.strip(), how);
        return new Place(piece, plot.xMm(index + 1), plot.yMm(value), tip);
    }

    /** One of the two charts. */
    private record Panel(
            Plot plot,
            String caption,
            Ticks ticks,
            List<LineLabel> lines,
            List<Place> places,
            Map<String, List<Signal>> signals) {}

    private List<Shape> panel(Panel panel) {
        Plot plot = panel.plot();
        List<Place> places = panel.places();
        List<Shape> out = new ArrayList<>();
        Box field = plot.field();
        String caption = TextWrap.cut(panel.caption(), Lettering.SMALL, field.width());
        out.add(TextLine.of(Lettering.SMALL, field.left(), field.top() - 1.6, caption));
        out.add(plot.frame());
        out.addAll(plot.upTicks(panel.ticks()));
        out.addAll(LineLabel.shapes(panel.lines(), plot));
        out.add(Path.through(
                Pen.FINE,
                places.stream()
                        .flatMapToDouble(p -> DoubleStream.of(p.x(), p.y()))
                        .toArray()));
        LabelPlacer room =
                new LabelPlacer(new Box(field.left() + 0.5, field.top() - 1, field.right(), field.bottom() - 0.5));
        for (LineLabel line : panel.lines()) {
            room.avoid(field.left(), plot.yMm(line.value()), field.right(), plot.yMm(line.value()));
        }
        for (int i = 1; i < places.size(); i++) {
            room.avoid(
                    places.get(i - 1).x(),
                    places.get(i - 1).y(),
                    places.get(i).x(),
                    places.get(i).y());
        }
        out.addAll(points(plot, places, panel.signals(), room));
        return out;
    }

    private List<Shape> points(Plot plot, List<Place> places, Map<String, List<Signal>> signals, LabelPlacer room) {
        double pitch = plot.xMm(2) - plot.xMm(1);
        double dot = Math.max(0.3, Math.min(0.8, pitch * 0.3));
        List<Shape> out = new ArrayList<>();
        for (Place place : places) {
            if (signals.containsKey(place.piece())) {
                room.take(new Box(place.x(), place.y(), place.x(), place.y()).grown(RING_MM));
            }
            out.add(new Group(
                    0,
                    0,
                    Map.of("class", "point", "data-piece", place.piece()),
                    Optional.of(place.tip()),
                    List.of(Path.circle(Pen.INK_FILL, place.x(), place.y(), dot))));
        }
        for (Place place : places) {
            List<Signal> here = signals.getOrDefault(place.piece(), List.of());
            if (!here.isEmpty()) {
                out.add(ringed(place, here, room));
            }
        }
        return out;
    }

    private Group ringed(Place place, List<Signal> signals, LabelPlacer room) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Path.circle(Pen.ACCENT, place.x(), place.y(), RING_MM));
        String label = TextWrap.cut(place.piece(), Lettering.STRONG, LONGEST_LABEL_MM);
        List<Shape> lettered = room.label(Lettering.STRONG, place.x(), place.y(), RING_MM + 1.2, label);
        unlettered += lettered.isEmpty() ? 1 : 0;
        shapes.addAll(lettered);
        String tip = String.join("; ", signals.stream().map(Signal::words).toList());
        return new Group(0, 0, Map.of("class", "signal", "data-piece", place.piece()), Optional.of(tip), shapes);
    }

    /** Grey from one sigma to two either side of the centre, so that the eye can check the rules that speak of them. */
    private List<Shape> zones(Plot plot) {
        if (chart.sigma() <= 0) {
            return List.of();
        }
        List<Shape> out = new ArrayList<>();
        for (int side : new int[] {1, -1}) {
            double a = plot.yMm(chart.centre() + side * chart.sigma());
            double b = plot.yMm(chart.centre() + side * 2 * chart.sigma());
            Box field = plot.field();
            out.add(Path.rectangle(Pen.TINT, field.left(), Math.min(a, b), field.width(), Math.abs(b - a)));
        }
        return out;
    }

    /**
     * What stands below.
     *
     * @param missing how many rings have no room for their label
     */
    private List<String> footLines(int missing) {
        String trial = chart.isTrial() ? "; fewer than %d pieces, trial limits".formatted(ControlChart.ENOUGH) : "";
        String rings =
                missing == 0 ? "ring: a signal" : "ring: a signal (%d without room for a label)".formatted(missing);
        String text = chart.points().size()
                + " pieces in the order they were turned; grey: 1 to 2 sigma from the centre; "
                + (chart.signals().isEmpty() ? "no signals" : rings)
                + trial;
        return TextWrap.wrap(text, Lettering.SMALL, paper.width());
    }

    private List<Shape> foot(double y) {
        List<Shape> out = new ArrayList<>();
        double at = y;
        for (String line : footLines(unlettered)) {
            out.add(TextLine.of(Lettering.SMALL, 0, at, line));
            at += CAPTION_MM - 0.4;
        }
        return out;
    }

    private static double widest(List<LineLabel> lines) {
        return lines.stream().mapToDouble(LineLabel::widthMm).max().orElse(0);
    }
}
