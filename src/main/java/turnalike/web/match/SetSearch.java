package turnalike.web.match;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.effort.Progress;
import turnalike.job.Job;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.pieces.MatchJob;
import turnalike.job.set.SetMatch;
import turnalike.pieces.Piece;
import turnalike.web.kit.LongWork;

/** One search for a set, while it runs and after. Used by several threads. */
public final class SetSearch implements Effort {
    private final JobText text;
    private final Job searched;
    private final List<Piece> pieces;
    private final int seconds;
    private final boolean strict;
    private final Effort steps;
    private final LongWork<SetMatch> work = new LongWork<>();
    private volatile String progress = "looking";

    /** @param steps what else may end it, before its seconds are over */
    SetSearch(KeptJob kept, int seconds, boolean strict, Effort steps) {
        this(kept, kept.text().job(), seconds, strict, steps);
    }

    /** @param searched the job as it is searched, where that is not as it stands: what is placed by hand may be let go again */
    SetSearch(KeptJob kept, Job searched, int seconds, boolean strict, Effort steps) {
        this.steps = steps;
        this.searched = searched;
        this.text = kept.text();
        this.pieces = listed(kept);
        this.seconds = seconds;
        this.strict = strict;
    }

    private static List<Piece> listed(KeptJob kept) {
        return kept.pieces().stream().map(KeptPiece::piece).toList();
    }

    /** Whether it is about the job as it stands now. */
    boolean isOf(KeptJob kept) {
        return text.equals(kept.text()) && pieces.equals(listed(kept));
    }

    List<Piece> pieces() {
        return pieces;
    }

    int seconds() {
        return seconds;
    }

    /** Searches until proven, stopped, or out of time. */
    void run() {
        work.run(() -> MatchJob.of(searched, pieces, strict, this));
    }

    @Override
    public boolean spent() {
        return work.isStopped() || work.elapsed() > TimeUnit.SECONDS.toNanos(seconds) || steps.spent();
    }

    @Override
    public boolean spentAfter(int asks) {
        return work.isStopped() || work.elapsed() > TimeUnit.SECONDS.toNanos(seconds) || steps.spentAfter(asks);
    }

    @Override
    public Ending cause() {
        if (work.isStopped()) {
            return Ending.STOPPED;
        }
        return work.elapsed() > TimeUnit.SECONDS.toNanos(seconds) ? Ending.SECONDS : steps.cause();
    }

    @Override
    public void report(Progress told) {
        progress = LongWork.words(told);
    }

    @Override
    public Effort share(double share) {
        long left = Math.max(0, TimeUnit.SECONDS.toNanos(seconds) - work.elapsed());
        long end = work.elapsed() + (long) (share * left);
        SetSearch whole = this;
        return new Effort() {
            @Override
            public boolean spent() {
                return whole.spent() || work.elapsed() > end;
            }

            @Override
            public Ending cause() {
                return work.isStopped() || work.elapsed() <= end ? whole.cause() : Ending.SECONDS;
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

    /** How far it has come, in words. */
    String progress() {
        return "%d of %d s, %s".formatted(work.seconds(), seconds, progress);
    }

    boolean await(long milliseconds) {
        return work.await(milliseconds);
    }

    boolean isDone() {
        return work.isDone();
    }

    /** What was found; empty while it runs. A fault in the search is thrown here. */
    Optional<SetMatch> found() {
        return work.found();
    }
}
