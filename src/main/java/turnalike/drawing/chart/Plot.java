package turnalike.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;

/**
 * The field of a chart: where figures come to stand on the paper. Figures grow to the right and upwards.
 *
 * @param field the rectangle on the paper
 * @param x what lies along its lower edge
 * @param y what lies along its left edge
 */
record Plot(Box field, Span x, Span y) {
    private static final double TICK_MM = 1.2;

    /** Two figures, the second above the first. */
    record Span(double least, double most) {
        Span {
            if (!(most > least) || !Double.isFinite(most - least)) {
                throw new IllegalArgumentException("an axis must run upwards, was %s to %s".formatted(least, most));
            }
        }

        /** The same with air at either end; figures that are all one get air of their own size. */
        static Span around(double least, double most, double share) {
            double air = (most - least) * share;
            double size = Math.max(Math.abs(least), Math.abs(most));
            if (!(most - least > size * 1e-12)) {
                air = size > 0 ? size * 0.01 : 1;
            }
            return new Span(least - air, most + air);
        }
    }

    double xMm(double value) {
        return field.left() + (value - x.least()) / (x.most() - x.least()) * field.width();
    }

    double yMm(double value) {
        return field.bottom() - (value - y.least()) / (y.most() - y.least()) * field.height();
    }

    /** The two axes. */
    Path frame() {
        return Path.through(
                Pen.LINE, field.left(), field.top(), field.left(), field.bottom(), field.right(), field.bottom());
    }

    /** Figures left of the field. */
    List<Shape> upTicks(Ticks ticks) {
        List<Shape> out = new ArrayList<>();
        for (double value : ticks.values()) {
            double at = yMm(value);
            out.add(Path.line(Pen.FINE, field.left() - TICK_MM, at, field.left(), at));
            out.add(TextLine.ending(
                    Lettering.SMALL,
                    field.left() - TICK_MM - 0.8,
                    at + Lettering.SMALL.capHeightMm() / 2,
                    ticks.label(value)));
        }
        return out;
    }

    /** Figures below the field. */
    List<Shape> alongTicks(Ticks ticks) {
        List<Shape> out = new ArrayList<>();
        for (double value : ticks.values()) {
            double at = xMm(value);
            out.add(Path.line(Pen.FINE, at, field.bottom(), at, field.bottom() + TICK_MM));
            out.add(TextLine.centred(Lettering.SMALL, at, field.bottom() + TICK_MM + 3.4, ticks.label(value)));
        }
        return out;
    }

    /** The room the widest figure left of a field takes, its tick included. */
    static double ticksWidthMm(Ticks ticks) {
        return TICK_MM
                + 1
                + ticks.values().stream()
                        .mapToDouble(value -> Lettering.SMALL.widthMm(ticks.label(value)))
                        .max()
                        .orElse(0);
    }
}
