package turnalike.web.bench;

import java.util.ArrayList;
import java.util.List;
import turnalike.drawing.piece.CutDrawing;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.kept.KeptJob;
import turnalike.job.pieces.ColumnTargets;
import turnalike.pieces.Column;
import turnalike.units.Length;
import turnalike.web.kit.ForPrograms;
import turnalike.web.kit.JobAddress;

/** What the bench view shows of a job. */
public record BenchView(KeptJob kept, Plan plan) {
    /** Shown as wide as a telephone, the numbers are still read. */
    private static final Length WIDTH = Length.ofMm(90);

    private static final Length TALLEST = Length.ofMm(17);

    /**
     * A field for one figure of a piece.
     *
     * @param name of the field, the column's in a pieces file
     * @param caption with its unit
     */
    public record Figure(String name, String caption) {}

    /** Where the page and what it asks for are. */
    public String address() {
        return jobAddress() + "/bench";
    }

    public String jobAddress() {
        return JobAddress.address(kept.id());
    }

    /** Where what is entered is sent to, by which it is also taken back. */
    public String apiAddress() {
        return ForPrograms.PATH + jobAddress();
    }

    public String jobId() {
        return kept.id().text();
    }

    public String title() {
        return job().title();
    }

    private Job job() {
        return kept.text().job();
    }

    public List<BenchStep> steps() {
        CutDrawing drawing = new CutDrawing(job().pattern(), WIDTH, TALLEST);
        return plan.turning().cuts().stream()
                .map(cut -> BenchStep.of(plan, drawing, cut))
                .toList();
    }

    /** The label of the piece to turn next. */
    public String nextPiece() {
        return kept.nextLabel();
    }

    /** How many pieces the job wants with its spares, as far as the stock plan has them. */
    public int wanted() {
        return plan.stock().spares().blanks();
    }

    public List<Figure> figures() {
        return columns(job()).stream()
                .map(column ->
                        new Figure(column.format(job().tolerances().masses()), ColumnTargets.heading(job(), column)))
                .toList();
    }

    /** The columns a bench is asked for: the weight, the length, the job's check places and the balance point. */
    private static List<Column> columns(Job job) {
        List<Column> out = new ArrayList<>(List.of(Column.MASS, Column.LENGTH));
        for (int i = 0; i < job.checks().size(); i++) {
            out.add(Column.diameter(i + 1));
        }
        out.add(Column.BALANCE);
        return out;
    }
}
