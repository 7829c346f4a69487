package turnalike.pattern;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.MonotoneCubic;
import turnalike.outline.Polynomial;
import turnalike.units.Length;
import turnalike.units.LengthMessage;

/**
 * A shape known by measured diameters, joined by a curve that never overshoots them (see {@link MonotoneCubic} for which).
 *
 * @param points from place zero on, the places rising strictly; two or more
 * @param details its own name, and whether it is turned by eye
 */
public record FreeCurve(List<Point> points, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("curve", FreeCurve.class)
            .words("A curve of your own through points: place from its start, and diameter there.")
            .shape("smooth through the points without overshoot")
            .points(
                    MemberKey.needed("points", MemberKey.Type.POINTS, "Place ; diameter, a pair a line")
                            .noted("[[x, diameter], …] from x = 0, x rising"),
                    FreeCurve::points,
                    FreeCurve::waist)
            .made(
                    sizes -> faults(sizes.points()),
                    sizes -> new FreeCurve(sizes.points(), sizes.details()),
                    () -> new FreeCurve(
                            List.of(
                                    new Point(Length.ZERO, Length.ofMm(30)),
                                    new Point(Length.ofMm(17), Length.ofMm(25.5)),
                                    new Point(Length.ofMm(34), Length.ofMm(30))),
                            Details.NONE));

    /**
     * A measured diameter and where it was measured.
     *
     * @param place from the member's start; zero for the first
     * @param diameter there, finished; above zero
     */
    public record Point(Length place, Length diameter) {}

    public FreeCurve {
        points = List.copyOf(points);
        Faults.refuse(KIND.word(), faults(points));
    }

    /**
     * {@return why no curve can go through these points, point by point; empty when one can} There must be two at least, the first at
     * place zero, each beyond the one before it and with a diameter above zero.
     *
     * @param points in the order given
     */
    public static List<Fault> faults(List<Point> points) {
        Faults faults = new Faults()
                .when(points.size() < 2, "points", LengthMessage.of("are %s", points.size()), "give two points or more")
                .when(
                        !points.isEmpty() && points.get(0).place().mm() != 0,
                        "points",
                        LengthMessage.of("do not begin at place 0"),
                        "measure places from the member's start");
        for (int i = 0; i < points.size(); i++) {
            faults.positive("point %d diameter".formatted(i + 1), points.get(i).diameter());
            boolean falls = i > 0
                    && points.get(i).place().minus(points.get(i - 1).place()).mm() < Faults.LEAST_MM;
            faults.when(
                    falls,
                    "point %d".formatted(i + 1),
                    LengthMessage.of("does not lie beyond the point before it"),
                    "give the points in order of place");
        }
        return faults.list();
    }

    private static List<Point> waist(Room room) {
        return List.of(
                new Point(Length.ZERO, room.before()),
                new Point(room.length().times(0.5), room.tidy(room.smaller().times(0.85))),
                new Point(room.length(), room.after()));
    }

    @Override
    public Length length() {
        return points.get(points.size() - 1).place();
    }

    @Override
    public MemberKind kind() {
        return KIND;
    }

    @Override
    public List<Curve> curves(Ends ends) {
        return List.copyOf(pieces());
    }

    /** One cubic between each two neighbours. */
    List<Polynomial> pieces() {
        return MonotoneCubic.through(points.stream()
                .map(point ->
                        new MonotoneCubic.Point(point.place(), point.diameter().times(0.5)))
                .toList());
    }

    /** Both ends and wherever the curve turns from rising to falling or back. */
    @Override
    public List<Diameter> diameters() {
        List<Diameter> out = new ArrayList<>();
        int last = points.size() - 1;
        for (int i = 0; i <= last; i++) {
            if (i == 0 || i == last || turnsAt(i)) {
                out.add(new Diameter(
                        "point " + (i + 1), points.get(i).place(), points.get(i).diameter()));
            }
        }
        return out;
    }

    @Override
    public Sizing sizing(Length within, CurveRules rules) {
        return CurveSizing.of(this, within, rules);
    }

    private boolean turnsAt(int i) {
        double before =
                points.get(i).diameter().minus(points.get(i - 1).diameter()).mm();
        double after =
                points.get(i + 1).diameter().minus(points.get(i).diameter()).mm();
        return before * after <= 0 && (before != 0 || after != 0);
    }

    @Override
    public FreeCurve mirrored() {
        List<Point> out = new ArrayList<>();
        for (int i = points.size() - 1; i >= 0; i--) {
            out.add(new Point(
                    length().minus(points.get(i).place()), points.get(i).diameter()));
        }
        return new FreeCurve(out, details);
    }

    @Override
    public CutMethod way() {
        return CutMethod.with(Tool.SPINDLE_GOUGE, "cut downhill along the curve, held to the template");
    }
}
