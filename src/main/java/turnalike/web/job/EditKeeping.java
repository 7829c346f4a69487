package turnalike.web.job;

import io.javalin.http.Context;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import turnalike.job.edit.JobEdit;
import turnalike.job.edit.RebasedEdit;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.Step;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** Keeps an edit that was asked for: beside what others did meanwhile, worked out before its turn, or refused beside what was typed. */
final class EditKeeping {
    private final JobStore store;
    private final Pages pages;
    private final JobShow show;

    EditKeeping(JobStore store, Pages pages, JobShow show) {
        this.store = store;
        this.pages = pages;
        this.show = show;
    }

    /** Keeps the edit, or shows what is wrong with it beside what was typed. */
    void edit(Context ctx, AskedEdit asked) {
        Begun begun = new Begun();
        try {
            Step step = store.edit(JobAddress.id(ctx), made(ctx, asked, begun))
                    .orElseThrow(() -> Refusal.notFound("that job"));
            if (begun.part.isPresent()) {
                show.done(ctx, begun.part.orElseThrow());
            } else {
                KeptJob after =
                        begun.kept.flatMap(kept -> kept.after(step, Set.of())).orElseThrow();
                show.done(ctx, after, asked.selected());
            }
        } catch (Refusal refused) {
            KeptJob kept = begun.kept.orElseThrow(() -> refused);
            show.page(ctx, refused.status(), kept, asked.refused(refused.problems()), asked.selected());
        } catch (Unchanged nothingToDo) {
            show.done(ctx, begun.kept.orElseThrow(), asked.selected());
        }
    }

    private static final class Begun {
        /** The job as it stood when an edit's turn came; nobody else changed it until the edit was made or refused. */
        private Optional<KeptJob> kept = Optional.empty();
        /** What a script is answered with once the edit is on disk. */
        private Optional<CompletableFuture<byte[]>> part = Optional.empty();
    }

    /** The edit as it is made when its turn comes; what follows from it is begun at once. */
    private Function<KeptJob, Edit> made(Context ctx, AskedEdit asked, Begun begun) {
        // Asked before the edit's turn, since the history cannot be read within it; who edits in between is noticed all
        // the same.
        KeptJob before = JobAddress.job(ctx, store);
        JobText seen = seen(ctx, before);
        // Nobody else waits while it is worked out; only when the text is another by the time of its turn, it is worked
        // out once more.
        Optional<Worked> ahead = pages.work().inTurn(() -> ahead(asked, seen, before.text()));
        return kept -> {
            begun.kept = Optional.of(kept);
            Worked worked = ahead.filter(each -> each.before().equals(kept.text()))
                    .orElseGet(() -> work(asked, seen, kept.text()));
            if (Pages.isPart(ctx)) {
                // The page does not say when it was changed.
                KeptJob after =
                        kept.edited(worked.text(), worked.what(), kept.times().changed());
                begun.part = Optional.of(show.ahead(ctx, after, worked.shown(), asked.selected()));
            }
            return Edit.of(worked.what(), Change.of(worked.text()));
        };
    }

    /**
     * What an edit makes of a text, and what it is called.
     *
     * @param shown beside the fields: what was kept, and what of the rest was refused
     */
    private record Worked(JobText before, JobText text, String what, RefusedEdit shown) {}

    /** All that was typed, or the field that was left by itself where something typed before is still refused. */
    private static Worked work(AskedEdit asked, JobText seen, JobText before) {
        try {
            return work(asked.edit(), asked.kept(), seen, before);
        } catch (Refusal refused) {
            JobEdit alone = asked.alone().orElseThrow(() -> refused);
            RefusedEdit rest =
                    asked.refused(refused.problems()).beside(asked.field().orElseThrow());
            try {
                return work(alone, rest, seen, before);
            } catch (Refusal | Unchanged nothingElse) {
                throw refused;
            }
        }
    }

    private static Worked work(JobEdit edit, RefusedEdit shown, JobText seen, JobText before) {
        JobEdit now = carried(edit, seen, before);
        return new Worked(before, text(now, before), now.what(before), shown);
    }

    /** Empty when it is refused: it is again in its turn, beside the job as it stands then. */
    private static Optional<Worked> ahead(AskedEdit asked, JobText seen, JobText before) {
        try {
            return Optional.of(work(asked, seen, before));
        } catch (Refusal | Unchanged toldInItsTurn) {
            return Optional.empty();
        }
    }

    /** The edit comes to the text that stands: nothing is added to the history. */
    private static final class Unchanged extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private static JobEdit carried(JobEdit edit, JobText seen, JobText now) {
        RebasedEdit carried = RebasedEdit.over(edit, seen, now);
        return carried.edit().orElseThrow(() -> new Refusal(409, carried.problems()));
    }

    private static JobText text(JobEdit edit, JobText before) {
        JobText.Read read = edit.on(before);
        JobText text = read.text().orElseThrow(() -> new Refusal(422, read.problems()));
        if (edit.isNothing(before, text)) {
            throw new Unchanged();
        }
        return text;
    }

    /** The text the person was looking at: the one that stood at the version the form was made from. */
    private JobText seen(Context ctx, KeptJob kept) {
        int version = RequestInput.number(RequestInput.field(ctx, "version"))
                .orElse(kept.times().steps());
        if (version >= kept.times().steps()) {
            return kept.text();
        }
        return store.textAfter(kept.id(), version).orElse(kept.text());
    }
}
