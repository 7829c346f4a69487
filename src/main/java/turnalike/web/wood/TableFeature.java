package turnalike.web.wood;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import turnalike.job.edit.JobEdit;
import turnalike.job.edit.PastedTable;
import turnalike.job.edit.ShopTable;
import turnalike.job.edit.TableEdit;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.JobText;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.Step;
import turnalike.job.pieces.BlanksReport;
import turnalike.units.Problem;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.PastedHeadings;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;
import turnalike.web.kit.Spoken;

/** The shop's tables, typed into and pasted: each change is an edit of the job, with its words. */
final class TableFeature implements Feature {
    private static final String TABLE = JobAddress.JOB + "/wood/{table}";
    private static final Pattern PLACE = Pattern.compile("[a-z]+ (\\d+)(?:: (.*))?");

    private final JobStore store;
    private final Show show;

    /** Shows the page on which a table stands, with what could not be kept. */
    interface Show {
        void page(Context ctx, int status, TypedRow typed);
    }

    TableFeature(JobStore store, Show show) {
        this.store = store;
        this.show = show;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post(TABLE + "/row", this::row);
        routes.post(TABLE + "/remove", this::remove);
        routes.post(TABLE + "/clear", ctx -> keep(ctx, table(ctx), new TableEdit.Clear(), TypedRow.NONE));
        routes.post(TABLE + "/paste", this::paste);
    }

    private static ShopTable table(Context ctx) {
        return ShopTable.find(ctx.pathParam("table")).orElseThrow(() -> Refusal.notFound("that table"));
    }

    private static Optional<TableEdit.Seen> seen(Context ctx) {
        Optional<Integer> number = RequestInput.number(RequestInput.field(ctx, "row"));
        return RequestInput.field(ctx, "seen")
                .filter(text -> !text.isEmpty())
                .flatMap(text -> number.map(each -> new TableEdit.Seen(each, text)));
    }

    private void row(Context ctx) {
        ShopTable table = table(ctx);
        Map<String, String> cells = new LinkedHashMap<>();
        table.columns().forEach(key -> (TableView.isFigure(key.name())
                        ? RequestInput.figure(ctx, "c_" + key.name())
                        : RequestInput.field(ctx, "c_" + key.name()))
                .ifPresent(value -> cells.put(key.name(), value)));
        Optional<TableEdit.Seen> seen = seen(ctx);
        JobText text = JobAddress.job(ctx, store).text();
        List<ShopTable.Row> rows = table.rows(text);
        int next = rows.size() + 1;
        Map<String, String> was = rows.stream()
                .filter(row ->
                        seen.filter(each -> each.text().equals(row.text())).isPresent())
                .findFirst()
                .map(ShopTable.Row::cells)
                .orElse(Map.of());
        Map<String, String> kept = MassCells.of(text).kept(was, cells);
        TableEdit.Deed deed = seen.<TableEdit.Deed>map(row -> new TableEdit.Put(row, kept))
                .orElseGet(() -> new TableEdit.Add(List.of(kept)));
        keep(
                ctx,
                table,
                deed,
                TypedRow.of(table, seen.map(TableEdit.Seen::number).orElse(next), cells, List.of()));
    }

    private void remove(Context ctx) {
        TableEdit.Seen seen = seen(ctx).orElseThrow(() -> Refusal.notFound("that row"));
        keep(ctx, table(ctx), new TableEdit.Remove(seen), TypedRow.NONE);
    }

    private void paste(Context ctx) {
        ShopTable table = table(ctx);
        String text;
        try {
            text = RequestInput.pasted(ctx);
        } catch (Refusal unreadable) {
            show.page(ctx, unreadable.status(), TypedRow.paste(table, "", unreadable.problems()));
            return;
        }
        PastedTable pasted =
                PastedTable.of(table, PastedHeadings.inEnglish(Spoken.by(ctx), text, TableView.headings(table)));
        TypedRow typed = TypedRow.paste(table, text, List.of());
        if (!pasted.problems().isEmpty()) {
            show.page(ctx, 422, TypedRow.paste(table, text, pasted.problems()));
            return;
        }
        keep(ctx, table, new TableEdit.Add(pasted.rows()), typed);
    }

    /** Keeps the edit, or shows what is wrong with it beside what was typed. */
    private void keep(Context ctx, ShopTable table, TableEdit.Deed deed, TypedRow typed) {
        TableEdit edit = new TableEdit(table, deed);
        List<Integer> rowsBefore = new ArrayList<>();
        try {
            Optional<Step> step = store.edit(JobAddress.id(ctx), kept -> {
                rowsBefore.add(table.rows(kept.text()).size());
                return made(kept, edit);
            });
            if (step.isEmpty()) {
                throw Refusal.notFound("that job");
            }
        } catch (Refusal refused) {
            if (refused.status() != 422 || typed.table().isEmpty()) {
                throw refused;
            }
            List<Problem> problems = typed.row() == 0
                    ? refused.problems().stream()
                            .map(each -> pasted(each, rowsBefore.get(0)))
                            .toList()
                    : refused.problems();
            show.page(ctx, 422, new TypedRow(typed.table(), typed.row(), typed.cells(), typed.pasted(), problems));
            return;
        } catch (Unchanged nothingToDo) {
            // What was typed is what is kept: nothing is added to the history.
        }
        String page = table == ShopTable.TIMES ? "/price#times-h" : "/wood#%s-h".formatted(table.key());
        ctx.redirect(JobAddress.address(JobAddress.id(ctx)) + page, HttpStatus.SEE_OTHER);
    }

    /** A row's place as somebody counts who looks at the paste. */
    private static Problem pasted(Problem problem, int rowsBefore) {
        Matcher place = PLACE.matcher(problem.where());
        if (!place.matches()) {
            return problem;
        }
        int row = Integer.parseInt(place.group(1)) - rowsBefore;
        String column =
                Optional.ofNullable(place.group(2)).map(each -> ", " + each).orElse("");
        return new Problem("pasted row %d%s".formatted(row, column), problem.what(), problem.mend());
    }

    private static final class Unchanged extends RuntimeException {
        private static final long serialVersionUID = 1L;
    }

    private static Edit made(KeptJob kept, JobEdit edit) {
        JobText.Read read = edit.on(kept.text());
        JobText text = read.text().orElseThrow(() -> new Refusal(isStale(read) ? 409 : 422, read.problems()));
        if (edit.isNothing(kept.text(), text)) {
            throw new Unchanged();
        }
        List<Problem> heavy = tooHeavy(text);
        if (!heavy.isEmpty()) {
            throw new Refusal(422, heavy);
        }
        return Edit.of(edit.what(kept.text()), Change.of(text));
    }

    private static boolean isStale(JobText.Read read) {
        return read.problems().stream().anyMatch(problem -> problem.what().equals("was changed meanwhile"));
    }

    /** Blanks that no wood is as heavy as, each at its cell. */
    private static List<Problem> tooHeavy(JobText text) {
        List<ShopTable.Row> rows = ShopTable.BLANKS.rows(text);
        return BlanksReport.problems(text.job(), text.job().shop().blanks()).stream()
                .map(problem -> {
                    int at = IntStream.range(0, rows.size())
                            .filter(i -> problem.where()
                                    .equals("blank " + rows.get(i).cell("blank").strip()))
                            .findFirst()
                            .orElse(0);
                    return new Problem("blanks %d: mass_g".formatted(at + 1), problem.what(), problem.mend());
                })
                .toList();
    }
}
