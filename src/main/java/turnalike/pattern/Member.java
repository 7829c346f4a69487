package turnalike.pattern;

import java.util.List;
import java.util.Optional;
import turnalike.outline.Curve;
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
    /** Along the axis; above zero. */
    Length length();

    Details details();

    /** The word for this kind in a job file: {@code half-bead}. */
    String kind();

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

    /** The highest or deepest point of a bead, cove or vee, from the member's start: a mark. */
    default Optional<Length> crest() {
        return Optional.empty();
    }

    /** The member turned end for end. */
    Member mirrored();

    <R> R match(Cases<R> cases);

    /** The name if it has one, else its kind. */
    default String title() {
        return details().name().orElse(kind());
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

    interface Cases<R> {
        R square(Square square);

        R cylinder(Cylinder cylinder);

        R fillet(Fillet fillet);

        R tenon(Tenon tenon);

        R taper(Taper taper);

        R swell(Swell swell);

        R bead(Bead bead);

        R halfBead(HalfBead halfBead);

        R cove(Cove cove);

        R halfCove(HalfCove halfCove);

        R ogee(Ogee ogee);

        R reverseOgee(ReverseOgee reverseOgee);

        R vee(Vee vee);

        R groove(Groove groove);

        R freeCurve(FreeCurve freeCurve);
    }
}
