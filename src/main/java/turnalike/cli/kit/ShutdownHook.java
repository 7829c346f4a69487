package turnalike.cli.kit;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Waits for the signal that ends the program, and holds its end back until what was open is closed in order. */
public final class ShutdownHook {
    private final long longestS;
    private final Runnable tooLate;
    private final Thread hook = new Thread(this::hold, "closing");
    private final CountDownLatch asked = new CountDownLatch(1);
    private final CountDownLatch closed = new CountDownLatch(1);

    private ShutdownHook(long longestS, Runnable tooLate) {
        this.longestS = longestS;
        this.tooLate = tooLate;
    }

    /**
     * From now on the end is held back.
     *
     * @param longestS at most so many seconds
     * @param tooLate run when they were not enough
     */
    public static ShutdownHook hooked(long longestS, Runnable tooLate) {
        ShutdownHook end = new ShutdownHook(longestS, tooLate);
        Runtime.getRuntime().addShutdownHook(end.hook);
        return end;
    }

    private void hold() {
        asked.countDown();
        try {
            if (!closed.await(longestS, TimeUnit.SECONDS)) {
                tooLate.run();
            }
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    public void await() {
        try {
            asked.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    boolean isAsked() {
        return asked.getCount() == 0;
    }

    /** Lets the program end, now or whenever it does. */
    public void closed() {
        closed.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException ending) {
            // The hook runs already, and ends now.
        }
    }
}
