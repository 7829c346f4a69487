package turnalike.store;

import java.security.SecureRandom;
import turnalike.job.kept.JobId;

/** Draws ids of sixty random bits: of a million jobs, no two alike with a chance of more than 999 999 in a million. */
final class JobIds {
    private final SecureRandom random = new SecureRandom();

    /** An id that no job here has. */
    JobId draw(Ledger ledger) {
        JobId id = JobId.of(random.ints(12).toArray());
        return ledger.has(id) ? draw(ledger) : id;
    }
}
