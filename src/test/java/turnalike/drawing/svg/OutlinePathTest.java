package turnalike.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import turnalike.drawing.piece.Samples;
import turnalike.outline.EllipseArc;
import turnalike.outline.Line;
import turnalike.outline.MonotoneCubic;
import turnalike.outline.Outline;
import turnalike.outline.Polynomial;
import turnalike.outline.Section;
import turnalike.outline.Segment;
import turnalike.pattern.Pattern;
import turnalike.units.Length;

/** The drawn line against the outline it draws: every point of the path lies at the outline's own radius. */
class OutlinePathTest {
    private static Length mm(double mm) {
        return Length.ofMm(mm);
    }

    private static void draws(Outline outline, double scale) {
        OutlinePath path = new OutlinePath(20, 100, scale);
        int checked = 0;
        for (double[] p : points(path.closed(Pen.OUTLINE, outline))) {
            double place = (p[0] - 20) / scale;
            double radius = Math.abs(p[1] - 100) / scale;
            double low = Double.POSITIVE_INFINITY;
            double high = 0;
            for (double r : radiiAbout(outline, place)) {
                low = Math.min(low, r);
                high = Math.max(high, r);
            }
            boolean atEnd = place < 1e-3 || place > outline.length().mm() - 1e-3;
            assertThat(radius).isBetween(atEnd ? 0 : low - 2e-3, high + 2e-3);
            checked++;
        }
        assertThat(checked).isGreaterThanOrEqualTo(4);
    }

    /** The outline's radii within a hair of a place: on a shoulder both sides', beside an upright stretch a range. */
    private static List<Double> radiiAbout(Outline outline, double place) {
        List<Double> out = new ArrayList<>();
        for (double near = -2e-4; near <= 2e-4; near += 1e-4) {
            double at = Math.max(0, Math.min(outline.length().mm(), place + near));
            out.add(outline.radiusAt(mm(at)).mm());
        }
        for (Segment segment : outline.segments()) {
            if (Math.abs(segment.start().mm() - place) < 1e-3) {
                out.add(segment.curve().startRadiusMm());
            }
            if (Math.abs(segment.end().mm() - place) < 1e-3) {
                out.add(segment.curve().endRadiusMm());
            }
        }
        return out;
    }

    @Test
    void every_kind_of_curve_is_drawn_where_it_is() {
        draws(Outline.of(Length.ZERO, List.of(new Line(mm(30), mm(10), mm(14))), Section.ROUND), 1);
        draws(Outline.of(Length.ZERO, List.of(new EllipseArc(mm(20), mm(10), mm(10), mm(8), mm(6))), Section.ROUND), 2);
        draws(
                Outline.of(Length.ZERO, List.of(new EllipseArc(mm(20), mm(10), mm(10), mm(18), mm(-6))), Section.ROUND),
                2);
        draws(
                Outline.of(Length.ZERO, List.of(new EllipseArc(mm(12), mm(0), mm(12), mm(8), mm(6))), Section.ROUND),
                0.5);
        draws(
                Outline.of(Length.ZERO, List.of(new EllipseArc(mm(12), mm(9), mm(14), mm(18), mm(-6))), Section.ROUND),
                1);
        draws(
                Outline.of(
                        Length.ZERO,
                        List.of(Polynomial.quadraticThrough(mm(80), mm(10), mm(19), mm(7))),
                        Section.ROUND),
                1);
        draws(
                Outline.of(
                        Length.ZERO,
                        MonotoneCubic.through(List.of(
                                new MonotoneCubic.Point(mm(0), mm(10)),
                                new MonotoneCubic.Point(mm(25), mm(22)),
                                new MonotoneCubic.Point(mm(60), mm(21)),
                                new MonotoneCubic.Point(mm(90), mm(5)))),
                        Section.ROUND),
                1);
    }

    @Test
    void whole_patterns_are_drawn_where_they_are() {
        for (Pattern pattern : List.of(Samples.three(), Samples.spoke(), Samples.forty(150), Samples.newel())) {
            draws(pattern.outline(), 1);
            draws(pattern.outline(), 0.4);
        }
    }

