package turnalike.web.api;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import turnalike.job.answer.PlainJson;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.Step;
import turnalike.units.Problem;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** One request of a program, read with care: whatever is sent may be anything. */
record Call(Context ctx, JobStore store) {
    /** The id in the path. */
    JobId id() {
        return id(ctx.pathParam("job"));
    }

    private static JobId id(String text) {
        return JobId.parse(text).fold(id -> id, (what, mend) -> {
            throw Refusal.of(404, "job", what, mend);
        });
    }

    /** The job as it stands. */
    KeptJob job() {
        return job(ctx.pathParam("job"));
    }

    /** A job of that id as it stands. */
    KeptJob job(String text) {
        JobId id = id(text);
        return store.find(id).orElseThrow(() -> unknown(id));
    }

    static Refusal unknown(JobId id) {
        return Refusal.of(404, "job", "no job %s is in this store".formatted(id.text()), "check the id");
    }

    /** What stands after the question mark; empty where it is left out or blank. */
    Optional<String> query(String name) {
        return RequestInput.query(ctx, name).filter(text -> !text.isBlank());
    }

    /** The version that the sender saw. */
    private int version() {
        return RequestInput.number(query("version"))
                .orElseThrow(() -> Refusal.of(
                        400, "version", "is missing", "give the version of the job that you saw, as ?version=7"));
    }

    /** Changes the job, unless it went on since the sender saw it. */
    Step edit(Function<KeptJob, Edit> edit) {
        int seen = version();
        return store.edit(id(), kept -> edit.apply(fresh(kept, seen))).orElseThrow(() -> unknown(id()));
    }

    /** Whether the job is still at the version that the sender saw; another is refused. */
    boolean isFresh(KeptJob kept) {
        fresh(kept, version());
        return true;
    }

    private static KeptJob fresh(KeptJob kept, int seen) {
        int now = kept.times().steps();
        if (now != seen) {
            throw Refusal.of(
                    409,
                    "version",
                    "the job is at version %d, not %d: it was changed meanwhile".formatted(now, seen),
                    "read it again, then do yours again");
        }
        return kept;
    }

    /** The body as it came. */
    String text() {
        return ctx.body();
    }

    /** The body's object. */
    Map<String, Object> object() {
        return PlainJson.parse(text()).fold(found -> found, (what, mend) -> {
            throw Refusal.of(400, "body", what, mend);
        });
    }

    /** An object within the body, its values as texts; empty where it is left out. */
    Map<String, String> texts(Map<String, Object> from, String key) {
        Object value = from.getOrDefault(key, Map.of());
        if (!(value instanceof Map<?, ?> map)) {
            throw Refusal.of(400, key, "is no object", "write it in braces, as the description shows");
        }
        Map<String, String> out = new LinkedHashMap<>();
        map.forEach((name, each) -> {
            if (each instanceof Map || each instanceof List) {
                throw Refusal.of(400, key + ": " + name, "is no text and no number", "give one of them");
            }
            out.put(String.valueOf(name), String.valueOf(each));
        });
        return out;
    }

    /** Refuses, in the words of the command line, when anything is wrong. */
    static void refuse(List<Problem> problems) {
        if (!problems.isEmpty()) {
            throw new Refusal(422, problems);
        }
    }
}
