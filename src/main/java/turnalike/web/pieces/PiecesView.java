package turnalike.web.pieces;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.kept.TakenOut;
import turnalike.job.pieces.ColumnTargets;
import turnalike.job.pieces.LikenessReport;
import turnalike.job.pieces.MendJob;
import turnalike.job.pieces.MendWords;
import turnalike.pieces.Column;
import turnalike.pieces.Piece;
import turnalike.units.Mass;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;
import turnalike.units.Working;
import turnalike.web.kit.JobAddress;
import turnalike.web.kit.JobSteps;
import turnalike.web.kit.TablePart;

/** The pieces as the page shows them. */
public final class PiecesView {
    /** So many pieces are compared each with each; of more, the most unlike alone are shown. */
    private static final int MOST_COMPARED = 200;

    private static final int MOST_UNLIKE = 20;

    private final KeptJob kept;
    private final PieceFormEntry entry;
    private final String column;
    private final List<Piece> pieces;
    /** The columns that were measured on any piece. */
    private final SortedSet<Column> measured = new TreeSet<>();
    /** Those judged by eye that the job gives a weight to, and whatever else is kept with any piece without being a measure. */
    private final SortedSet<String> further = new TreeSet<>();

    private final PieceChart chart;
    private final TablePart part;
    private final PieceOrder order;
    private final PieceForm form;
    private final List<LikenessReport.PieceLikeness> alike;
    private final List<PieceRow> rows;

    /**
     * @param part of the table that is shown
     * @param order of its rows
     */
    PiecesView(KeptJob kept, PieceFormEntry entry, String column, TablePart part, PieceOrder order) {
        this.part = part;
        this.order = order;
        this.kept = kept;
        this.entry = entry;
        this.column = column;
        this.pieces = kept.pieces().stream().map(KeptPiece::piece).toList();
        pieces.forEach(piece -> measured.addAll(piece.measures().figures().keySet()));
        further.addAll(noted());
        pieces.forEach(piece -> further.addAll(piece.extra().keySet()));
        this.form = new PieceForm(kept, measured);
        this.alike = pieces.size() < 2
                ? List.of()
                : LikenessReport.mostUnlike(
                        kept.text().job(),
                        pieces,
                        kept.text().job().tolerances().masses(),
                        compared());
        this.rows = made();
        this.chart = new PieceChart(kept.text().job(), pieces, column);
    }

