package turnalike.job.set;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.match.NextSet;
import turnalike.pieces.Piece;
import turnalike.units.Mass;

/**
 * What the left-over pieces are good for: the most of them that keep within the mass tolerance, toward the next set.
 *
 * @param pieces labels of the spares to keep together, lightest first; at least one
 * @param missing how many more that set needs
 * @param aimFrom a new piece from this mass on …
 * @param aimTo … to this one keeps the set within the tolerance
 */
public record NextPieces(List<String> pieces, int missing, Mass aimFrom, Mass aimTo) {
    /** A piece left over, weighed. */
    record Spare(String label, Mass mass) {}

    public NextPieces {
        pieces = List.copyOf(pieces);
    }

    /** Empty when nothing weighed was left over. */
    static Optional<NextPieces> of(List<Spare> spares, int places, double tolerancePct) {
        if (spares.isEmpty()) {
            return Optional.empty();
        }
        NextSet next = NextSet.of(spares.stream().map(Spare::mass).toList(), places, tolerancePct);
        List<String> labels =
                next.pieces().stream().map(i -> spares.get(i).label()).toList();
        return Optional.of(new NextPieces(labels, next.missing(), next.aimFrom(), next.aimTo()));
    }

    /** What to keep and what to turn. */
    String inWords() {
        String turn = missing == 0
                ? "they make a set as they are"
                : String.format(Locale.ROOT, "turn %d more of %.1f to %.1f g", missing, aimFrom.grams(), aimTo.grams());
        return "next set: keep piece %s; %s".formatted(String.join(", ", pieces), turn);
    }

    static Optional<NextPieces> ofPieces(List<Piece> spares, int places, double tolerancePct) {
        List<Spare> weighed = spares.stream()
                .flatMap(piece -> piece.mass().map(mass -> new Spare(piece.label(), mass)).stream())
                .toList();
        return of(weighed, places, tolerancePct);
    }
}
