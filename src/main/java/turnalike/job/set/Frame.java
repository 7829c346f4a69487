package turnalike.job.set;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.effort.Effort;
import turnalike.job.fields.Reading;
import turnalike.pattern.Pattern;
import turnalike.pieces.Piece;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/** What the set goes into, as the job tells it. A kind says everything of itself: its keys, how it is read, its places and its set. */
public sealed interface Frame permits OnWheel, InRow, InLegs {
    /** {@return which kind it is} */
    FrameKind kind();

    /** {@return how many pieces are wanted for it in all, at least 1; of legs that do not say how many groups, one group's} */
    int pieces();

    /** {@return how many make one group, where each group is to be alike by itself; empty where all pieces are} */
    default OptionalInt group() {
        return OptionalInt.empty();
    }

    /**
     * {@return this frame with a counterweight radius told for the whole job; one of the frame's own comes first} Only a wheel has a use
     * for it: any other frame stays as it is.
     *
     * @param radius from the axle, above zero
     */
    default Frame withCounterweightAt(Length radius) {
        return this;
    }

    /**
     * {@return this frame as it stands over the pattern, with what follows from both; empty when both cannot be together, which has then been
     * told}
     *
     * @param pattern what every piece copies
     * @param reading where problems go
     */
    default Optional<Frame> over(Pattern pattern, Reading reading) {
        return Optional.of(this);
    }

    /**
     * {@return what is to be said where the frame itself finds how many pieces it takes and the job asks for another number}
     *
     * @param count how many pieces the job asks for
     */
    default Optional<Misfit> otherwiseCounted(int count) {
        return Optional.empty();
    }

    /** {@return the lengths that its pieces are made in, where one turning serves several; none where all are as drawn} */
    default List<PieceLength> lengths() {
        return List.of();
    }

    /**
     * Tells what cannot be where the job wants so many pieces.
     *
     * @param count how many
     * @param reading where problems go
     */
    default void tellCount(int count, Reading reading) {}

    /**
     * {@return how the pattern stands in it; empty for a kind that asks nothing of it}
     *
     * @param pattern what every piece copies
     * @param density of its wood
     * @param units in which lengths are told
     */
    default Optional<FrameFit> fit(Pattern pattern, Density density, UnitSystem units) {
        return Optional.empty();
    }

    /**
     * {@return what that end of the pattern goes into, and its wood where the frame tells it; empty for an end that goes into nothing}
     *
     * @param end of the pattern
     * @param pattern what every piece copies
     */
    default Optional<Bored> bored(End end, Pattern pattern) {
        return Optional.empty();
    }

    /**
     * {@return what keeps these pieces from being placed in it, in order; empty when nothing does}
     *
     * @param terms what else of the job decides its set
     * @param pieces those there are to choose from
     */
    List<Problem> problems(SetTerms terms, List<Piece> pieces);

    /**
     * Chooses among the pieces and places them.
     *
     * @param terms what else of the job decides its set
     * @param pieces those there are to choose from; labels differ
     * @param strict whether to go on below what the scale can tell, where that has a meaning
     * @param effort what the search may spend; spent early, it gives the best it has
     * @return the set in its places, which says whether it is proven to be the best
     * @throws IllegalArgumentException when {@link #problems} is not empty
     */
    SetMatch fill(SetTerms terms, List<Piece> pieces, boolean strict, Effort effort);
}
