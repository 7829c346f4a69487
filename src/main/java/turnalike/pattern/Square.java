package turnalike.pattern;

import java.util.List;
import java.util.Optional;
import turnalike.outline.Curve;
import turnalike.outline.Line;
import turnalike.outline.Section;
import turnalike.units.Length;

/**
 * A stretch left square, arrises kept.
 *
 * @param length along the axis, above zero
 * @param side across the flats, above zero
 * @param details its own name, and whether it is turned by eye
 */
public record Square(Length length, Length side, Details details) implements Member {
    static final MemberKind KIND = MemberKind.of("square", Square.class)
            .words(
                    "Left square, arrises and all. Side: across the flats; left empty, the stock's own size. What has flats and tapers, an"
                            + " eight-sided leg for one, is planed: give it as a taper over its corners.")
            .shape("left square, arrises kept")
            .length()
            .may(
                    MemberKey.optional("side", "Across the flats", "left empty: the stock's size", Optional::of)
                            .noted("stock size if left out"),
                    square -> Optional.of(square.side()))
            .made(
                    sizes -> faults(sizes.length(), sizes.size("side")),
                    sizes -> new Square(sizes.length(), sizes.size("side"), sizes.details()),
                    () -> new Square(Length.ofMm(34), Length.ofMm(42), Details.NONE));

    public Square {
        Faults.refuse(KIND.word(), faults(length, side));
    }

    /**
     * {@return why no square can have these sizes, in the order of its keys; empty when one can} Each must be above zero.
     *
     * @param length along the axis
     * @param side across the flats
     */
    public static List<Fault> faults(Length length, Length side) {
        return Faults.in(length).positive("side", side).list();
    }

    @Override
    public MemberKind kind() {
        return KIND;
    }

    @Override
    public List<Curve> curves(Ends ends) {
        return List.of(Line.level(length, side.times(0.5)));
    }

    @Override
    public Section section() {
        return Section.SQUARE;
    }

    /** None: nothing is sized on what is not turned. */
    @Override
    public List<Diameter> diameters() {
        return List.of();
    }

    @Override
    public Square mirrored() {
        return this;
    }

    @Override
    public CutMethod way() {
        return new CutMethod(Tool.SKEW, "leave square, arrises kept", "keep hands away from the turning corners");
    }

    @Override
    public List<String> unwise(Surroundings around) {
        return around.joints().stream()
                .filter(joint -> joint.neighbour().member().isRolled())
                .map(joint ->
                        ("its arrises meet %s: the corners catch the tool and break out where the bead begins; cut a shoulder"
                                        + " with the skew's point first, or put a fillet between")
                                .formatted(joint.neighbour().where()))
                .toList();
    }
}
