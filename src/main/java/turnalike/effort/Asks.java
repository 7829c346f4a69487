package turnalike.effort;

import java.util.concurrent.atomic.AtomicLong;

/** So many asks; a share of them counts against the whole. */
final class Asks implements Effort {
    private final AtomicLong left;

    Asks(long asks) {
        left = new AtomicLong(asks);
    }

    @Override
    public boolean spent() {
        return left.getAndDecrement() <= 0;
    }

    @Override
    public Effort share(double share) {
        Asks few = new Asks((long) (Math.max(0, left.get()) * share));
        return () -> few.spent() || spent();
    }
}
