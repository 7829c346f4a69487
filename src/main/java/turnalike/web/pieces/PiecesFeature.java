package turnalike.web.pieces;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import turnalike.job.Job;
import turnalike.job.edit.PieceEntry;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.JobStore;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.Subject;
import turnalike.job.kept.TakenOut;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.ControlReport;
import turnalike.job.pieces.PieceHeadings;
import turnalike.pieces.Column;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.Slip;
import turnalike.sheets.ControlSheet;
import turnalike.sheets.Paper;
import turnalike.units.MassUnit;
import turnalike.units.Problem;
import turnalike.web.kit.Attachment;
import turnalike.web.kit.Feature;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.Pages;
import turnalike.web.kit.Papers;
import turnalike.web.kit.PastedHeadings;
import turnalike.web.kit.Refusal;
import turnalike.web.kit.RequestInput;
import turnalike.web.kit.Spoken;
import turnalike.web.kit.TablePart;
import turnalike.workbook.WorkbookFile;

/** The pieces' table and everything that adds to it. */
public final class PiecesFeature implements Feature {
    private static final String PIECES = JobAddress.JOB + "/pieces";

    private final JobStore store;
    private final Pages pages;

    public PiecesFeature(JobStore store, Pages pages) {
        this.store = store;
        this.pages = pages;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(
                PIECES,
                ctx -> show(ctx, 200, PieceFormEntry.of(JobAddress.job(ctx, store), RequestInput.query(ctx, "piece"))));
        routes.post(PIECES, this::log);
        routes.post(PIECES + "/table", this::table);
        routes.post(PIECES + "/remove", ctx -> remove(ctx, TakenOut.WORDS));
        routes.post(PIECES + "/spoiled", ctx -> remove(ctx, TakenOut.SPOILED));
        routes.get(PIECES + "/pieces.csv", this::csv);
        routes.get(PIECES + "/pieces.xlsx", this::workbook);
        routes.get(PIECES + "/control-chart/{paper}", this::chartSheet);
    }

    private void show(Context ctx, int status, PieceFormEntry entry) {
        KeptJob kept = JobAddress.job(ctx, store);
        String column = charted(ctx, kept);
        PieceOrder order = PieceOrder.of(asked(ctx, "sort").orElse(""));
        TablePart part = RequestInput.number(asked(ctx, "from"))
                .map(row -> TablePart.from(row, kept.pieces().size()))
                .orElseGet(() -> order.isAsTurned()
                        ? PiecesView.holding(kept.pieces(), entry.label())
                        : TablePart.from(1, kept.pieces().size()));
        PiecesView view = new PiecesView(kept, entry, column, part, order);
        pages.show(ctx, status, "pieces/page.jte", view.title(), view);
    }

    /** Of the address, or of the form that was sent, which carries it along. */
    private static Optional<String> asked(Context ctx, String name) {
        return RequestInput.query(ctx, name).or(() -> RequestInput.field(ctx, name));
    }

    private void log(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        String label = RequestInput.field(ctx, "piece").orElse("");
        Map<String, String> figures = figures(ctx);
        PieceEntry.Read read = PieceEntry.read(kept, label, figures);
        PieceFormEntry entry = new PieceFormEntry(label, figures, "", read.problems(), List.of());
        if (read.piece().isEmpty()) {
            show(ctx, 422, entry);
            return;
        }
        KeptPiece piece = read.piece().get();
        List<Slip> slips = isSure(ctx) ? List.of() : PieceEntry.ask(kept, piece.piece());
        if (!slips.isEmpty()) {
            show(ctx, 422, entry.asking(slips));
            return;
        }
        // Read once more inside the edit: another browser may have measured the same piece meanwhile.
        keep(ctx, now -> PieceEntry.read(now, label, figures).piece().stream().toList());
    }

    /** What was typed, by column; a field that was empty and stays empty says nothing about the figure. */
    private static Map<String, String> figures(Context ctx) {
        Map<String, String> out = new LinkedHashMap<>();
        for (String field : ctx.formParamMap().keySet()) {
            boolean noted = field.startsWith(PieceForm.NOTED);
            if (!noted && Column.find(field).isEmpty()) {
                continue;
            }
            String had = RequestInput.field(ctx, "had_" + field).orElse("");
            (noted ? RequestInput.field(ctx, field) : RequestInput.figure(ctx, field))
                    .filter(text -> !text.strip().equals(had))
                    .ifPresent(text -> out.put(noted ? field.substring(PieceForm.NOTED.length()) : field, text));
        }
        return out;
    }

    private static boolean isSure(Context ctx) {
        return RequestInput.field(ctx, "sure").filter("yes"::equals).isPresent();
    }

