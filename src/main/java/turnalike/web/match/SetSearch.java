package turnalike.web.match;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
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

/** One search for a set, while it runs and after. Used by several threads. */
public final class SetSearch implements Effort {
    private final JobText text;
    private final Job searched;
    private final List<Piece> pieces;
    private final int seconds;
    private final boolean strict;
    private final Effort steps;
    private final long began = System.nanoTime();
    private final CountDownLatch done = new CountDownLatch(1);
    private volatile boolean stopped;
    private volatile String progress = "looking";
    private volatile Optional<SetMatch> found = Optional.empty();
    private volatile Optional<RuntimeException> fault = Optional.empty();

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
        try {
            found = Optional.of(MatchJob.of(searched, pieces, strict, this));
        } catch (RuntimeException ours) {
            fault = Optional.of(ours); // thrown on where somebody is told
        } finally {
            done.countDown();
        }
    }

    @Override
    public boolean spent() {
        return stopped || elapsed() > TimeUnit.SECONDS.toNanos(seconds) || steps.spent();
    }

    @Override
    public boolean spentAfter(int asks) {
        return stopped || elapsed() > TimeUnit.SECONDS.toNanos(seconds) || steps.spentAfter(asks);
    }

    @Override
    public Ending cause() {
        if (stopped) {
            return Ending.STOPPED;
        }
        return elapsed() > TimeUnit.SECONDS.toNanos(seconds) ? Ending.SECONDS : steps.cause();
    }

    private long elapsed() {
        return System.nanoTime() - began;
    }

    @Override
    public void report(Progress told) {
        progress = String.format(
                Locale.ROOT, "%s: %.4g found, none can be below %.4g", told.what(), told.best(), told.bound());
    }

    @Override
    public Effort share(double share) {
        long left = Math.max(0, TimeUnit.SECONDS.toNanos(seconds) - elapsed());
        long end = elapsed() + (long) (share * left);
        SetSearch whole = this;
        return new Effort() {
            @Override
            public boolean spent() {
                return whole.spent() || elapsed() > end;
            }

            @Override
            public Ending cause() {
                return stopped || elapsed() <= end ? whole.cause() : Ending.SECONDS;
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

    /** How far it has come, in words. */
    String progress() {
        return "%d of %d s, %s".formatted(TimeUnit.NANOSECONDS.toSeconds(elapsed()), seconds, progress);
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
    Optional<SetMatch> found() {
        fault.ifPresent(ours -> {
            throw ours;
        });
        return found;
    }
}
