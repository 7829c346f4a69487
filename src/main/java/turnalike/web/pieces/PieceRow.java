package turnalike.web.pieces;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.job.pieces.LikenessReport;
import turnalike.pieces.Column;

/**
 * One piece in the table.
 *
 * @param label what is written on it
 * @param cells its fields
 * @param notes what is kept with it and not typed here
 * @param isChosen whether it is the one that is looked at or was typed into
 * @param unlike its difference from the pattern, in tolerances' worths; empty where nothing was measured, or beyond the most unlike of many
 * @param off what sets it apart, in words
 * @param twin the piece most like it
 * @param isOffWeight whether its weight sets it apart, so that it may be brought to weight
 */
public record PieceRow(
        String label,
        List<PieceForm.Cell> cells,
        List<String> notes,
        boolean isChosen,
        String unlike,
        String off,
        String twin,
        boolean isOffWeight) {
    /** Half of what counts as one tolerance: less off is not worth a cut. */
    private static final double WORTH_A_CUT = 0.5;

    public PieceRow {
        cells = List.copyOf(cells);
        notes = List.copyOf(notes);
    }

    static PieceRow of(
            String label,
            List<PieceForm.Cell> cells,
            List<String> notes,
            boolean isChosen,
            Optional<LikenessReport.PieceLikeness> alike) {
        return new PieceRow(
                label,
                cells,
                notes,
                isChosen,
                alike.map(each ->
                                String.format(Locale.ROOT, "%.2f", each.figure().figure()))
                        .orElse(""),
                alike.map(each -> words(each.words(), label)).orElse(""),
                alike.map(LikenessReport.PieceLikeness::twin).orElse(""),
                alike.stream()
                        .flatMap(each -> each.figure().parts().stream())
                        .anyMatch(part ->
                                part.column().filter(Column::isMass).isPresent() && part.counts() >= WORTH_A_CUT));
    }

    /** {@return what sets it apart most, in a few words} */
    public String most() {
        return off.replaceFirst(";.*", "").replaceFirst("^it(?:s| is) ", "");
    }

    /** The row says already which piece it is. */
    private static String words(String words, String label) {
        return words.replaceFirst("^piece " + java.util.regex.Pattern.quote(label) + ": ", "");
    }
}
