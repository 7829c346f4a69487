package turnalike.web.wood;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.effort.Progress;
import turnalike.job.boards.JobBlanks;
import turnalike.stock.boards.Board;
import turnalike.stock.boards.CuttingOrder;
import turnalike.stock.boards.CuttingPlan;

/** One search for how the boards are cut, while it runs and after. Used by several threads. */
final class CutSearch implements Effort {
    private final List<JobBlanks.Named> jobs;
    private final List<Board> boards;
    private final CuttingOrder order;
    private final Effort most;
    private final long began = System.nanoTime();
    private final CountDownLatch done = new CountDownLatch(1);
    private volatile boolean stopped;
    private volatile String progress = "looking";
    private volatile Optional<CuttingPlan> found = Optional.empty();
    private volatile Optional<RuntimeException> fault = Optional.empty();

    /** @param most what ends it, unless somebody stops it before */
    CutSearch(List<JobBlanks.Named> jobs, List<Board> boards, Effort most) {
        this.jobs = List.copyOf(jobs);
        this.boards = List.copyOf(boards);
        this.order = JobBlanks.order(jobs, boards);
        this.most = most;
    }

    /** Whether it cuts the same blanks out of the same boards. */
    boolean isOf(CuttingOrder asked) {
        return order.equals(asked);
    }

    List<JobBlanks.Named> jobs() {
        return jobs;
    }

    /** Searches until proven, stopped, or out of steps or time. */
    void run() {
        try {
            found = Optional.of(JobBlanks.plan(jobs, boards, this));
        } catch (RuntimeException ours) {
            fault = Optional.of(ours); // thrown on where somebody is told
        } finally {
            done.countDown();
        }
    }

    @Override
    public boolean spent() {
        return stopped || most.spent();
    }

    @Override
    public boolean spentAfter(int asks) {
        return stopped || most.spentAfter(asks);
    }

    @Override
    public Ending cause() {
        return stopped ? Ending.STOPPED : most.cause();
    }

    @Override
    public void report(Progress told) {
        progress = String.format(
                Locale.ROOT, "%s: %.4g found, none can be below %.4g", told.what(), told.best(), told.bound());
    }

    @Override
    public Effort share(double share) {
        Effort part = most.share(share);
        CutSearch whole = this;
        return new Effort() {
            @Override
            public boolean spent() {
                return whole.stopped || part.spent();
            }

            @Override
            public boolean spentAfter(int asks) {
                return whole.stopped || part.spentAfter(asks);
            }

            @Override
            public Ending cause() {
                return whole.stopped ? Ending.STOPPED : part.cause();
            }

            @Override
            public void report(Progress told) {
                whole.report(told);
            }
        };
    }

    void stop() {
        stopped = true;
    }

    boolean isStopped() {
        return stopped;
    }

    /** How far it has come, in words. */
    String progress() {
        return "%d s, %s".formatted(TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - began), progress);
    }

    boolean await(long milliseconds) {
        try {
            return done.await(milliseconds, TimeUnit.MILLISECONDS);
        } catch (InterruptedException stoppedWaiting) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    boolean isDone() {
        return done.getCount() == 0;
    }

    /** What was found; empty while it runs. A fault in the search is thrown here. */
    Optional<CuttingPlan> found() {
        fault.ifPresent(ours -> {
            throw ours;
        });
        return found;
    }
}
