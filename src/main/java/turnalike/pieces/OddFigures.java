package turnalike.pieces;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

/** The questions about one piece's figures that lie where such figures do not usually lie. */
final class OddFigures {
    /** A figure outside the usual. */
    private record Odd(Column column, double figure, UsualRange usual) {}

    private final Piece piece;
    private final KeyedFigure keyed;

    private OddFigures(Piece piece, KeyedFigure keyed) {
        this.piece = piece;
        this.keyed = keyed;
    }

    /** Pairs that fit once they change places come first, then each figure left. */
    static List<Slip> ask(Piece piece, SortedMap<Column, UsualRange> usual, KeyedFigure keyed) {
        List<Odd> odd = new ArrayList<>();
        usual.forEach((column, range) -> piece.measures().figure(column).ifPresent(figure -> {
            if (!range.fits(figure)) {
                odd.add(new Odd(column, figure, range));
            }
        }));
        return new OddFigures(piece, keyed).ask(odd);
    }

    private List<Slip> ask(List<Odd> odd) {
        List<Slip> slips = new ArrayList<>();
        Set<Odd> explained = new HashSet<>();
        for (Odd a : odd) {
            for (Odd b : odd.subList(odd.indexOf(a) + 1, odd.size())) {
                if (!explained.contains(a) && !explained.contains(b)) {
                    swapped(a, b).ifPresent(slip -> {
                        slips.add(slip);
                        explained.addAll(List.of(a, b));
                    });
                }
            }
        }
        odd.stream().filter(each -> !explained.contains(each)).map(this::single).forEach(slips::add);
        return slips;
    }

    private Optional<Slip> swapped(Odd a, Odd b) {
        double forA = LikelyCorrection.figure(a.column(), LikelyCorrection.count(b.column(), b.figure(), keyed), keyed);
        double forB = LikelyCorrection.figure(b.column(), LikelyCorrection.count(a.column(), a.figure(), keyed), keyed);
        if (!a.usual().fits(forA) || !b.usual().fits(forB)) {
            return Optional.empty();
        }
        return Optional.of(new Slip(
                "piece %s, columns %s and %s".formatted(piece.label(), name(a), name(b)),
                Slip.Kind.SWAPPED_COLUMNS,
                "did %s and %s change places?".formatted(words(a, a.figure()), words(b, b.figure())),
                Optional.of(piece.with(piece.measures().with(a.column(), forA).with(b.column(), forB)))));
    }

    private Slip single(Odd odd) {
        double centre = odd.usual().centre();
        String where = "piece %s, column %s".formatted(piece.label(), name(odd));
        String off = "%s is %s from the usual %s"
                .formatted(words(odd, odd.figure()), words(odd, odd.figure() - centre), words(odd, centre));
        return LikelyCorrection.find(odd.column(), odd.figure(), odd.usual(), keyed)
                .map(meant -> new Slip(
                        where,
                        meant.kind(),
                        "%s: %s, and is %s meant?".formatted(off, meant.how(), words(odd, meant.figure())),
                        Optional.of(piece.with(piece.measures().with(odd.column(), meant.figure())))))
                .orElseGet(() -> new Slip(where, Slip.Kind.FAR_OFF, off + ": is it right?", Optional.empty()));
    }

    private String name(Odd odd) {
        return odd.column().format(keyed.mass());
    }

    private String words(Odd odd, double figure) {
        return FigureText.figure(odd.column(), figure, keyed);
    }
}
