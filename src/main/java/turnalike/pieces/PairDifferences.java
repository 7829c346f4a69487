package turnalike.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/**
 * How unlike any two of a list of pieces are, to the bit as {@link Likeness#difference} says it: for searches that ask of millions of pairs
 * what each piece's figures are, which are looked up here once.
 */
public final class PairDifferences {
    private final double[] weights;
    private final double[] tolerances;

    /** By piece, then by column; what is not measured is not a number. */
    private final double[][] figures;

    private final double[] notedWeights;

    /** By noted column, then by piece. */
    private final List<List<Optional<Grade>>> noted = new ArrayList<>();

    /**
     * Looks up what was measured and noted.
     *
     * @param likeness how two of them are compared
     * @param pieces the pieces, known by their number in this list, from 0
     */
    public PairDifferences(Likeness likeness, List<Piece> pieces) {
        TreeSet<Column> all = new TreeSet<>();
        pieces.forEach(piece -> all.addAll(piece.measures().figures().keySet()));
        List<Column> columns = all.stream().filter(likeness::isCompared).toList();
        weights = columns.stream().mapToDouble(likeness.weights()::of).toArray();
        tolerances = columns.stream().mapToDouble(likeness::tolerance).toArray();
        figures = pieces.stream()
                .map(piece -> columns.stream()
                        .mapToDouble(column -> piece.measures().figure(column).orElse(Double.NaN))
                        .toArray())
                .toArray(double[][]::new);
        Map<String, Double> judged = likeness.weights().noted();
        notedWeights = judged.values().stream().mapToDouble(weight -> weight).toArray();
        for (String name : judged.keySet()) {
            noted.add(pieces.stream()
                    .map(piece -> Optional.ofNullable(piece.extra().get(name)).map(Grade::of))
                    .toList());
        }
    }

    /**
     * {@return how unlike two of them are; 0 also when nothing is measured on both}
     *
     * @param piece the number of one
     * @param other the other's; the same whichever is named first
     */
    public double between(int piece, int other) {
        double[] mine = figures[piece];
        double[] others = figures[other];
        double sum = 0;
        for (int i = 0; i < mine.length; i++) {
            double off = mine[i] - others[i];
            if (!Double.isNaN(off)) {
                sum += weights[i] * Math.abs(off) / tolerances[i];
            }
        }
        for (int i = 0; i < notedWeights.length; i++) {
            Optional<Grade> one = noted.get(i).get(piece);
            Optional<Grade> two = noted.get(i).get(other);
            if (one.isPresent() && two.isPresent()) {
                sum += notedWeights[i] * Math.abs(one.get().less(two.get()));
            }
        }
        return sum;
    }
}
