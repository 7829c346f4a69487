package turnalike.cli.kit;

import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.effort.Progress;

/**
 * Effort by a fixed count of steps, about a second of work: the same input then gives the same answer however fast the machine and however
 * busy. Ended sooner only by whoever waits.
 */
public final class Steps implements Effort {
    private final Effort counted;
    private final ConsoleProgress waiter;

    private Steps(Effort counted, ConsoleProgress waiter) {
        this.counted = counted;
        this.waiter = waiter;
    }

    /** The usual count. */
    public static Effort usual(ConsoleProgress waiter) {
        return new Steps(Effort.usual(), waiter);
    }

    /** A count of its own, where the usual one is not what the search needs. */
    public static Effort ofAsks(long asks, ConsoleProgress waiter) {
        return new Steps(Effort.ofAsks(asks), waiter);
    }

    @Override
    public boolean spent() {
        return counted.spent() || waiter.hasEnough();
    }

    @Override
    public boolean spentAfter(int asks) {
        return counted.spentAfter(asks) || waiter.hasEnough();
    }

    @Override
    public Ending cause() {
        return waiter.hasEnough() ? Ending.STOPPED : counted.cause();
    }

    @Override
    public Effort share(double share) {
        return new Steps(counted.share(share), waiter);
    }

    @Override
    public void report(Progress progress) {
        waiter.show(progress);
    }
}
