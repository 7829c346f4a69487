package turnalike.web.job;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import turnalike.job.kept.JobText;

/** The forms of texts that were shown lately, as nobody has typed into them yet. May be used by several threads. */
final class Forms {
    private static final int KEPT = 64;

    private final Map<JobText, List<JobForm.Group>> recent = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<JobText, List<JobForm.Group>> eldest) {
            return size() > KEPT;
        }
    };

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
