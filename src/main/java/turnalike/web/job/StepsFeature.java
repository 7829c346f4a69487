package turnalike.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.Step;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** Undo and redo on the tabs that are not the pattern's: the step is taken, and the tab it was asked on is shown again. */
public final class StepsFeature implements Feature {
    private static final Set<String> TABS =
            Set.of("/pieces", "/turning", "/match", "/sheets", "/history", "/resize", "/wood", "/price");

    private final JobStore store;

    public StepsFeature(JobStore store) {
        this.store = store;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post(JobAddress.JOB + "/steps/undo", ctx -> step(ctx, "undo", store::undo, KeptJob::undo));
        routes.post(JobAddress.JOB + "/steps/redo", ctx -> step(ctx, "redo", store::redo, KeptJob::redo));
    }

    private interface Stepping {
        Optional<Step> of(JobId id, Predicate<KeptJob> meant);
    }

    private interface Told {
        Optional<String> of(KeptJob kept);
    }

    /** What was done meanwhile, perhaps by somebody else, is told and not taken back. */
    private void step(Context ctx, String word, Stepping stepping, Told told) {
        KeptJob before = JobAddress.job(ctx, store);
        int version = RequestInput.number(RequestInput.field(ctx, "version"))
                .orElse(before.times().steps());
        List<KeptJob> others = new ArrayList<>();
        stepping.of(before.id(), kept -> {
            boolean seen = kept.times().steps() == version;
            if (!seen) {
                others.add(kept);
            }
            return seen;
        });
        others.forEach(kept -> {
            throw Refusal.of(
                    409,
                    word,
                    "this was done meanwhile: " + told.of(kept).orElse("nothing"),
                    "go back, look, and press it again if that is what you mean");
        });
        String tab = RequestInput.field(ctx, "tab").filter(TABS::contains).orElse("");
        ctx.redirect(JobAddress.address(before.id()) + tab, HttpStatus.SEE_OTHER);
    }
}
