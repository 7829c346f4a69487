package turnalike.drawing.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
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
import turnalike.frame.Moment;
import turnalike.match.TradeOff;
import turnalike.match.WheelPlacement;
import turnalike.units.Length;

/**
 * Balance against roundness: each order of the pieces is a numbered point, its run-out along and its unbalance up, so the better lies
 * towards the lower left. In the grey band the scale cannot tell one balance from another.
 */
public final class TradeOffDrawing {
    private static final double LINE_MM = 4.4;
    private static final double DOT_MM = 1.1;
    private static final double HEAD_MM = 3.4;

    private static final double LEAST_RUN_OUT_MM = 0.001;

    private final List<TradeOff.Point> points;
    private final double noiseFloorGMm;

    private TradeOffDrawing(List<TradeOff.Point> points, double noiseFloorGMm) {
        this.points = List.copyOf(points);
        this.noiseFloorGMm = noiseFloorGMm;
    }

    /**
     * The curve as a picture.
     *
     * @param points numbered from 1 in the order given, at least one
     * @param noiseFloorGMm the unbalance that the scale alone can feign, not negative
     * @param width of the picture, 88 mm or more
     * @param height of the picture, 60 mm or more; {@link IllegalArgumentException} for less, as for the others
     */
    public static Svg svg(List<TradeOff.Point> points, double noiseFloorGMm, Length width, Length height) {
        if (points.isEmpty() || !(noiseFloorGMm >= 0) || width.mm() < 88 || height.mm() < 60) {
            throw new IllegalArgumentException(
                    "a curve needs points, a noise floor and 88 × 60 mm, was %d points, %s g·mm, %s × %s mm"
                            .formatted(points.size(), noiseFloorGMm, width.mm(), height.mm()));
        }
        TradeOffDrawing drawing = new TradeOffDrawing(points, noiseFloorGMm);
        List<Shape> shapes = drawing.shapes(new Box(0, 0, width.mm(), height.mm()));
        return new Svg(width, height, "balance against roundness: " + drawing.advice(), shapes);
    }

    private static double gMm(TradeOff.Point point) {
        return point.unbalance().gMm();
    }

    private static double runOutMm(TradeOff.Point point) {
        return point.rim().runOut().mm();
    }

    /** No caliper tells a run-out from none at all. */
    private static String runOut(double mm) {
        return mm < LEAST_RUN_OUT_MM ? "under " + LEAST_RUN_OUT_MM : String.format(Locale.ROOT, "%.3g", mm);
    }

    /** Which point to look at first, in words. */
    private String advice() {
        List<Integer> all = IntStream.range(0, points.size()).boxed().toList();
        List<Integer> within =
                all.stream().filter(i -> gMm(points.get(i)) <= noiseFloorGMm).toList();
        if (points.size() == 1) {
            return within.isEmpty()
                    ? "One order; your scale can see its unbalance."
                    : "One order, its unbalance below the scale's noise.";
        }
        Comparator<Integer> rounder = Comparator.comparingDouble(i -> runOutMm(points.get(i)));
        Comparator<Integer> calmer = Comparator.comparingDouble(i -> gMm(points.get(i)));
        if (within.isEmpty()) {
            return "%d is balanced best, %d is the roundest; your scale can see the unbalance of each."
                    .formatted(
                            all.stream().min(calmer).orElseThrow() + 1,
                            all.stream().min(rounder).orElseThrow() + 1);
        }
        return "Below the scale's noise: %d of %d; of these %d is the roundest."
                .formatted(
                        within.size(),
                        points.size(),
                        within.stream().min(rounder).orElseThrow() + 1);
    }

