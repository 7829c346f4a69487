package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.units.Length;

/**
 * A short, flat-topped step of one diameter that sets off a bead or a cove.
 *
 * @param length along the axis, above zero
 * @param diameter finished, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record Fillet(Length length, Length diameter, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("fillet", Fillet.class)
            .words("A short straight step beside a bead or cove, of one diameter.")
            .shape("one diameter")
            .narrow()
            .length()
            .size("diameter", "Diameter", Fillet::diameter, Room::before)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("diameter")),
                    sizes -> new Fillet(sizes.length(), sizes.size("diameter"), sizes.details()),
                    () -> new Fillet(Length.ofMm(5), Length.ofMm(38), Details.NONE));

    public Fillet {
        Faults.refuse(KIND.word(), faults(length, diameter));
    }

    /**
     * {@return why no fillet can have these sizes, in the order of its keys; empty when one can} Each must be above zero.
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
    public Fillet mirrored() {
        return this;
    }

    @Override
    public CutMethod way() {
        return CutMethod.with(Tool.PARTING_TOOL, "cut the flat between its lines");
    }
}
