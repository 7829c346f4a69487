package turnalike.job.kept;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import turnalike.job.Job;
import turnalike.job.boards.JobBlanks;

/** The rough blanks of kept jobs that are sawn in one go. */
public final class KeptBlanks {
    private KeptBlanks() {}

    /**
     * {@return the job and those of these ids that are kept there and not in the bin, each with a name of its own}
     *
     * @param store where the others are
     * @param kept the job whose boards are cut
     * @param with ids of jobs that are sawn along; what is none is passed over
     */
    public static List<JobBlanks.Named> named(KeptJobs store, KeptJob kept, List<String> with) {
        List<String> files = new ArrayList<>(List.of(kept.id().text()));
        List<Job> jobs = new ArrayList<>(List.of(kept.text().job()));
        for (JobId id : others(store, kept, with)) {
            store.find(id).ifPresent(each -> {
                files.add(each.id().text());
                jobs.add(each.text().job());
            });
        }
        return JobBlanks.named(files, jobs);
    }

    private static List<JobId> others(KeptJobs store, KeptJob kept, List<String> with) {
        if (with.isEmpty()) {
            return List.of();
        }
        Set<JobId> listed = store.list().stream().map(JobCard::id).collect(Collectors.toSet());
        List<JobId> out = new ArrayList<>();
        for (String id : new LinkedHashSet<>(with)) {
            listed.stream()
                    .filter(each -> each.text().equals(id) && !each.equals(kept.id()))
                    .forEach(out::add);
        }
        return out;
    }
}
