package turnalike.drawing.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.units.Length;

/**
 * A seat from below at full size, its front at the top: both centre lines, every hole with the cross to prick and the sight line that its bit
 * leans along, outward where the arrow points. Laid on the underside and pricked through.
 *
 * @param holes where they are bored, at least one
 * @param bit diameter of the holes
 */
public record SeatTemplate(List<Hole> holes, Length bit) {
    private static final double PAD_MM = 34;
    private static final double CROSS_MM = 9;
    private static final double SIGHT_MM = 28;
    private static final double ARROW_MM = 3;
    private static final double UPRIGHT_MM = 1e-6;

    /**
     * One hole, from the middle of the seat.
     *
     * @param side to the right as the paper lies
     * @param front toward the front, up on the paper
     * @param outSide how far the foot stands further to the right than the hole; both zero for an upright leg
     * @param outFront how far further to the front
     */
    public record Hole(Length side, Length front, Length outSide, Length outFront) {}

    public SeatTemplate {
        holes = List.copyOf(holes);
        if (holes.isEmpty()) {
            throw new IllegalArgumentException("a seat without a hole needs no template");
        }
    }

    private double reach(boolean side) {
        return PAD_MM
                + bit.mm() / 2
                + holes.stream()
                        .mapToDouble(hole -> Math.abs((side ? hole.side() : hole.front()).mm()))
                        .max()
                        .orElse(0);
    }

    /** {@return where a hole's middle lies in the drawing, from its left edge} */
    public Length across(Hole hole) {
        return Length.ofMm(reach(true) + hole.side().mm());
    }

    /** {@return where it lies from the drawing's top} */
    public Length down(Hole hole) {
        return Length.ofMm(reach(false) - hole.front().mm());
    }

    /** {@return the drawing without a word: names are set beside the holes by whoever cuts it into pages} */
    public Svg bare() {
        List<Shape> out = new ArrayList<>();
        double width = 2 * reach(true);
        double height = 2 * reach(false);
        out.add(Path.line(Pen.DASHED, width / 2, 0, width / 2, height));
        out.add(Path.line(Pen.DASHED, 0, height / 2, width, height / 2));
        holes.forEach(hole -> draw(out, hole));
        return new Svg(Length.ofMm(width), Length.ofMm(height), "the seat from below, its front at the top", out);
    }

    /** {@return the drawing in one piece with the holes' numbers} */
    public Svg whole() {
        Svg bare = bare();
        List<Shape> out = new ArrayList<>(bare.shapes());
        out.add(TextLine.centred(Lettering.STRONG, reach(true) + 12, 5, "front"));
        names().forEach(name -> out.add(name.places().get(0)));
        return new Svg(bare.width(), bare.height(), bare.title(), out);
    }

    /**
     * {@return each hole's name, set where its sight line does not pass: at the end of the cross's right or left arm, or below or above it where
     * the leg leans sideways}
     */
    public List<PlacedName> names() {
        return IntStream.range(0, holes.size())
                .mapToObj(i -> name(holes.get(i), "hole " + (i + 1)))
                .toList();
    }

    private PlacedName name(Hole hole, String text) {
        double x = across(hole).mm();
        double y = down(hole).mm();
        double arm = arm();
        boolean sideways =
                Math.abs(hole.outSide().mm()) > 2 * Math.abs(hole.outFront().mm());
        List<TextLine> places = sideways
                ? List.of(
                        TextLine.centred(Lettering.STRONG, x, y + arm + 5, text),
                        TextLine.centred(Lettering.STRONG, x, y - arm - 2, text))
                : List.of(
                        TextLine.of(Lettering.STRONG, x + arm + 1.5, y + 1.2, text),
                        TextLine.ending(Lettering.STRONG, x - arm - 1.5, y + 1.2, text));
        return new PlacedName(x, y, places);
    }

    private double arm() {
        return bit.mm() / 2 + CROSS_MM;
    }

    /**
     * {@return whether any of a hole lies in that part of the drawing: its circle or sight line; the end of its cross or the seat's centre lines
     * alone are nothing to bore by} Exact.
     *
     * @param part in millimetres of the drawing
     */
    public boolean touches(Box part) {
        return holes.stream().anyMatch(hole -> {
            double x = across(hole).mm();
            double y = down(hole).mm();
            double asideX = Math.max(0, Math.max(part.left() - x, x - part.right()));
            double asideY = Math.max(0, Math.max(part.top() - y, y - part.bottom()));
            boolean circle = Math.hypot(asideX, asideY) <= bit.mm() / 2;
            double moved = Math.max(
                    UPRIGHT_MM, Math.hypot(hole.outSide().mm(), hole.outFront().mm()));
            double far = (bit.mm() / 2 + SIGHT_MM) / moved;
            double right = far * hole.outSide().mm();
            double up = far * hole.outFront().mm();
            return circle || new Box.Stroke(x - right, y + up, x + right, y - up).crosses(part);
        });
    }

    private void draw(List<Shape> out, Hole hole) {
        double x = across(hole).mm();
        double y = down(hole).mm();
        out.add(Path.circle(Pen.LINE, x, y, bit.mm() / 2));
        double arm = arm();
        out.add(Path.line(Pen.FINE, x - arm, y, x + arm, y));
        out.add(Path.line(Pen.FINE, x, y - arm, x, y + arm));
        double moved = Math.hypot(hole.outSide().mm(), hole.outFront().mm());
        if (moved > UPRIGHT_MM) {
            double right = hole.outSide().mm() / moved;
            double up = hole.outFront().mm() / moved;
            double far = bit.mm() / 2 + SIGHT_MM;
            out.add(Path.line(Pen.ACCENT, x - far * right, y + far * up, x + far * right, y - far * up));
            double back = far - ARROW_MM;
            out.add(Path.polygon(
                    Pen.ACCENT_FILL,
                    x + far * right,
                    y - far * up,
                    x + back * right - ARROW_MM / 2 * up,
                    y - back * up - ARROW_MM / 2 * right,
                    x + back * right + ARROW_MM / 2 * up,
                    y - back * up + ARROW_MM / 2 * right));
        }
    }
}
