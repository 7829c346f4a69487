package turnalike.pieces;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Asks about the likely slips: a digit off, the wrong unit, swapped columns, a piece entered twice. It asks only; nothing is changed or
 * refused. What counts as usual is told in {@link UsualRange}; the rules are common practice, no source.
 *
 * @param wanted what the pattern asks for, as far as known
 * @param tolerances the job's
 * @param keyed the units figures are typed in
 */
public record Slips(Measures wanted, LikenessTolerances tolerances, KeyedFigure keyed) {
    /** The fewest equal figures that make two pieces suspect: a scale that shows whole grams gives equal masses every day. */
    private static final int TELLING = 3;

    /**
     * {@return the questions about one piece just entered; empty when nothing in it reads like a mistake}
     *
     * @param entered the piece
     * @param before the pieces before it, in the order they were entered; they are taken as answered for
     */
    public List<Slip> ask(Piece entered, List<Piece> before) {
        List<Measures> others = before.stream().map(Piece::measures).toList();
        SortedMap<Column, UsualRange> usual = new TreeMap<>();
        for (Column column : entered.measures().figures().keySet()) {
            UsualRange.of(column, others, wanted, tolerances).ifPresent(found -> usual.put(column, found));
        }
        List<Slip> slips = new ArrayList<>(OddFigures.ask(entered, usual, keyed));
        slips.addAll(pastTheEnd(entered));
        if (!before.isEmpty()) {
            twice(entered, before.get(before.size() - 1)).ifPresent(slips::add);
        }
        String label = plain(entered.label());
        before.stream()
                .filter(each -> plain(each.label()).equals(label))
                .findFirst()
                .ifPresent(each -> slips.add(label(entered, each)));
        return slips;
    }

    /**
     * {@return the questions about a whole file: first about its columns, then piece by piece} A column in doubt is not asked about
     * again.
     *
     * @param pieces in the file's order
     */
    public List<Slip> askAll(List<Piece> pieces) {
        List<Measures> all = pieces.stream().map(Piece::measures).toList();
        SortedMap<Column, UsualRange> usual = new TreeMap<>();
        List<Slip> slips = new ArrayList<>();
        TreeSet<Column> columns = new TreeSet<>();
        all.forEach(each -> columns.addAll(each.figures().keySet()));
        WholeColumns whole = WholeColumns.of(all, wanted, keyed);
        slips.addAll(whole.slips());
        columns.removeAll(whole.inDoubt());
        for (Column column : columns) {
            UsualRange.of(column, all, wanted, tolerances).ifPresent(found -> usual.put(column, found));
        }
        Map<String, Piece> labels = new HashMap<>();
        for (int i = 0; i < pieces.size(); i++) {
            Piece piece = pieces.get(i);
            slips.addAll(OddFigures.ask(piece, usual, keyed));
            slips.addAll(pastTheEnd(piece));
            if (i > 0) {
                twice(piece, pieces.get(i - 1)).ifPresent(slips::add);
            }
            Piece alike = labels.putIfAbsent(plain(piece.label()), piece);
            if (alike != null) {
                slips.add(label(piece, alike));
            }
        }
        return slips;
    }

    private List<Slip> pastTheEnd(Piece piece) {
        List<Slip> slips = new ArrayList<>();
        piece.measures()
                .figure(Column.LENGTH)
                .ifPresent(length -> piece.measures().figures().forEach((column, figure) -> {
                    boolean along = column.kind() == Column.Kind.BALANCE || column.kind() == Column.Kind.MARK;
                    if (along && figure > length + tolerances.mark().mm()) {
                        slips.add(new Slip(
                                "piece %s, column %s".formatted(piece.label(), column.format(keyed.mass())),
                                Slip.Kind.PAST_THE_END,
                                "%s lies past the end at %s: is it measured from the start end?"
                                        .formatted(words(column, figure), words(Column.LENGTH, length)),
                                Optional.empty()));
                    }
                }));
        return slips;
    }

    private static Optional<Slip> twice(Piece piece, Piece before) {
        boolean same = piece.measures().equals(before.measures())
                && piece.measures().figures().size() >= TELLING;
        return same
                ? Optional.of(new Slip(
                        "piece " + piece.label(),
                        Slip.Kind.TWICE,
                        "all its figures are those of piece %s: was it entered twice?".formatted(before.label()),
                        Optional.empty()))
                : Optional.empty();
    }

    private static Slip label(Piece piece, Piece alike) {
        return new Slip(
                "piece " + piece.label(),
                Slip.Kind.LABEL,
                "is it the same as piece %s?".formatted(alike.label()),
                Optional.empty());
    }

    private static String plain(String label) {
        int zeros = 0;
        while (zeros < label.length() - 1 && label.charAt(zeros) == '0') {
            zeros++;
        }
        return label.substring(zeros).toLowerCase(Locale.ROOT);
    }

    private String words(Column column, double figure) {
        return FigureText.figure(column, figure, keyed);
    }
}
