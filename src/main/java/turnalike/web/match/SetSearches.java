package turnalike.web.match;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import turnalike.effort.Effort;
import turnalike.job.Job;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;

/** The last search of each job. Two run at a time, more wait; when the job or its pieces change, a search for how they were is stopped. */
final class SetSearches {
    private static final int KEPT = 32;

    private final ExecutorService workers = Executors.newFixedThreadPool(2, work -> {
        Thread thread = new Thread(work, "match");
        thread.setDaemon(true); // an unfinished search must not keep the program from ending
        return thread;
    });
    private final Map<JobId, SetSearch> last = new LinkedHashMap<>();
    private final Map<JobId, SetSearch> rest = new LinkedHashMap<>();

    /** The search for the job as it stands, if there is one. */
    synchronized Optional<SetSearch> find(KeptJob kept) {
        Optional<SetSearch> had = Optional.ofNullable(last.get(kept.id()));
        had.filter(search -> !search.isOf(kept)).ifPresent(SetSearch::stop);
        return had.filter(search -> search.isOf(kept));
    }

    /** The search that a job gets by itself: by steps, so that the page places the set that the command line does. */
    SetSearch first(KeptJob kept, int seconds) {
        return begin(kept, seconds, false, Effort.usual());
    }

    /** Begins anew, for so long; the search before it, if any, is stopped. */
    SetSearch begin(KeptJob kept, int seconds, boolean strict) {
        return begin(kept, seconds, strict, Effort.unlimited());
    }

    /** The search round what is held by hand, for the job as it stands, if there is one. */
    synchronized Optional<SetSearch> findRest(KeptJob kept) {
        Optional<SetSearch> had = Optional.ofNullable(rest.get(kept.id()));
        had.filter(search -> !search.isOf(kept)).ifPresent(SetSearch::stop);
        return had.filter(search -> search.isOf(kept));
    }

    /** Searches again what is not held; what stands by hand stays found meanwhile. */
    SetSearch beginRest(KeptJob kept, int seconds, boolean strict) {
        Job job = kept.text().job();
        Job searched = job.with(job.byHand().searched());
        return begin(rest, kept, new SetSearch(kept, searched, seconds, strict, Effort.unlimited()));
    }

    private SetSearch begin(KeptJob kept, int seconds, boolean strict, Effort steps) {
        return begin(last, kept, new SetSearch(kept, seconds, strict, steps));
    }

    private synchronized SetSearch begin(Map<JobId, SetSearch> among, KeptJob kept, SetSearch search) {
        Optional.ofNullable(among.remove(kept.id())).ifPresent(SetSearch::stop);
        among.put(kept.id(), search);
        if (among.size() > KEPT) {
            among.remove(among.keySet().iterator().next()).stop();
        }
        workers.execute(search::run);
        return search;
    }

    /** Stops all that run or wait. */
    synchronized void close() {
        Stream.of(last, rest).flatMap(each -> each.values().stream()).forEach(SetSearch::stop);
    }
}
