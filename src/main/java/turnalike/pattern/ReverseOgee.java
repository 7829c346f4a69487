package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.units.Length;

/**
 * An S of two quadratic halves, level at its middle and steep at its ends: r = r₁ + ½(r₂ − r₁)(1 − (1 − 2u)²) to the middle, then
 * r₂ − ½(r₂ − r₁)(1 − (2u − 1)²).
 *
 * @param length along the axis, above zero
 * @param from diameter at the start, above zero
 * @param to diameter at the end, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record ReverseOgee(Length length, Length from, Length to, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("reverse-ogee", ReverseOgee.class)
            .words("An S that is steep at both ends and level in its middle.")
            .shape("S, level at its middle")
            .length()
            .size("from", "Diameter, head end", ReverseOgee::from, Room::before)
            .size("to", "Diameter, tail end", ReverseOgee::to, Room::after)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("from"), sizes.size("to")),
                    sizes -> new ReverseOgee(sizes.length(), sizes.size("from"), sizes.size("to"), sizes.details()),
                    () -> new ReverseOgee(Length.ofMm(34), Length.ofMm(30), Length.ofMm(20), Details.NONE));

    public ReverseOgee {
        Faults.refuse(KIND.word(), faults(length, from, to));
    }

    /**
     * {@return why no reverse ogee can have these sizes, in the order of its keys; empty when one can} Each must be above zero; either
     * end may be the larger.
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
        return SCurve.levelAtMiddle(length, from.times(0.5), to.times(0.5));
    }

    @Override
    public List<Diameter> diameters() {
        return SizingPlaces.atEnds(length, from, to);
    }

    @Override
    public ReverseOgee mirrored() {
        return new ReverseOgee(length, to, from, details);
    }

    @Override
    public CutMethod way() {
        return CutMethod.with(Tool.SPINDLE_GOUGE, "cut the S from the thick line down to the thin one");
    }
}
