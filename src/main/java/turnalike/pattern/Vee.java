package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.units.Length;

/**
 * A cut straight down to a point halfway and straight up again.
 *
 * @param length along the axis, above zero
 * @param rim diameter at both edges, above the bottom
 * @param bottom diameter at the point, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record Vee(Length length, Length rim, Length bottom, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("vee", Vee.class)
            .words("A cut straight down to a bottom diameter and up again.")
            .shape("straight down to the middle and up")
            .narrow()
            .length()
            .size("rim", "Diameter at its rim", Vee::rim, Room::larger)
            .size("bottom", "Diameter at its bottom", Vee::bottom, Room::sunk)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("rim"), sizes.size("bottom")),
                    sizes -> new Vee(sizes.length(), sizes.size("rim"), sizes.size("bottom"), sizes.details()),
                    () -> new Vee(Length.ofMm(34), Length.ofMm(30), Length.ofMm(22.5), Details.NONE));

    public Vee {
        Faults.refuse(KIND.word(), faults(length, rim, bottom));
    }

    /**
     * {@return why no vee can have these sizes, in the order of its keys; empty when one can} Each must be above zero, and the rim larger
     * than the bottom.
     *
     * @param length along the axis
     * @param rim diameter at both edges
     * @param bottom diameter at the point
     */
    public static List<Fault> faults(Length length, Length rim, Length bottom) {
        return Faults.in(length)
                .positive("rim", rim)
                .positive("bottom", bottom)
                .larger("rim", rim, "bottom", bottom)
                .list();
    }

    @Override
    public MemberKind kind() {
        return KIND;
    }

    @Override
    public List<Curve> curves(Ends ends) {
        Length half = length.times(0.5);
        return List.of(
                new Line(half, rim.times(0.5), bottom.times(0.5)), new Line(half, bottom.times(0.5), rim.times(0.5)));
    }

    @Override
    public List<Diameter> diameters() {
        return SizingPlaces.edgesAndMiddle(length, "rim", rim, "bottom", bottom);
    }

    @Override
    public List<Crest> crests() {
        return List.of(new Crest(length.times(0.5), "bottom"));
    }

    @Override
    public Vee mirrored() {
        return this;
    }

    @Override
    public CutMethod way() {
        return CutMethod.withSkew("long point in the middle, then a light cut down each wall");
    }

    @Override
    public List<String> unwise(Surroundings around) {
        Length depth = rim.minus(bottom).times(0.5);
        double most = around.rules().veeDepth();
        return ShapeRules.above(depth, most, length)
                ? List.of(
                        "is %s deep but only %s wide: %s a skew's point binds between the walls; widen it or make it shallower"
                                .formatted(around.print(depth), around.print(length), ShapeRules.past("deeper", most)))
                : List.of();
    }
}
