package turnalike.web.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobText;
import turnalike.settings.DividerOutcome;
import turnalike.settings.DividerPlan;
import turnalike.settings.DividerProblem;
import turnalike.settings.Dividers;

/**
 * What follows from each text, kept while it is likely to be asked for again. Only the divider search takes longer than an instant: a page
 * is answered with what a moment finds, and asks again for the rest. What was found for some marks serves every text that has the same
 * ones: a diameter changed does not begin the search anew. May be used by several threads.
 */
public final class PlanCache {
    /** Enough for most patterns to be proven; a person waits while already looking at the drawing. */
    private static final long PATIENCE_MS = 4_000;

    private static final int KEPT = 64;

    private final Map<JobText, CompletableFuture<Plan>> plans = recent();
    private final Map<DividerProblem, DividerOutcome> searched = recent();
    /** How often each job was asked about; one person's page never ends the search for another's job. */
    private final Map<JobId, Long> asked = new ConcurrentHashMap<>();

    private static <K, V> Map<K, V> recent() {
        return new LinkedHashMap<>(KEPT, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > KEPT;
            }
        };
    }

    /** Begins on a text that will be asked for in a moment, beside whatever else goes on: while it is written to disk, say. */
    public CompletableFuture<Plan> ahead(JobId job, JobText text) {
        asked.merge(job, 1L, Long::sum);
        return begun(text);
    }

    private CompletableFuture<Plan> begun(JobText text) {
        synchronized (plans) {
            return plans.computeIfAbsent(
                    text, each -> CompletableFuture.supplyAsync(() -> Plan.of(each.job(), this::atOnce)));
        }
    }

    /** What an earlier search found, or else what one finds before it asks how long it may go on. */
    private DividerOutcome atOnce(DividerProblem problem) {
        return found(problem).orElseGet(() -> Dividers.solve(problem, () -> true));
    }

    private Optional<DividerOutcome> found(DividerProblem problem) {
        synchronized (searched) {
            return Optional.ofNullable(searched.get(problem));
        }
    }

    /** The plan now; its settings may not be the fewest yet, see {@link #isFinal}. */
    public Plan now(JobId job, JobText text) {
        return ahead(job, text).join();
    }

    /** Whether nothing better will come for this plan. */
    public boolean isFinal(Plan plan) {
        DividerPlan dividers = plan.settings().dividers();
        return dividers.tiesProven()
                || found(plan.dividerProblem())
                        .flatMap(DividerOutcome::findPlan)
                        .filter(dividers::equals)
                        .isPresent();
    }

    /**
     * The plan after some seconds of search; ended early by the job's next edit, so that an old text's search never slows a new one's.
     */
    public Plan patient(JobId job, JobText text) {
        Plan quick = begun(text).join();
        if (isFinal(quick)) {
            return quick;
        }
        long turn = turn(job);
        Effort time = within(PATIENCE_MS);
        DividerOutcome best = Dividers.solve(quick.dividerProblem(), () -> time.spent() || turn(job) != turn);
        if (turn(job) == turn) {
            keep(quick.dividerProblem(), best);
        }
        return Plan.of(text.job(), problem -> best);
    }

    private long turn(JobId job) {
        return asked.getOrDefault(job, 0L);
    }

    private static Effort within(long milliseconds) {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(milliseconds);
        return () -> System.nanoTime() - end > 0;
    }

    /** Keeps what a search found; plans that were made without it are made anew when they are asked for. */
    private void keep(DividerProblem problem, DividerOutcome best) {
        synchronized (searched) {
            searched.put(problem, best);
        }
        synchronized (plans) {
            plans.clear();
        }
    }
}
