package turnalike.effort;

/**
 * The effort a search may spend. A search asks {@link #spent()} often (it must be cheap) and, once it is, returns the best it has with
 * what it could prove.
 */
@FunctionalInterface
public interface Effort {
    /** {@return whether to stop now; once true, stays true} */
    boolean spent();

    /**
     * Asks after a longer stretch of work than usual: it counts for that many asks where asks are counted.
     *
     * @param asks how many usual ones it was as long as; at least 1
     * @return whether to stop now
     */
    default boolean spentAfter(int asks) {
        return spent();
    }

    /** {@return what ends it, or has ended it} Asked once it is spent. Somebody who waits, unless it says otherwise. */
    default Ending cause() {
        return Ending.STOPPED;
    }

    /**
     * {@return whether a good answer is of no use before it is known to be the best} By default it is: whoever waits gets the best so far.
     */
    default boolean wantsProofAlone() {
        return false;
    }

    /**
     * Tells whoever waits how far the search has come; by default nobody listens. Call it at most a few times a second.
     *
     * @param progress what is searched, the best so far and its bound
     */
    default void report(Progress progress) {}

    /**
     * {@return an effort that ends when that share of what is left of this one is spent, or with it, so that a later search gets the rest}
     * One that does not know how much is left gives itself whole.
     *
     * @param share above 0, at most 1
     */
    default Effort share(double share) {
        return this;
    }

    /**
     * No end but the proof itself.
     *
     * @return an effort that is never spent
     */
    static Effort unlimited() {
        return () -> false;
    }

    /**
     * Ends after being asked that many times: the same on every machine, so tests and the domain use it.
     *
     * @param asks how often {@link #spent()} answers no; none when zero or less
     * @return the effort; asked once more, it is spent for good. An ask after a longer stretch of work counts for several
     */
    static Effort ofAsks(long asks) {
        return new CountedEffort(asks);
    }

    /**
     * About a second's work, by steps and not by the clock: the same input then gives the same answer however fast the machine and however
     * busy. Measured on wheels of 8 to 400 places.
     *
     * @return the effort that a search gets unless somebody says how long
     */
    static Effort usual() {
        return ofAsks(80_000);
    }
}
