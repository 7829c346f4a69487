package turnalike.job.set;

import java.util.List;
import java.util.Optional;
import turnalike.effort.Ending;
import turnalike.units.WeighingScale;
import turnalike.units.Working;

/** The set chosen from the pieces and placed in its frame. */
public sealed interface SetMatch permits WheelSet, RowSet, LegsSet {
    /** {@return what ended the search for it} */
    Ending endedBy();

    /** {@return what to know before believing it, a sentence each; may be none} */
    List<String> warnings();

    /** {@return those of the warnings that say that its frame cannot be built: what is to be said first; none where it can} */
    default List<String> unbuildable() {
        return warnings().stream().filter(Misfit::isForbidding).toList();
    }

    /** {@return the warnings but those} */
    default List<String> otherWarnings() {
        return warnings().stream().filter(each -> !Misfit.isForbidding(each)).toList();
    }

    /** {@return how the figures were found} */
    List<Working> workings();

    /** {@return labels of the pieces left over; may be none} */
    List<String> spareLabels();

    /** {@return which stand together, a sentence each without a capital and without its point; empty where places say it all} */
    default List<String> groupsInWords() {
        return List.of();
    }

    /** {@return what a person's hand did to it} */
    HandWork handWork();

    /**
     * {@return how much the piece at each place differs from the next in a row, where the last has none, or from the others of its group; none on a
     * wheel}
     */
    default List<Double> unlike() {
        return List.of();
    }

    /** {@return the label of the piece at each place, in order; those of groups one after the other} */
    List<String> order();

    /** {@return what is to be small: the unbalance in g·mm, or how much neighbours or the pieces of a group differ} */
    double leftOver();

    /**
     * {@return whether it is better than that other one of the same frame: it passes and the other does not, or it leaves less over}
     *
     * @param other placed from the same pieces
     */
    default boolean isBetterThan(SetMatch other) {
        return passes() == other.passes() ? leftOver() < other.leftOver() * (1 - 1e-9) : passes();
    }

    /** {@return whether the pieces placed pass as a set by their masses, where that is asked} */
    default boolean passes() {
        return warnings().stream().noneMatch(each -> each.contains("the tolerance for a set's weights"));
    }

    /** {@return how good it is, in words} */
    Verdict verdict();

    /** {@return how its masses are told} */
    WeighingScale weighing();

    /** {@return what else is worth saying of the pieces chosen and left, a sentence each without a capital and without its point} */
    default List<String> remarks() {
        return nextSet().map(next -> next.inWords(weighing())).stream().toList();
    }

    /** {@return what the left-over pieces are good for; empty when none was left over that was weighed} */
    Optional<NextPieces> nextSet();

    /**
     * {@return what the case for this one makes of it}
     *
     * @param <R> what becomes of it
     * @param cases one answer for each kind of frame
     */
    <R> R match(Cases<R> cases);

    /**
     * One answer for each kind of frame.
     *
     * @param <R> the answer
     */
    interface Cases<R> {
        /**
         * A set round a hub.
         *
         * @param set placed, with its unbalance
         * @return the answer
         */
        R wheel(WheelSet set);

        /**
         * A set side by side.
         *
         * @param set in order, with how much neighbours differ
         * @return the answer
         */
        R row(RowSet set);

        /**
         * Groups that stand together.
         *
         * @param set in groups, with how much the pieces of one differ
         * @return the answer
         */
        R legs(LegsSet set);
    }
}
