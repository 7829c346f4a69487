package turnalike.web.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import turnalike.job.Job;
import turnalike.job.kept.KeptJob;
import turnalike.job.pieces.ColumnTargets;
import turnalike.pieces.Column;
import turnalike.web.kit.FieldWidth;

/** The columns of the table that is typed into, and one piece's fields in it. */
public final class PieceForm {
    /** Before the name of a column judged by eye, where a form sends it: the name may be any. */
    static final String NOTED = "noted.";

    private final KeptJob kept;
    private final List<Head> heads;

    /** @param measured the columns that any piece has */
    PieceForm(KeptJob kept, SortedSet<Column> measured) {
        this.kept = kept;
        this.heads = heads(kept.text().job(), measured);
    }

    /**
     * One column.
     *
     * @param name as a form sends it
     * @param column as a piece keeps it
     * @param label its heading
     * @param isFigure false for what is judged by eye
     */
    public record Head(String name, String column, String label, boolean isFigure) {}

    /**
     * One field of a piece's row.
     *
     * @param id its element's
     * @param head its column
     * @param value what is typed
     * @param had what was there
     * @param wrong what is wrong with it, or nothing
     */
    public record Cell(String id, Head head, String value, String had, String wrong) {
        /** The class of its element; a mixed fraction wants a wider field, or its last digit is cut off. */
        public String look() {
            return FieldWidth.look(head.isFigure() ? "figure" : "", value);
        }
    }

    /** What anyone measures, where the job lays a caliper, whatever else was measured on any piece, and what is judged by eye. */
    private static List<Head> heads(Job job, SortedSet<Column> measured) {
        TreeSet<Column> columns = new TreeSet<>(List.of(Column.MASS, Column.LENGTH, Column.BALANCE));
        for (int i = 1; i <= job.checks().size(); i++) {
            columns.add(Column.diameter(i));
        }
        columns.addAll(measured);
        List<Head> out = new ArrayList<>();
        for (Column each : columns) {
            String name = each.format(job.tolerances().masses());
            out.add(new Head(name, name, ColumnTargets.heading(job, each), true));
        }
        job.likeness().noted().keySet().forEach(name -> out.add(new Head(NOTED + name, name, name, false)));
        return out;
    }

    List<Head> heads() {
        return heads;
    }

    /**
     * The fields of one row.
     *
     * @param prefix of their ids
     * @param label the piece's
     * @param entry what was typed last, where it was this piece
     */
    List<Cell> cells(String prefix, String label, Optional<PieceFormEntry> entry) {
        Map<String, String> had = TypedPiece.of(kept, label);
        List<Cell> out = new ArrayList<>();
        for (int i = 0; i < heads.size(); i++) {
            Head head = heads.get(i);
            String was = had.getOrDefault(head.column(), "");
            String typed = entry.map(each -> each.figures().get(head.column())).orElse(was);
            String wrong = entry.map(each -> each.wrong(head.column())).orElse("");
            out.add(new Cell(prefix + (head.isFigure() ? head.name() : "noted-" + i), head, typed, was, wrong));
        }
        return out;
    }
}
