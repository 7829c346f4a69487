package turnalike.web.job;

import java.util.List;
import java.util.Map;
import turnalike.job.kept.JobText;
import turnalike.web.kit.Recent;

/** The forms of texts that were shown lately, as nobody has typed into them yet. May be used by several threads. */
final class Forms {
    private static final int KEPT = 64;

    private final Map<JobText, List<JobForm.Group>> recent = Recent.of(KEPT);

    List<JobForm.Group> of(JobText text) {
        synchronized (recent) {
            List<JobForm.Group> had = recent.get(text);
            if (had != null) {
                return had;
            }
        }
        List<JobForm.Group> made = JobForm.of(text);
        synchronized (recent) {
            recent.put(text, made);
        }
        return made;
    }
}
