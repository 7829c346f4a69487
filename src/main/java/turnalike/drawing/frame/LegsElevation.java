package turnalike.drawing.frame;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.job.set.LegsFit;
import turnalike.job.set.LegsFit.Foot;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.outline.Segment;
import turnalike.units.Length;

/**
 * Legs under their seat, from the front and from the side, to scale: each leg from the pattern's true outline, foreshortened as it leans towards
 * the eye or away. Its thickness is drawn square to the axis as seen. What the job does not tell is drawn so and said.
 *
 * @param fit how they stand
 */
record LegsElevation(LegsFit fit) {
    private static final double TALLEST_MM = 110;
    private static final double APART_MM = 10;
    private static final double FOOT_MM = 7;
    private static final int PARTS_OF_A_CURVE = 18;

    /**
     * {@return the picture}
     *
     * @param width of it, 80 mm or more, else {@link IllegalArgumentException}
     */
    public Svg svg(Length width) {
        FrameView.requireWidth(width);
        return new Drawing(width.mm()).svg();
    }

    /** A view: how far things lie to the right in it. */
    private interface View {
        double right(double front, double side);
    }

    private final class Drawing {
        private final List<Foot> feet = fit.feet();
        private final double seat =
                fit.seatThickness().map(Length::mm).orElse(fit.stands().mm() / 12);
        private final double high = fit.stands().mm();
        private final double width;
        private final double half;
        private final double scale;

        Drawing(double width) {
            this.width = width;
            double most = 0;
            double thick = fit.leg().largestRadius().mm();
            for (Foot foot : feet) {
                most = Math.max(
                        most, Math.abs(foot.front().mm() + foot.movesFront().mm()) + thick);
                most = Math.max(
                        most, Math.abs(foot.side().mm() + foot.movesSide().mm()) + thick);
                most = Math.max(most, Math.abs(foot.front().mm()) + 2 * thick);
                most = Math.max(most, Math.abs(foot.side().mm()) + 2 * thick);
            }
            this.half = most;
            this.scale = Math.min((width - APART_MM) / 2 / (2 * most), TALLEST_MM / (high + seat));
        }

        Svg svg() {
            List<Shape> out = new ArrayList<>();
            double reach = scale * half;
            view(out, width / 2 - APART_MM / 2 - reach, "from the front", (front, side) -> side);
            view(out, width / 2 + APART_MM / 2 + reach, "from the side", (front, side) -> front);
            double height = scale * (high + seat) + FOOT_MM;
            String title = "%d legs as they will stand, from the front and from the side%s"
                    .formatted(fit.places(), fit.buildable() ? "" : "; it cannot be built so");
            return new Svg(Length.ofMm(width), Length.ofMm(height), title, out);
        }

        private void view(List<Shape> out, double middle, String name, View view) {
            double under = scale * seat;
            double floor = under + scale * high;
            double reach = scale * half;
            for (Foot foot : feet) {
                double top = middle
                        + scale * view.right(foot.front().mm(), foot.side().mm());
                double moves = scale
                        * view.right(foot.movesFront().mm(), foot.movesSide().mm());
                leg(out, top, under, moves);
            }
            for (LegsFit.Stretcher each : fit.stretchers()) {
                double y = floor - scale * each.height().mm();
                out.add(Path.line(Pen.DASHED, middle - reach * 0.9, y, middle + reach * 0.9, y));
            }
            // Under the floor nothing is left of a leg.
            out.add(Path.rectangle(Pen.PAPER, middle - reach, floor, 2 * reach, 1));
            double seatHalf = 0;
            for (Foot foot : feet) {
                seatHalf = Math.max(
                        seatHalf,
                        Math.abs(view.right(foot.front().mm(), foot.side().mm())));
            }
            double from = scale * (seatHalf + 2 * fit.leg().largestRadius().mm());
            out.add(Path.rectangle(Pen.PAPER, middle - from, 0.2, 2 * from, under - 0.2));
            out.add(TextLine.centred(Lettering.SMALL, middle, floor + FOOT_MM - 2, name));
        }

        /** From the seat's underside to the floor; what is longer is cut off there. */
        private void leg(List<Shape> out, double top, double under, double moves) {
            double down = scale * high;
            double wanted = fit.angles().along(fit.stands()).mm();
            double seen = Math.hypot(moves, down);
            double cos = down / seen;
            double sin = moves / seen;
            List<double[]> stations =
                    stations(Math.min(wanted, fit.leg().length().mm()));
            double along = seen / wanted;
            List<Double> xy = new ArrayList<>();
            for (double[] each : stations) {
                xy.add(top + sin * along * each[0] + cos * scale * each[1]);
                xy.add(under + cos * along * each[0] - sin * scale * each[1]);
            }
            for (int i = stations.size() - 1; i >= 0; i--) {
                double[] each = stations.get(i);
                xy.add(top + sin * along * each[0] - cos * scale * each[1]);
                xy.add(under + cos * along * each[0] + sin * scale * each[1]);
            }
            double[] points = xy.stream().mapToDouble(Double::doubleValue).toArray();
            out.add(Path.polygon(Pen.WOOD, points));
            out.add(Path.polygon(Pen.FINE, points));
        }

        /** Place from the seat's underside and radius, to a place. */
        private List<double[]> stations(double to) {
            List<double[]> out = new ArrayList<>();
            double start = fit.leg().start().mm();
            for (Segment segment : fit.leg().segments()) {
                Curve curve = segment.curve();
                int parts = curve instanceof Line ? 1 : PARTS_OF_A_CURVE;
                double from = segment.start().mm() - start;
                double length = Math.min(curve.length().mm(), to - from);
                for (int i = 0; length > 0 && i <= parts; i++) {
                    double x = length * (1 - Math.cos(Math.PI * i / parts)) / 2;
                    out.add(new double[] {from + x, curve.radiusMm(x)});
                }
            }
            return out;
        }
    }
}
