package turnalike.web.job;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import turnalike.effort.Effort;
import turnalike.effort.Ending;
import turnalike.job.Plan;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobText;
import turnalike.job.nudge.NudgeSearch;
import turnalike.job.nudge.Nudges;
import turnalike.settings.DividerOutcome;
import turnalike.settings.DividerPlan;
import turnalike.settings.DividerProblem;
import turnalike.settings.Dividers;
import turnalike.web.kit.PageWork;
import turnalike.web.kit.Recent;

/**
 * What follows from each text, kept while it is likely to be asked for again. Only the divider search takes longer than an instant: a page
 * is answered with what a moment finds, and asks again for the rest. What was found for some marks serves every text that has the same
 * ones: a diameter changed does not begin the search anew. May be used by several threads.
 */
public final class PlanCache {
    /** Enough for most patterns to be proven; a person waits while already looking at the drawing. */
    private static final long PATIENCE_MS = 4_000;

    private static final long MOMENT_MS = 1_000;

    private static final int KEPT = 64;
    private static final int GLIMPSED = 8;

    private final PageWork work;
    private final Map<JobText, CompletableFuture<Plan>> plans = Recent.of(KEPT);
    private final Map<DividerProblem, DividerOutcome> searched = Recent.of(KEPT);
    /** What a search finds that asks no longer than an instant; a diameter typed anew asks for the same once more. */
    private final Map<DividerProblem, DividerOutcome> glanced = Recent.of(KEPT);

    /** What was looked at on the way: a handle is let go where it was looked at last. */
    private final Map<JobText, Plan> glimpses = Recent.of(GLIMPSED);

    private final Map<JobText, Sought> nudges = Recent.of(KEPT);
    private final Parts.Kept parts = new Parts.Kept();
    /** What each job's text is; one person's page never ends the search for another's job. */
    private final Map<JobId, Latest> latest = Recent.of(KEPT);

    /**
     * The text of a job that was asked for last. A search holds on to the one it began with, so that it ends for good when another text
     * takes its place, though the first come back; and goes on to its end when the job is forgotten meanwhile for others.
     */
    private static final class Latest {
        private final JobText text;
        private final Optional<JobText> before;
        private volatile boolean over;

        private Latest(JobText text) {
            this(text, Optional.empty());
        }

        /** @param before what the job's text was then */
        private Latest(JobText text, Optional<JobText> before) {
            this.text = text;
            this.before = before;
        }
    }

    /** What was found for a text, counted from these settings. */
    private record Sought(DividerPlan from, Nudges found) {}

    /** @param work where plans are made; searches go on beside it, as long as they may */
    public PlanCache(PageWork work) {
        this.work = work;
    }

    /** What was made before of pages that show what follows from them. */
    Parts.Kept parts() {
        return parts;
    }

    /** Begins on a text that will be asked for in a moment, beside whatever else goes on: while it is written to disk, say. */
    public CompletableFuture<Plan> ahead(JobId job, JobText text) {
        return begun(latest(job, text));
    }

    /** Tells that this is the job's text now: a search for another of its texts ends, one for the same text goes on. */
    private Latest latest(JobId job, JobText text) {
        synchronized (latest) {
            Latest last = latest.computeIfAbsent(job, first -> new Latest(text));
            if (last.text.equals(text)) {
                return last;
            }
            last.over = true;
            Latest now = new Latest(text, Optional.of(last.text));
            latest.put(job, now);
            return now;
        }
    }

    private CompletableFuture<Plan> begun(Latest last) {
        JobText text = last.text;
        synchronized (plans) {
            CompletableFuture<Plan> had = plans.get(text);
            if (had != null) {
                return had;
            }
            CompletableFuture<Plan> begun = last.before
                    .flatMap(before -> titled(before, text))
                    .or(() -> glimpsed(text))
                    .map(CompletableFuture::completedFuture)
                    .orElseGet(() ->
                            CompletableFuture.supplyAsync(() -> Plan.of(text.job(), this::atOnce), work.beside()));
            plans.put(text, begun);
            return begun;
        }
    }

