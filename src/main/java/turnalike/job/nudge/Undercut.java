package turnalike.job.nudge;

import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.effort.Progress;

/**
 * The effort of a search that is asked one thing only: whether fewer openings do. It is spent as soon as that is settled either way, though
 * not which plan of so many is the best; that is looked for when the nudge is taken.
 */
final class Undercut implements Effort {
    private final Effort whole;
    private final int before;
    private volatile boolean settled;

    Undercut(Effort whole, int before) {
        this.whole = whole;
        this.before = before;
    }

    @Override
    public boolean spent() {
        return settled || whole.spent();
    }

    @Override
    public Ending cause() {
        return settled ? Ending.STOPPED : whole.cause();
    }

    /** Most changes save nothing, and mostly the proof of that takes a tenth of the annealing that would go before it. */
    @Override
    public boolean wantsProofAlone() {
        return true;
    }

    @Override
    public void report(Progress progress) {
        settled |= progress.bound() >= before || progress.best() < before;
    }
}
