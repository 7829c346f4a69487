package turnalike.drawing.gauge;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.piece.DrawnDiameters;
import turnalike.drawing.piece.LeaderLabels;
import turnalike.drawing.piece.PieceLabels;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.pattern.Mark;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * The marking stick, full size: a strip to cut along its upper edge and hold against the turning blank. Every mark is a line to that edge,
 * or a notch in it, a heavier one at a square's shoulder, which its label names; a short tick that stops before the edge says where a
 * diameter is taken, and is not pencilled. Below stand the mark's number, its place from the datum end and the diameter there.
 */
public final class MarkingStick {
    private static final double LEAST_PAD_MM = 14;
    private static final double EDGE_MM = 2;
    private static final double NAMES_MM = EDGE_MM + 6;
    private static final double TICK_FROM_MM = 10;
    private static final double LINE_TO_MM = 16;

    /** A notch takes a pencil's point: this wide at the edge, less where marks crowd, and as deep as half its width. */
    private static final double NOTCH_MM = 2.4;

    /** Of the room between two marks their notches take this much, so that a tooth is left between them. */
    private static final double NOTCH_SHARE = 0.8;

    private final Pattern pattern;
    private final UnitSystem units;
    private final Edge edge;
    private final double padMm;

    private MarkingStick(Pattern pattern, UnitSystem units, Edge edge, double padMm) {
        this.pattern = pattern;
        this.units = units;
        this.edge = edge;
        this.padMm = padMm;
    }

    /** How the marks meet the stick's edge. */
    public enum Edge {
        /** A line up to the edge, to pencil beside. */
        LINES,
        /** A notch in the edge that holds the pencil while the piece turns by hand. */
        NOTCHES
    }

    /** A stretch of the stick, from the datum end, with the name that stands in it. */
    public record Stretch(String name, Length from, Length to) {}

    /** Where the names' line lies in the drawing, from its top. */
    public Length nameLine() {
        return Length.ofMm(NAMES_MM);
    }

    /** With lines at the marks. */
    public static MarkingStick of(Pattern pattern, UnitSystem units) {
        return of(pattern, units, Edge.LINES);
    }

    public static MarkingStick of(Pattern pattern, UnitSystem units, Edge edge) {
        double needed = LeaderLabels.closestMm(new MarkingStick(pattern, units, edge, 0).flags());
        double pad = Math.max(LEAST_PAD_MM, (needed - pattern.length().mm()) / 2 + 2);
        return new MarkingStick(pattern, units, edge, pad);
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
        return DrawnDiameters.places(pattern);
    }

    /** The whole stick. */
    public Svg svg() {
        Svg bare = withoutNames();
        List<Shape> shapes = new ArrayList<>(bare.shapes());
        for (Stretch each : names()) {
            double middle = (x(each.from()) + x(each.to())) / 2;
            shapes.add(TextLine.centred(Lettering.SMALL, middle, NAMES_MM, each.name()));
        }
        return new Svg(bare.width(), bare.height(), bare.title(), shapes);
    }

    /** The stick to cut into strips, on each of which the names find their own places. */
    public Svg withoutNames() {
        double widthMm = 2 * padMm + pattern.length().mm();
        LeaderLabels flags = LeaderLabels.between(1, widthMm - 1, flags());
        double height = LINE_TO_MM + flags.depthMm() + 1;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(upperEdge(widthMm));
        shapes.add(Path.line(Pen.FINE, 0, height - 0.2, widthMm, height - 0.2));
        shapes.addAll(ticks());
        shapes.addAll(lines());
        shapes.addAll(flags.below(LINE_TO_MM));
        shapes.addAll(end(padMm - 2.2, "DATUM"));
        shapes.addAll(end(padMm + pattern.length().mm() + 2.2 + Lettering.NUMBER.capHeightMm(), "FAR END"));
        String title = "marking stick for %s, full size, %s long"
                .formatted(pattern.name(), pattern.length().format(units));
        return new Svg(Length.ofMm(widthMm), Length.ofMm(height), title, shapes);
    }

    /** Straight, or cut in at each mark; the notch's point is the mark. */
    private Path upperEdge(double widthMm) {
        if (edge == Edge.LINES) {
            return Path.line(Pen.CUT, 0, EDGE_MM, widthMm, EDGE_MM);
        }
        List<Mark> marks = pattern.marks();
        double[] xy = new double[6 * marks.size() + 4];
        xy[1] = EDGE_MM;
        int at = 2;
        for (int i = 0; i < marks.size(); i++) {
            double x = x(marks.get(i).place());
            double half = halfNotchMm(marks, i);
            for (double[] point : new double[][] {{x - half, 0}, {x, half}, {x + half, 0}}) {
                xy[at++] = point[0];
                xy[at++] = EDGE_MM + point[1];
            }
        }
        xy[at] = widthMm;
        xy[at + 1] = EDGE_MM;
        return Path.through(Pen.LINE, xy);
    }

    private static double halfNotchMm(List<Mark> marks, int mark) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int other : new int[] {mark - 1, mark + 1}) {
            if (other >= 0 && other < marks.size()) {
                nearest = Math.min(
                        nearest,
                        marks.get(other)
                                .place()
                                .minus(marks.get(mark).place())
                                .abs()
                                .mm());
            }
        }
        return Math.min(NOTCH_MM, NOTCH_SHARE * nearest) / 2;
    }

    private double x(Length place) {
        return padMm + place.mm();
    }

    private List<Shape> lines() {
        List<Shape> out = new ArrayList<>();
        for (Mark mark : pattern.marks()) {
            boolean heavy = mark.kind() == Mark.Kind.END || mark.kind() == Mark.Kind.SHOULDER;
            double x = x(mark.place());
            double from = edge == Edge.LINES ? EDGE_MM : EDGE_MM + NOTCH_MM / 2;
            out.add(Path.line(heavy ? Pen.LINE : Pen.FINE, x, from, x, LINE_TO_MM));
        }
        return out;
    }

    private List<Shape> ticks() {
        List<Shape> out = new ArrayList<>();
        for (DrawnDiameters.Size size : DrawnDiameters.of(pattern)) {
            double x = x(size.place());
            out.add(Path.line(Pen.ACCENT, x, TICK_FROM_MM, x, LINE_TO_MM));
        }
        return out;
    }

    private static List<Shape> end(double baselineMm, String text) {
        return List.of(TextLine.upwardsEnding(Lettering.NUMBER, baselineMm, EDGE_MM + 1.5, text));
    }

    /** Each member's name with its stretch, where there is room for it. */
    public List<Stretch> names() {
        List<Stretch> out = new ArrayList<>();
        for (PlacedMember placed : pattern.placed()) {
            Length room = placed.crests().stream()
                    .map(Member.Crest::place)
                    .findFirst()
                    .orElse(placed.member().length());
            String name = placed.member().title();
            if (Lettering.SMALL.widthMm(name) + 2 <= room.mm()) {
                out.add(new Stretch(name, placed.start(), placed.start().plus(room)));
            }
        }
        return out;
    }

    private List<LeaderLabels.Flag> flags() {
        return PieceLabels.of(pattern, units, padMm);
    }
}
