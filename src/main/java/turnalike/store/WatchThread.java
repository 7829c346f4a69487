package turnalike.store;

import java.sql.SQLException;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreException;

/** A thread that looks again and again until it is told to stop. */
final class WatchThread implements KeptJobs.Watch {
    private static final long AGAIN_MS = 500;

    private volatile boolean stopped;

    private WatchThread() {}

    /** Looks until it is asked to stop; where the store cannot be had it begins anew, whatever else it throws ends the watching. */
    interface Looking {
        void until(WatchThread stopped) throws SQLException;
    }

    static WatchThread begin(Looking looking) {
        WatchThread watch = new WatchThread();
        Thread thread = new Thread(() -> watch.again(looking), "store watch");
        thread.setDaemon(true);
        thread.start();
        return watch;
    }

    private void again(Looking looking) {
        while (!stopped && !Thread.currentThread().isInterrupted()) {
            try {
                looking.until(this);
            } catch (SQLException | StoreException lost) {
                pause(AGAIN_MS);
            }
        }
    }

    boolean isStopped() {
        return stopped;
    }

    /** Waits a little; false when it is to stop. */
    boolean pause(long ms) {
        try {
            Thread.sleep(ms);
            return !stopped;
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    @Override
    public void close() {
        stopped = true;
    }
}
