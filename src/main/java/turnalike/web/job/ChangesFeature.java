package turnalike.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreException;
import turnalike.web.kit.Abandoned;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.RequestInput;
import turnalike.web.kit.Spoken;

/**
 * Tells a page that stands open when its job is changed elsewhere: at another bench, by a command, in another tab. The page asks and waits;
 * no thread waits with it. The store is watched from the first page that asks on.
 */
public final class ChangesFeature implements Feature, AutoCloseable {
    /** Below the time after which a connection on which nothing passes is closed. */
    private static final long LONGEST_WAIT_S = 12;

    private final JobStore store;
    private final List<Waiting> waiting = new ArrayList<>();
    private Optional<KeptJobs.Watch> watch = Optional.empty();

    /** One page that wants to hear of any step after that many. */
    private record Waiting(JobId job, int seen, CompletableFuture<String> answer) {}

    public ChangesFeature(JobStore store) {
        this.store = store;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(JobAddress.JOB + "/changes", this::changes);
    }

    /** Answers with how many steps there are and what was done last, once there are more than the page has seen; else with nothing. */
    private void changes(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        int seen = RequestInput.number(RequestInput.query(ctx, "seen"))
                .orElse(kept.times().steps());
        CompletableFuture<String> answer = new CompletableFuture<>();
        answer.completeOnTimeout("", LONGEST_WAIT_S, TimeUnit.SECONDS);
        Waiting mine = new Waiting(kept.id(), seen, answer);
        begin(mine);
        tell(mine); // a step that came before it waited
        ctx.future(() -> answer.whenComplete((said, failed) -> end(mine)).thenAccept(said -> answer(ctx, said)));
    }

    private static void answer(Context ctx, String said) {
        if (!Abandoned.is(ctx)) {
            // After the step's number stand its words.
            int words = said.indexOf(' ') + 1;
            ctx.status(said.isEmpty() ? 204 : 200)
                    .contentType("text/plain; charset=utf-8")
                    .result(said.substring(0, words) + Spoken.by(ctx).say(said.substring(words)));
        }
    }

    private synchronized void begin(Waiting mine) {
        waiting.add(mine);
        if (watch.isEmpty()) {
            watch = Optional.of(store.watch(this::changed));
        }
    }

    private synchronized void end(Waiting mine) {
        waiting.remove(mine);
    }

    private synchronized List<Waiting> all() {
        return List.copyOf(waiting);
    }

    private void changed() {
        all().forEach(this::tell);
    }

    private void tell(Waiting each) {
        try {
            store.find(each.job())
                    .filter(kept -> kept.times().steps() > each.seen())
                    .ifPresent(kept -> each.answer().complete(words(kept)));
        } catch (StoreException unreadable) {
            each.answer().complete(""); // the page asks again
        }
    }

    private static String words(KeptJob kept) {
        return kept.times().steps() + " " + kept.undo().orElse("a step was taken back");
    }

    @Override
    public void close() {
        synchronized (this) {
            watch.ifPresent(KeptJobs.Watch::close);
        }
        all().forEach(each -> each.answer().complete(""));
    }
}
