package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.units.Length;

/**
 * A stretch of one diameter.
 *
 * @param length along the axis, above zero
 * @param diameter finished, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record Cylinder(Length length, Length diameter, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("cylinder", Cylinder.class)
            .words("Straight and round, of one diameter.")
            .shape("one diameter")
            .length()
            .size("diameter", "Diameter", Cylinder::diameter, Room::before)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("diameter")),
                    sizes -> new Cylinder(sizes.length(), sizes.size("diameter"), sizes.details()),
                    () -> new Cylinder(Length.ofMm(34), Length.ofMm(22), Details.NONE));

    public Cylinder {
        Faults.refuse(KIND.word(), faults(length, diameter));
    }

    /**
     * {@return why no cylinder can have these sizes, in the order of its keys; empty when one can} Each must be above zero.
     *
     * @param length along the axis
     * @param diameter finished
     */
    public static List<Fault> faults(Length length, Length diameter) {
        return Faults.in(length).positive("diameter", diameter).list();
    }

    @Override
    public MemberKind kind() {
        return KIND;
    }

    @Override
    public List<Curve> curves(Ends ends) {
        return List.of(Line.level(length, diameter.times(0.5)));
    }

    @Override
    public List<Diameter> diameters() {
        return List.of(new Diameter("diameter", length.times(0.5), diameter));
    }

    @Override
    public Cylinder mirrored() {
        return this;
    }

    @Override
    public CutMethod way() {
        return CutMethod.withSkew("plane straight, from line to line");
    }
}
