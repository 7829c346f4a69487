package turnalike.web.kit;

import java.util.Optional;
import turnalike.job.kept.KeptJob;

/**
 * What can be taken back and brought again on any tab of a job.
 *
 * @param address the job's pages'
 * @param undo the last edit, in its own words; empty when there is none
 * @param redo the one taken back last
 * @param version how many steps the job had when the tab was made
 */
public record JobSteps(String address, Optional<String> undo, Optional<String> redo, int version) {
    /** {@return those of a job as it stands} */
    public static JobSteps of(KeptJob kept) {
        return new JobSteps(
                JobAddress.address(kept.id()),
                kept.undo(),
                kept.redo(),
                kept.times().steps());
    }
}
