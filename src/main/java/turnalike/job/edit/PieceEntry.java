package turnalike.job.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import turnalike.job.Job;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.pieces.ColumnTargets;
import turnalike.pieces.Column;
import turnalike.pieces.KeyedFigure;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.Slip;
import turnalike.units.MassUnit;
import turnalike.units.Parsed;
import turnalike.units.Problem;

/** A piece as it is typed: its label and the text of each column, in the job's units and grams unless the text carries its own. */
public final class PieceEntry {
    private PieceEntry() {}

    /**
     * What came of it: the piece as it would be kept, or what is wrong with each field.
     *
     * @param piece empty when anything is wrong
     * @param problems one for each field that is wrong, in the order they were given; none beside a piece
     */
    public record Read(Optional<KeptPiece> piece, List<Problem> problems) {
        public Read {
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads it onto what is known of that piece. Nothing is kept yet.
     *
     * @param kept the job that the piece belongs to
     * @param label as typed; a piece of that label is changed, else a new one begun
     * @param figures by column, {@code mass_g} or {@code mass_oz}, {@code d1}, or one that the job gives a weight to, {@code colour}; an empty text takes
     *     the figure out, a column left out stays as it is
     * @return the piece, or what is wrong
     */
    public static Read read(KeptJob kept, String label, Map<String, String> figures) {
        List<Problem> problems = new ArrayList<>();
        Parsed<String> plain = Piece.label(label);
        if (plain instanceof Parsed.Refused<String> refused) {
            problems.add(new Problem("piece", refused.what(), refused.mend()));
            return new Read(Optional.empty(), problems);
        }
        KeptPiece before = kept.piece(plain.get());
        Job job = kept.text().job();
        Map<String, String> measured = new LinkedHashMap<>(figures);
        Map<String, String> noted = new LinkedHashMap<>(figures);
        measured.keySet().removeAll(job.likeness().noted().keySet());
        noted.keySet().retainAll(job.likeness().noted().keySet());
        Measures measures = measures(job, before.piece().measures(), measured, problems);
        Piece piece = noted(before.piece().with(measures), noted, problems);
        return new Read(problems.isEmpty() ? Optional.of(changed(before, piece)) : Optional.empty(), problems);
    }

    private static Piece noted(Piece before, Map<String, String> noted, List<Problem> problems) {
        Piece piece = before;
        for (Map.Entry<String, String> each : noted.entrySet()) {
            Parsed<String> note = Piece.note(each.getValue());
            if (note instanceof Parsed.Refused<String> refused) {
                problems.add(new Problem(each.getKey(), refused.what(), refused.mend()));
            } else {
                piece = piece.noting(each.getKey(), note.get());
            }
        }
        return piece;
    }

    private static Measures measures(Job job, Measures before, Map<String, String> figures, List<Problem> problems) {
        Measures measures = before;
        for (Map.Entry<String, String> each : figures.entrySet()) {
            Optional<Column> column = Column.find(each.getKey());
            if (column.isEmpty()) {
                problems.add(new Problem(each.getKey(), "is no measure", "use mass_g, length, balance, d1, m1"));
                continue;
            }
            Parsed<Measures> entered = new KeyedFigure(job.units(), MassUnit.ofColumn(each.getKey()))
                    .enter(measures, column.get(), each.getValue());
            if (entered instanceof Parsed.Refused<Measures> refused) {
                problems.add(new Problem(each.getKey(), refused.what(), refused.mend()));
            } else {
                measures = entered.get();
            }
        }
        return measures;
    }

    /** As entered; which of them came from a photograph is kept where they stayed as they were. */
    private static KeptPiece changed(KeptPiece before, Piece piece) {
        var photographed = new java.util.TreeMap<>(before.fromPhoto());
        photographed.keySet().removeIf(column -> !before.piece()
                .measures()
                .figure(column)
                .equals(piece.measures().figure(column)));
        return new KeptPiece(piece, photographed, before.turning());
    }

    /**
     * {@return what reads like a slip of the hand in a piece about to be kept, beside those kept already; a question each}
     *
     * @param kept the job that the piece belongs to
     * @param entered the piece; one of the same label that is kept already is not compared with it
     */
    public static List<Slip> ask(KeptJob kept, Piece entered) {
        List<Piece> others = kept.pieces().stream()
                .map(KeptPiece::piece)
                .filter(each -> !each.label().equals(entered.label()))
                .toList();
        return ColumnTargets.slips(
                        kept.text().job(), kept.text().job().tolerances().masses())
                .ask(entered, others);
    }
}
