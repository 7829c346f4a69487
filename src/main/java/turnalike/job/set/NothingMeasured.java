package turnalike.job.set;

import java.util.List;
import java.util.Optional;
import turnalike.pieces.Likeness;
import turnalike.pieces.Piece;

/** Pieces of which nothing is known that the others are compared by: they pass for the likest of all, since nothing tells them apart. */
final class NothingMeasured {
    private NothingMeasured() {}

    /**
     * {@return what to say of such pieces that were placed; empty where there is none, or no piece is measured at all}
     *
     * @param likeness how pieces are compared
     * @param pieces all there are
     * @param placed those of them that were placed
     */
    static Optional<String> words(Likeness likeness, List<Piece> pieces, List<Piece> placed) {
        List<String> labels = placed.stream()
                .filter(piece -> isUnknown(likeness, piece))
                .map(Piece::label)
                .toList();
        boolean others = pieces.stream().anyMatch(piece -> !isUnknown(likeness, piece));
        if (labels.isEmpty() || !others) {
            return Optional.empty();
        }
        return Optional.of((labels.size() == 1
                        ? "piece %s was placed with nothing measured: it counts as like any other; measure it, or take it out if it is"
                                + " spoiled"
                        : "pieces %s were placed with nothing measured: they count as like any other; measure them, or take out what"
                                + " is spoiled")
                .formatted(String.join(", ", labels)));
    }

    private static boolean isUnknown(Likeness likeness, Piece piece) {
        return piece.measures().figures().isEmpty()
                && likeness.weights().noted().keySet().stream()
                        .noneMatch(name -> piece.extra().containsKey(name));
    }
}
