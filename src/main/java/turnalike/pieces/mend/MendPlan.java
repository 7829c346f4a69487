package turnalike.pieces.mend;

import java.util.List;
import turnalike.units.Mass;

/** What to do about a piece that is not of the weight wanted. */
public sealed interface MendPlan permits MendPlan.Leave, MendPlan.Cuts, MendPlan.Light, MendPlan.MakeAnother {
    /**
     * What is made of each kind of plan; a kind that is forgotten does not compile.
     *
     * @param <R> what it is made into
     */
    interface Cases<R> {
        /**
         * {@return what is made of a piece that is near enough}
         *
         * @param leave by how much it is off
         */
        R leave(Leave leave);

        /**
         * {@return what is made of a piece that cuts bring to weight}
         *
         * @param cuts the cuts, and what the piece then weighs
         */
        R cuts(Cuts cuts);

        /**
         * {@return what is made of a piece that is too light}
         *
         * @param light what it lacks
         */
        R light(Light light);

        /**
         * {@return what is made of a piece that no cuts bring to weight}
         *
         * @param makeAnother what it has too much, and what cuts could take off
         */
        R makeAnother(MakeAnother makeAnother);
    }

    /**
     * {@return what the cases make of this plan}
     *
     * @param <R> what it is made into
     * @param cases one of which is asked
     */
    <R> R match(Cases<R> cases);

    /**
     * It is near enough.
     *
     * @param off what it weighs less what was wanted
     * @param scale whether the scale hardly tells it from what was wanted; else it is too little for a cut worth making
     */
    record Leave(Mass off, boolean scale) implements MendPlan {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.leave(this);
        }
    }

    /**
     * The cuts that cost least likeness.
     *
     * @param cuts in the run's order, none of nothing
     * @param massAfter what the piece will weigh
     * @param likenessCost Σ w·δ/t over the cuts, δ counted from where the piece is no thicker than the pattern
     * @param gentle whether every cut is one nobody will see
     */
    record Cuts(List<MendCut> cuts, Mass massAfter, double likenessCost, boolean gentle) implements MendPlan {
        public Cuts {
            cuts = List.copyOf(cuts);
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.cuts(this);
        }
    }

    /**
     * It is light, and nothing can be put back; see {@link LightPieceOptions}.
     *
     * @param lacking what it lacks, above zero
     */
    record Light(Mass lacking) implements MendPlan {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.light(this);
        }
    }

    /**
     * It is heavier than the deepest cuts allowed can help.
     *
     * @param tooMuch what it has too much
     * @param cutsTakeOff what those cuts take off together
     */
    record MakeAnother(Mass tooMuch, Mass cutsTakeOff) implements MendPlan {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.makeAnother(this);
        }
    }
}
