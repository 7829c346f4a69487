package turnalike.job;

import java.util.List;
import java.util.Set;
import turnalike.pattern.Mark;
import turnalike.settings.DividerProblem;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * The turner's own choices for laying out.
 *
 * @param pinned divider openings that stand in every plan, and are counted
 * @param forbidden divider openings not to be used
 * @param onTheStick indices into the pattern's marks: laid out from the marking stick, so that they need no dividers
 * @param notched whether the marking stick has notches at its marks in place of lines
 */
public record LayoutWishes(List<Length> pinned, List<Length> forbidden, Set<Integer> onTheStick, boolean notched) {
    /** Dividers for everything, any opening. */
    public static final LayoutWishes NONE = new LayoutWishes(List.of(), List.of(), Set.of(), false);

    public LayoutWishes {
        pinned = List.copyOf(pinned);
        forbidden = List.copyOf(forbidden);
        onTheStick = Set.copyOf(onTheStick);
    }

    /**
     * {@return what the dividers have to do for these marks}
     *
     * @param marks the pattern's, in order of place; {@link #onTheStick} counts in them from 0
     * @param tolerances how far a mark may be off: each time it is stepped, and in all
     * @param units that openings are told in
     */
    public DividerProblem dividers(List<Mark> marks, Tolerances tolerances, UnitSystem units) {
        return new DividerProblem(
                marks.stream().map(Mark::place).toList(),
                DividerProblem.MATCH_TOLERANCE,
                tolerances.mark(),
                tolerances.markLimit(),
                onTheStick,
                pinned,
                forbidden,
                units);
    }
}
