package turnalike.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.units.Problem;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.RequestInput;

/** Undo and redo. */
final class UndoDeeds {
    private final JobStore store;
    private final JobShow show;

    UndoDeeds(JobStore store, JobShow show) {
        this.store = store;
        this.show = show;
    }

    void addTo(RoutesConfig routes) {
        routes.post(JobAddress.JOB + "/undo", ctx -> step(ctx, "undo", store::undo));
        routes.post(JobAddress.JOB + "/redo", ctx -> step(ctx, "redo", store::redo));
    }

    /** Undo and redo take the last step of all, which may be another person's: then it is shown first. */
    private void step(Context ctx, String word, Stepping stepping) {
        JobId id = JobAddress.job(ctx, store).id(); // refused where there is no such job
        Optional<Integer> version = RequestInput.number(RequestInput.field(ctx, "version"));
        List<KeptJob> stood = new ArrayList<>();
        // Asked in the step's own turn: between looking and stepping somebody else's edit could come.
        stepping.of(id, kept -> {
            stood.add(kept);
            return isSeen(version, kept);
        });
        Optional<KeptJob> other =
                stood.stream().filter(kept -> !isSeen(version, kept)).findFirst();
        if (other.isPresent()) {
            meanwhile(ctx, word, other.get());
        } else {
            // There may have been nothing to take back, and then nothing is shown to have changed.
            show.done(ctx, JobAddress.job(ctx, store), JobShow.member(ctx));
        }
    }

    private static boolean isSeen(Optional<Integer> version, KeptJob kept) {
        return version.orElse(kept.times().steps()) == kept.times().steps();
    }

    private void meanwhile(Context ctx, String word, KeptJob kept) {
        Optional<String> last = word.equals("undo") ? kept.undo() : kept.redo();
        Problem problem = new Problem(
                word,
                "this was done meanwhile: " + last.orElse("nothing"),
                "press %s again if that is what you mean".formatted(word));
        show.page(ctx, 409, kept, new RefusedEdit("job", Map.of(), List.of(problem)), JobShow.member(ctx));
    }

    private interface Stepping {
        void of(JobId id, Predicate<KeptJob> meant);
    }
}