    /** The plan that was made before, if the title alone is another now. Callers hold the plans. */
    private Optional<Plan> titled(JobText before, JobText text) {
        return Optional.ofNullable(plans.get(before))
                .filter(each -> each.isDone() && !each.isCompletedExceptionally())
                .flatMap(each -> each.join().findTitled(text.job()));
    }

    /** What follows from a text that is only looked at on the way to another: no search ends for it. */
    Plan glimpse(JobText text) {
        Plan seen = Plan.of(text.job(), this::atOnce);
        synchronized (glimpses) {
            glimpses.put(text, seen);
        }
        return seen;
    }

    /** The plan that was looked at, unless a search found another since. */
    private Optional<Plan> glimpsed(JobText text) {
        synchronized (glimpses) {
            return Optional.ofNullable(glimpses.get(text))
                    .filter(seen -> found(seen.dividerProblem()).isEmpty());
        }
    }

    /**
     * What follows from a text that stood once, after a second of search where none was made before. Not kept, and no search for the job as
     * it stands ends for it.
     */
    Plan then(JobText text) {
        Effort moment = Patience.of(MOMENT_MS, new Latest(text));
        return Plan.of(text.job(), problem -> found(problem).orElseGet(() -> Dividers.solve(problem, moment)));
    }

    /** What an earlier search found, or else what one finds before it asks how long it may go on. */
    private DividerOutcome atOnce(DividerProblem problem) {
        return found(problem).or(() -> glanced(problem)).orElseGet(() -> {
            DividerOutcome first = Dividers.solve(problem, () -> true);
            synchronized (glanced) {
                glanced.put(problem, first);
            }
            return first;
        });
    }

    private Optional<DividerOutcome> glanced(DividerProblem problem) {
        synchronized (glanced) {
            return Optional.ofNullable(glanced.get(problem));
        }
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
     * Looking at the same text again ends nothing.
     */
    public Plan patient(JobId job, JobText text) {
        Latest last = latest(job, text);
        Plan quick = begun(last).join();
        if (isFinal(quick)) {
            return quick;
        }
        DividerOutcome best = Dividers.solve(quick.dividerProblem(), Patience.of(PATIENCE_MS, last));
        if (!last.over) {
            keep(quick.dividerProblem(), best);
        }
        return Plan.of(text.job(), problem -> best);
    }

    /**
     * What would save an opening, after some seconds of search; ended early by the job's next edit. Who comes back to the same text and
     * settings is answered at once, with what was found then.
     */
    public Nudges nudges(JobId job, JobText text, Plan plan) {
        Latest last = latest(job, text);
        DividerPlan from = plan.settings().dividers();
        Optional<Sought> earlier = sought(text).filter(each -> each.from().equals(from));
        if (earlier.isPresent()) {
            return earlier.get().found();
        }
        Nudges found = NudgeSearch.of(text, plan, Patience.of(PATIENCE_MS, last));
        if (!last.over) {
            synchronized (nudges) {
                nudges.put(text, new Sought(from, found));
            }
        }
        return found;
    }

    private Optional<Sought> sought(JobText text) {
        synchronized (nudges) {
            return Optional.ofNullable(nudges.get(text));
        }
    }

    /** So long by the clock, and no longer than the job's text is the one it was begun for. */
    private record Patience(long end, Latest last) implements Effort {
        static Patience of(long milliseconds, Latest last) {
            return new Patience(System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(milliseconds), last);
        }

        @Override
        public boolean spent() {
            return System.nanoTime() - end > 0 || last.over;
        }

        @Override
        public Ending cause() {
            return last.over ? Ending.STOPPED : Ending.SECONDS;
        }

        @Override
        public Effort share(double share) {
            long now = System.nanoTime();
            return new Patience(now + (long) (Math.max(0, end - now) * share), last);
        }
    }

    /** Keeps what a search found; plans that were, or may be being, made without it are made anew when they are asked for. */
    private void keep(DividerProblem problem, DividerOutcome best) {
        synchronized (searched) {
            searched.put(problem, best);
        }
        synchronized (plans) {
            plans.values()
                    .removeIf(each -> !each.isDone() || each.isCompletedExceptionally() || answers(each, problem));
        }
    }

    private static boolean answers(CompletableFuture<Plan> made, DividerProblem problem) {
        return made.join().dividerProblem().equals(problem);
    }
}
