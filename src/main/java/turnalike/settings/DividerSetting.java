package turnalike.settings;

import java.util.List;
import turnalike.units.Length;

/**
 * One opening of the dividers and all that it strikes.
 *
 * @param opening what to set: within the match tolerance of every distance it serves, and there where the marks' errors are least; a pinned
 *     opening stays as it was pinned
 * @param steps in order of round, then of place; none for a pinned opening that serves no mark
 * @param pinned whether the turner asked for this opening
 */
public record DividerSetting(Length opening, List<DividerStep> steps, boolean pinned) {
    public DividerSetting {
        steps = List.copyOf(steps);
    }

    /**
     * {@return by how much the opening is wider than a distance it serves, negative where it is narrower; zero where only rounding tells them
     * apart}
     *
     * @param from place of the mark the fixed leg stands on
     * @param to place of the mark that is struck
     */
    public Length miss(Length from, Length to) {
        Length miss = opening.minus(to.minus(from).abs());
        return miss.abs().mm() <= Spans.SLACK_MM ? Length.ZERO : miss;
    }

    /** {@return whether one setting strikes more than one mark} */
    public boolean servesAgain() {
        return steps.size() > 1;
    }
}
