package turnalike.web.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import turnalike.job.kept.KeptJob;
import turnalike.job.pieces.ColumnTargets;
import turnalike.pieces.Column;

/** The form that logs one piece. */
public final class PieceForm {
    /** Before the name of a column judged by eye, where a form sends it: the name may be any. */
    static final String NOTED = "noted.";

    private final KeptJob kept;
    private final PieceFormEntry entry;
    private final Map<String, String> had;

    PieceForm(KeptJob kept, PieceFormEntry entry) {
        this.kept = kept;
        this.entry = entry;
        this.had = PiecesView.written(kept, entry.label());
    }

    /**
     * One field of the form.
     *
     * @param id its element's
     * @param name as it is sent
     * @param label how it is called
     * @param value what is typed
     * @param had what was there
     * @param wrong what is wrong with it, or nothing
     * @param isFigure false for what is judged by eye
     */
    public record Cell(
            String id, String name, String label, String value, String had, String wrong, boolean isFigure) {}

    /** What anyone measures, whatever else was measured on any piece, and what the job has judged by eye. */
    List<Cell> cells(SortedSet<Column> measured) {
        TreeSet<Column> columns = new TreeSet<>(
                List.of(Column.MASS, Column.LENGTH, Column.BALANCE, Column.diameter(1), Column.diameter(2)));
        columns.addAll(measured);
        List<Cell> out = new ArrayList<>();
        for (Column each : columns) {
            String name = each.format();
            out.add(cell(
                    "c-" + name, name, name, ColumnTargets.heading(kept.text().job(), each), true));
        }
        for (String name : kept.text().job().likeness().noted().keySet()) {
            out.add(cell("c-noted-" + out.size(), NOTED + name, name, name, false));
        }
        return out;
    }

    private Cell cell(String id, String field, String column, String label, boolean isFigure) {
        String was = had.getOrDefault(column, "");
        String wrong = entry.problems().stream()
                .filter(problem -> problem.where().equals(column))
                .map(problem -> problem.what() + "; " + problem.mend())
                .findFirst()
                .orElse("");
        return new Cell(id, field, label, entry.figures().getOrDefault(column, was), was, wrong, isFigure);
    }
}
