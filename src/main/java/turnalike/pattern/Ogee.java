package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.units.Length;

/**
 * An S of two quadratic halves, level at both ends: r = r₁ + (r₂ − r₁)2u² to the middle, then r₂ − (r₂ − r₁)2(1 − u)².
 *
 * @param length along the axis, above zero
 * @param from diameter at the start, above zero
 * @param to diameter at the end, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record Ogee(Length length, Length from, Length to, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("ogee", Ogee.class)
            .words("An S that is level at both ends, from one diameter to another.")
            .shape("S, level at both ends")
            .length()
            .size("from", "Diameter, head end", Ogee::from, Room::before)
            .size("to", "Diameter, tail end", Ogee::to, Room::after)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("from"), sizes.size("to")),
                    sizes -> new Ogee(sizes.length(), sizes.size("from"), sizes.size("to"), sizes.details()),
                    () -> new Ogee(Length.ofMm(34), Length.ofMm(30), Length.ofMm(20), Details.NONE));

    public Ogee {
        Faults.refuse(KIND.word(), faults(length, from, to));
    }

    /**
     * {@return why no ogee can have these sizes, in the order of its keys; empty when one can} Each must be above zero; either end may be
     * the larger.
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
        return SCurve.levelAtEnds(length, from.times(0.5), to.times(0.5));
    }

    @Override
    public List<Diameter> diameters() {
        return SizingPlaces.atEnds(length, from, to);
    }

    @Override
    public Ogee mirrored() {
        return new Ogee(length, to, from, details);
    }

    @Override
    public CutMethod way() {
        return CutMethod.with(Tool.SPINDLE_GOUGE, "cut the S from the thick line down to the thin one");
    }
}
