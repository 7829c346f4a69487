package turnalike.web.kit;

import java.util.concurrent.Executor;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * Where plans and pages are worked out: as many at once as the machine has cores, first come, first served. Begun all together they would
 * all be late, and what takes no working out, an entry at the bench, would be late with them.
 */
public final class PageWork {
    private static final int IDLE_S = 30;

    private final Semaphore turns;
    private final Executor beside;

    /** @param atOnce how many pieces of work go on at once */
    PageWork(int atOnce) {
        this.turns = new Semaphore(atOnce, true);
        ThreadPoolExecutor threads =
                new ThreadPoolExecutor(atOnce, atOnce, IDLE_S, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
                    Thread thread = new Thread(work, "page-work");
                    thread.setDaemon(true); // work nobody waits for any more must not keep the program from ending
                    return thread;
                });
        threads.allowCoreThreadTimeOut(true);
        this.beside = threads;
    }

    public static PageWork onThisMachine() {
        return new PageWork(Runtime.getRuntime().availableProcessors());
    }

    /** Does the work when its turn comes, on the calling thread. It must not wait for other work of this kind: that might wait for it. */
    public <T> T inTurn(Supplier<T> work) {
        turns.acquireUninterruptibly();
        try {
            return work.get();
        } finally {
            turns.release();
        }
    }

    /** Does the work when its turn comes, beside whatever else goes on. */
    public Executor beside() {
        return work -> beside.execute(() -> inTurn(() -> {
            work.run();
            return work;
        }));
    }
}
