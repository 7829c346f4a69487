package turnalike.web.wood;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.job.FoundCut;
import turnalike.job.boards.JobBlanks;
import turnalike.job.edit.CutEdit;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptBlanks;
import turnalike.job.kept.KeptJob;
import turnalike.stock.boards.CuttingOrder;

/** The last search of each job for how its boards are cut. One runs at a time, more wait. */
final class CutSearches {
    private static final int KEPT = 32;

    /** As many as the command makes, so that both cut the same. */
    private static final long STEPS = JobBlanks.USUAL_STEPS;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "boards");
        thread.setDaemon(true); // an unfinished search must not keep the program from ending
        return thread;
    });
    private final Map<JobId, CutSearch> last = new LinkedHashMap<>();

    private final JobStore store;

    CutSearches(JobStore store) {
        this.store = store;
    }

    /** The search for the blanks and boards as they stand, if there is one; one for how they were is stopped. */
    synchronized Optional<CutSearch> find(KeptJob kept) {
        Optional<CutSearch> had = Optional.ofNullable(last.get(kept.id()));
        if (had.isEmpty()) {
            return had;
        }
        CuttingOrder order =
                CutState.order(kept, KeptBlanks.named(store, kept, had.get().with()));
        had.filter(search -> !search.isOf(order)).ifPresent(CutSearch::stop);
        return had.filter(search -> search.isOf(order));
    }

    /**
     * Begins anew; the search before it, if any, is stopped. What is found is kept with the job.
     *
     * @param kept the job
     * @param with ids of the other jobs that are sawn along
     * @param seconds how long, 0 for the usual count of steps
     */
    synchronized CutSearch begin(KeptJob kept, List<String> with, int seconds) {
        Optional.ofNullable(last.remove(kept.id())).ifPresent(CutSearch::stop);
        Effort most = seconds == 0 ? Effort.ofAsks(STEPS) : Seconds.of(seconds);
        List<JobBlanks.Named> jobs = KeptBlanks.named(store, kept, with);
        CutSearch search = new CutSearch(with, jobs, kept.text().job().shop().boards(), most);
        last.put(kept.id(), search);
        if (last.size() > KEPT) {
            last.remove(last.keySet().iterator().next()).stop();
        }
        worker.execute(() -> search.run(found -> keep(kept.id(), search, found)));
        return search;
    }

    /** Stops all that run or wait. */
    synchronized void close() {
        last.values().forEach(CutSearch::stop);
    }

    /** A cutting of what is there no more is dropped; one that is kept already makes no step. */
    private void keep(JobId id, CutSearch search, FoundCut found) {
        try {
            store.edit(id, now -> {
                boolean isNow = search.isOf(CutState.order(now, KeptBlanks.named(store, now, search.with())));
                if (!isNow
                        || now.text().job().shop().cut().filter(found::equals).isPresent()) {
                    throw new NothingToKeep();
                }
                CutEdit edit = new CutEdit(found);
                JobText text = edit.on(now.text()).text().orElseThrow();
                return Edit.of(edit.what(now.text()), Change.of(text));
            });
        } catch (NothingToKeep done) {
            // The page shows how things stand.
        }
    }

    private static final class NothingToKeep extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    /** So long by the clock. */
    private record Seconds(long end) implements Effort {
        static Seconds of(int seconds) {
            return new Seconds(System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds));
        }

        @Override
        public boolean spent() {
            return System.nanoTime() - end > 0;
        }

        @Override
        public Ending cause() {
            return Ending.SECONDS;
        }

        @Override
        public Effort share(double share) {
            long now = System.nanoTime();
            return new Seconds(now + (long) (Math.max(0, end - now) * share));
        }
    }
}