    /** Pasted cells, or a file of them. */
    private void table(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        PieceFormEntry before = PieceFormEntry.of(kept, Optional.empty());
        String text;
        try {
            text = RequestInput.pasted(ctx);
        } catch (Refusal unreadable) {
            show(ctx, unreadable.status(), before.pasted("").wrong(unreadable.problems()));
            return;
        }
        Job job = kept.text().job();
        List<String> headings = Stream.concat(
                        Stream.of("Piece", "Weight", "Length"),
                        new PieceForm(kept, new TreeSet<>()).heads().stream().map(PieceForm.Head::label))
                .toList();
        String table = PastedHeadings.inEnglish(Spoken.by(ctx), text, headings);
        PiecesFile.Read read = PiecesFile.parseWithoutMass(PieceHeadings.plain(job, table), job.units());
        PieceFormEntry entry = before.pasted(text);
        if (!read.problems().isEmpty()) {
            show(ctx, 422, entry.wrong(read.problems()));
            return;
        }
        if (read.pieces().isEmpty()) {
            show(
                    ctx,
                    422,
                    entry.wrong(List.of(
                            new Problem("cells", "hold no piece", "paste a header and a line for each piece"))));
            return;
        }
        List<Slip> slips = ColumnTargets.questions(kept.text().job(), read);
        if (!slips.isEmpty() && !isSure(ctx)) {
            show(ctx, 422, entry.asking(slips));
            return;
        }
        keep(ctx, now -> now.with(read.pieces()));
    }

    private interface Logged {
        List<KeptPiece> in(KeptJob kept);
    }

    private void keep(Context ctx, Logged logged) {
        edit(ctx, kept -> {
            List<KeptPiece> pieces = logged.in(kept);
            String what = pieces.size() == 1
                    ? "log piece " + pieces.get(0).label()
                    : "log %d pieces".formatted(pieces.size());
            return new Edit(what, pieces.stream().map(Change::of).toList());
        });
    }

    /** A slip may still be called spoiled once it is out: nothing else is changed by it. */
    private void remove(Context ctx, String words) {
        String label = RequestInput.field(ctx, "piece").orElse("");
        edit(ctx, kept -> {
            boolean isOut = words.equals(TakenOut.SPOILED)
                    && TakenOut.slips(store.done(kept.id()), kept).contains(label);
            if (kept.find(label).isEmpty() && !isOut) {
                throw Refusal.notFound("that piece");
            }
            return Edit.of(words + label, Change.without(new Subject(Subject.Kind.PIECE, label)));
        });
    }

    private void edit(Context ctx, java.util.function.Function<KeptJob, Edit> edit) {
        if (store.edit(JobAddress.id(ctx), edit).isEmpty()) {
            throw Refusal.notFound("that job");
        }
        // Who types into a row or takes a piece out stays where it stood, in the order that was chosen.
        String sort = PieceOrder.of(RequestInput.field(ctx, "sort").orElse("")).word();
        List<String> back = new ArrayList<>();
        RequestInput.number(RequestInput.field(ctx, "from")).ifPresent(row -> back.add("from=" + row));
        if (!sort.isEmpty()) {
            back.add("sort=" + sort);
        }
        String query = back.isEmpty() ? "" : "?" + String.join("&", back) + "#all-h";
        boolean fromWood =
                RequestInput.field(ctx, "tab").filter("/wood"::equals).isPresent();
        String tab = fromWood ? "/wood#blanks-h" : "/pieces" + query;
        ctx.redirect(JobAddress.address(JobAddress.id(ctx)) + tab, HttpStatus.SEE_OTHER);
    }

    private void csv(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        String table = PiecesFile.format(pieces(kept), kept.text().job().units());
        Attachment.send(ctx, "pieces.csv", "text/csv; charset=utf-8", table);
    }

    private void workbook(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        Job job = kept.text().job();
        // A person reads it: as the page tells them.
        String table =
                PiecesFile.format(pieces(kept), job.units(), job.tolerances().weighing());
        byte[] bytes = WorkbookFile.of("Pieces", table, PiecesFile::isFigure);
        Attachment.send(ctx, "pieces.xlsx", WorkbookFile.mediaType(), bytes);
    }

    /** The column asked for; without, the weights, or where none is known yet what was measured first. */
    private static String charted(Context ctx, KeptJob kept) {
        return RequestInput.query(ctx, "column").orElseGet(() -> {
            MassUnit masses = kept.text().job().tolerances().masses();
            SortedSet<Column> measured = new TreeSet<>();
            pieces(kept)
                    .forEach(piece -> measured.addAll(piece.measures().figures().keySet()));
            return measured.isEmpty() || measured.contains(Column.MASS)
                    ? masses.column()
                    : measured.first().format(masses);
        });
    }

    private static List<Piece> pieces(KeptJob kept) {
        return kept.pieces().stream().map(KeptPiece::piece).toList();
    }

    private void chartSheet(Context ctx) {
        KeptJob kept = JobAddress.job(ctx, store);
        String column = charted(ctx, kept);
        List<Piece> pieces = kept.pieces().stream().map(KeptPiece::piece).toList();
        Paper paper = Papers.at(ctx);
        ControlReport report = new PieceChart(kept.text().job(), pieces, column)
                .report()
                .orElseThrow(() -> Refusal.notFound("that chart"));
        ControlSheet.Heading heading = new ControlSheet.Heading(
                kept.text().job().title() + ": " + report.things(), Papers.today(), report.shownUnit(), column);
        Attachment.send(ctx, () -> ControlSheet.of(report.shown(), heading, report.sentences(), paper));
    }
}