    @Test
    void arcs_and_cubics_are_told_as_such() {
        Outline bead =
                Outline.of(Length.ZERO, List.of(new EllipseArc(mm(20), mm(10), mm(10), mm(8), mm(6))), Section.ROUND);
        List<String> steps = new OutlinePath(0, 50, 1)
                .closed(Pen.OUTLINE, bead).steps().stream()
                        .map(OutlinePathTest::svg)
                        .toList();
        assertThat(steps)
                .containsExactly(
                        "M0 42",
                        "A10 6 0 0 1 10 36",
                        "A10 6 0 0 1 20 42",
                        "L20 58",
                        "A10 6 0 0 1 10 64",
                        "A10 6 0 0 1 0 58",
                        "Z");
    }

    private static String svg(Path.Step step) {
        StringBuilder out = new StringBuilder();
        step.svg(out);
        return out.toString();
    }

    @Test
    void upper_side_starts_and_ends_on_the_outline() {
        Pattern pattern = Samples.spoke();
        List<double[]> points = points(new OutlinePath(0, 0, 1).upperSide(Pen.OUTLINE, pattern.outline()));
        double[] last = points.get(points.size() - 1);
        assertThat(last[0]).isCloseTo(pattern.length().mm(), within(1e-3));
        assertThat(-last[1])
                .isCloseTo(pattern.outline().radiusAt(pattern.length()).mm(), within(1e-3));
    }

    /** Flattened by AWT, which knows neither our arcs nor our rounding; an arc is taken through its own equation. */
    private static List<double[]> points(Path path) {
        Path2D.Double flat = new Path2D.Double();
        path.steps().forEach(step -> step.match(new IntoAwt(flat)));
        List<double[]> out = new ArrayList<>();
        double[] c = new double[6];
        for (PathIterator i = flat.getPathIterator(null, 1e-4); !i.isDone(); i.next()) {
            if (i.currentSegment(c) != PathIterator.SEG_CLOSE) {
                out.add(new double[] {c[0], c[1]});
            }
        }
        return out;
    }

    private record IntoAwt(Path2D.Double flat) implements Path.StepCases<Boolean> {
        @Override
        public Boolean move(Path.Move move) {
            flat.moveTo(move.xMm(), move.yMm());
            return true;
        }

        @Override
        public Boolean straight(Path.Straight line) {
            flat.lineTo(line.xMm(), line.yMm());
            return true;
        }

        @Override
        public Boolean cubic(Path.Cubic c) {
            flat.curveTo(c.x1Mm(), c.y1Mm(), c.x2Mm(), c.y2Mm(), c.xMm(), c.yMm());
            return true;
        }

        /** Ours run at most a quarter, so the centre is where both half axes' equations agree; found by halving the turn. */
        @Override
        public Boolean arc(Path.Arc arc) {
            double x0 = flat.getCurrentPoint().getX();
            double y0 = flat.getCurrentPoint().getY();
            double ux = (arc.xMm() - x0) / arc.rxMm();
            double uy = (arc.yMm() - y0) / arc.ryMm();
            double chord = Math.hypot(ux, uy);
            double toCentre = Math.sqrt(Math.max(0, 1 - chord * chord / 4)) * (arc.clockwise() ? 1 : -1);
            double cx = x0 + arc.rxMm() * (ux / 2 - uy / chord * toCentre);
            double cy = y0 + arc.ryMm() * (uy / 2 + ux / chord * toCentre);
            double from = Math.atan2((y0 - cy) / arc.ryMm(), (x0 - cx) / arc.rxMm());
            double turn = 2 * Math.asin(Math.min(1, chord / 2)) * (arc.clockwise() ? 1 : -1);
            for (int i = 1; i <= 50; i++) {
                double angle = from + turn * i / 50;
                flat.lineTo(cx + arc.rxMm() * Math.cos(angle), cy + arc.ryMm() * Math.sin(angle));
            }
            return true;
        }

        @Override
        public Boolean close(Path.Close close) {
            flat.closePath();
            return true;
        }
    }
}
