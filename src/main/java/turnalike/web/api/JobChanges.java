package turnalike.web.api;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptJobs;
import turnalike.job.kept.StoreException;
import turnalike.language.Language;
import turnalike.web.api.Operation.Reply;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;
import turnalike.web.kit.Spoken;

/**
 * Tells whoever waits for it when a job is changed: at another bench, by a command, in another tab. No thread waits with him. The store is
 * watched from the first on who waits.
 */
final class JobChanges implements AutoCloseable {
    /** Below the time after which a connection on which nothing passes is closed. */
    private static final long LONGEST_WAIT_S = 12;

    private final JobStore store;
    private final List<Waiting> waiting = new ArrayList<>();
    private Optional<KeptJobs.Watch> watch = Optional.empty();

    /** One who wants to hear of any step after that many; the answer is empty when there was none for too long. */
    private record Waiting(JobId job, int seen, CompletableFuture<Optional<KeptJob>> answer) {}

    JobChanges(JobStore store) {
        this.store = store;
    }

    Operation operation() {
        return Operation.later(
                        "/jobs/{job}/changes",
                        "awaitChange",
                        ("Waits for the job's next step, %d s at most, and tells its version then and what was done last. Without"
                                        + " `seen` it tells at once how the job stands.")
                                .formatted(LONGEST_WAIT_S),
                        Reply.json(
                                "The version, and whether it is another than was seen.", "job", "version", "changed"),
                        this::await)
                .asking("seen", "the version that you know; the answer comes when there is a later one", "0");
    }

    private CompletableFuture<Answer> await(Call call) {
        KeptJob kept = call.job();
        Optional<String> asked = call.query("seen");
        Language language = Spoken.by(call.ctx());
        if (asked.isEmpty()) {
            return CompletableFuture.completedFuture(told(kept, false, language));
        }
        int seen = RequestInput.number(asked)
                .orElseThrow(
                        () -> Refusal.of(400, "seen", "is no version", "give the version that you know, as ?seen=7"));
        CompletableFuture<Optional<KeptJob>> answer = new CompletableFuture<>();
        answer.completeOnTimeout(Optional.empty(), LONGEST_WAIT_S, TimeUnit.SECONDS);
        Waiting mine = new Waiting(kept.id(), seen, answer);
        begin(mine);
        tell(mine); // a step that came before it waited
        return answer.whenComplete((now, failed) -> end(mine))
                .thenApply(now -> now.map(each -> told(each, true, language))
                        .orElseGet(() -> Answer.json(head(kept.id(), seen, false))));
    }

    private static Map<String, Object> head(JobId id, int version, boolean changed) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("job", id.text());
        out.put("version", version);
        out.put("changed", changed);
        return out;
    }

    private static Answer told(KeptJob kept, boolean changed, Language language) {
        Map<String, Object> out = head(kept.id(), kept.times().steps(), changed);
        out.put("what", language.say(kept.undo().orElse("a step was taken back")));
        return Answer.json(out);
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
                    .ifPresent(kept -> each.answer().complete(Optional.of(kept)));
        } catch (StoreException unreadable) {
            each.answer().complete(Optional.empty()); // it is asked again
        }
    }

    @Override
    public void close() {
        synchronized (this) {
            watch.ifPresent(KeptJobs.Watch::close);
        }
        all().forEach(each -> each.answer().complete(Optional.empty()));
    }
}
