package turnalike.job.kept;

import java.util.List;
import turnalike.units.Problem;

/**
 * What a check of a whole store found.
 *
 * @param jobs how many jobs can be read, each with all of its history
 * @param pieces how many pieces those jobs have
 * @param faults everything found wrong, in order; none in a sound store
 */
public record StoreReport(int jobs, int pieces, List<Problem> faults) {
    public StoreReport {
        faults = List.copyOf(faults);
    }

    /** {@return whether nothing was found wrong} */
    public boolean sound() {
        return faults.isEmpty();
    }
}
