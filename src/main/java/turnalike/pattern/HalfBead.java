package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.units.Length;

/**
 * A quarter ellipse, bulging: level at its larger end, upright at its smaller one. With s the smaller radius, b the larger and v the
 * distance from the larger end over the length, r = s + (b − s)√(1 − v²).
 *
 * @param length along the axis, above zero
 * @param from diameter at the start, above zero
 * @param to diameter at the end, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record HalfBead(Length length, Length from, Length to, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("half-bead", HalfBead.class)
            .words("A quarter round, convex, from one diameter to another.")
            .shape("quarter ellipse, bulging: level at the larger end")
            .length()
            .size("from", "Diameter, head end", HalfBead::from, Room::before)
            .size("to", "Diameter, tail end", HalfBead::to, Room::after)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("from"), sizes.size("to")),
                    sizes -> new HalfBead(sizes.length(), sizes.size("from"), sizes.size("to"), sizes.details()),
                    () -> new HalfBead(Length.ofMm(34), Length.ofMm(30), Length.ofMm(20), Details.NONE));

    public HalfBead {
        Faults.refuse(KIND.word(), faults(length, from, to));
    }

    /**
     * {@return why no half bead can have these sizes, in the order of its keys; empty when one can} Each must be above zero; either end
     * may be the larger.
     *
     * @param length along the axis
     * @param from diameter at the start
     * @param to diameter at the end
     */
    public static List<Fault> faults(Length length, Length from, Length to) {
        return Faults.in(length).positive("from", from).positive("to", to).list();
    }

    @Override
    public MemberKind kind() {
        return KIND;
    }

    @Override
    public List<Curve> curves(Ends ends) {
        boolean falls = from.compareTo(to) >= 0;
        Length smaller = (falls ? to : from).times(0.5);
        Length rise = from.minus(to).abs().times(0.5);
        return List.of(new EllipseArc(length, falls ? Length.ZERO : length, length, smaller, rise));
    }

    @Override
    public List<Diameter> diameters() {
        return SizingPlaces.atEnds(length, from, to);
    }

    @Override
    public HalfBead mirrored() {
        return new HalfBead(length, to, from, details);
    }

    @Override
    public CutMethod way() {
        return CutMethod.withSkew("roll from the thick line down to the thin one");
    }

    @Override
    public boolean isRolled() {
        return true;
    }
}
