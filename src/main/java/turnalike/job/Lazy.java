package turnalike.job;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Something that is worked out when it is first asked for, and then kept: a page that is redrawn at every edit must not wait for what it
 * does not show. May be used by several threads. Two are equal only when they are the same one.
 *
 * @param <T> what it comes to
 */
public final class Lazy<T> {
    private final Supplier<T> work;
    private Optional<T> made = Optional.empty();

    /**
     * A value not worked out yet.
     *
     * @param work gives the same whenever it is called, never null; once it has answered it is not called again
     */
    public Lazy(Supplier<T> work) {
        this.work = work;
    }

    /**
     * What it comes to: the first asking works it out, and other threads wait meanwhile. What the work throws is thrown on and nothing is
     * kept, so that the next asking tries again.
     *
     * @return the same at every asking
     */
    public synchronized T get() {
        T got = made.orElseGet(work);
        made = Optional.of(got);
        return got;
    }
}
