package turnalike.web.job;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import turnalike.effort.Effort;
import turnalike.job.Plan;
import turnalike.job.kept.JobText;

/**
 * What follows from each text, kept while it is likely to be asked for again. Only the divider search takes longer than an instant: a page
 * is answered with what a moment finds, and asks again for the rest. May be used by several threads.
 */
public final class Plans {
    /** Enough for most patterns to be proven; a person waits while already looking at the drawing. */
    private static final long PATIENCE_MS = 4_000;

    private static final int KEPT = 64;

    private final Map<JobText, CompletableFuture<Plan>> quick = recent();
    private final Map<JobText, Plan> thorough = recent();
    private final AtomicLong asked = new AtomicLong();

    private static <V> Map<JobText, V> recent() {
        return new LinkedHashMap<>(KEPT, 0.75f, true) {
            private static final long serialVersionUID = 1L;

            @Override
            protected boolean removeEldestEntry(Map.Entry<JobText, V> eldest) {
                return size() > KEPT;
            }
        };
    }

    /** Begins on a text that will be asked for in a moment, beside whatever else goes on: while it is written to disk, say. */
    @SuppressWarnings("FutureReturnValueIgnored") // what goes wrong in it is thrown to whoever asks for the plan
    public void ahead(JobText text) {
        asked.incrementAndGet();
        begun(text);
    }

    /** What a search finds before it asks how long it may go on. */
    private CompletableFuture<Plan> begun(JobText text) {
        synchronized (quick) {
            return quick.computeIfAbsent(
                    text, each -> CompletableFuture.supplyAsync(() -> Plan.of(each.job(), () -> true)));
        }
    }

    /** The plan now; its settings may not be the fewest yet, see {@link #isFinal}. */
    public Plan now(JobText text) {
        asked.incrementAndGet();
        return find(thorough, text).orElseGet(() -> begun(text).join());
    }

    /** Whether nothing better will come for this text. */
    public boolean isFinal(JobText text, Plan plan) {
        return plan.settings().dividers().tiesProven() || find(thorough, text).isPresent();
    }

    /** The plan after some seconds of search; ended early by the next edit, so that an old text's search never slows a new one's. */
    public Plan patient(JobText text) {
        Optional<Plan> had = find(thorough, text);
        if (had.isPresent()) {
            return had.get();
        }
        long turn = asked.get();
        Effort time = within(PATIENCE_MS);
        Plan plan = Plan.of(text.job(), () -> time.spent() || asked.get() != turn);
        return asked.get() == turn ? put(thorough, text, plan) : plan;
    }

    private static Effort within(long milliseconds) {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(milliseconds);
        return () -> System.nanoTime() - end > 0;
    }

    private static Optional<Plan> find(Map<JobText, Plan> plans, JobText text) {
        synchronized (plans) {
            return Optional.ofNullable(plans.get(text));
        }
    }

    private static Plan put(Map<JobText, Plan> plans, JobText text, Plan plan) {
        synchronized (plans) {
            plans.put(text, plan);
        }
        return plan;
    }
}