    private List<Shape> shapes(Box paper) {
        double most = points.stream().mapToDouble(TradeOffDrawing::gMm).max().orElse(0);
        double top = Math.max(most, noiseFloorGMm) * 1.15;
        Plot.Span up = new Plot.Span(0, top > 0 ? top : 1);
        double least =
                points.stream().mapToDouble(TradeOffDrawing::runOutMm).min().orElse(0);
        double far =
                points.stream().mapToDouble(TradeOffDrawing::runOutMm).max().orElse(0);
        Plot.Span along = Plot.Span.around(least, far, 0.12);
        Ticks upTicks = Ticks.between(up.least(), up.most(), 6);
        Ticks alongTicks = Ticks.between(along.least(), along.most(), paper.width() < 120 ? 4 : 7);
        List<String> words = TextWrap.wrap(advice(), Lettering.SMALL, paper.width());
        double foot = 11 + words.size() * LINE_MM;
        double left = 1 + Plot.ticksWidthMm(upTicks);
        Plot plot = new Plot(new Box(left, 6, paper.right() - 6, paper.bottom() - foot), along, up);

        List<Shape> out = new ArrayList<>();
        LabelPlacer room = new LabelPlacer(
                new Box(left + 0.5, 5, paper.right(), plot.field().bottom() - 0.3));
        out.addAll(band(plot, room));
        out.add(plot.frame());
        out.addAll(plot.upTicks(upTicks));
        out.addAll(plot.alongTicks(alongTicks));
        out.add(TextLine.of(Lettering.SMALL, 0, HEAD_MM, "unbalance, g·mm"));
        double below = plot.field().bottom() + 4.6 + LINE_MM;
        out.add(TextLine.ending(Lettering.SMALL, plot.field().right(), below, "run-out, mm"));
        out.add(steps(plot, room));
        List<Group> dots = dots(plot, room);
        out.addAll(dots);
        long bare = dots.stream().filter(dot -> dot.shapes().size() == 1).count();
        if (bare > 0) {
            out.add(TextLine.of(Lettering.SMALL, 0, below, bare + " numbers left out"));
        }
        for (int i = 0; i < words.size(); i++) {
            out.add(TextLine.of(Lettering.SMALL, 0, below + 1 + (i + 1) * LINE_MM, words.get(i)));
        }
        return out;
    }

    private List<Shape> band(Plot plot, LabelPlacer room) {
        List<Shape> out = new ArrayList<>();
        if (noiseFloorGMm == 0) {
            return out;
        }
        Box field = plot.field();
        double at = plot.yMm(noiseFloorGMm);
        out.add(Path.rectangle(Pen.TINT, field.left(), at, field.width(), field.bottom() - at));
        out.add(Path.line(Pen.DASHED, field.left(), at, field.right(), at));
        room.avoid(field.left(), at, field.right(), at);
        String text = "grey: the scale's noise, %s g·mm".formatted(Moment.figure(noiseFloorGMm));
        // Above the field: where the noise is small the line lies among the points.
        out.add(TextLine.ending(Lettering.SMALL, field.right(), HEAD_MM, text));
        return out;
    }

    /** Steps, not slopes: between two points there is no order, only the worse of either in each aim. */
    private Path steps(Plot plot, LabelPlacer room) {
        List<TradeOff.Point> sorted = points.stream()
                .sorted(Comparator.comparingDouble(TradeOffDrawing::runOutMm))
                .toList();
        List<Double> xy = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            double x = plot.xMm(runOutMm(sorted.get(i)));
            double y = plot.yMm(gMm(sorted.get(i)));
            if (i > 0) {
                double before = xy.get(xy.size() - 1);
                room.avoid(xy.get(xy.size() - 2), before, x, before);
                room.avoid(x, before, x, y);
                xy.add(x);
                xy.add(before);
            }
            xy.add(x);
            xy.add(y);
        }
        return Path.through(
                Pen.FINE, xy.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private List<Group> dots(Plot plot, LabelPlacer room) {
        for (TradeOff.Point point : points) {
            double x = plot.xMm(runOutMm(point));
            double y = plot.yMm(gMm(point));
            room.take(new Box(x, y, x, y).grown(DOT_MM));
        }
        List<Group> out = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            TradeOff.Point point = points.get(i);
            double x = plot.xMm(runOutMm(point));
            double y = plot.yMm(gMm(point));
            String number = Integer.toString(i + 1);
            List<Shape> shapes = new ArrayList<>();
            boolean within = gMm(point) <= noiseFloorGMm;
            shapes.add(Path.circle(within ? Pen.INK_FILL : Pen.PAPER, x, y, DOT_MM));
            shapes.addAll(room.label(Lettering.STRONG, x, y, DOT_MM + 1.2, number));
            String tip = String.format(
                    Locale.ROOT,
                    "%s: unbalance %s, run-out %s mm",
                    number,
                    WheelPlacement.told(point.unbalance(), noiseFloorGMm),
                    runOut(runOutMm(point)));
            out.add(new Group(0, 0, Map.of("class", "order", "data-order", number), Optional.of(tip), shapes));
        }
        return out;
    }
}
