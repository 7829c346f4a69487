package turnalike.web.copy;

import java.util.List;
import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.effort.Progress;
import turnalike.job.kept.KeptJob;
import turnalike.job.original.OriginalTrace;
import turnalike.job.pieces.AgainstReport;
import turnalike.photo.PhotoCopy;
import turnalike.trace.Traced;
import turnalike.trace.against.Against;
import turnalike.trace.against.Comparison;
import turnalike.units.Problem;
import turnalike.web.kit.LongWork;

/** One original while it is traced and after. Used by several threads. */
public final class CopyRun implements Effort {
    private final String id;
    private final SentOriginal sent;
    private final OriginalForm form;
    private final Optional<KeptJob> against;
    private final LongWork<OriginalTrace> work = new LongWork<>();
    private volatile String stage = "waiting for its turn";
    private volatile Optional<PhotoCopy> copy = Optional.empty();
    private volatile Optional<AgainstReport> report = Optional.empty();

    /**
     * @param form what was typed
     * @param against the job that a finished piece is held against
     */
    CopyRun(String id, SentOriginal sent, OriginalForm form, Optional<KeptJob> against) {
        this.id = id;
        this.sent = sent;
        this.form = form;
        this.against = against;
    }

    String id() {
        return id;
    }

    SentOriginal sent() {
        return sent;
    }

    OriginalForm form() {
        return form;
    }

    Optional<KeptJob> against() {
        return against;
    }

    void run() {
        work.run(this::made);
    }

    private OriginalTrace made() {
        try {
            if (sent.isPhotograph() && !work.isStopped()) {
                stage = "reading the picture";
                copy = PhotoCopy.of(sent.bytes());
            }
            Optional<OriginalTrace> found = work.isStopped() ? Optional.empty() : Optional.of(begin());
            if (!work.isStopped()) {
                found.flatMap(OriginalTrace::traced).ifPresent(this::hold);
            }
            return found.filter(each -> !work.isStopped())
                    .orElseGet(() -> refused("it was stopped before the end", "try again"));
        } catch (OutOfMemoryError tooLarge) {
            copy = Optional.empty();
            return refused("it takes more memory than the program has", "make the picture smaller");
        }
    }

    private OriginalTrace begin() {
        stage = sent.isPhotograph() ? stage : "finding the members";
        return sent.trace(this);
    }

    private void hold(Traced traced) {
        against.ifPresent(kept -> {
            stage = "holding it against the pattern";
            boolean photograph = sent.isPhotograph();
            Against.Manner manner = new Against.Manner(
                    form.byEnd() ? Comparison.Held.END : Comparison.Held.START, photograph, !photograph);
            report = Optional.of(AgainstReport.of(
                    kept.text().job(),
                    traced.original(),
                    manner,
                    form.piece(),
                    !photograph || form.hasSpan() || !asPattern(kept, traced),
                    kept.text().job().units()));
        });
    }

    /** As long as the pattern to the last digit: taken from it, for want of a span and a sheet. */
    private static boolean asPattern(KeptJob kept, Traced traced) {
        return kept.text()
                .job()
                .pattern()
                .length()
                .equals(traced.original().profile().length());
    }

    private OriginalTrace refused(String what, String mend) {
        return new OriginalTrace(Optional.empty(), Optional.empty(), List.of(new Problem(sent.name(), what, mend)));
    }

    @Override
    public boolean spent() {
        return work.isStopped();
    }

    @Override
    public Ending cause() {
        return Ending.STOPPED;
    }

    @Override
    public void report(Progress told) {
        stage = told.what();
    }

    void stop() {
        work.stop();
    }

    String progress() {
        return "%s, %d s".formatted(stage, work.seconds());
    }

    boolean await(long milliseconds) {
        return work.await(milliseconds);
    }

    boolean isDone() {
        return work.isDone();
    }

    /** The photograph made small, once it is. */
    Optional<PhotoCopy> copy() {
        return copy;
    }

    /** What came of it; empty while it runs. A fault of ours is thrown here. */
    Optional<OriginalTrace> trace() {
        return work.found();
    }

    Optional<Traced> traced() {
        return trace().flatMap(OriginalTrace::traced);
    }

    Optional<AgainstReport> report() {
        return report;
    }
}
