package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.EllipseArc;
import turnalike.units.Length;

/**
 * Half an ellipse sunk below its rim: r = rim/2 − ½(rim − bottom)√(1 − (2u − 1)²).
 *
 * @param length along the axis, above zero
 * @param rim diameter at both edges, above the bottom
 * @param bottom diameter at the middle, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record Cove(Length length, Length rim, Length bottom, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("cove", Cove.class)
            .words("A round hollow: the diameter at its rim and at its bottom.")
            .shape("half an ellipse down from the rim")
            .length()
            .size("rim", "Diameter at its rim", Cove::rim, Room::larger)
            .size("bottom", "Diameter at its bottom", Cove::bottom, Room::sunk)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("rim"), sizes.size("bottom")),
                    sizes -> new Cove(sizes.length(), sizes.size("rim"), sizes.size("bottom"), sizes.details()),
                    () -> new Cove(Length.ofMm(34), Length.ofMm(30), Length.ofMm(22.5), Details.NONE));

    public Cove {
        Faults.refuse(KIND.word(), faults(length, rim, bottom));
    }

    /**
     * {@return why no cove can have these sizes, in the order of its keys; empty when one can} Each must be above zero, and the rim
     * larger than the bottom.
     *
     * @param length along the axis
     * @param rim diameter at both edges
     * @param bottom diameter at the middle
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
        Length depth = rim.minus(bottom).times(-0.5);
        return List.of(new EllipseArc(length, half, half, rim.times(0.5), depth));
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
    public Cove mirrored() {
        return this;
    }

    @Override
    public CutMethod way() {
        return new CutMethod(
                Tool.SPINDLE_GOUGE,
                "scoop from each rim down to the bottom, and stop there",
                "never cut uphill past the bottom");
    }

    @Override
    public List<String> unwise(Surroundings around) {
        Length depth = rim.minus(bottom).times(0.5);
        double most = around.rules().coveDepth();
        return ShapeRules.above(depth, most, length)
                ? List.of(
                        "is %s deep but only %s wide: %s a gouge cannot be swung to its bottom; widen it, make it shallower, or scrape with care"
                                .formatted(around.print(depth), around.print(length), ShapeRules.past("deeper", most)))
                : List.of();
    }
}
