package turnalike.settings;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What is to be laid out with dividers, and the turner's own choices.
 *
 * @param marks the places along the piece from its start, rising, the two end marks included and given (the blank is cut to length)
 * @param squares indices of the marks from which to the next one the piece stays square: shoulder lines are given, struck with square and
 *     knife before mounting, and no step has a square under it
 * @param matchTolerance how far a distance may lie from an opening that serves it, either way, inclusive; not negative
 * @param markError what each step adds to a mark's error; not negative
 * @param limit the greatest worst-case error a mark may have, known misses included, inclusive; not negative. Empty for the rule of
 *     {@link #MOST_STEPS} steps, whatever they miss
 * @param onTheStick indices of inner marks that the turner has the marking stick give: they count as given, as the ends do, and their own
 *     line is off by one mark error
 * @param smallest no opening narrower than this is used, but for pinned ones; empty for any
 * @param largest no opening wider than this is used, but for pinned ones; empty for any
 * @param pinned openings that stand in every plan, as when the turner owns dividers fixed at them
 * @param forbidden openings not to be used: no step is planned whose distance such an opening would serve
 * @param units the units in which problems and workings speak
 */
public record DividerProblem(
        List<Length> marks,
        Set<Integer> squares,
        Length matchTolerance,
        Length markError,
        Optional<Length> limit,
        Set<Integer> onTheStick,
        Optional<Length> smallest,
        Optional<Length> largest,
        List<Length> pinned,
        List<Length> forbidden,
        UnitSystem units) {
    /** Dividers set by eye to a line hold a distance to about this, common practice, no source. */
    public static final Length MATCH_TOLERANCE = Length.ofMm(0.1);

    /** One pricked or pencilled mark is off by up to this, common practice, no source. */
    public static final Length MARK_ERROR = Length.ofMm(0.25);

    /** No more steps in a row than this unless a limit is given: common practice, no source. */
    public static final int MOST_STEPS = 3;

    /** What common bench dividers open to, in inches: common practice, no source. */
    public static final Length LARGEST_INCH = Length.ofInches(8);

    /** The same where millimetres are the rule: common practice, no source. */
    public static final Length LARGEST_METRIC = Length.ofMm(200);

    /** How narrow dividers strike a line of their own, in inches: common practice, no source. */
    public static final Length SMALLEST_INCH = Length.ofInches(1.0 / 16);

    /** The same where millimetres are the rule: common practice, no source. */
    public static final Length SMALLEST_METRIC = Length.ofMm(1.5);

    public DividerProblem {
        marks = List.copyOf(marks);
        squares = Set.copyOf(squares);
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
        limit.ifPresent(given -> notNegative("limit", given));
        for (int mark : onTheStick) {
            if (mark <= 0 || mark >= marks.size() - 1) {
                throw new IllegalArgumentException(
                        "only inner marks 1 to %d can be on the stick, was %d".formatted(marks.size() - 2, mark));
            }
        }
        for (int mark : squares) {
            if (mark < 0 || mark >= marks.size() - 1) {
                throw new IllegalArgumentException(
                        "a square begins at a mark 0 to %d, was %d".formatted(marks.size() - 2, mark));
            }
        }
        if (largest.isPresent() && !largest.get().isPositive()) {
            throw new IllegalArgumentException("the largest opening must be above zero, was " + largest.get());
        }
        smallest.ifPresent(least -> notNegative("smallest opening", least));
    }

    /**
     * {@return what dividers open to unless the turner says otherwise}
     *
     * @param units the job's
     */
    public static Length usualLargest(UnitSystem units) {
        return units == UnitSystem.INCH ? LARGEST_INCH : LARGEST_METRIC;
    }

    /**
     * {@return what dividers close to unless the turner says otherwise}
     *
     * @param units the job's
     */
    public static Length usualSmallest(UnitSystem units) {
        return units == UnitSystem.INCH ? SMALLEST_INCH : SMALLEST_METRIC;
    }

    private static void notNegative(String name, Length length) {
        if (length.mm() < 0) {
            throw new IllegalArgumentException("%s must not be negative, was %s mm".formatted(name, length.mm()));
        }
    }

    /**
     * {@return these marks with the default tolerance and error, the rule of three steps, openings of any size, no square and no wishes}
     *
     * @param marks from the piece's start, rising, both end marks included
     * @param units the units to print in
     */
    public static DividerProblem of(List<Length> marks, UnitSystem units) {
        return new DividerProblem(
                marks,
                Set.of(),
                MATCH_TOLERANCE,
                MARK_ERROR,
                Optional.empty(),
                Set.of(),
                Optional.empty(),
                Optional.empty(),
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
        return with(squares, changed, markError, limit, onTheStick, pinned, forbidden);
    }

    /**
     * {@return the same problem with another mark error, and the rule of three steps in place of a limit}
     *
     * @param changed what each step adds to a mark's error; not negative
     */
    public DividerProblem withMarkError(Length changed) {
        return with(squares, matchTolerance, changed, Optional.empty(), onTheStick, pinned, forbidden);
    }

    /**
     * {@return the same problem with another limit}
     *
     * @param changed the greatest worst-case error a mark may have, known misses included, inclusive; not negative
     */
    public DividerProblem withLimit(Length changed) {
        return with(squares, matchTolerance, markError, Optional.of(changed), onTheStick, pinned, forbidden);
    }

    /**
     * {@return the same problem with these marks laid out from the marking stick}
     *
     * @param changed indices of inner marks; they replace the earlier ones
     */
    public DividerProblem withOnTheStick(Set<Integer> changed) {
        return with(squares, matchTolerance, markError, limit, changed, pinned, forbidden);
    }

    /**
     * {@return the same problem with these openings in every plan}
     *
     * @param changed openings; they replace the earlier ones
     */
    public DividerProblem withPinned(List<Length> changed) {
        return with(squares, matchTolerance, markError, limit, onTheStick, changed, forbidden);
    }

    /**
     * {@return the same problem with these openings not to be used}
     *
     * @param changed openings; they replace the earlier ones
     */
    public DividerProblem withForbidden(List<Length> changed) {
        return with(squares, matchTolerance, markError, limit, onTheStick, pinned, changed);
    }

    /**
     * {@return the same problem with no opening wider than that}
     *
     * @param changed above zero
     */
    public DividerProblem withLargest(Length changed) {
        return within(smallest, Optional.of(changed));
    }

    /**
     * {@return the same problem with no opening narrower than that}
     *
     * @param changed not negative
     */
    public DividerProblem withSmallest(Length changed) {
        return within(Optional.of(changed), largest);
    }

    /** {@return the same problem with openings of any size} */
    public DividerProblem withAnyOpening() {
        return within(Optional.empty(), Optional.empty());
    }

    private DividerProblem within(Optional<Length> least, Optional<Length> most) {
        return new DividerProblem(
                marks, squares, matchTolerance, markError, limit, onTheStick, least, most, pinned, forbidden, units);
    }

    /**
     * {@return the same problem with these stretches left square}
     *
     * @param changed indices of the marks they begin at; they replace the earlier ones
     */
    public DividerProblem withSquares(Set<Integer> changed) {
        return with(changed, matchTolerance, markError, limit, onTheStick, pinned, forbidden);
    }

    private DividerProblem with(
            Set<Integer> squares,
            Length matchTolerance,
            Length markError,
            Optional<Length> limit,
            Set<Integer> onTheStick,
            List<Length> pinned,
            List<Length> forbidden) {
        return new DividerProblem(
                marks,
                squares,
                matchTolerance,
                markError,
                limit,
                onTheStick,
                smallest,
                largest,
                pinned,
                forbidden,
                units);
    }

    /** {@return the shoulder lines: marks at which a square begins or ends, rising; the piece's own ends are none} */
    public List<Integer> shoulders() {
        return IntStream.range(1, marks.size() - 1)
                .filter(mark -> squares.contains(mark) || squares.contains(mark - 1))
                .boxed()
                .toList();
    }

    /** {@return how many steps in a row may be made: three, or what the limit allows without any miss; with no error at all, any number} */
    public int mostSteps() {
        int inner = marks.size() - 2;
        if (markError.mm() == 0) {
            return inner;
        }
        // Three times 0.1 is a hair more than 0.3 in binary; the hair must not cost a step.
        double steps = limit.map(given -> Math.floor(given.mm() / markError.mm() + 1e-9))
                .orElse((double) MOST_STEPS);
        return (int) Math.min(inner, steps);
    }

    /** {@return what the steps alone may add up to: the limit, or as many mark errors as there may be steps} */
    Length mostByStepsAlone() {
        return limit.orElse(markError.times(MOST_STEPS));
    }

    /** What is to be searched: with a limit, one to the whole error. */
    Spans spans() {
        Spans spans = spans(mostSteps(), forbidden);
        return limit.map(given -> spans.within(new Spans.WholeLimit(markError.mm(), given.mm())))
                .orElse(spans);
    }

    Spans spans(int mostSteps, List<Length> barred) {
        double smallestMm = smallest.map(Length::mm).orElse(0.0);
        double largestMm = largest.map(Length::mm).orElse(Double.POSITIVE_INFINITY);
        return Spans.along(
                mm(marks),
                mostSteps,
                flags(onTheStick),
                new Spans.Rules(matchTolerance.mm(), smallestMm, largestMm, flags(squares), mm(pinned), mm(barred)));
    }

    private boolean[] flags(Set<Integer> indices) {
        boolean[] flags = new boolean[marks.size()];
        indices.forEach(index -> flags[index] = true);
        return flags;
    }

    private static double[] mm(List<Length> lengths) {
        return lengths.stream().mapToDouble(Length::mm).toArray();
    }
}
