package turnalike.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Supplier;
import turnalike.job.kept.StoreException;

/**
 * Writes that wait together, made in one transaction: the disk takes as long for twenty edits as for one. Each is all there or not at all
 * by itself, and none is told done before the disk has it.
 */
final class WriteQueue {
    /** Those before a reader are soon done. */
    private static final int MOST_TOGETHER = 32;

    private final ReentrantLock turn;
    private final Consumer<String> sql;
    private boolean writing;
    private final Queue<Waiting<?>> queue = new ConcurrentLinkedQueue<>();

    /**
     * @param turn held by whoever uses the connection
     * @param sql runs one statement on it
     */
    WriteQueue(ReentrantLock turn, Consumer<String> sql) {
        this.turn = turn;
        this.sql = sql;
    }

    /** One piece of work, and what came of it. Every field is read and written by who has the turn. */
    private static final class Waiting<T> {
        private final Supplier<T> work;
        private Optional<T> result = Optional.empty();
        private Optional<RuntimeException> failure = Optional.empty();
        private boolean done;
        private boolean kept;

        Waiting(Supplier<T> work) {
            this.work = work;
        }

        void run() {
            result = Optional.of(work.get());
        }

        void fail(RuntimeException why) {
            failure = Optional.of(why);
        }

        T told() {
            failure.ifPresent(why -> {
                throw why;
            });
            return result.filter(each -> kept)
                    .orElseThrow(() -> new IllegalStateException("a write that waited beside this one broke off"));
        }
    }

    /** Does the work, alone or with what waits beside it; returns once it is on disk. What the work throws is thrown on. */
    <T> T write(Supplier<T> work) {
        Waiting<T> mine = new Waiting<>(work);
        queue.add(mine);
        turn.lock();
        try {
            while (!mine.done) {
                together(taken());
            }
            return mine.told();
        } finally {
            turn.unlock();
        }
    }

    /** Whether who asks, having the turn, is in the middle of a write. */
    boolean isWriting() {
        return writing;
    }

    /** Those who came first; whoever has the turn is in the queue himself or done already. */
    private List<Waiting<?>> taken() {
        List<Waiting<?>> out = new ArrayList<>();
        for (Waiting<?> next = queue.poll(); next != null; next = out.size() < MOST_TOGETHER ? queue.poll() : null) {
            out.add(next);
        }
        return out;
    }

    private void together(List<Waiting<?>> batch) {
        boolean kept = false;
        try {
            sql.accept("BEGIN IMMEDIATE");
            writing = true;
            try {
                batch.forEach(this::oneOf);
                sql.accept("COMMIT");
                kept = true;
            } finally {
                writing = false;
                if (!kept) {
                    rollBack(sql);
                }
            }
        } catch (RuntimeException nothingKept) {
            // Also those that were refused for themselves: they changed nothing either way, and keep their own reason.
            batch.stream().filter(each -> each.failure.isEmpty()).forEach(each -> each.fail(nothingKept));
        } finally {
            for (Waiting<?> each : batch) {
                each.kept = kept;
                each.done = true;
            }
        }
    }

    /** What one work throws takes back its own changes and leaves the others'. */
    private void oneOf(Waiting<?> each) {
        sql.accept("SAVEPOINT one");
        try {
            each.run();
        } catch (RuntimeException refused) {
            each.fail(refused);
            takeBackOne(refused);
        }
        sql.accept("RELEASE one");
    }

    /** Fails when SQLite has taken everything back by itself, on a full disk for one: then nobody's is kept, for that reason. */
    private void takeBackOne(RuntimeException refused) {
        try {
            sql.accept("ROLLBACK TO one");
        } catch (StoreException | IllegalStateException allGone) {
            refused.addSuppressed(allGone);
            throw refused;
        }
    }

    /** Takes everything back that the transaction did. */
    static void rollBack(Consumer<String> sql) {
        try {
            sql.accept("ROLLBACK");
        } catch (StoreException | IllegalStateException alreadyRolledBack) {
            // SQLite does so by itself after a full disk or a failed write; the trouble that led here is already on its
            // way.
            return;
        }
    }
}
