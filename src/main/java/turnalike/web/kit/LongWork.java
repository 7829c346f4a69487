package turnalike.web.kit;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import turnalike.effort.Progress;

/**
 * Work that goes on beside the page, while it runs and after: whether it was stopped, how long it takes, what came of it. Used by several
 * threads; run by one.
 *
 * @param <T> what comes of it
 */
public final class LongWork<T> {
    private final long began = System.nanoTime();
    private final CountDownLatch done = new CountDownLatch(1);
    private volatile boolean stopped;
    private volatile Optional<T> found = Optional.empty();
    private volatile Optional<RuntimeException> fault = Optional.empty();

    /** Does it; a fault is kept and thrown on where somebody is told. */
    public void run(Supplier<T> work) {
        try {
            found = Optional.of(work.get());
        } catch (RuntimeException ours) {
            fault = Optional.of(ours);
        } finally {
            done.countDown();
        }
    }

    /** Asks it to end; what it has by then is its answer. */
    public void stop() {
        stopped = true;
    }

    public boolean isStopped() {
        return stopped;
    }

    /** Nanoseconds since it was asked for. */
    public long elapsed() {
        return System.nanoTime() - began;
    }

    public long seconds() {
        return TimeUnit.NANOSECONDS.toSeconds(elapsed());
    }

    /** Waits so long at most; whether it is done. */
    public boolean await(long milliseconds) {
        try {
            return done.await(milliseconds, TimeUnit.MILLISECONDS);
        } catch (InterruptedException stoppedWaiting) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    public boolean isDone() {
        return done.getCount() == 0;
    }

    /** What came of it; empty while it runs. A fault of ours is thrown here. */
    public Optional<T> found() {
        fault.ifPresent(ours -> {
            throw ours;
        });
        return found;
    }

    /** How far a search has come, in words. */
    public static String words(Progress told) {
        return String.format(
                Locale.ROOT, "%s: %.4g found, none can be below %.4g", told.what(), told.best(), told.bound());
    }
}