    /** The part of the table with that piece; without one of that label the last, where what was logged last stands. */
    static TablePart holding(List<KeptPiece> pieces, String label) {
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i).label().equals(label)) {
                return TablePart.holding(i, pieces.size());
            }
        }
        return TablePart.holding(Math.max(0, pieces.size() - 1), pieces.size());
    }

    public String address() {
        return JobAddress.address(kept.id());
    }

    public String title() {
        return kept.text().job().title();
    }

    public PieceFormEntry entry() {
        return entry;
    }

    private UnitSystem units() {
        return kept.text().job().units();
    }

    /** What can be taken back here. */
    public JobSteps steps() {
        return JobSteps.of(kept);
    }

    /** The rows' columns, each with its heading. */
    public List<PieceForm.Head> heads() {
        return form.heads();
    }

    /** The columns that are kept and not typed into. */
    public List<String> further() {
        return further.stream().filter(name -> !noted().contains(name)).toList();
    }

    /** What is asked about again when a question is answered. */
    public List<PieceForm.Cell> asked() {
        return form.cells("", entry.label(), Optional.of(entry));
    }

    /** The row that the next piece is typed into; what was typed last and is of no piece yet stays in it. */
    public NextRow next() {
        boolean ofNone = kept.find(entry.label()).isEmpty();
        String label = ofNone ? entry.label() : kept.nextLabel();
        return new NextRow(label, form.cells("c-", label, Optional.of(entry).filter(each -> ofNone)));
    }

    /**
     * The row for a piece that is not there yet.
     *
     * @param label as it would be called
     * @param cells its fields
     */
    public record NextRow(String label, List<PieceForm.Cell> cells) {
        public NextRow {
            cells = List.copyOf(cells);
        }
    }

    /** The pieces of the part that is shown, in the order asked for. */
    public List<PieceRow> rows() {
        return rows;
    }

    private List<PieceRow> made() {
        Map<String, LikenessReport.PieceLikeness> alike = new HashMap<>();
        likeness().forEach(each -> alike.put(each.figure().piece(), each));
        List<PieceRow> out = new ArrayList<>();
        for (KeptPiece piece : part.of(order.of(kept.pieces(), alike))) {
            String label = piece.label();
            boolean chosen = label.equals(entry.label());
            List<PieceForm.Cell> cells = form.cells(
                    "r%d-".formatted(out.size()), label, Optional.of(entry).filter(each -> chosen));
            List<String> notes = further().stream()
                    .map(name -> piece.piece().extra().getOrDefault(name, ""))
                    .toList();
            out.add(PieceRow.of(label, cells, notes, chosen, Optional.ofNullable(alike.get(label))));
        }
        return out;
    }

    /** The piece that is looked at, with all that sets it apart. */
    public Optional<PieceRow> chosen() {
        return rows().stream().filter(PieceRow::isChosen).findFirst();
    }

    /** The order that the rows are in. */
    public PieceOrder order() {
        return order;
    }

    /** What was taken out last, if that is the last thing that was done: the page offers to put it back. */
    public Optional<String> takenOut() {
        return kept.undo()
                .filter(what -> what.startsWith(TakenOut.WORDS))
                .map(what -> what.substring(TakenOut.WORDS.length()));
    }

    /** What was called spoiled last, if that is the last thing that was done. */
    public Optional<String> spoiled() {
        return kept.undo()
                .filter(what -> what.startsWith(TakenOut.SPOILED))
                .map(what -> what.substring(TakenOut.SPOILED.length()));
    }

    /** Whether anything is judged by eye. */
    public boolean isJudged() {
        return !noted().isEmpty();
    }

    /** The columns judged by eye that the job gives a weight to. */
    private Set<String> noted() {
        return kept.text().job().likeness().noted().keySet();
    }

    /** What is wrong and belongs to no field. */
    public List<Problem> problems() {
        return entry.problems().stream()
                .filter(problem -> Column.find(problem.where()).isEmpty() && !noted().contains(problem.where()))
                .toList();
    }

    public boolean isEmpty() {
        return kept.pieces().isEmpty();
    }

    public TablePart part() {
        return part;
    }

    /** How the piece in the form is brought to weight; empty when it was not weighed or there is nothing to aim at. */
    public Optional<MendJob> mend() {
        Optional<Mass> median = Optional.empty();
        return MendJob.lack(kept.text().job(), pieces, entry.label(), median).isEmpty()
                ? Optional.of(MendJob.of(kept.text().job(), pieces, entry.label(), median))
                : Optional.empty();
    }

    public MendWords words(MendJob mend) {
        return mend.words(units());
    }

    /** The columns a chart can be made of. */
    public List<String> columns() {
        return measured.stream()
                .map(each -> each.format(kept.text().job().tolerances().masses()))
                .toList();
    }

    /** A column as a person calls it. */
    public String called(String column) {
        return Column.find(column)
                .map(each -> ColumnTargets.name(kept.text().job(), each))
                .orElse(column);
    }

    public String column() {
        return column;
    }

    /** The weight's column, in the unit that the scale shows. */
    public String massColumn() {
        return kept.text().job().tolerances().masses().column();
    }

    /** The control chart of the column that is looked at. */
    public PieceChart chart() {
        return chart;
    }

    /** How alike the pieces are, the most unlike first; empty with fewer than two. Of a large table the most unlike only. */
    public List<LikenessReport.PieceLikeness> likeness() {
        return alike;
    }

    private int compared() {
        return pieces.size() <= MOST_COMPARED ? pieces.size() : MOST_UNLIKE;
    }

    /** That the most unlike alone are shown, or nothing. */
    public String comparedOf() {
        return compared() == pieces.size() ? "" : "The %d most unlike of %d.".formatted(compared(), pieces.size());
    }

    public String figure(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    public Working likenessWorking() {
        return kept.text().job().likeness().working();
    }

    /** The mean and spread of what was weighed, when at least two were. */
    public String summary() {
        double[] grams = kept.pieces().stream()
                .map(piece -> piece.piece().measures().figure(Column.MASS))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .toArray();
        if (grams.length < 2) {
            return "%d logged, %d wanted."
                    .formatted(kept.pieces().size(), kept.text().job().count());
        }
        double least = Arrays.stream(grams).min().orElse(0);
        double most = Arrays.stream(grams).max().orElse(0);
        double mean = Arrays.stream(grams).average().orElse(1);
        WeighingScale scale = kept.text().job().tolerances().weighing();
        return "%d logged, %d wanted; %d weighed, from %s to %s, mean %s (%s)."
                .formatted(
                        kept.pieces().size(),
                        kept.text().job().count(),
                        grams.length,
                        scale.reading(Mass.ofGrams(least)),
                        scale.reading(Mass.ofGrams(most)),
                        scale.reckoned(Mass.ofGrams(mean)),
                        scale.other(Mass.ofGrams(mean)));
    }
}
