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
    private final Transaction transaction;
    private boolean writing;
    private final Queue<Waiting<?>> queue = new ConcurrentLinkedQueue<>();

    /**
     * @param turn held by whoever uses the connection
     * @param transaction on it
     */
    WriteQueue(ReentrantLock turn, Transaction transaction) {
        this.turn = turn;
        this.transaction = transaction;
    }

    /** Tells SQLite in its own words. */
    record InWords(Consumer<String> sql) implements Transaction {
        @Override
        public void begin() {
            sql.accept("BEGIN IMMEDIATE");
        }

        @Override
        public void commit() {
            sql.accept("COMMIT");
        }

        @Override
        public void rollBack() {
            WriteQueue.rollBack(sql);
        }

        @Override
        public void say(String statement) {
            sql.accept(statement);
        }
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

        void beginAgain() {
            result = Optional.empty();
            failure = Optional.empty();
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
            while (!kept) {
                kept = attempt(batch);
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

    /** False when it is to be made again. */
    private boolean attempt(List<Waiting<?>> batch) {
        try {
            transact(batch);
            return true;
        } catch (RuntimeException trouble) {
            switch (transaction.ending(trouble)) {
                case KEPT -> {
                    return true;
                }
                case TO_BE_MADE_AGAIN -> {
                    batch.forEach(Waiting::beginAgain);
                    return false;
                }
                case REFUSED -> {}
            }
            throw trouble;
        }
    }

    private void transact(List<Waiting<?>> batch) {
        boolean kept = false;
        transaction.begin();
        writing = true;
        try {
            batch.forEach(this::oneOf);
            transaction.commit();
            kept = true;
        } finally {
            writing = false;
            if (!kept) {
                transaction.rollBack();
            }
        }
    }

    /** What one work throws takes back its own changes and leaves the others'. */
    private void oneOf(Waiting<?> each) {
        transaction.mark();
        try {
            each.run();
        } catch (RuntimeException refused) {
            each.fail(refused);
            takeBackOne(refused);
        }
        transaction.forgetMark();
    }

    /** Fails when SQLite has taken everything back by itself, on a full disk for one: then nobody's is kept, for that reason. */
    private void takeBackOne(RuntimeException refused) {
        try {
            transaction.backToMark();
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
            // SQLite does so by itself after a full disk or a failed write; the trouble that led here is already on
            // its way.
            return;
        }
    }
}
