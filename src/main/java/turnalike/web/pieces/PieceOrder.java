package turnalike.web.pieces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.job.kept.KeptPiece;
import turnalike.job.pieces.LikenessReport;
import turnalike.pieces.Column;

/**
 * The order of the table's rows; what was not measured stands last either way.
 *
 * @param by a column's name, {@code unlike}, or nothing for the order they were turned in
 * @param falls whether the largest stands first
 */
public record PieceOrder(String by, boolean falls) {
    /** As they were turned. */
    static final PieceOrder AS_TURNED = new PieceOrder("", false);

    private static final String UNLIKE = "unlike";
    private static final Pattern WORD = Pattern.compile("(-?)([a-z][a-z0-9_]*)");

    /** {@return the order of that word: {@code mass_g}, {@code -mass_g} for the heaviest first; as turned for any other text} */
    static PieceOrder of(String word) {
        Matcher matcher = WORD.matcher(word);
        boolean known = matcher.matches()
                && (matcher.group(2).equals(UNLIKE)
                        || Column.find(matcher.group(2)).isPresent());
        return known ? new PieceOrder(matcher.group(2), !matcher.group(1).isEmpty()) : AS_TURNED;
    }

    /** {@return the word it is asked for by} */
    public String word() {
        return (falls ? "-" : "") + by;
    }

    boolean isAsTurned() {
        return by.isEmpty();
    }

    /** {@return what a press on that column's heading asks for next: rising, falling, as turned} */
    public String next(String column) {
        if (!column.equals(by)) {
            return column.equals(UNLIKE) ? "-" + column : column;
        }
        return column.equals(UNLIKE) == falls ? new PieceOrder(by, !falls).word() : "";
    }

    /** {@return how that column is sorted, as accessibility names it} */
    public String sorted(String column) {
        return column.equals(by) ? (falls ? "descending" : "ascending") : "none";
    }

    List<KeptPiece> of(List<KeptPiece> pieces, Map<String, LikenessReport.PieceLikeness> alike) {
        if (isAsTurned()) {
            return pieces;
        }
        Comparator<Double> figures = falls ? Comparator.reverseOrder() : Comparator.naturalOrder();
        List<KeptPiece> out = new ArrayList<>(pieces);
        out.sort(Comparator.comparing(piece -> figure(piece, alike).orElse(Double.NaN), unmeasuredLast(figures)));
        return out;
    }

    private static Comparator<Double> unmeasuredLast(Comparator<Double> figures) {
        return (one, two) ->
                one.isNaN() || two.isNaN() ? Boolean.compare(one.isNaN(), two.isNaN()) : figures.compare(one, two);
    }

    private Optional<Double> figure(KeptPiece piece, Map<String, LikenessReport.PieceLikeness> alike) {
        if (by.equals(UNLIKE)) {
            return Optional.ofNullable(alike.get(piece.label()))
                    .map(each -> each.figure().figure());
        }
        return piece.piece().measures().figures().entrySet().stream()
                .filter(each -> each.getKey().equals(Column.find(by).orElseThrow()))
                .map(Map.Entry::getValue)
                .findFirst();
    }
}
