package turnalike.drawing.svg;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.outline.Polynomial;
import turnalike.outline.Segment;

/**
 * An outline seen from the side, as path data without any approximation: lines as lines, ellipse arcs as arcs, polynomials to the third
 * degree as the cubic Bézier curves they are.
 *
 * @param datumMm the place on paper of the piece's datum end
 * @param axisMm the place on paper of the piece's axis
 * @param scale paper over wood
 */
public record OutlinePath(double datumMm, double axisMm, double scale) {
    /** Half of the last printed decimal: what is smaller vanishes on paper. */
    private static final double LEAST_STEP = 5e-4;

    public double x(double placeMm) {
        return datumMm + scale * placeMm;
    }

    /** The whole silhouette, closed: along the upper side, and back along the lower one. */
    public Path closed(Pen pen, Outline outline) {
        List<Path.Step> steps = new ArrayList<>(upperSide(pen, outline).steps());
        List<Segment> segments = outline.segments();
        for (int i = segments.size() - 1; i >= 0; i--) {
            Segment segment = segments.get(i);
            Side side = new Side(x(segment.end().mm()), -1, 1);
            Curve curve = segment.curve().reversed();
            // Across the far end first, then across each shoulder.
            boolean last = i == segments.size() - 1;
            double before = last ? Double.NaN : segments.get(i + 1).curve().startRadiusMm();
            steps.addAll(side.run(curve, before));
        }
        steps.add(new Path.Close());
        return new Path(pen, steps);
    }

    /** The upper side alone, from the datum end to the far end; shoulders are drawn as the steps they are. */
    public Path upperSide(Pen pen, Outline outline) {
        List<Path.Step> steps = new ArrayList<>();
        double before = outline.segments().get(0).curve().startRadiusMm();
        steps.add(new Path.Move(x(outline.start().mm()), axisMm - scale * before));
        for (Segment segment : outline.segments()) {
            steps.addAll(new Side(x(segment.start().mm()), 1, -1).run(segment.curve(), before));
            before = segment.curve().endRadiusMm();
        }
        return new Path(pen, steps);
    }

    /** One side of the piece, run through in one direction. */
    private final class Side implements Curve.Cases<List<Path.Step>> {
        /** The curve's start on paper. */
        private final double startX;

        /** 1 when x grows along the curve, else -1. */
        private final int along;

        /** 1 when the radius points down the paper, else -1. */
        private final int outward;

        Side(double startX, int along, int outward) {
            this.startX = startX;
            this.along = along;
            this.outward = outward;
        }

        private double px(double placeMm) {
            return startX + along * scale * placeMm;
        }

        private double py(double radiusMm) {
            return axisMm + outward * scale * radiusMm;
        }

        /** The curve, after a step across to its start when the pen stands at another radius. */
        List<Path.Step> run(Curve curve, double radiusBeforeMm) {
            List<Path.Step> out = new ArrayList<>();
            double shoulder = scale * Math.abs(radiusBeforeMm - curve.startRadiusMm());
            if (!(shoulder < LEAST_STEP)) {
                out.add(straight(0, curve.startRadiusMm()));
            }
            out.addAll(curve.match(this));
            return out;
        }

        private Path.Straight straight(double placeMm, double radiusMm) {
            return new Path.Straight(px(placeMm), py(radiusMm));
        }

        @Override
        public List<Path.Step> line(Line line) {
            return List.of(straight(line.length().mm(), line.to().mm()));
        }

        /** Cut at the crest, so that no piece is more than a quarter and its printed radii cannot shift its centre. */
        @Override
        public List<Path.Step> ellipseArc(EllipseArc arc) {
            double rx = scale * arc.halfWidth().mm();
            double ry = scale * Math.abs(arc.rise().mm());
            if (ry < LEAST_STEP) {
                return List.of(straight(arc.length().mm(), arc.endRadiusMm()));
            }
            boolean clockwise = (arc.rise().mm() > 0) == (along != outward);
            List<Path.Step> out = new ArrayList<>();
            for (double crest : arc.levelPlacesMm()) {
                out.add(new Path.Arc(rx, ry, clockwise, px(crest), py(arc.radiusMm(crest))));
            }
            out.add(new Path.Arc(rx, ry, clockwise, px(arc.length().mm()), py(arc.endRadiusMm())));
            return out;
        }

        /** From powers of u to Bernstein's form: b₀ = c₀, b₁ = c₀ + c₁/3, b₂ = c₀ + 2c₁/3 + c₂/3, b₃ = Σc (derived here). */
        @Override
        public List<Path.Step> polynomial(Polynomial polynomial) {
            List<Double> c = new ArrayList<>(polynomial.coefficientsMm());
            while (c.size() < 4) {
                c.add(0.0);
            }
            double length = polynomial.length().mm();
            return List.of(new Path.Cubic(
                    px(length / 3),
                    py(c.get(0) + c.get(1) / 3),
                    px(2 * length / 3),
                    py(c.get(0) + (2 * c.get(1) + c.get(2)) / 3),
                    px(length),
                    py(c.get(0) + c.get(1) + c.get(2) + c.get(3))));
        }
    }
}
