package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.units.Length;

/**
 * A straight cone from one diameter to another.
 *
 * @param length along the axis, above zero
 * @param from diameter at the start, above zero
 * @param to diameter at the end, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record Taper(Length length, Length from, Length to, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("taper", Taper.class)
            .words("Straight from one diameter to another.")
            .shape("straight")
            .length()
            .size("from", "Diameter, head end", Taper::from, Room::before)
            .size("to", "Diameter, tail end", Taper::to, Room::after)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("from"), sizes.size("to")),
                    sizes -> new Taper(sizes.length(), sizes.size("from"), sizes.size("to"), sizes.details()),
                    () -> new Taper(Length.ofMm(34), Length.ofMm(30), Length.ofMm(20), Details.NONE));

    public Taper {
        Faults.refuse(KIND.word(), faults(length, from, to));
    }

    /**
     * {@return why no taper can have these sizes, in the order of its keys; empty when one can} Each must be above zero; either end may
     * be the larger.
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
        return List.of(new Line(length, from.times(0.5), to.times(0.5)));
    }

    @Override
    public List<Diameter> diameters() {
        return SizingPlaces.atEnds(length, from, to);
    }

    @Override
    public Taper mirrored() {
        return new Taper(length, to, from, details);
    }

    @Override
    public CutMethod way() {
        return CutMethod.withSkew("plane the taper, thick end to thin");
    }
}
