package turnalike.pattern;

import java.util.List;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.outline.Outline;
import turnalike.units.Length;

/**
 * A square-walled groove with a level bottom.
 *
 * @param length along the axis, above zero
 * @param rim diameter of the walls' tops, above the bottom
 * @param bottom diameter all along, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record Groove(Length length, Length rim, Length bottom, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("groove", Groove.class)
            .words("A square-walled groove down to a bottom diameter.")
            .shape("square walls, level bottom")
            .narrow()
            .length()
            .size("rim", "Diameter at its rim", Groove::rim, Room::larger)
            .size("bottom", "Diameter at its bottom", Groove::bottom, Room::sunk)
            .made(
                    sizes -> faults(sizes.length(), sizes.size("rim"), sizes.size("bottom")),
                    sizes -> new Groove(sizes.length(), sizes.size("rim"), sizes.size("bottom"), sizes.details()),
                    () -> new Groove(Length.ofMm(8), Length.ofMm(30), Length.ofMm(22.5), Details.NONE));

    public Groove {
        Faults.refuse(KIND.word(), faults(length, rim, bottom));
    }

    /**
     * {@return why no groove can have these sizes, in the order of its keys; empty when one can} Each must be above zero, and the rim
     * larger than the bottom.
     *
     * @param length along the axis
     * @param rim diameter of the walls' tops
     * @param bottom diameter all along
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
        return List.of(Line.level(length, bottom.times(0.5)));
    }

    @Override
    public List<Diameter> diameters() {
        return List.of(new Diameter("bottom", length.times(0.5), bottom));
    }

    @Override
    public Groove mirrored() {
        return this;
    }

    @Override
    public CutMethod way() {
        return CutMethod.with(Tool.PARTING_TOOL, "straight in between its lines to the calipers");
    }

    /** Its walls stand as high as the rim. */
    @Override
    public Length reach(Outline outline) {
        return rim.times(0.5);
    }

    @Override
    public List<String> unwise(Surroundings around) {
        return length.compareTo(around.rules().narrowestGroove()) < 0
                ? List.of("is %s wide, narrower than a thin parting tool; widen it, or grind a tool for it"
                        .formatted(around.print(length)))
                : List.of();
    }
}
