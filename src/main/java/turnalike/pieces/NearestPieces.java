package turnalike.pieces;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Which of many pieces is most like each, by the difference for each weight shared: from tables of plain figures, where making the parts of fifty
 * million pairs would take a minute. The sums are those of {@link Likeness#parts}, in its order. Two pieces that share nothing but their weight are
 * not compared, as any two may weigh the same.
 */
public final class NearestPieces {
    /** In place of a piece: no other shares a measure besides the weight. */
    public static final int NONE = -1;

    private final double[][] figures;
    private final double[] weights;
    private final double[] tolerances;
    private final boolean[] isMass;
    private final List<List<Optional<Grade>>> grades;
    private final double[] gradeWeights;

    private NearestPieces(Likeness likeness, List<Piece> pieces) {
        TreeSet<Column> all = new TreeSet<>();
        pieces.forEach(each -> all.addAll(each.measures().figures().keySet()));
        List<Column> columns = all.stream().filter(likeness::isCompared).toList();
        this.weights = columns.stream().mapToDouble(likeness.weights()::of).toArray();
        this.tolerances = columns.stream().mapToDouble(likeness::tolerance).toArray();
        this.isMass = new boolean[columns.size()];
        this.figures = new double[pieces.size()][columns.size()];
        for (int k = 0; k < columns.size(); k++) {
            isMass[k] = columns.get(k).isMass();
            for (int i = 0; i < pieces.size(); i++) {
                figures[i][k] = pieces.get(i).measures().figure(columns.get(k)).orElse(Double.NaN);
            }
        }
        List<Map.Entry<String, Double>> noted =
                List.copyOf(likeness.weights().noted().entrySet());
        this.gradeWeights = noted.stream().mapToDouble(Map.Entry::getValue).toArray();
        this.grades = pieces.stream()
                .map(piece -> noted.stream()
                        .map(each -> Optional.ofNullable(piece.extra().get(each.getKey()))
                                .map(Grade::of))
                        .collect(Collectors.toUnmodifiableList()))
                .toList();
    }

    /**
     * {@return for each piece the number of the one most like it, the first of several; {@link #NONE} where there is none} The work grows with
     * the square of the number of pieces, a second or so for ten thousand.
     *
     * @param likeness of any two of them
     * @param pieces those to compare
     */
    public static int[] of(Likeness likeness, List<Piece> pieces) {
        NearestPieces table = new NearestPieces(likeness, pieces);
        int[] nearest = new int[pieces.size()];
        Arrays.fill(nearest, NONE);
        double[] least = new double[pieces.size()];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (int i = 0; i < pieces.size(); i++) {
            for (int j = i + 1; j < pieces.size(); j++) {
                double each = table.each(i, j);
                if (each < least[i]) {
                    least[i] = each;
                    nearest[i] = j;
                }
                if (each < least[j]) {
                    least[j] = each;
                    nearest[j] = i;
                }
            }
        }
        return nearest;
    }

    /** The difference over the weights of what was compared; infinite where that is nothing but the weight. */
    private double each(int one, int other) {
        double difference = 0;
        double weight = 0;
        boolean any = false;
        double[] mine = figures[one];
        double[] others = figures[other];
        for (int k = 0; k < weights.length; k++) {
            double off = mine[k] - others[k];
            if (!Double.isNaN(off)) {
                difference += weights[k] * Math.abs(off) / tolerances[k];
                weight += weights[k];
                any |= !isMass[k];
            }
        }
        for (int k = 0; k < gradeWeights.length; k++) {
            Optional<Grade> my = grades.get(one).get(k);
            Optional<Grade> theirs = grades.get(other).get(k);
            if (my.isPresent() && theirs.isPresent()) {
                difference += gradeWeights[k] * Math.abs(my.get().less(theirs.get()));
                weight += gradeWeights[k];
                any = true;
            }
        }
        if (!any) {
            return Double.POSITIVE_INFINITY;
        }
        return weight > 0 ? difference / weight : 0;
    }
}
