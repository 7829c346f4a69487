package turnalike.drawing.gauge;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * A strip of paper to wrap round a hub, or lay in a rim, full size: a line for every place with its number and a cross to prick its middle at;
 * with two rows each place's cross stands on its own row. Both ends are the same line: where they meet, the strip is as long as the work is
 * round.
 *
 * @param what it is wrapped round
 * @param length once round
 * @param places how many
 * @param stagger from one row to the other; zero for one row
 */
public record PlaceStrip(String what, Length length, int places, Length stagger) {
    private static final double PAD_MM = 14;
    private static final double TOP_MM = 8;
    private static final double ROOM_MM = 12;
    private static final double CROSS_MM = 3;

    /** {@return where the first line lies in the drawing, from its left edge} */
    public Length datum() {
        return Length.ofMm(PAD_MM);
    }

    /** {@return how wide the strip is} */
    public Length width() {
        return Length.ofMm(2 * ROOM_MM).plus(stagger);
    }

    /** {@return where its upper edge lies in the drawing, from its top} */
    public Length edge() {
        return Length.ofMm(TOP_MM);
    }

    /** {@return the places, from the first line, and the last line, which is the first again} */
    public List<Length> listPlaces() {
        List<Length> out = new ArrayList<>();
        for (int i = 0; i <= places; i++) {
            out.add(length.times((double) i / places));
        }
        return out;
    }

    /**
     * {@return the whole strip}
     *
     * @param units in which its length is told
     */
    public Svg svg(UnitSystem units) {
        double width = 2 * PAD_MM + length.mm();
        double bottom = TOP_MM + width().mm();
        List<Shape> out = new ArrayList<>();
        out.add(Path.line(Pen.CUT, 0, TOP_MM, width, TOP_MM));
        out.add(Path.line(Pen.CUT, 0, bottom, width, bottom));
        double first = TOP_MM + ROOM_MM;
        out.add(Path.line(Pen.DASHED, PAD_MM, first, PAD_MM + length.mm(), first));
        if (stagger.isPositive()) {
            double second = first + stagger.mm();
            out.add(Path.line(Pen.DASHED, PAD_MM, second, PAD_MM + length.mm(), second));
        }
        List<Length> lines = listPlaces();
        for (int i = 0; i <= places; i++) {
            double x = PAD_MM + lines.get(i).mm();
            boolean end = i == 0 || i == places;
            double row = first + (i % 2 == 1 ? stagger.mm() : 0);
            out.add(Path.line(end ? Pen.LINE : Pen.FINE, x, TOP_MM, x, bottom));
            out.add(Path.line(Pen.ACCENT, x - CROSS_MM, row, x + CROSS_MM, row));
            out.add(Path.line(Pen.ACCENT, x, row - CROSS_MM, x, row + CROSS_MM));
            String number = Integer.toString(i % places + 1);
            out.add(TextLine.of(Lettering.NUMBER, x + 1, bottom - 1.5, number));
        }
        String title =
                "strip round the %s, full size, %s once round, %d places".formatted(what, length.format(units), places);
        return new Svg(Length.ofMm(width), Length.ofMm(bottom + 2), title, out);
    }
}
