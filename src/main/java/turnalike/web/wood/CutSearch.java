package turnalike.web.wood;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.effort.Progress;
import turnalike.job.FoundCut;
import turnalike.job.boards.JobBlanks;
import turnalike.stock.boards.Board;
import turnalike.stock.boards.CutRecord;
import turnalike.stock.boards.CuttingOrder;
import turnalike.stock.boards.CuttingPlan;
import turnalike.web.kit.LongWork;

/** One search for how the boards are cut, while it runs and after. Used by several threads. */
final class CutSearch implements Effort {
    private final List<String> with;
    private final List<JobBlanks.Named> jobs;
    private final List<Board> boards;
    private final CuttingOrder order;
    private final Effort most;
    private final LongWork<CuttingPlan> work = new LongWork<>();
    private volatile String progress = "looking";

    /**
     * @param with ids of the other jobs that are sawn along
     * @param jobs all of them, the job itself first
     * @param boards its boards
     * @param most what ends it, unless somebody stops it before
     */
    CutSearch(List<String> with, List<JobBlanks.Named> jobs, List<Board> boards, Effort most) {
        this.with = List.copyOf(with);
        this.jobs = List.copyOf(jobs);
        this.boards = List.copyOf(boards);
        this.order = JobBlanks.order(jobs, boards);
        this.most = most;
    }

    /** Whether it cuts the same blanks out of the same boards. */
    boolean isOf(CuttingOrder asked) {
        return order.equals(asked);
    }

    /** The other jobs that are sawn along. */
    List<String> with() {
        return with;
    }

    /**
     * Searches until proven, stopped, or out of steps or time.
     *
     * @param keep what is done with what was found, before anybody hears that it is done
     */
    void run(Consumer<FoundCut> keep) {
        work.run(() -> {
            CuttingPlan plan = JobBlanks.plan(jobs, boards, this);
            Ending ended = plan.proven() && plan.longestProven() ? Ending.PROOF : cause();
            keep.accept(new FoundCut(with, ended, CutRecord.of(plan)));
            return plan;
        });
    }

    @Override
    public boolean spent() {
        return work.isStopped() || most.spent();
    }

    @Override
    public boolean spentAfter(int asks) {
        return work.isStopped() || most.spentAfter(asks);
    }

    @Override
    public Ending cause() {
        return work.isStopped() ? Ending.STOPPED : most.cause();
    }

    @Override
    public void report(Progress told) {
        progress = LongWork.words(told);
    }

    @Override
    public Effort share(double share) {
        Effort part = most.share(share);
        CutSearch whole = this;
        return new Effort() {
            @Override
            public boolean spent() {
                return whole.work.isStopped() || part.spent();
            }

            @Override
            public boolean spentAfter(int asks) {
                return whole.work.isStopped() || part.spentAfter(asks);
            }

            @Override
            public Ending cause() {
                return whole.work.isStopped() ? Ending.STOPPED : part.cause();
            }

            @Override
            public void report(Progress told) {
                whole.report(told);
            }
        };
    }

    void stop() {
        work.stop();
    }

    boolean isStopped() {
        return work.isStopped();
    }

    /** How far it has come, in words. */
    String progress() {
        return "%d s, %s".formatted(work.seconds(), progress);
    }

    boolean await(long milliseconds) {
        return work.await(milliseconds);
    }

    boolean isDone() {
        return work.isDone();
    }

    /** What was found; empty while it runs. A fault in the search is thrown here. */
    Optional<CuttingPlan> found() {
        return work.found();
    }
}
