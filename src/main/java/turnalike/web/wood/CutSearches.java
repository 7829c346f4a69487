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
import turnalike.job.boards.JobBlanks;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;

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

    static List<JobBlanks.Named> named(KeptJob kept) {
        return JobBlanks.named(List.of("job"), List.of(kept.text().job()));
    }

    /** The search for the blanks and boards as they stand, if there is one; one for how they were is stopped. */
    synchronized Optional<CutSearch> find(KeptJob kept) {
        Optional<CutSearch> had = Optional.ofNullable(last.get(kept.id()));
        if (had.isEmpty()) {
            return had;
        }
        var order = JobBlanks.order(named(kept), kept.text().job().shop().boards());
        had.filter(search -> !search.isOf(order)).ifPresent(CutSearch::stop);
        return had.filter(search -> search.isOf(order));
    }

    /** Begins anew, for so long, or by steps with 0; the search before it, if any, is stopped. */
    synchronized CutSearch begin(KeptJob kept, int seconds) {
        Optional.ofNullable(last.remove(kept.id())).ifPresent(CutSearch::stop);
        Effort most = seconds == 0 ? Effort.ofAsks(STEPS) : Seconds.of(seconds);
        CutSearch search = new CutSearch(named(kept), kept.text().job().shop().boards(), most);
        last.put(kept.id(), search);
        if (last.size() > KEPT) {
            last.remove(last.keySet().iterator().next()).stop();
        }
        worker.execute(search::run);
        return search;
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
