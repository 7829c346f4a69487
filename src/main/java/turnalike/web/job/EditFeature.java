package turnalike.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import turnalike.job.edit.GoneBack;
import turnalike.job.edit.JobEdit;
import turnalike.job.edit.MemberEdit;
import turnalike.job.edit.NudgeEdit;
import turnalike.job.edit.RebasedEdit;
import turnalike.job.edit.RunMirrored;
import turnalike.job.edit.UnitsChange;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobId;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.Step;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKind;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.web.kit.Feature;
import turnalike.web.kit.FiguresIn;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** Every edit of one job's text, with its undo and redo. */
public final class EditFeature implements Feature {
    private static final String JOB = JobAddress.JOB;
    private static final String MEMBER = JOB + "/member/{number}";

    private final JobStore store;
    private final Pages pages;
    private final JobShow show;

    public EditFeature(JobStore store, Pages pages, PlanCache plans) {
        this.store = store;
        this.pages = pages;
        this.show = new JobShow(pages, plans);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post(JOB + "/undo", ctx -> step(ctx, "undo", store::undo));
        routes.post(JOB + "/redo", ctx -> step(ctx, "redo", store::redo));
        routes.post(JOB + "/fields", this::fields);
        routes.post(JOB + "/units", this::units);
        routes.post(JOB + "/nudge", this::nudge);
        routes.post(JOB + "/mirror", ctx -> edit(ctx, new RunMirrored(), "job", Map.of(), JobShow.member(ctx)));
        routes.post(JOB + "/history/{step}/back", this::goBack);
        routes.post(MEMBER, this::sizes);
        routes.post(MEMBER + "/insert", this::insert);
        routes.post(MEMBER + "/insert-at", this::insertAt);
        routes.post(MEMBER + "/move", this::move);
        routes.post(MEMBER + "/turn", deed(ctx -> new MemberEdit.Turn(kind(ctx))));
        routes.post(
                MEMBER + "/boundary",
                deed(ctx -> new MemberEdit.Boundary(
                        RequestInput.field(ctx, "length").orElse(""))));
        routes.post(MEMBER + "/mirror", deed(ctx -> new MemberEdit.Mirror()));
        routes.post(MEMBER + "/copy", deed(ctx -> new MemberEdit.Copy(), number -> number + 1));
        routes.post(MEMBER + "/remove", deed(ctx -> new MemberEdit.Remove()));
        routes.post(MEMBER + "/left", deed(ctx -> new MemberEdit.Move(-1), number -> number - 1));
        routes.post(MEMBER + "/right", deed(ctx -> new MemberEdit.Move(1), number -> number + 1));
    }

    private interface Deed {
        MemberEdit.Deed of(Context ctx);
    }

    private Handler deed(Deed deed) {
        return deed(deed, number -> number);
    }

    /** @param selects the member that is selected after it */
    private Handler deed(Deed deed, IntFunction<Integer> selects) {
        return ctx -> {
            int number = RequestInput.pathNumber(ctx, "number");
            edit(ctx, new MemberEdit(number, deed.of(ctx)), "member", Map.of(), selects.apply(number));
        };
    }

    private void insert(Context ctx) {
        int number = RequestInput.pathNumber(ctx, "number");
        boolean after = RequestInput.field(ctx, "side").filter("after"::equals).isPresent();
        MemberEdit.Insert insert = new MemberEdit.Insert(kind(ctx), after);
        edit(ctx, new MemberEdit(number, insert), "member", Map.of(), after ? number + 1 : number);
    }

    /** Where the drawing was touched, in millimetres from the head end. */
    private void insertAt(Context ctx) {
        int number = RequestInput.pathNumber(ctx, "number");
        Length place = RequestInput.field(ctx, "mm")
                .flatMap(EditFeature::millimetres)
                .orElseThrow(() -> Refusal.of(422, "place", "is none", "touch the piece where it is to stand"));
        JobText before = kept(ctx).text();
        MemberKind kind = kind(ctx);
        MemberEdit edit = new MemberEdit(number, new MemberEdit.InsertAt(kind, place));
        int came = edit.on(before)
                .text()
                .map(after -> came(number, kind, before, after))
                .orElse(number);
        edit(ctx, edit, "member", Map.of(), came);
    }

    private static Optional<Length> millimetres(String text) {
        return text.matches("\\d{1,5}(\\.\\d{1,6})?")
                ? Optional.of(Length.ofMm(Double.parseDouble(text)))
                : Optional.empty();
    }

    /** Where the new member stands: between two halves of the one that was touched, or on one side of it. */
    private static int came(int number, MemberKind kind, JobText before, JobText after) {
        List<Member> was = before.job().pattern().members();
        List<Member> now = after.job().pattern().members();
        boolean first = now.get(number - 1).kind().equals(was.get(number - 1).kind());
        return now.size() == was.size() + 2 || (first && now.get(number).kind().equals(kind)) ? number + 1 : number;
    }

    private void move(Context ctx) {
        int number = RequestInput.pathNumber(ctx, "number");
        int to = RequestInput.number(RequestInput.field(ctx, "to"))
                .orElseThrow(() -> Refusal.of(422, "to", "is no place in the run", "drag the member to another"));
        int last = kept(ctx).text().job().pattern().members().size();
        int place = Math.max(1, Math.min(last, to));
        edit(ctx, new MemberEdit(number, new MemberEdit.Move(place - number)), "member", Map.of(), place);
    }

