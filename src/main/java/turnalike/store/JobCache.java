package turnalike.store;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import turnalike.job.kept.JobId;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.Step;

/**
 * The jobs used last, as they stood, so that an edit need not read a job's whole history again. Another process may write to the file at
 * any time: what is remembered counts only while the last step's seal is the same. Callers hold the transaction.
 */
final class JobCache {
    private static final int KEPT = 16;

    private final Ledger ledger;
    private final Map<JobId, Sealed> latest = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<JobId, Sealed> eldest) {
            return size() > KEPT;
        }
    };

    private record Sealed(String seal, KeptJob job) {}

    JobCache(Ledger ledger) {
        this.ledger = ledger;
    }

    /** The job as it stands; empty when there is none of that name. */
    Optional<KeptJob> find(JobId id) {
        Optional<String> seal = ledger.lastSeal(id);
        Sealed had = latest.get(id);
        if (had != null && seal.filter(had.seal()::equals).isPresent()) {
            return Optional.of(had.job());
        }
        if (!ledger.has(id)) {
            return Optional.empty();
        }
        KeptJob job = ledger.kept(id);
        seal.ifPresent(each -> latest.put(id, new Sealed(each, job)));
        return Optional.of(job);
    }

    /** Goes on by a step that was just written to the job as it stood. */
    void goOn(KeptJob before, Step step, Ledger.Appended written) {
        before.after(step, written.first()).ifPresent(job -> latest.put(job.id(), new Sealed(written.seal(), job)));
    }
}
