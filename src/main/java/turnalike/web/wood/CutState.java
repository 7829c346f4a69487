package turnalike.web.wood;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import turnalike.effort.Ending;
import turnalike.job.FoundCut;
import turnalike.job.boards.JobBlanks;
import turnalike.job.kept.KeptBlanks;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptJobs;
import turnalike.stock.boards.CuttingOrder;
import turnalike.stock.boards.CuttingPlan;

/**
 * How a job's boards are cut, as it is kept with the job, and which other jobs are sawn along.
 *
 * @param jobs whose blanks are cut out of the boards: the job itself first
 * @param plan how they are cut; empty while that is not found, or not for the blanks and boards as they are now
 * @param ended what ended the search for it
 * @param isOutOfDate whether something was found, but for other blanks, boards or sawing
 * @param choices other jobs that can be sawn along
 */
public record CutState(
        List<JobBlanks.Named> jobs,
        Optional<CuttingPlan> plan,
        Optional<Ending> ended,
        boolean isOutOfDate,
        List<Choice> choices) {
    /** As many of the jobs changed last are offered. */
    private static final int MOST_OFFERED = 12;

    /**
     * Another kept job.
     *
     * @param id its id
     * @param title the turner's own
     * @param chosen whether it was sawn along last
     */
    public record Choice(String id, String title, boolean chosen) {}

    public CutState {
        jobs = List.copyOf(jobs);
        choices = List.copyOf(choices);
    }

    static CutState of(KeptJobs store, KeptJob kept) {
        Optional<FoundCut> found = kept.text().job().shop().cut();
        List<String> with = found.map(FoundCut::with).orElse(List.of());
        List<JobBlanks.Named> jobs = KeptBlanks.named(store, kept, with);
        Optional<CuttingPlan> plan = found.flatMap(each -> each.cutting().on(order(kept, jobs)));
        return new CutState(
                jobs,
                plan,
                found.map(FoundCut::ended),
                found.isPresent() && plan.isEmpty(),
                choices(store, kept, new LinkedHashSet<>(with)));
    }

    /** What is cut out of the job's own boards. */
    static CuttingOrder order(KeptJob kept, List<JobBlanks.Named> jobs) {
        return JobBlanks.order(jobs, kept.text().job().shop().boards());
    }

    private static List<Choice> choices(KeptJobs store, KeptJob kept, Set<String> with) {
        List<Choice> out = new ArrayList<>();
        int offered = 0;
        for (var card : store.list()) {
            boolean chosen = with.contains(card.id().text());
            if (!card.id().equals(kept.id()) && (chosen || offered < MOST_OFFERED)) {
                out.add(new Choice(card.id().text(), card.title(), chosen));
                offered++;
            }
        }
        return out;
    }

    /** Whose blanks are cut besides the job's own, by their titles. */
    List<String> along() {
        return choices.stream().filter(Choice::chosen).map(Choice::title).toList();
    }
}
