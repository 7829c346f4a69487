package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.units.Length;

/**
 * A quarter ellipse, hollow: level at its smaller end, upright at its larger one. With s the smaller radius, b the larger and w the
 * distance from the smaller end over the length, r = b − (b − s)√(1 − w²).
 *
 * @param length along the axis, above zero
 * @param from diameter at the start, above zero
 * @param to diameter at the end, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record HalfCove(Length length, Length from, Length to, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("half-cove", HalfCove.class)
            .words("A quarter round, hollow, from one diameter to another.")
            .shape("quarter ellipse, hollow: level at the smaller end")
            .length()
            .size("from", "Diameter, head end", HalfCove::from, Room::before)
            .size("to", "Diameter, tail end", HalfCove::to, Room::after)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("from"), sizes.size("to")),
                    sizes -> new HalfCove(sizes.length(), sizes.size("from"), sizes.size("to"), sizes.details()),
                    () -> new HalfCove(Length.ofMm(34), Length.ofMm(30), Length.ofMm(20), Details.NONE));

    public HalfCove {
        Faults.refuse(KIND.word(), faults(length, from, to));
    }

    /**
     * {@return why no half cove can have these sizes, in the order of its keys; empty when one can} Each must be above zero; either end
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
        Length larger = (falls ? from : to).times(0.5);
        Length depth = from.minus(to).abs().times(-0.5);
        return List.of(new EllipseArc(length, falls ? length : Length.ZERO, length, larger, depth));
    }

    @Override
    public List<Diameter> diameters() {
        return SizingPlaces.atEnds(length, from, to);
    }

    @Override
    public HalfCove mirrored() {
        return new HalfCove(length, to, from, details);
    }

    @Override
    public CutMethod way() {
        return CutMethod.with(Tool.SPINDLE_GOUGE, "scoop from the thick line down to the thin one");
    }
}
