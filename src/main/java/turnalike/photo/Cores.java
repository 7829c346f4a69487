package turnalike.photo;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

/**
 * Work that the machine's cores share, in Java's common pool. What is handed over must not hang on which thread does it or in what order, so that a
 * trace comes out the same to the last bit on one core and on many.
 */
final class Cores {
    /** So many parts: enough that no core waits long for another's last, few enough that handing them out costs nothing. */
    private static final int PARTS = 16;

    private Cores() {}

    /** Does all of some pieces of work; whoever is done with one takes the next. */
    static void each(int count, IntConsumer work) {
        AtomicInteger next = new AtomicInteger();
        Runnable some = () -> {
            for (int k = next.getAndIncrement(); k < count; k = next.getAndIncrement()) {
                work.accept(k);
            }
        };
        List<ForkJoinTask<?>> others = new ArrayList<>();
        for (int k = Math.min(count - 1, ForkJoinPool.getCommonPoolParallelism()); k > 0; k--) {
            others.add(ForkJoinTask.adapt(some).fork());
        }
        some.run();
        // One that nobody has begun by now is done here, and finds nothing left.
        others.forEach(ForkJoinTask::join);
    }

    /** A stretch of numbers, from the first to before the end. */
    interface Part {
        void of(int from, int end);
    }

    /** Does the numbers from 0 to below a count in parts, in each of them one after the other. */
    static void parts(int count, Part work) {
        int parts = Math.min(PARTS, count);
        each(parts, k -> work.of((int) ((long) count * k / parts), (int) ((long) count * (k + 1) / parts)));
    }

    /** What is worked out, or why it cannot be. */
    interface Work<T> {
        T done() throws Unsure;
    }

    /** Begins something beside what its caller goes on with; {@link Work#done} of what is returned waits for it. */
    static <T> Work<T> begin(Work<T> work) {
        ForkJoinTask<Work<T>> task =
                ForkJoinTask.<Work<T>>adapt(() -> held(work)).fork();
        return () -> task.join().done();
    }

    /** Does something at once; what came of it, be it why nothing could, is told by {@link Work#done} of what is returned. */
    static <T> Work<T> held(Work<T> work) {
        try {
            T result = work.done();
            return () -> result;
        } catch (Unsure unsure) {
            return () -> {
                throw unsure;
            };
        }
    }
}
