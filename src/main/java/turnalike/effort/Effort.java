package turnalike.effort;

/**
 * The effort a search may spend. A search asks {@link #spent()} often (it must be cheap) and, once it is, returns the best it has with
 * what it could prove.
 */
@FunctionalInterface
public interface Effort {
    /** Whether to stop now; once true, stays true. */
    boolean spent();

    /** Tells whoever waits how far the search has come; by default nobody listens. Call it at most a few times a second. */
    default void report(Progress progress) {}

    /**
     * An effort that ends when that share of what is left of this one is spent, or with it, so that a later search gets the rest. One that
     * does not know how much is left gives itself whole.
     *
     * @param share above 0, at most 1
     */
    default Effort share(double share) {
        return this;
    }

    /** No end but the proof itself. */
    static Effort unlimited() {
        return () -> false;
    }

    /** Ends after being asked that many times: the same on every machine, so tests and the domain use it. */
    static Effort ofAsks(long asks) {
        return new CountedEffort(asks);
    }
}
