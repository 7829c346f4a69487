package turnalike.pattern;

import java.util.List;
import java.util.Optional;
import turnalike.outline.Curve;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.units.Length;

/**
 * One detail of the run; it knows its own shape and nothing about who draws or stores it. Sizes are finished sizes; x runs from the
 * member's start, which is nearer the datum end.
 */
public sealed interface Member
        permits Square,
                Cylinder,
                Fillet,
                Tenon,
                Taper,
                Swell,
                Bead,
                HalfBead,
                Cove,
                HalfCove,
                Ogee,
                ReverseOgee,
                Vee,
                Groove,
                FreeCurve {
    /** Every kind of the family, in the order a turner meets them. */
    static List<MemberKind> kinds() {
        return List.of(
                Square.KIND,
                Cylinder.KIND,
                Fillet.KIND,
                Tenon.KIND,
                Taper.KIND,
                Swell.KIND,
                Bead.KIND,
                HalfBead.KIND,
                Cove.KIND,
                HalfCove.KIND,
                Ogee.KIND,
                ReverseOgee.KIND,
                Vee.KIND,
                Groove.KIND,
                FreeCurve.KIND);
    }

    /** Along the axis; above zero. */
    Length length();

    Details details();

    /** What it is, described once for all members of its kind. */
    MemberKind kind();

    /**
     * The shape from start to end; the lengths add up to {@link #length()}.
     *
     * @param ends which ends of the piece this member stands at, since a tenon is chamfered only there
     */
    List<Curve> curves(Ends ends);

    default Section section() {
        return Section.ROUND;
    }

    /** The diameters a turner sizes, in order along the member. */
    List<Diameter> diameters();

    /** The highest and deepest points that a turner marks, in order along the member, each with a word of its own. */
    default List<Crest> crests() {
        return List.of();
    }

    /** With what, and how, it is cut. */
    CutMethod way();

    /** What is unwise to turn where it stands, in words that follow its name, the plainest first. */
    default List<String> unwise(Surroundings around) {
        return List.of();
    }

    /** The hole it enters, if it enters one. */
    default Optional<Hole> enters() {
        return Optional.empty();
    }

    /** How much of its length goes into a hole: all or nothing. */
    default Length lengthInHole() {
        return enters().isPresent() ? length() : Length.ZERO;
    }

    /**
     * Whether it is turned for its shape, so that it is sanded, may be slender and may give wood when a piece is mended. A square is not
     * turned, and what enters a hole is turned to that hole.
     */
    default boolean isShaped() {
        return section() == Section.ROUND && enters().isEmpty();
    }

    /** Whether it is rolled up from its line, as a bead is, so that the corners of a square beside it would be struck. */
    default boolean isRolled() {
        return false;
    }

    /**
     * The greatest radius of the wood it is cut in, walls beside it included.
     *
     * @param outline its own shape
     */
    default Length reach(Outline outline) {
        return outline.largestRadius();
    }

    /** All that it is made from, by the keys of its kind. */
    default Sizes sizes() {
        return kind().sizes(this);
    }

    /** The member turned end for end. */
    Member mirrored();

    /** The name if it has one, else its kind. */
    default String title() {
        return details().name().orElseGet(() -> kind().word());
    }

    /** Which ends of the piece a member stands at. */
    record Ends(boolean first, boolean last) {
        public static final Ends NEITHER = new Ends(false, false);
    }

    /**
     * A diameter to be sized.
     *
     * @param key what it is: {@code crown}, {@code bottom}, {@code from}
     * @param place from the member's start
     * @param size finished
     */
    record Diameter(String key, Length place, Length size) {}

    /**
     * A highest or deepest point: a mark.
     *
     * @param place from the member's start
     * @param word what it is, unlike any other of the member: {@code crest}, {@code bottom}
     */
    record Crest(Length place, String word) {}

    /**
     * The hole a member enters.
     *
     * @param diameter of the hole
     * @param told whether the job names it; else it is taken as the member's own size
     */
    record Hole(Length diameter, boolean told) {}
}
