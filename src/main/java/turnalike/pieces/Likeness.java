package turnalike.pieces;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import turnalike.units.Mass;

/**
 * One figure for how unlike two pieces are, or one piece and the pattern: Σ w·|p - q|/t over the columns measured on both, with w the
 * weight and t the tolerance of the column; 0 is alike, and each w is one tolerance's worth. Source: the project's contract; the weights
 * are common practice, no source. It is symmetric and obeys the triangle inequality where the same columns are measured on all.
 *
 * @param tolerances the job's
 * @param weights the job's, or the usual ones
 * @param meanMass the mean that the mass tolerance is a per cent of; without one, masses are not compared
 */
public record Likeness(LikenessTolerances tolerances, LikenessWeights weights, Optional<Mass> meanMass) {
    private static final Mass NOTHING_WEIGHED = Mass.ofGrams(0);

    public Likeness {
        if (meanMass.isPresent() && !(meanMass.get().grams() > 0)) {
            throw new IllegalArgumentException("a mean mass is above zero, was %s g"
                    .formatted(meanMass.get().grams()));
        }
    }

    /**
     * One column's part in a difference.
     *
     * @param name the column's name in the file
     * @param column the column, unless it is a noted one
     * @param off the piece less what it is compared with: grams for the mass, millimetres for the rest, grades for a noted number, 1 for
     *     unlike words
     * @param counts what it adds to the difference
     */
    public record Part(String name, Optional<Column> column, double off, double counts) {}

    /**
     * A piece beside the pattern, or beside the middle of its set.
     *
     * @param piece its label
     * @param figure the sum of the parts
     * @param parts what was measured on both, the part that counts most first
     */
    public record Figure(String piece, double figure, List<Part> parts) {
        public Figure {
            parts = List.copyOf(parts);
        }
    }

    /**
     * {@return likeness within a set: the mass tolerance is taken of the mean over every piece of it that was weighed; when none was,
     * masses are not compared}
     *
     * @param set the pieces that are compared with each other
     * @param tolerances the job's
     * @param weights the job's, or the usual ones
     */
    public static Likeness among(List<Piece> set, LikenessTolerances tolerances, LikenessWeights weights) {
        double[] masses = UsualRange.figures(
                Column.MASS, set.stream().map(Piece::measures).toList());
        OptionalDouble mean = Arrays.stream(masses).average();
        return new Likeness(
                tolerances,
                weights,
                mean.isPresent() ? Optional.of(Mass.ofGrams(mean.getAsDouble())) : Optional.empty());
    }

    /**
     * {@return how unlike two pieces are; 0 also when nothing is measured on both, which only {@link #findDifference} tells apart}
     *
     * @param piece one
     * @param other the other; the two may be named in either order
     */
    public double difference(Piece piece, Piece other) {
        return findDifference(piece, other).orElse(0);
    }

    /**
     * {@return how unlike two pieces are; empty when nothing is measured on both} The same whichever of the two is named first.
     *
     * @param piece one
     * @param other the other
     */
    public OptionalDouble findDifference(Piece piece, Piece other) {
        // The sum of parts() in their order, without making them.
        double sum = 0;
        boolean any = false;
        for (Map.Entry<Column, Double> each : piece.measures().figures().entrySet()) {
            Double others = other.measures().figures().get(each.getKey());
            if (others != null && isCompared(each.getKey())) {
                sum += counts(each.getKey(), each.getValue() - others);
                any = true;
            }
        }
        for (Map.Entry<String, Double> each : weights.noted().entrySet()) {
            OptionalDouble off = grades(each.getKey(), piece, other);
            if (off.isPresent()) {
                sum += each.getValue() * Math.abs(off.getAsDouble());
                any = true;
            }
        }
        return any ? OptionalDouble.of(sum) : OptionalDouble.empty();
    }

    /**
     * {@return the parts of the difference of two pieces, in the columns' order, then what is noted of both and has a weight}
     *
     * @param piece one; a part is off by its figure less the other's
     * @param other what it is compared with
     */
    public List<Part> parts(Piece piece, Piece other) {
        List<Part> parts = parts(piece.measures(), other.measures());
        weights.noted().forEach((name, weight) -> grades(name, piece, other)
                .ifPresent(off -> parts.add(new Part(name, Optional.empty(), off, weight * Math.abs(off)))));
        return parts;
    }

    /**
     * {@return what a piece is compared with: the pattern's own figures where it has them, else the median of the set}
     *
     * @param wanted the pattern's own figures, as far as known
     * @param set the pieces; columns measured on none of them stay as the pattern has them
     */
    public static Measures reference(Measures wanted, List<Piece> set) {
        List<Measures> all = set.stream().map(Piece::measures).toList();
        TreeSet<Column> columns = new TreeSet<>();
        all.forEach(each -> columns.addAll(each.figures().keySet()));
        Measures reference = wanted;
        for (Column column : columns) {
            if (wanted.figure(column).isEmpty()) {
                reference = reference.with(column, UsualRange.median(UsualRange.figures(column, all)));
            }
        }
        return reference;
    }

    /**
     * {@return the piece beside the reference, the part that counts most first} What is noted by eye has no part in it: the pattern notes
     * nothing.
     *
     * @param piece the piece
     * @param reference what it is compared with, as {@link #reference} gives it
     */
    public Figure figure(Piece piece, Measures reference) {
        List<Part> parts = parts(piece.measures(), reference);
        parts.sort(Comparator.comparingDouble(Part::counts).reversed());
        return new Figure(
                piece.label(), parts.stream().mapToDouble(Part::counts).sum(), parts);
    }

    private List<Part> parts(Measures measures, Measures others) {
        List<Part> parts = new ArrayList<>();
        for (Map.Entry<Column, Double> each : measures.figures().entrySet()) {
            Column column = each.getKey();
            OptionalDouble other = others.figure(column);
            if (other.isEmpty() || !isCompared(column)) {
                continue;
            }
            double off = each.getValue() - other.getAsDouble();
            parts.add(new Part(column.format(), Optional.of(column), off, counts(column, off)));
        }
        return parts;
    }

    boolean isCompared(Column column) {
        return !column.isMass() || meanMass.isPresent();
    }

    private double counts(Column column, double off) {
        return weights.of(column) * Math.abs(off) / tolerance(column);
    }

    /** The tolerance of a column that is compared, in grams for the mass and millimetres for the rest. */
    double tolerance(Column column) {
        return tolerances.figure(column, meanMass.orElse(NOTHING_WEIGHED));
    }

    private static OptionalDouble grades(String name, Piece piece, Piece other) {
        String mine = piece.extra().get(name);
        String others = other.extra().get(name);
        return mine != null && others != null
                ? OptionalDouble.of(Grade.of(mine).less(Grade.of(others)))
                : OptionalDouble.empty();
    }
}
