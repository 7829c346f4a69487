package turnalike.cli.kit;

import java.util.Optional;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.effort.Progress;

/** Effort by the clock, which only the outer layers have, ended sooner by whoever waits. */
public final class Deadline implements Effort {
    private final long end;
    private final Optional<ConsoleProgress> waiter;

    private Deadline(long end, Optional<ConsoleProgress> waiter) {
        this.end = end;
        this.waiter = waiter;
    }

    public static Deadline inSeconds(double seconds) {
        return new Deadline(System.nanoTime() + (long) (seconds * 1e9), Optional.empty());
    }

    public static Deadline inSeconds(double seconds, ConsoleProgress waiter) {
        return new Deadline(System.nanoTime() + (long) (seconds * 1e9), Optional.of(waiter));
    }

    @Override
    public Effort share(double share) {
        long now = System.nanoTime();
        return new Deadline(now + (long) (Math.max(0, end - now) * share), waiter);
    }

    @Override
    public boolean spent() {
        return System.nanoTime() - end >= 0
                || (waiter.isPresent() && waiter.get().hasEnough());
    }

    @Override
    public Ending cause() {
        boolean stopped = waiter.isPresent() && waiter.get().hasEnough();
        return stopped && System.nanoTime() - end < 0 ? Ending.STOPPED : Ending.SECONDS;
    }

    @Override
    public void report(Progress progress) {
        waiter.ifPresent(each -> each.show(progress));
    }
}
