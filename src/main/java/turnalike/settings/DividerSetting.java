package turnalike.settings;

import java.util.List;
import turnalike.units.Length;

/**
 * One opening of the dividers and all that it strikes.
 *
 * @param opening what to set: the middle of the distances it serves, so that none is further off than the match tolerance; a pinned
 *     opening stays as it was pinned
 * @param steps in order of round, then of place; none for a pinned opening that serves no mark
 * @param pinned whether the turner asked for this opening
 */
public record DividerSetting(Length opening, List<DividerStep> steps, boolean pinned) {
    public DividerSetting {
        steps = List.copyOf(steps);
    }

    /** {@return whether one setting strikes more than one mark} */
    public boolean servesAgain() {
        return steps.size() > 1;
    }
}
