package turnalike.effort;

import java.util.concurrent.atomic.AtomicLong;

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

    /** No end but the proof itself. */
    static Effort unlimited() {
        return () -> false;
    }

    /** Ends after being asked that many times: the same on every machine, so tests and the domain use it. */
    static Effort ofAsks(long asks) {
        AtomicLong left = new AtomicLong(asks);
        return () -> left.getAndDecrement() <= 0;
    }
}
