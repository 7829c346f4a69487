package turnalike.store;

import turnalike.job.kept.KeptJobs;

/** A thread that looks again and again until it is told to stop. */
final class WatchThread implements KeptJobs.Watch {
    private volatile boolean stopped;

    private WatchThread() {}

    /** Looks until it is asked to stop; whatever it throws ends the watching. */
    interface Looking {
        void until(WatchThread stopped);
    }

    static WatchThread begin(Looking looking) {
        WatchThread watch = new WatchThread();
        Thread thread = new Thread(() -> looking.until(watch), "store watch");
        thread.setDaemon(true);
        thread.start();
        return watch;
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
