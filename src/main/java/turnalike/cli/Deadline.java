package turnalike.cli;

import turnalike.effort.Effort;

/** Effort by the clock, which only the outer layers have. */
final class Deadline implements Effort {
    private final long end;

    private Deadline(long end) {
        this.end = end;
    }

    static Deadline inSeconds(double seconds) {
        return new Deadline(System.nanoTime() + (long) (seconds * 1e9));
    }

    @Override
    public Effort share(double share) {
        long now = System.nanoTime();
        return new Deadline(now + (long) (Math.max(0, end - now) * share));
    }

    @Override
    public boolean spent() {
        return System.nanoTime() - end >= 0;
    }
}
