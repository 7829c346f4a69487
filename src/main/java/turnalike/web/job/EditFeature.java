package turnalike.web.job;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntFunction;
import turnalike.job.edit.GoneBack;
import turnalike.job.edit.JobEdit;
import turnalike.job.edit.MemberEdit;
import turnalike.job.edit.NudgeEdit;
import turnalike.job.edit.RunMirrored;
import turnalike.job.edit.UnitsChange;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.pattern.Member;
import turnalike.pattern.MemberKind;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.web.kit.Feature;
import turnalike.web.kit.FiguresIn;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;

/** Every edit of one job's text, as the page asks for it. */
public final class EditFeature implements Feature {
    private static final String JOB = JobAddress.JOB;
    private static final String MEMBER = JOB + "/member/{number}";

    private final JobStore store;
    private final JobShow show;
    private final EditKeeping keeping;

    public EditFeature(JobStore store, Pages pages, PlanCache plans) {
        this.store = store;
        this.show = new JobShow(pages, plans);
        this.keeping = new EditKeeping(store, pages, show);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        new UndoDeeds(store, show).addTo(routes);
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
        keeping.edit(ctx, asked(ctx, "member", values, sizes, number));
    }

    private void fields(Context ctx) {
        Map<String, String> values = fields(ctx, JobForm.FIELDS, JobForm::figures);
        keeping.edit(ctx, asked(ctx, "job", values, JobEdit::fields, JobShow.member(ctx)));
    }

    /** A script names the field that was left: it is kept by itself where it cannot be together with what was refused before. */
    private static AskedEdit asked(
            Context ctx,
            String form,
            Map<String, String> typed,
            Function<Map<String, String>, JobEdit> edit,
            int selected) {
        Optional<String> field = RequestInput.field(ctx, "field").filter(typed::containsKey);
        Optional<JobEdit> alone = field.map(name -> edit.apply(Map.of(name, typed.getOrDefault(name, ""))));
        return new AskedEdit(edit.apply(typed), alone, form, typed, field, selected);
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
        keeping.edit(ctx, new AskedEdit(edit, Optional.empty(), form, typed, Optional.empty(), selected));
    }

    private KeptJob kept(Context ctx) {
        return JobAddress.job(ctx, store);
    }
}
