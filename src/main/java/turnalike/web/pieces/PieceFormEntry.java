package turnalike.web.pieces;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import turnalike.job.kept.KeptJob;
import turnalike.pieces.Slip;
import turnalike.units.Problem;

/**
 * What stands in the forms.
 *
 * @param label of the piece being logged
 * @param figures by column, as typed
 * @param cells what was pasted
 * @param problems what is wrong with it; nothing of it was kept
 * @param slips what reads like a mistake; nothing was kept until it is answered
 */
public record PieceFormEntry(
        String label, Map<String, String> figures, String cells, List<Problem> problems, List<Slip> slips) {
    public PieceFormEntry {
        figures = Map.copyOf(figures);
        problems = List.copyOf(problems);
        slips = List.copyOf(slips);
    }

    private static final Pattern COLUMN_OF_A_PIECE = Pattern.compile("^(piece .+), column \\w+$");

    /** An empty form for the next piece, or the form of one that is there. */
    static PieceFormEntry of(KeptJob kept, Optional<String> label) {
        Optional<String> there = label.filter(each -> kept.find(each).isPresent());
        return new PieceFormEntry(
                there.orElse(kept.nextLabel()),
                there.map(each -> TypedPiece.of(kept, each)).orElse(Map.of()),
                "",
                List.of(),
                List.of());
    }

    PieceFormEntry asking(List<Slip> these) {
        List<Slip> placed = these.stream()
                .map(slip -> new Slip(placeOnPage(slip.where()), slip.kind(), slip.question(), slip.instead()))
                .toList();
        return new PieceFormEntry(label, figures, cells, problems, placed);
    }

    /** Without the name that a column has in a file: which figure is meant the question says. */
    private static String placeOnPage(String where) {
        return where.equals("column mass_g")
                ? "the weights"
                : COLUMN_OF_A_PIECE.matcher(where).replaceFirst("$1");
    }

    PieceFormEntry wrong(List<Problem> these) {
        return new PieceFormEntry(label, figures, cells, these, slips);
    }

    PieceFormEntry pasted(String text) {
        return new PieceFormEntry(label, new LinkedHashMap<>(figures), text, problems, slips);
    }

    /** What is wrong in that column, or nothing. */
    String wrong(String column) {
        return problems.stream()
                .filter(problem -> problem.where().equals(column))
                .map(problem -> problem.what() + "; " + problem.mend())
                .findFirst()
                .orElse("");
    }

    /** Whether the table rather than the one piece is asked about. */
    public boolean isTable() {
        return !cells.isEmpty();
    }
}
