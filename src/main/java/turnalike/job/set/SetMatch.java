package turnalike.job.set;

import java.util.List;
import java.util.Optional;
import turnalike.units.Working;

/** The set chosen from the pieces and placed in its frame. */
public sealed interface SetMatch permits WheelSet, RowSet, LegsSet {
    /** What to know before believing it. */
    List<String> warnings();

    /** How the figures were found. */
    List<Working> workings();

    /** Labels of the pieces left over. */
    List<String> spareLabels();

    /** Which stand together, a sentence each without a capital and without its point; empty where places say it all. */
    default List<String> groupsInWords() {
        return List.of();
    }

    /** How good it is. */
    Verdict verdict();

    /** What else is worth saying of the pieces chosen and left, a sentence each without a capital and without its point. */
    default List<String> remarks() {
        return nextSet().map(NextPieces::inWords).stream().toList();
    }

    /** What the left-over pieces are good for; empty when none was left over that was weighed. */
    Optional<NextPieces> nextSet();

    <R> R match(Cases<R> cases);

    /** One answer for each kind of frame. */
    interface Cases<R> {
        R wheel(WheelSet set);

        R row(RowSet set);

        R legs(LegsSet set);
    }
}
