package turnalike.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Waits for the signal that ends the program, and holds its end back until what was open is closed in order. */
final class UntilStopped {
    private static final long LONGEST_CLOSING_S = 3;

    private final CountDownLatch asked = new CountDownLatch(1);
    private final CountDownLatch closed = new CountDownLatch(1);

    private UntilStopped() {}

    static UntilStopped hooked() {
        UntilStopped end = new UntilStopped();
        Runtime.getRuntime().addShutdownHook(new Thread(end::hold, "closing"));
        return end;
    }

    private void hold() {
        asked.countDown();
        try {
            // Whatever is not closed by then loses nothing: each edit was on disk before it was shown.
            closed.await(LONGEST_CLOSING_S, TimeUnit.SECONDS);
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }

    void await() {
        try {
            asked.await();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    void closed() {
        closed.countDown();
    }
}
