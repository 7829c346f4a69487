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
    public Ending cause() {
        return Ending.STEPS;
    }

    @Override
    public Effort share(double share) {
        return new Share(new CountedEffort((long) (Math.max(0, left.get()) * share)), this);
    }

    /** What counts against both. */
    private record Share(CountedEffort few, CountedEffort whole) implements Effort {
        @Override
        public boolean spent() {
            return few.spent() || whole.spent();
        }

        @Override
        public Ending cause() {
            return Ending.STEPS;
        }
    }
}
