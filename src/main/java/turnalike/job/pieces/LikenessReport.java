package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import turnalike.job.Job;
import turnalike.pieces.Column;
import turnalike.pieces.Likeness;
import turnalike.pieces.LikenessWords;
import turnalike.pieces.Measures;
import turnalike.pieces.NearestPieces;
import turnalike.pieces.Piece;
import turnalike.units.MassUnit;
import turnalike.units.Working;

/**
 * How alike the pieces of a job are: one figure for each beside the pattern, and one for each pair.
 *
 * @param pieces in the file's order
 * @param pairs every pair, the most alike first, those that share nothing but their weight last; of more than {@link #MOST_PIECES_PAIRED}
 *     pieces, each piece's nearest only
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
     * @param nearest the piece most like it over what both have, by the difference for each weight shared; none where no other shares a
     *     measure besides the weight, as any two pieces may weigh the same
     * @param measures how many measures any of the pieces has
     */
    public record PieceLikeness(Likeness.Figure figure, String words, Optional<Pair> nearest, int measures) {
        /** {@return what it is most like, and over how little that was compared, in words} */
        public String twin() {
            if (nearest.isEmpty()) {
                return figure.parts().isEmpty() ? "like none: nothing measured" : "like none: only its weight to go by";
            }
            Pair pair = nearest.get();
            String over = pair.shared() == measures ? "" : " over %d of %d measures".formatted(pair.shared(), measures);
            return String.format(Locale.ROOT, "piece %s, %.2f%s", pair.other(), pair.difference(), over);
        }
    }

    /**
     * Two pieces.
     *
     * @param piece the one's label
     * @param other the other's
     * @param difference in tolerances' worths, weighted
     * @param shared how many measures were compared
     * @param weight the sum of their weights
     * @param onlyMass whether nothing but the weight was
     */
    public record Pair(String piece, String other, double difference, int shared, double weight, boolean onlyMass) {
        private static Pair of(Piece one, Piece two, List<Likeness.Part> parts, Likeness likeness) {
            double difference = 0;
            double weight = 0;
            boolean onlyMass = true;
            for (Likeness.Part part : parts) {
                difference += part.counts();
                weight += part.column().isPresent()
                        ? likeness.weights().of(part.column().get())
                        : likeness.weights().noted().getOrDefault(part.name(), 0.0);
                onlyMass &= part.column().filter(Column::isMass).isPresent();
            }
            return new Pair(one.label(), two.label(), difference, parts.size(), weight, onlyMass);
        }

        private Pair turned() {
            return new Pair(/* piece= */ other, /* other= */ piece, difference, shared, weight, onlyMass);
        }

        /** By what was compared, so that a piece of which little is known does not look alike for that. */
        private double each() {
            return weight > 0 ? difference / weight : 0;
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
     * Compares every piece with the pattern, one of another length as it would measure were it of the drawn length (its mass with the
     * median of all the pieces) and with every other. The work grows with the square of the number of pieces.
     *
     * @param job gives the pattern, the tolerances and what each measure counts
     * @param pieces those to compare, in the file's order
     * @param mass the unit that weights are told in, in words
     * @return the report, its figures in tolerances' worths, weighted
     */
    public static LikenessReport of(Job job, List<Piece> pieces, MassUnit mass) {
        return ofAlike(job, ColumnTargets.lengths(job).allAsDrawn(pieces), mass);
    }

    private static LikenessReport ofAlike(Job job, List<Piece> pieces, MassUnit mass) {
        Likeness likeness = Likeness.among(pieces, job.tolerances().forLikeness(), job.likeness());
        Measures reference = Likeness.reference(ColumnTargets.shape(job), pieces);
        LikenessWords words = ColumnTargets.words(job, mass);
        List<Pair> pairs = new ArrayList<>();
        List<Optional<Pair>> nearest = pieces.size() <= MOST_PIECES_PAIRED
                ? paired(likeness, pieces, pairs)
                : nearest(likeness, pieces, pairs);
        List<PieceLikeness> entries = new ArrayList<>();
        int measures = measures(job, pieces);
        for (int i = 0; i < pieces.size(); i++) {
            Likeness.Figure figure = likeness.figure(pieces.get(i), reference);
            entries.add(new PieceLikeness(figure, words.of(figure, PARTS_SAID), nearest.get(i), measures));
        }
        pairs.sort(Comparator.comparing(Pair::onlyMass).thenComparingDouble(Pair::difference));
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
        return mostUnlikeOfAlike(job, ColumnTargets.lengths(job).allAsDrawn(pieces), mass, most);
    }

    private static List<PieceLikeness> mostUnlikeOfAlike(Job job, List<Piece> pieces, MassUnit mass, int most) {
        Likeness likeness = Likeness.among(pieces, job.tolerances().forLikeness(), job.likeness());
        Measures reference = Likeness.reference(ColumnTargets.shape(job), pieces);
        LikenessWords words = ColumnTargets.words(job, mass);
        int measures = measures(job, pieces);
        return pieces.stream()
                .map(piece -> new Compared(piece, likeness.figure(piece, reference)))
                .sorted(Comparator.comparingDouble(
                                (Compared each) -> each.figure().figure())
                        .reversed())
                .limit(most)
                .map(each -> new PieceLikeness(
                        each.figure(),
                        words.of(each.figure(), PARTS_SAID),
                        nearest(likeness, each.piece(), pieces),
                        measures))
                .toList();
    }

    private record Compared(Piece piece, Likeness.Figure figure) {}

    /** Every pair, and of each piece the one with what is most like it. */
    private static List<Optional<Pair>> paired(Likeness likeness, List<Piece> pieces, List<Pair> pairs) {
        List<Optional<Pair>> nearest = new ArrayList<>(Collections.nCopies(pieces.size(), Optional.empty()));
        for (int i = 0; i < pieces.size(); i++) {
            for (int j = i + 1; j < pieces.size(); j++) {
                List<Likeness.Part> parts = likeness.parts(pieces.get(i), pieces.get(j));
                if (!parts.isEmpty()) {
                    Pair pair = Pair.of(pieces.get(i), pieces.get(j), parts, likeness);
                    nearest.set(i, nearer(nearest.get(i), pair));
                    nearest.set(j, nearer(nearest.get(j), pair.turned()));
                    pairs.add(pair);
                }
            }
        }
        return nearest;
    }

    /** Of each piece the pair with what is most like it, and no other pairs. */
    private static List<Optional<Pair>> nearest(Likeness likeness, List<Piece> pieces, List<Pair> pairs) {
        List<Optional<Pair>> nearest = new ArrayList<>();
        int[] found = NearestPieces.of(likeness, pieces);
        for (int i = 0; i < found.length; i++) {
            if (found[i] == NearestPieces.NONE) {
                nearest.add(Optional.empty());
            } else {
                Piece other = pieces.get(found[i]);
                List<Likeness.Part> parts = likeness.parts(pieces.get(i), other);
                Pair pair = Pair.of(pieces.get(i), other, parts, likeness);
                nearest.add(Optional.of(pair));
                pairs.add(pair);
            }
        }
        return nearest;
    }

    private static Optional<Pair> nearest(Likeness likeness, Piece piece, List<Piece> pieces) {
        Optional<Pair> nearest = Optional.empty();
        for (Piece other : pieces) {
            List<Likeness.Part> parts = other.label().equals(piece.label()) ? List.of() : likeness.parts(piece, other);
            if (!parts.isEmpty()) {
                nearest = nearer(nearest, Pair.of(piece, other, parts, likeness));
            }
        }
        return nearest;
    }

    private static Optional<Pair> nearer(Optional<Pair> soFar, Pair pair) {
        if (pair.onlyMass()) {
            return soFar;
        }
        return soFar.isPresent() && soFar.get().each() <= pair.each() ? soFar : Optional.of(pair);
    }

    /** The columns that any piece has and that count. */
    private static int measures(Job job, List<Piece> pieces) {
        Set<String> names = new TreeSet<>();
        for (Piece piece : pieces) {
            piece.measures().figures().keySet().forEach(column -> names.add(column.format()));
            job.likeness().noted().keySet().stream()
                    .filter(piece.extra()::containsKey)
                    .forEach(names::add);
        }
        return names.size();
    }

    private static Working beside() {
        return new Working(
                "what a piece is compared with",
                "length, marks and check places with the pattern's own; everything else with the median of the pieces",
                Working.COMMON_PRACTICE,
                "the median keeps one bad piece from moving the aim; columns not measured on both are left out");
    }
}
