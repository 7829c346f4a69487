package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.job.Job;
import turnalike.pieces.Likeness;
import turnalike.pieces.LikenessWords;
import turnalike.pieces.MassUnit;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.units.Working;

/**
 * How alike the pieces of a job are: one figure for each beside the pattern, and one for each pair.
 *
 * @param pieces in the file's order
 * @param pairs every pair, the most alike first; of more than {@link #MOST_PIECES_PAIRED} pieces, each piece's nearest only
 * @param workings how the figures were found
 */
public record LikenessReport(List<PieceLikeness> pieces, List<Pair> pairs, List<Working> workings) {
    /** So many pieces make 19,900 pairs; beyond, only nearest ones are listed. */
    public static final int MOST_PIECES_PAIRED = 200;

    private static final int PARTS_SAID = 3;

    public LikenessReport {
        pieces = List.copyOf(pieces);
        pairs = List.copyOf(pairs);
        workings = List.copyOf(workings);
    }

    /**
     * One piece.
     *
     * @param figure its difference from the pattern, part by part
     * @param words what makes it unlike, the largest parts only
     * @param nearest the piece most like it, if another shares a measure with it
     */
    public record PieceLikeness(Likeness.Figure figure, String words, Optional<Pair> nearest) {}

    /**
     * Two pieces.
     *
     * @param piece the one's label
     * @param other the other's
     * @param difference in tolerances' worths, weighted
     */
    public record Pair(String piece, String other, double difference) {
        private Pair turned() {
            return new Pair(/* piece= */ other, /* other= */ piece, difference);
        }
    }

    /** {@return the pieces, the least like the pattern first: that is the one to look at} */
    public List<PieceLikeness> mostUnlikeFirst() {
        return pieces.stream()
                .sorted(Comparator.comparingDouble(
                                (PieceLikeness each) -> each.figure().figure())
                        .reversed())
                .toList();
    }

    /**
     * Compares every piece with the pattern (its mass with the median of all the pieces) and with every other. The work grows with the
     * square of the number of pieces.
     *
     * @param job gives the pattern, the tolerances and what each measure counts
     * @param pieces those to compare, in the file's order
     * @param mass the unit that weights are told in, in words
     * @return the report, its figures in tolerances' worths, weighted
     */
    public static LikenessReport of(Job job, List<Piece> pieces, MassUnit mass) {
        Likeness likeness = Likeness.among(pieces, job.tolerances().forLikeness(), job.likeness());
        Measures reference = Likeness.reference(ColumnTargets.shape(job), pieces);
        LikenessWords words = ColumnTargets.words(job, mass);
        boolean all = pieces.size() <= MOST_PIECES_PAIRED;
        List<Pair> pairs = new ArrayList<>();
        List<Optional<Pair>> nearest = new ArrayList<>(Collections.nCopies(pieces.size(), Optional.empty()));
        for (int i = 0; i < pieces.size(); i++) {
            for (int j = i + 1; j < pieces.size(); j++) {
                OptionalDouble difference = likeness.findDifference(pieces.get(i), pieces.get(j));
                if (difference.isPresent()) {
                    Pair pair = new Pair(pieces.get(i).label(), pieces.get(j).label(), difference.getAsDouble());
                    nearest.set(i, nearer(nearest.get(i), pair));
                    nearest.set(j, nearer(nearest.get(j), pair.turned()));
                    if (all) {
                        pairs.add(pair);
                    }
                }
            }
        }
        if (!all) {
            nearest.forEach(each -> each.ifPresent(pairs::add));
        }
        List<PieceLikeness> entries = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            Likeness.Figure figure = likeness.figure(pieces.get(i), reference);
            entries.add(new PieceLikeness(figure, words.of(figure, PARTS_SAID), nearest.get(i)));
        }
        pairs.sort(Comparator.comparingDouble(Pair::difference));
        return new LikenessReport(entries, pairs, List.of(job.likeness().working(), beside()));
    }

    /**
     * The pieces least like the pattern, as {@link #of} has them. The work grows with the number of pieces times that of those asked for.
     *
     * @param job gives the pattern, the tolerances and what each measure counts
     * @param pieces those to compare, in the file's order
     * @param mass the unit that weights are told in, in words
     * @param most how many are asked for
     * @return the least like first
     */
    public static List<PieceLikeness> mostUnlike(Job job, List<Piece> pieces, MassUnit mass, int most) {
        Likeness likeness = Likeness.among(pieces, job.tolerances().forLikeness(), job.likeness());
        Measures reference = Likeness.reference(ColumnTargets.shape(job), pieces);
        LikenessWords words = ColumnTargets.words(job, mass);
        return pieces.stream()
                .map(piece -> new Compared(piece, likeness.figure(piece, reference)))
                .sorted(Comparator.comparingDouble(
                                (Compared each) -> each.figure().figure())
                        .reversed())
                .limit(most)
                .map(each -> new PieceLikeness(
                        each.figure(), words.of(each.figure(), PARTS_SAID), nearest(likeness, each.piece(), pieces)))
                .toList();
    }

    private record Compared(Piece piece, Likeness.Figure figure) {}

    private static Optional<Pair> nearest(Likeness likeness, Piece piece, List<Piece> pieces) {
        Optional<Pair> nearest = Optional.empty();
        for (Piece other : pieces) {
            OptionalDouble difference = other.label().equals(piece.label())
                    ? OptionalDouble.empty()
                    : likeness.findDifference(piece, other);
            if (difference.isPresent()
                    && (nearest.isEmpty()
                            || difference.getAsDouble() < nearest.get().difference())) {
                nearest = Optional.of(new Pair(piece.label(), other.label(), difference.getAsDouble()));
            }
        }
        return nearest;
    }

    private static Optional<Pair> nearer(Optional<Pair> soFar, Pair pair) {
        return soFar.isPresent() && soFar.get().difference() <= pair.difference() ? soFar : Optional.of(pair);
    }

    private static Working beside() {
        return new Working(
                "what a piece is compared with",
                "length, marks and check places with the pattern's own; everything else with the median of the pieces",
                Working.COMMON_PRACTICE,
                "the median keeps one bad piece from moving the aim; columns not measured on both are left out");
    }
}
