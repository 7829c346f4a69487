package turnalike.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.pattern.Placed;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * The marking stick, full size: a strip to cut along its upper edge and hold against the turning blank. Every mark is a line to that edge;
 * a short tick that stops before the edge says where a diameter is taken, and is not pencilled. Below stand the mark's number, its place
 * from the datum end and the diameter there.
 */
public final class MarkingStick {
    private static final double LEAST_PAD_MM = 14;
    private static final double EDGE_MM = 2;
    private static final double TICK_FROM_MM = 10;
    private static final double LINE_TO_MM = 16;

    /** A diameter this near a mark is written with it. */
    private static final double SAME_MM = 0.01;

    private final Pattern pattern;
    private final UnitSystem units;
    private final double padMm;

    private MarkingStick(Pattern pattern, UnitSystem units, double padMm) {
        this.pattern = pattern;
        this.units = units;
        this.padMm = padMm;
    }

    public static MarkingStick of(Pattern pattern, UnitSystem units) {
        double needed = Flags.closestMm(new MarkingStick(pattern, units, 0).flags());
        double pad = Math.max(LEAST_PAD_MM, (needed - pattern.length().mm()) / 2 + 2);
        return new MarkingStick(pattern, units, pad);
    }

    /** Where the datum end lies in the drawing, from its left edge. */
    public Length datum() {
        return Length.ofMm(padMm);
    }

    /** Where the upper edge lies in the drawing, from its top: cut here. */
    public Length edge() {
        return Length.ofMm(EDGE_MM);
    }

    /** Every place along the piece where the stick has a line or a tick, from the datum end. */
    public List<Length> listPlaces() {
        List<Length> out = new ArrayList<>();
        pattern.marks().forEach(mark -> out.add(mark.place()));
        Sizes.of(pattern).forEach(size -> out.add(size.place()));
        return out;
    }

    public Svg svg() {
        double widthMm = 2 * padMm + pattern.length().mm();
        Flags flags = Flags.between(1, widthMm - 1, flags());
        double height = LINE_TO_MM + flags.depthMm() + 1;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Path.line(Pen.CUT, 0, EDGE_MM, widthMm, EDGE_MM));
        shapes.add(Path.line(Pen.FINE, 0, height - 0.2, widthMm, height - 0.2));
        shapes.addAll(names());
        shapes.addAll(ticks());
        shapes.addAll(lines());
        shapes.addAll(flags.below(LINE_TO_MM));
        shapes.addAll(end(padMm - 2.2, "DATUM"));
        shapes.addAll(end(padMm + pattern.length().mm() + 2.2 + Lettering.NUMBER.capHeightMm(), "FAR END"));
        String title = "marking stick for %s, full size, %s long"
                .formatted(pattern.name(), pattern.length().format(units));
        return new Svg(Length.ofMm(widthMm), Length.ofMm(height), title, shapes);
    }

    private double x(Length place) {
        return padMm + place.mm();
    }

    private List<Shape> lines() {
        List<Shape> out = new ArrayList<>();
        for (Mark mark : pattern.marks()) {
            boolean end = mark.kind() == Mark.Kind.END;
            double x = x(mark.place());
            out.add(Path.line(end ? Pen.LINE : Pen.FINE, x, EDGE_MM, x, LINE_TO_MM));
        }
        return out;
    }

    private List<Shape> ticks() {
        List<Shape> out = new ArrayList<>();
        for (Sizes.Size size : Sizes.of(pattern)) {
            double x = x(size.place());
            out.add(Path.line(Pen.ACCENT, x, TICK_FROM_MM, x, LINE_TO_MM));
        }
        return out;
    }

    private static List<Shape> end(double baselineMm, String text) {
        return List.of(Words.upwardsEnding(Lettering.NUMBER, baselineMm, EDGE_MM + 1.5, text));
    }

    /** Each member's name above its stretch, where there is room for it. */
    private List<Shape> names() {
        List<Shape> out = new ArrayList<>();
        for (Placed placed : pattern.placed()) {
            boolean marked = !placed.member().details().byEye();
            Length room = placed.member()
                    .crest()
                    .filter(crest -> marked)
                    .orElse(placed.member().length());
            String name = placed.member().title();
            if (Lettering.SMALL.widthMm(name) + 2 <= room.mm()) {
                double middle = x(placed.start()) + room.mm() / 2;
                out.add(Words.centred(Lettering.SMALL, middle, EDGE_MM + 6, name));
            }
        }
        return out;
    }

    private List<Flags.Flag> flags() {
        List<Mark> marks = pattern.marks();
        List<Sizes.Size> sizes = Sizes.of(pattern);
        List<Flags.Flag> out = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i);
            while (next < sizes.size()
                    && sizes.get(next).place().mm() < mark.place().mm() - SAME_MM) {
                out.add(sizeAlone(sizes.get(next++), "Ø "));
            }
            boolean here = next < sizes.size() && isAt(sizes.get(next), mark);
            out.add(atMark(i, mark, here ? diameter(sizes.get(next++)) + "   " : ""));
            while (next < sizes.size() && isAt(sizes.get(next), mark)) {
                out.add(sizeAlone(sizes.get(next++), "→ Ø ")); // the far side of a shoulder
            }
        }
        while (next < sizes.size()) {
            out.add(sizeAlone(sizes.get(next++), "Ø "));
        }
        return out;
    }

    private static boolean isAt(Sizes.Size size, Mark mark) {
        return size.place().minus(mark.place()).abs().mm() <= SAME_MM;
    }

    private String diameter(Sizes.Size size) {
        return "Ø " + Figures.bare(size.diameter(), units);
    }

    private Flags.Flag sizeAlone(Sizes.Size size, String before) {
        return new Flags.Flag(
                x(size.place()),
                "",
                before + Figures.bare(size.diameter(), units),
                "diameter " + Figures.both(size.diameter(), units),
                Map.of("class", "size"));
    }

    /** The label reads upwards, so that what stands last is nearest the mark. */
    private Flags.Flag atMark(int number, Mark mark, String diameter) {
        return new Flags.Flag(
                x(mark.place()),
                Integer.toString(number),
                diameter + Figures.bare(mark.place(), units),
                "mark %d: %s, %s".formatted(number, mark.label(), Figures.both(mark.place(), units)),
                Map.of("class", "mark", "data-mark", Integer.toString(number)));
    }
}
