package turnalike.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import turnalike.pattern.Mark;
import turnalike.pattern.Pattern;
import turnalike.settings.DividerProblem;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * The turner's own choices for laying out.
 *
 * @param pinned divider openings that stand in every plan, and are counted
 * @param forbidden divider openings not to be used
 * @param smallest no other opening is narrower; empty for what dividers usually close to
 * @param largest no other opening is wider; empty for what dividers usually open to
 * @param onTheStick indices into the pattern's marks: laid out from the marking stick, so that they need no dividers
 * @param notched whether the marking stick has notches at its marks in place of lines
 */
public record LayoutWishes(
        List<Length> pinned,
        List<Length> forbidden,
        Optional<Length> smallest,
        Optional<Length> largest,
        Set<Integer> onTheStick,
        boolean notched) {
    /** Dividers for everything that usual ones reach. */
    public static final LayoutWishes NONE =
            new LayoutWishes(List.of(), List.of(), Optional.empty(), Optional.empty(), Set.of(), false);

    public LayoutWishes {
        pinned = List.copyOf(pinned);
        forbidden = List.copyOf(forbidden);
        onTheStick = Set.copyOf(onTheStick);
    }

    /**
     * {@return what the dividers have to do for the marks of this pattern}
     *
     * @param pattern whose marks {@link #onTheStick} counts, from 0
     * @param tolerances how far a mark may be off: each time it is stepped, and in all
     * @param units that openings are told in
     */
    public DividerProblem dividers(Pattern pattern, Tolerances tolerances, UnitSystem units) {
        return new DividerProblem(
                pattern.marks().stream().map(Mark::place).toList(),
                pattern.squares(),
                DividerProblem.MATCH_TOLERANCE,
                tolerances.mark(),
                tolerances.markLimit(),
                onTheStick,
                Optional.of(smallest(units)),
                Optional.of(largest(units)),
                pinned,
                forbidden,
                units);
    }

    /**
     * {@return the widest opening used, but for pinned ones}
     *
     * @param units of the job: what dividers usually open to differs by them
     */
    public Length largest(UnitSystem units) {
        return largest.orElse(DividerProblem.usualLargest(units));
    }

    /**
     * {@return the narrowest opening used, but for pinned ones}
     *
     * @param units of the job: what dividers usually close to differs by them
     */
    public Length smallest(UnitSystem units) {
        return smallest.orElse(DividerProblem.usualSmallest(units));
    }
}
