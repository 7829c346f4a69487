package turnalike.job.set;

import java.util.List;
import turnalike.effort.Effort;
import turnalike.pieces.Piece;
import turnalike.units.Length;
import turnalike.units.Problem;

/** What the set goes into, as the job tells it. A kind says everything of itself: its keys, how it is read, its places and its set. */
public sealed interface Frame permits OnWheel, InRow, InLegs {
    /** Which kind it is. */
    FrameKind kind();

    /** How many pieces are wanted for it in all. */
    int pieces();

    /** This frame with a counterweight radius told for the whole job; one of the frame's own comes first. Only a wheel has a use for it. */
    default Frame withCounterweightAt(Length radius) {
        return this;
    }

    /** What keeps these pieces from being placed in it, in order; empty when nothing does. */
    List<Problem> problems(SetTerms terms, List<Piece> pieces);

    /**
     * Chooses among the pieces and places them.
     *
     * @param strict whether to go on below what the scale can tell, where that has a meaning
     * @throws IllegalArgumentException when {@link #problems} is not empty
     */
    SetMatch fill(SetTerms terms, List<Piece> pieces, boolean strict, Effort effort);
}
