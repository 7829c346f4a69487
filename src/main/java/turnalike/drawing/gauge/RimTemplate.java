package turnalike.drawing.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.frame.SegmentedRim;
import turnalike.units.Length;

/**
 * A flat rim from the front at full size: its inside and outside, and at each place the line that is carried over the inner edge and bored
 * along, with the mortise's sides and bottom as they lie in the wood. Place 1 points to the right, the others follow anticlockwise.
 *
 * @param places how many, 2 or more
 * @param inner from the axle to the inside, which is where the mortises' middles are pricked; above zero
 * @param outer to the outside, if known
 * @param bit diameter of the mortises; less than the inside's
 * @param depth of a mortise along its middle, from the inside
 * @param joints of the rim's segments, if it is made of some
 */
public record RimTemplate(
        int places, Length inner, Optional<Length> outer, Length bit, Length depth, Optional<SegmentedRim> joints) {
    private static final double LINE_OUT_MM = 8;
    private static final double NUMBER_MM = 6;
    private static final double PAD_MM = 12;
    private static final double CROSS_MM = 4;
    private static final double TOUCH_MM = 1e-9;

    public RimTemplate {
        if (bit.compareTo(inner.times(2)) >= 0) {
            throw new IllegalArgumentException(
                    "a bit of %s mm does not go into a rim of %s mm inside".formatted(bit.mm(), 2 * inner.mm()));
        }
    }

    /** {@return from the axle to the outermost that is drawn of the rim itself: its outside, or a mortise's bottom where that lies further} */
    public Length reach() {
        Length bottom = inner.plus(depth);
        return outer.filter(each -> each.compareTo(bottom) > 0).orElse(bottom);
    }

    /** {@return how wide and how high the drawing is} */
    public Length width() {
        return reach().plus(Length.ofMm(PAD_MM)).times(2);
    }

    /**
     * {@return whether any of the drawing's lines lie in that part of it: the middle of a large ring has none, and what stands in a corner
     * beyond the ring at most the end of a place's line}
     *
     * @param part in millimetres of the drawing
     */
    public boolean touches(Box part) {
        double middle = width().mm() / 2;
        double nearX = Math.max(0, Math.max(part.left() - middle, middle - part.right()));
        double nearY = Math.max(0, Math.max(part.top() - middle, middle - part.bottom()));
        double farX = Math.max(Math.abs(part.left() - middle), Math.abs(part.right() - middle));
        double farY = Math.max(Math.abs(part.top() - middle), Math.abs(part.bottom() - middle));
        double near = Math.hypot(nearX, nearY);
        double far = Math.hypot(farX, farY) + TOUCH_MM;
        boolean ring = near <= outermost() && far >= inner.mm();
        Box wider = part.grown(bit.mm() / 2);
        boolean lines = near <= reach().mm() + LINE_OUT_MM && far >= inner.mm() - LINE_OUT_MM;
        return ring || (lines && IntStream.range(0, places).anyMatch(place -> crosses(wider, angle(place))));
    }

    /** What goes round in full: the outside, or the inside alone where that is all that is known. */
    private double outermost() {
        return outer.orElse(inner).mm() + TOUCH_MM;
    }

    /** Whether something of a place's line lies in it; the part taken wider, so does its mortise, corners of the part counted a little further. */
    private boolean crosses(Box part, double angle) {
        double from = inner.mm() - LINE_OUT_MM;
        double to = reach().mm() + LINE_OUT_MM;
        return new Box.Stroke(x(angle, from, 0), y(angle, from, 0), x(angle, to, 0), y(angle, to, 0)).crosses(part);
    }

    private double x(double angle, double away, double aside) {
        return width().mm() / 2 + away * Math.cos(angle) - aside * Math.sin(angle);
    }

    private double y(double angle, double away, double aside) {
        return width().mm() / 2 - away * Math.sin(angle) - aside * Math.cos(angle);
    }

    private double angle(int place) {
        return 2 * Math.PI * place / places;
    }

    private Path line(Pen pen, double angle, double from, double to, double aside) {
        return Path.line(pen, x(angle, from, aside), y(angle, from, aside), x(angle, to, aside), y(angle, to, aside));
    }

    /** {@return the drawing without a word: numbers are set beside it by whoever cuts it into pages} */
    public Svg bare() {
        double middle = width().mm() / 2;
        List<Shape> out = new ArrayList<>();
        out.add(Path.circle(Pen.LINE, middle, middle, inner.mm()));
        outer.ifPresent(radius -> out.add(Path.circle(Pen.LINE, middle, middle, radius.mm())));
        joints.ifPresent(rim -> drawJoints(out, rim));
        for (int place = 0; place < places; place++) {
            drawPlace(out, angle(place));
        }
        return new Svg(width(), width(), "the rim from the front, place 1 at the right, the others anticlockwise", out);
    }

    private void drawJoints(List<Shape> out, SegmentedRim rim) {
        List<Path> lines = new ArrayList<>();
        for (int joint = 0; joint < rim.segments(); joint++) {
            double at = rim.jointAt().radians() + 2 * Math.PI * joint / rim.segments();
            lines.add(line(Pen.FINE, at, inner.mm(), reach().mm(), 0));
        }
        out.addAll(Path.together(Pen.FINE, lines));
    }

    private void drawPlace(List<Shape> out, double angle) {
        double half = bit.mm() / 2;
        double mouth = Math.sqrt(inner.mm() * inner.mm() - half * half);
        double bottom = inner.mm() + depth.mm();
        out.add(Path.through(
                Pen.DASHED,
                x(angle, mouth, half),
                y(angle, mouth, half),
                x(angle, bottom, half),
                y(angle, bottom, half),
                x(angle, bottom, -half),
                y(angle, bottom, -half),
                x(angle, mouth, -half),
                y(angle, mouth, -half)));
        out.add(line(Pen.ACCENT, angle, inner.mm() - LINE_OUT_MM, reach().mm() + LINE_OUT_MM, 0));
        out.add(Path.line(
                Pen.ACCENT,
                x(angle, inner.mm(), CROSS_MM),
                y(angle, inner.mm(), CROSS_MM),
                x(angle, inner.mm(), -CROSS_MM),
                y(angle, inner.mm(), -CROSS_MM)));
    }

    /** {@return each place's number, in the wood beside its mortise: wherever it stands, the ring is on the page too} */
    public List<TextLine> numbers() {
        List<TextLine> out = new ArrayList<>();
        double away = inner.plus(depth.times(0.5)).mm();
        double aside = bit.mm() / 2 + NUMBER_MM;
        double down = Lettering.STRONG.capHeightMm() / 2;
        for (int place = 0; place < places; place++) {
            double angle = angle(place);
            out.add(TextLine.centred(
                    Lettering.STRONG,
                    x(angle, away, aside),
                    y(angle, away, aside) + down,
                    Integer.toString(place + 1)));
        }
        return out;
    }

    /** {@return the drawing in one piece with the places' numbers} */
    public Svg whole() {
        Svg bare = bare();
        List<Shape> all =
                Stream.concat(bare.shapes().stream(), numbers().stream()).toList();
        return new Svg(bare.width(), bare.height(), bare.title(), all);
    }
}
