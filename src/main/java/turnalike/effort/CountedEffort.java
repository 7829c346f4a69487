package turnalike.effort;

import java.util.concurrent.atomic.AtomicLong;

/** So many asks; a share of them counts against the whole. */
final class CountedEffort implements Effort {
    private final AtomicLong left;

    CountedEffort(long asks) {
        left = new AtomicLong(asks);
    }

    @Override
    public boolean spent() {
        return left.getAndDecrement() <= 0;
    }

    @Override
    public boolean spentAfter(int asks) {
        return left.getAndAdd(-asks) <= 0;
    }

    @Override
    public Effort share(double share) {
        CountedEffort few = new CountedEffort((long) (Math.max(0, left.get()) * share));
        return () -> few.spent() || spent();
    }
}
