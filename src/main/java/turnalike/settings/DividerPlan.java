package turnalike.settings;

import java.util.Comparator;
import java.util.List;
import turnalike.effort.Ending;
import turnalike.units.Length;
import turnalike.units.Working;

/**
 * A sound plan: every mark reached, none by more steps or with a greater worst-case error than allowed.
 *
 * @param settings each distinct opening, the smallest first
 * @param given what stands before any step
 * @param errors one per mark, in order of the marks, end marks included
 * @param sumOfSteps the sum over the marks reached by dividers of their steps from a given mark
 * @param fewestProven whether no sound plan takes fewer marks from the stick, and none with as few has fewer settings
 * @param tiesProven whether, besides, none with as few has a smaller sum of steps, nor one with the same sum a shorter longest step
 * @param lowerBound the number of settings that no sound plan which takes as few marks from the stick can have fewer of, as far as proven
 * @param endedBy what ended the search for it
 * @param workings how the figures were found
 */
public record DividerPlan(
        List<DividerSetting> settings,
        GivenMarks given,
        List<MarkError> errors,
        int sumOfSteps,
        boolean fewestProven,
        boolean tiesProven,
        int lowerBound,
        Ending endedBy,
        List<Working> workings) {
    /** A piece no longer than this is held to the stick with one hand and takes every mark at once: common practice, no source. */
    private static final Length STICK_ALONE = Length.ofInches(4);

    public DividerPlan {
        settings = List.copyOf(settings);
        errors = List.copyOf(errors);
        workings = List.copyOf(workings);
    }

    /** {@return the greatest worst-case error of any mark; zero when there are only the ends} */
    public Length worst() {
        return errors.stream()
                .map(MarkError::worst)
                .max(Comparator.naturalOrder())
                .orElse(Length.ZERO);
    }

    /** {@return how many settings the plan may be above the least: zero when proven} */
    public int gap() {
        return settings.size() - lowerBound;
    }

    /**
     * {@return whether the piece is so short that the stick lays out by itself what these dividers would} Not where there are shoulder lines, which
     * are struck before mounting, nor where there is nothing to step.
     *
     * @param length of the piece
     */
    public boolean isForTheStickAlone(Length length) {
        return length.compareTo(STICK_ALONE) <= 0
                && !settings.isEmpty()
                && given.shoulders().isEmpty();
    }

    /** {@return the indices of the marks that the stick gives instead of dividers, by wish or for want of an opening; shoulders are none} */
    public List<Integer> listOnTheStick() {
        return errors.stream()
                .filter(MarkError::fromTheStick)
                .map(MarkError::mark)
                .toList();
    }
}
