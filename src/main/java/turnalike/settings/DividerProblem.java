package turnalike.settings;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What is to be laid out with dividers, and the turner's own choices.
 *
 * @param marks the places along the piece from its start, rising, the two end marks included and given (the blank is cut to length)
 * @param matchTolerance how far a distance may lie from an opening that serves it, either way, inclusive; not negative
 * @param markError what each step adds to a mark's error; not negative
 * @param limit the greatest worst-case error a mark may have, inclusive; not negative
 * @param onTheStick indices of inner marks laid out from the marking stick: they need no dividers, carry one mark error, and steps may
 *     start from them
 * @param pinned openings that stand in every plan, as when the turner owns dividers fixed at them
 * @param forbidden openings not to be used: no step is planned whose distance such an opening would serve
 * @param units the units in which problems and workings speak
 */
public record DividerProblem(
        List<Length> marks,
        Length matchTolerance,
        Length markError,
        Length limit,
        Set<Integer> onTheStick,
        List<Length> pinned,
        List<Length> forbidden,
        UnitSystem units) {
    /** Dividers set by eye to a line hold a distance to about this, common practice, no source. */
    public static final Length MATCH_TOLERANCE = Length.ofMm(0.1);

    /** One pricked or pencilled mark is off by up to this, common practice, no source. */
    public static final Length MARK_ERROR = Length.ofMm(0.25);

    /** The limit is this many mark errors unless it is given: at most three steps in a row, common practice, no source. */
    public static final int LIMIT_IN_MARK_ERRORS = 3;

    public DividerProblem {
        marks = List.copyOf(marks);
        onTheStick = Set.copyOf(onTheStick);
        pinned = List.copyOf(pinned);
        forbidden = List.copyOf(forbidden);
        if (marks.size() < 2) {
            throw new IllegalArgumentException("both end marks are needed, marks were %s".formatted(marks));
        }
        for (int i = 1; i < marks.size(); i++) {
            if (marks.get(i).compareTo(marks.get(i - 1)) <= 0) {
                throw new IllegalArgumentException("marks must rise, were %s".formatted(marks));
            }
        }
        notNegative("match tolerance", matchTolerance);
        notNegative("mark error", markError);
        notNegative("limit", limit);
        for (int mark : onTheStick) {
            if (mark <= 0 || mark >= marks.size() - 1) {
                throw new IllegalArgumentException(
                        "only inner marks 1 to %d can be on the stick, was %d".formatted(marks.size() - 2, mark));
            }
        }
    }

    private static void notNegative(String name, Length length) {
        if (length.mm() < 0) {
            throw new IllegalArgumentException("%s must not be negative, was %s mm".formatted(name, length.mm()));
        }
    }

    /**
     * {@return these marks with the default tolerance, error and limit, and no wishes}
     *
     * @param marks from the piece's start, rising, both end marks included
     * @param units the units to print in
     */
    public static DividerProblem of(List<Length> marks, UnitSystem units) {
        return new DividerProblem(
                marks,
                MATCH_TOLERANCE,
                MARK_ERROR,
                MARK_ERROR.times(LIMIT_IN_MARK_ERRORS),
                Set.of(),
                List.of(),
                List.of(),
                units);
    }

    /**
     * {@return the same problem with another match tolerance}
     *
     * @param changed how far a distance may lie from its opening, either way, inclusive; not negative
     */
    public DividerProblem withMatchTolerance(Length changed) {
        return new DividerProblem(marks, changed, markError, limit, onTheStick, pinned, forbidden, units);
    }

    /**
     * {@return the same problem with another mark error, and the limit that goes with it by default}
     *
     * @param changed what each step adds to a mark's error; not negative
     */
    public DividerProblem withMarkError(Length changed) {
        Length itsLimit = changed.times(LIMIT_IN_MARK_ERRORS);
        return new DividerProblem(marks, matchTolerance, changed, itsLimit, onTheStick, pinned, forbidden, units);
    }

    /**
     * {@return the same problem with another limit}
     *
     * @param changed the greatest worst-case error a mark may have, inclusive; not negative
     */
    public DividerProblem withLimit(Length changed) {
        return new DividerProblem(marks, matchTolerance, markError, changed, onTheStick, pinned, forbidden, units);
    }

    /**
     * {@return the same problem with these marks laid out from the marking stick}
     *
     * @param changed indices of inner marks; they replace the earlier ones
     */
    public DividerProblem withOnTheStick(Set<Integer> changed) {
        return new DividerProblem(marks, matchTolerance, markError, limit, changed, pinned, forbidden, units);
    }

    /**
     * {@return the same problem with these openings in every plan}
     *
     * @param changed openings; they replace the earlier ones
     */
    public DividerProblem withPinned(List<Length> changed) {
        return new DividerProblem(marks, matchTolerance, markError, limit, onTheStick, changed, forbidden, units);
    }

    /**
     * {@return the same problem with these openings not to be used}
     *
     * @param changed openings; they replace the earlier ones
     */
    public DividerProblem withForbidden(List<Length> changed) {
        return new DividerProblem(marks, matchTolerance, markError, limit, onTheStick, pinned, changed, units);
    }

    /** {@return how many steps in a row the limit allows; with no mark error at all, as many as there are marks} */
    public int mostSteps() {
        int inner = marks.size() - 2;
        if (markError.mm() == 0) {
            return inner;
        }
        // Three times 0.1 is a hair more than 0.3 in binary; the hair must not cost a step.
        double steps = Math.floor(limit.mm() / markError.mm() + 1e-9);
        return (int) Math.min(inner, steps);
    }

    Spans spans(int mostSteps, List<Length> barred) {
        boolean[] stick = new boolean[marks.size()];
        new TreeSet<>(onTheStick).forEach(mark -> stick[mark] = true);
        return Spans.along(mm(marks), matchTolerance.mm(), mostSteps, stick, mm(pinned), mm(barred));
    }

    private static double[] mm(List<Length> lengths) {
        return lengths.stream().mapToDouble(Length::mm).toArray();
    }
}
