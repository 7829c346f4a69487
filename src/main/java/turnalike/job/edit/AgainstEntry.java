package turnalike.job.edit;

import java.util.Map;
import java.util.Optional;
import turnalike.job.kept.Change;
import turnalike.job.kept.Edit;
import turnalike.job.kept.FromPhoto;
import turnalike.job.kept.KeptJob;
import turnalike.job.kept.KeptPiece;
import turnalike.job.pieces.AgainstReport;
import turnalike.pieces.Column;
import turnalike.pieces.Measures;
import turnalike.trace.against.Figure;
import turnalike.units.Length;

/** What was found of a piece by holding it against its pattern, as an entry of the pieces log. */
public final class AgainstEntry {
    /** Nineteen cases of twenty lie within so many standard deviations. */
    private static final double SIGMAS = 2;

    private AgainstEntry() {}

    /**
     * {@return the edit that logs what was seen, in one step; what was not seen stays as it was logged before}
     *
     * @param kept the job that the piece is of
     * @param label the piece's, as {@link turnalike.pieces.Piece} takes it
     * @param report what was found
     * @param photo the photograph's name, where it came from one: each measure then says so, and how far it may be off
     */
    public static Edit log(KeptJob kept, String label, AgainstReport report, Optional<String> photo) {
        KeptPiece piece = kept.piece(label);
        for (Map.Entry<Column, Figure> each : report.figures().entrySet()) {
            Measures one =
                    Measures.NONE.with(each.getKey(), rounded(each.getValue().value()));
            piece = photo.isPresent() && each.getKey().kind() != Column.Kind.LENGTH
                    ? piece.with(one, source(photo.get(), each.getValue()))
                    : piece.with(one);
        }
        return Edit.of("log piece %s as seen".formatted(label), Change.of(piece));
    }

    /** To a hundredth of a millimetre, as a caliper reads it. */
    private static Length rounded(Length length) {
        return Length.ofMm(Math.max(1, Math.rint(100 * length.mm())) / 100);
    }

    private static FromPhoto source(String photo, Figure figure) {
        return new FromPhoto(photo, Optional.of(figure.uncertainty().times(SIGMAS)));
    }
}