    private static MemberKind kind(Context ctx) {
        return RequestInput.field(ctx, "kind")
                .flatMap(MemberKind::find)
                .orElseThrow(() -> Refusal.of(422, "kind", "is none we know", "choose one of the list"));
    }

    private void sizes(Context ctx) {
        int number = RequestInput.pathNumber(ctx, "number");
        Map<String, String> values = fields(ctx, MemberForm.FIELDS, MemberForm::figures);
        Function<Map<String, String>, JobEdit> sizes = some -> new MemberEdit(number, new MemberEdit.Sizes(some));
        edit(ctx, asked(ctx, "member", values, sizes, number));
    }

    private void fields(Context ctx) {
        Map<String, String> values = fields(ctx, JobForm.FIELDS, JobForm::figures);
        edit(ctx, asked(ctx, "job", values, JobEdit::fields, JobShow.member(ctx)));
    }

    /** A script names the field that was left: it is kept by itself where it cannot be together with what was refused before. */
    private static Asked asked(
            Context ctx,
            String form,
            Map<String, String> typed,
            Function<Map<String, String>, JobEdit> edit,
            int selected) {
        Optional<String> field = RequestInput.field(ctx, "field").filter(typed::containsKey);
        Optional<JobEdit> alone = field.map(name -> edit.apply(Map.of(name, typed.getOrDefault(name, ""))));
        return new Asked(edit.apply(typed), alone, form, typed, field, selected);
    }

    private void units(Context ctx) {
        UnitSystem units = RequestInput.field(ctx, "units")
                .flatMap(UnitSystem::find)
                .orElseThrow(() -> Refusal.of(422, "units", "are none we know", "choose in or mm"));
        edit(ctx, new UnitsChange(units), "job", Map.of(), JobShow.member(ctx));
    }

    private void goBack(Context ctx) {
        int step = RequestInput.pathNumber(ctx, "step");
        JobText then = store.textAfter(JobAddress.id(ctx), step)
                .orElseThrow(() -> Refusal.notFound("that step of the history"));
        edit(ctx, new GoneBack(then, step), "job", Map.of(), JobShow.member(ctx));
    }

    private void nudge(Context ctx) {
        NudgeEdit nudge = RequestInput.field(ctx, "moves")
                .flatMap(NudgeEdit::parse)
                .orElseThrow(() -> Refusal.of(422, "moves", "are none we know", "take one from the list"));
        edit(ctx, nudge, "job", Map.of(), JobShow.member(ctx));
    }

    private static Map<String, String> fields(Context ctx, Set<String> known, Function<String, FiguresIn> figures) {
        Map<String, String> out = new LinkedHashMap<>();
        for (String name : known) {
            RequestInput.field(ctx, name)
                    .ifPresent(value -> out.put(name, figures.apply(name).kept(value)));
        }
        return out;
    }

    private void edit(Context ctx, JobEdit edit, String form, Map<String, String> typed, int selected) {
        edit(ctx, new Asked(edit, Optional.empty(), form, typed, Optional.empty(), selected));
    }

    /**
     * What is asked for.
     *
     * @param edit of all that was typed
     * @param alone of the field that was left, for when all of it is refused
     * @param form which form it came from
     * @param typed the fields as they were sent
     * @param field the one that was left
     * @param selected the member that is selected after it
     */
    private record Asked(
            JobEdit edit,
            Optional<JobEdit> alone,
            String form,
            Map<String, String> typed,
            Optional<String> field,
            int selected) {
        RefusedEdit kept() {
            return field.map(name -> RefusedEdit.keeping(form, name)).orElse(RefusedEdit.NONE);
        }

        RefusedEdit refused(List<Problem> problems) {
            return new RefusedEdit(form, typed, problems);
        }
    }

    /** Keeps the edit, or shows what is wrong with it beside what was typed. */
    private void edit(Context ctx, Asked asked) {
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
    private Function<KeptJob, Edit> made(Context ctx, Asked asked, Begun begun) {
        // Asked before the edit's turn, since the history cannot be read within it; who edits in between is noticed all
        // the same.
        KeptJob before = kept(ctx);
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
    private static Worked work(Asked asked, JobText seen, JobText before) {
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
    private static Optional<Worked> ahead(Asked asked, JobText seen, JobText before) {
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
        int version = version(ctx).orElse(kept.times().steps());
        if (version >= kept.times().steps()) {
            return kept.text();
        }
        return store.textAfter(kept.id(), version).orElse(kept.text());
    }

    private static Optional<Integer> version(Context ctx) {
        return RequestInput.number(RequestInput.field(ctx, "version"));
    }

    /** Undo and redo take the last step of all, which may be another person's: then it is shown first. */
    private void step(Context ctx, String word, Stepping stepping) {
        JobId id = kept(ctx).id(); // refused where there is no such job
        Optional<Integer> version = version(ctx);
        Begun begun = new Begun();
        // Asked in the step's own turn: between looking and stepping somebody else's edit could come.
        stepping.of(id, kept -> {
            begun.kept = Optional.of(kept);
            return isSeen(version, kept);
        });
        Optional<KeptJob> other = begun.kept.filter(kept -> !isSeen(version, kept));
        if (other.isPresent()) {
            meanwhile(ctx, word, other.get());
        } else {
            // There may have been nothing to take back, and then nothing is shown to have changed.
            show.done(ctx, kept(ctx), JobShow.member(ctx));
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

    private KeptJob kept(Context ctx) {
        return JobAddress.job(ctx, store);
    }
}
