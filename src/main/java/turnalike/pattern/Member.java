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
    /** {@return every kind of the family, in the order a turner meets them} */
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

    /** {@return how long it is along the axis; above zero} */
    Length length();

    /** {@return its own name, if it has one, and whether it is turned by eye} */
    Details details();

    /** {@return what it is, described once for all members of its kind} */
    MemberKind kind();

    /**
     * {@return the shape from start to end, as curves of the radius whose lengths add up to {@link #length()}}
     *
     * @param ends which ends of the piece this member stands at, since a tenon is chamfered only there
     */
    List<Curve> curves(Ends ends);

    /** {@return round, unless the member is left square; then its curves give half the side across the flats} */
    default Section section() {
        return Section.ROUND;
    }

    /** {@return the diameters a turner sizes, in order along the member; none where nothing is turned} */
    List<Diameter> diameters();

    /**
     * {@return the highest and deepest points that a turner marks, in order along the member, each with a word of its own; by default
     * none}
     */
    default List<Crest> crests() {
        return List.of();
    }

    /**
     * {@return where it is sized and marked so that what lies between stays true} By default its own diameters and crests; a shape that is
     * known by points only needs as many places as the tolerance asks for.
     *
     * @param within how far a finished diameter may be off, above zero
     * @param rules what counts as a place of its own on a curve through points
     */
    default Sizing sizing(Length within, CurveRules rules) {
        return new Sizing(diameters(), crests());
    }

    /**
     * {@return the same by the usual rules}
     *
     * @param within how far a finished diameter may be off, above zero
     */
    default Sizing sizing(Length within) {
        return sizing(within, CurveRules.USUAL);
    }

    /** {@return with what, and how, it is cut} */
    CutMethod way();

    /**
     * {@return what is unwise to turn where it stands, in words that follow its name, the plainest first; by default nothing}
     *
     * @param around the run it stands in, its neighbours there and the units to print in
     */
    default List<String> unwise(Surroundings around) {
        return List.of();
    }

    /** {@return the hole it enters, if it enters one} */
    default Optional<Hole> enters() {
        return Optional.empty();
    }

    /** {@return how much of its length goes into a hole: all or nothing} */
    default Length lengthInHole() {
        return enters().isPresent() ? length() : Length.ZERO;
    }

    /**
     * {@return whether it is turned for its shape, so that it is sanded, may be slender and may give wood when a piece is mended} A
     * square is not turned, and what enters a hole is turned to that hole.
     */
    default boolean isShaped() {
        return section() == Section.ROUND && enters().isEmpty();
    }

    /** {@return whether it is rolled up from its line, as a bead is, so that the corners of a square beside it would be struck} */
    default boolean isRolled() {
        return false;
    }

    /**
     * {@return the greatest radius of the wood it is cut in, walls beside it included; half the side across the flats for a square}
     *
     * @param outline its own shape
     */
    default Length reach(Outline outline) {
        return outline.largestRadius();
    }

    /** {@return all that it is made from, by the keys of its kind} {@link MemberKind#make} makes an equal member of it. */
    default Sizes sizes() {
        return kind().sizes(this);
    }

    /** {@return the member turned end for end, which is itself where both ends are alike; mirrored twice it is what it was, but for rounding} */
    Member mirrored();

    /** {@return the name if it has one, else the word of its kind} */
    default String title() {
        return details().name().orElseGet(() -> kind().word());
    }

    /**
     * Which ends of the piece a member stands at.
     *
     * @param first whether it is the first of the run, so that its start is the piece's datum end
     * @param last whether it is the last of the run
     */
    record Ends(boolean first, boolean last) {
        /** Inside the run, with a member on either side. */
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
     * Where a member is sized, and what is marked inside it.
     *
     * @param diameters in order along the member
     * @param crests in order along the member, each with a word of its own
     */
    record Sizing(List<Diameter> diameters, List<Crest> crests) {
        public Sizing {
            diameters = List.copyOf(diameters);
            crests = List.copyOf(crests);
        }
    }

    /**
     * A highest or deepest point, or another place inside the member where it is sized: a mark.
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
