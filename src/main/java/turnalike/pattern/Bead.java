package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.units.Length;

/**
 * Half an ellipse standing on its root: r = root/2 + ½(crown − root)√(1 − (2u − 1)²).
 *
 * @param length along the axis, above zero
 * @param root diameter at both edges, above zero
 * @param crown diameter at the middle, above the root
 * @param details its own name, and whether it is turned by eye
 */
public record Bead(Length length, Length root, Length crown, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("bead", Bead.class)
            .words("A round swelling: the diameter at its foot and at its crown.")
            .shape("half an ellipse up from the root")
            .length()
            .size("root", "Diameter at its foot", Bead::root, Room::foot)
            .size("crown", "Diameter at its crown", Bead::crown, Room::risen)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("root"), sizes.size("crown")),
                    sizes -> new Bead(sizes.length(), sizes.size("root"), sizes.size("crown"), sizes.details()),
                    () -> new Bead(Length.ofMm(34), Length.ofMm(30), Length.ofMm(39), Details.NONE));

    public Bead {
        Faults.refuse(KIND.word(), faults(length, root, crown));
    }

    /**
     * {@return why no bead can have these sizes, in the order of its keys; empty when one can} Each must be above zero, and the crown
     * larger than the root.
     *
     * @param length along the axis
     * @param root diameter at both edges
     * @param crown diameter at the middle
     */
    public static List<Fault> faults(Length length, Length root, Length crown) {
        return Faults.in(length)
                .positive("root", root)
                .positive("crown", crown)
                .larger("crown", crown, "root", root)
                .list();
    }

    @Override
    public MemberKind kind() {
        return KIND;
    }

    @Override
    public List<Curve> curves(Ends ends) {
        Length half = length.times(0.5);
        Length rise = crown.minus(root).times(0.5);
        return List.of(new EllipseArc(length, half, half, root.times(0.5), rise));
    }

    @Override
    public List<Diameter> diameters() {
        return SizingPlaces.edgesAndMiddle(length, "root", root, "crown", crown);
    }

    @Override
    public List<Crest> crests() {
        return List.of(new Crest(length.times(0.5), "crest"));
    }

    @Override
    public Bead mirrored() {
        return this;
    }

    @Override
    public List<String> unwise(Surroundings around) {
        Length rise = crown.minus(root).times(0.5);
        double most = around.rules().beadRise();
        return ShapeRules.above(rise, most, length)
                ? List.of("stands %s high on a width of %s, %s: short grain breaks off; make it wider or lower"
                        .formatted(
                                around.print(rise),
                                around.print(length),
                                most == 1 ? "higher than it is wide" : ShapeRules.past("higher", most)))
                : List.of();
    }

    @Override
    public CutMethod way() {
        return CutMethod.withSkew("roll from the crown down to each line");
    }

    @Override
    public boolean isRolled() {
        return true;
    }
}
