package turnalike.job;

import java.util.Optional;
import java.util.function.Supplier;

/**
 * Something that is worked out when it is first asked for, and then kept: a page that is redrawn at every edit must not wait for what it
 * does not show. May be used by several threads. Two are equal only when they are the same one.
 */
public final class Lazy<T> {
    private final Supplier<T> work;
    private Optional<T> made = Optional.empty();

    /** @param work gives the same whenever it is called; it is called once at most */
    public Lazy(Supplier<T> work) {
        this.work = work;
    }

    /** What it comes to. */
    public synchronized T get() {
        T got = made.orElseGet(work);
        made = Optional.of(got);
        return got;
    }
}
