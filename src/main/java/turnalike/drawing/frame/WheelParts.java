package turnalike.drawing.frame;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;
import turnalike.match.Seat;
import turnalike.units.Angle;
import turnalike.units.Length;

/** The parts of a wheel's picture, its middle at the origin. */
final class WheelParts {
    private static final double LEAST_HUB_MM = 8;
    private static final double LARGEST_HUB_SHARE = 0.45;
    private static final double MARK_MM = 1.8;

    /** Beyond so many places a spoke is a stub: whole lines would run together at the hub. */
    private static final int MOST_LINES = 120;

    private final double rimMm;
    private final double hubMm;
    private final double hubTrueMm;
    private final double outerTrueMm;
    private final int places;

    /** A place on the paper. */
    record Spot(double x, double y) {}

    WheelParts(double rimMm, Length hubRadius, List<Seat> seats) {
        this.rimMm = rimMm;
        this.places = seats.size();
        this.hubTrueMm = hubRadius.mm();
        // A spoke's own length is not known here; its balance point lies near its middle.
        double farthest = seats.stream()
                .mapToDouble(seat -> seat.piece().reach().mm())
                .max()
                .orElse(0);
        this.outerTrueMm = Math.max(2 * farthest - hubTrueMm, hubTrueMm + 1);
        double toScale = rimMm * hubTrueMm / outerTrueMm;
        this.hubMm = Math.max(Math.min(LEAST_HUB_MM, rimMm * 0.4), Math.min(rimMm * LARGEST_HUB_SHARE, toScale));
    }

    private static Spot at(Angle angle, double awayMm, double besideMm) {
        double cos = Math.cos(angle.radians());
        double sin = Math.sin(angle.radians());
        return new Spot(awayMm * cos - besideMm * sin, -awayMm * sin - besideMm * cos);
    }

    /** Where something that far from the axle stands: hub and rim are fixed, between them in proportion. */
    Spot place(Angle angle, Length radius) {
        double share = (radius.mm() - hubTrueMm) / (outerTrueMm - hubTrueMm);
        double away = share < 0 ? hubMm * radius.mm() / hubTrueMm : hubMm + Math.min(1, share) * (rimMm - hubMm);
        return at(angle, away, 0);
    }

    Path rim() {
        return Path.circle(Pen.LINE, 0, 0, rimMm);
    }

    /** A spoke; the first is told by a dark core. */
    List<Shape> body(Angle angle, boolean first) {
        double room = 2 * Math.PI * hubMm / places;
        double half = Math.min(1.7, room * 0.36);
        Spot a = at(angle, hubMm, half);
        Spot b = at(angle, rimMm, half * 0.7);
        Spot c = at(angle, rimMm, -half * 0.7);
        Spot d = at(angle, hubMm, -half);
        double[] outline = {a.x(), a.y(), b.x(), b.y(), c.x(), c.y(), d.x(), d.y()};
        List<Shape> out = new ArrayList<>();
        out.add(Path.polygon(Pen.WOOD, outline));
        out.add(Path.polygon(Pen.FINE, outline));
        if (first) {
            out.add(stroke(angle, true));
        }
        return out;
    }

    /** A spoke as a line; the first is a heavy one. */
    Path stroke(Angle angle, boolean first) {
        Spot from = at(angle, first || places <= MOST_LINES ? hubMm : rimMm * 0.9, 0);
        Spot to = at(angle, rimMm, 0);
        return Path.line(first ? Pen.HEAVY : Pen.FINE, from.x(), from.y(), to.x(), to.y());
    }

    /** A place at the rim: a ring round its number, or a dot. */
    List<Shape> node(Angle angle, String number, boolean first) {
        Spot spot = at(angle, rimMm, 0);
        List<Shape> out = new ArrayList<>();
        if (number.isEmpty()) {
            double dot = Math.min(0.8, Math.PI * rimMm / places * 0.5);
            out.add(Path.circle(Pen.INK_FILL, spot.x(), spot.y(), first ? dot * 1.6 : dot));
            return out;
        }
        if (first) {
            out.add(Path.circle(Pen.INK_FILL, spot.x(), spot.y(), WheelLabels.NODE_MM + WheelLabels.DARK_MM));
        }
        out.add(Path.circle(Pen.PAPER, spot.x(), spot.y(), WheelLabels.NODE_MM));
        double baseline = spot.y() + Lettering.NUMBER.capHeightMm() / 2;
        out.add(TextLine.centred(Lettering.NUMBER, spot.x(), baseline, number));
        return out;
    }

    /** The hub, the axle, and which way round places are counted. */
    List<Shape> hub() {
        List<Shape> out = new ArrayList<>();
        out.add(Path.circle(Pen.PAPER, 0, 0, hubMm));
        out.add(Path.circle(Pen.INK_FILL, 0, 0, 0.9));
        double turn = hubMm * 0.62;
        Spot from = at(Angle.ofDegrees(10), turn, 0);
        Spot to = at(Angle.ofDegrees(115), turn, 0);
        out.add(new Path(
                Pen.LINE, List.of(new Path.Move(from.x(), from.y()), new Path.Arc(turn, turn, false, to.x(), to.y()))));
        out.add(head(Pen.INK_FILL, to, Angle.ofDegrees(115 + 90), 1.6));
        return out;
    }

    /** The arrow to the heavy side. */
    List<Shape> arrow(Angle angle) {
        double tip = hubMm + (rimMm - hubMm) * 0.72;
        Spot from = at(angle, hubMm + 0.5, 0);
        Spot to = at(angle, tip - 4, 0);
        List<Shape> out = new ArrayList<>();
        out.add(Path.line(Pen.ACCENT, from.x(), from.y(), to.x(), to.y()));
        out.add(head(Pen.ACCENT_FILL, at(angle, tip - 4.5, 0), angle, 5));
        return out;
    }

    /** The first place among words, on a baseline. */
    static List<Shape> smallNode() {
        return List.of(Path.circle(Pen.INK_FILL, 2.2, -1.2, 1.9), Path.circle(Pen.PAPER, 2.2, -1.2, 1.2));
    }

    /** The arrow to the heavy side among words. */
    static List<Shape> smallArrow() {
        return List.of(
                Path.line(Pen.ACCENT, 0.4, -1.2, 3, -1.2),
                head(Pen.ACCENT_FILL, new Spot(2.6, -1.2), Angle.ofDegrees(0), 2.6));
    }

    private static Path head(Pen pen, Spot base, Angle angle, double lengthMm) {
        Spot tip = at(angle, lengthMm, 0);
        Spot left = at(angle, 0, lengthMm * 0.42);
        Spot right = at(angle, 0, -lengthMm * 0.42);
        return Path.polygon(
                pen,
                base.x() + tip.x(),
                base.y() + tip.y(),
                base.x() + left.x(),
                base.y() + left.y(),
                base.x() + right.x(),
                base.y() + right.y());
    }

    /** Where weight is added: a square with a plus. */
    static List<Shape> addMark(Spot at) {
        List<Shape> out = new ArrayList<>(takeMark(at));
        out.add(Path.line(Pen.ACCENT, at.x(), at.y() - 1.2, at.x(), at.y() + 1.2));
        return out;
    }

    /** Where it may be taken off instead: a square with a minus. */
    static List<Shape> takeMark(Spot at) {
        return List.of(
                Path.rectangle(Pen.PAPER, at.x() - MARK_MM, at.y() - MARK_MM, 2 * MARK_MM, 2 * MARK_MM),
                Path.line(Pen.ACCENT, at.x() - 1.2, at.y(), at.x() + 1.2, at.y()));
    }
}
