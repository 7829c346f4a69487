package turnalike.store;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import turnalike.job.kept.StoreException;

/** Whether a file was looked through, the whole of it, and found as it was written. Nothing is written before that is known. */
final class Soundness {
    private final CompletableFuture<Void> looked;

    private Soundness(CompletableFuture<Void> looked) {
        this.looked = looked;
    }

    /** Looks through it now; {@link StoreException} with the first thing wrong. */
    static Soundness of(Database db, Schema schema) {
        new Examination(db, schema).require();
        return known();
    }

    /** Of a file that was looked through, or of one to which nothing can be written. */
    static Soundness known() {
        return new Soundness(CompletableFuture.completedFuture(null));
    }

    /**
     * Begins to look through it beside whatever else goes on, on a connection of its own.
     *
     * @param then done where it was found sound, before the first write
     */
    static <D extends Database> Soundness begin(
            Supplier<D> open, Schema schema, Consumer<D> then, StoreFile.Looked told) {
        CompletableFuture<Void> looked = new CompletableFuture<>();
        Thread thread = new Thread(
                () -> {
                    long began = System.nanoTime();
                    try (D db = open.get()) {
                        new Examination(db, schema).require();
                        then.accept(db);
                        looked.complete(null);
                        told.through(Duration.ofNanos(System.nanoTime() - began), Optional.empty());
                    } catch (StoreException damaged) {
                        looked.completeExceptionally(damaged);
                        told.through(Duration.ofNanos(System.nanoTime() - began), Optional.of(damaged.problem()));
                    } finally {
                        looked.cancel(false); // a fault of ours: nobody waits for ever, and nothing is written
                    }
                },
                "store check");
        thread.setDaemon(true);
        thread.start();
        return new Soundness(looked);
    }

    /** Waits until it is known; {@link StoreException} with what is wrong, each time. */
    void require() {
        try {
            looked.join();
        } catch (CancellationException fault) {
            throw new IllegalStateException("the store could not be looked through", fault);
        } catch (CompletionException failed) {
            if (failed.getCause() instanceof StoreException damaged) {
                throw new StoreException(damaged.problem(), damaged);
            }
            throw failed;
        }
    }
}
