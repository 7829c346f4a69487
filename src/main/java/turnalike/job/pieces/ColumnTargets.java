package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import turnalike.job.Job;
import turnalike.job.OneLength;
import turnalike.job.Tolerances;
import turnalike.job.set.LengthsOfPieces;
import turnalike.pattern.Mark;
import turnalike.pieces.Column;
import turnalike.pieces.KeyedFigure;
import turnalike.pieces.LikenessTolerances;
import turnalike.pieces.LikenessWords;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.Slip;
import turnalike.pieces.Slips;
import turnalike.solid.Solid;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.SentenceCase;

/** What the pattern asks of a piece, column by column of a pieces file, and what each column is called. */
public final class ColumnTargets {
    /** Of so many weights to a tenth one in a hundred thousand tables has whole grams only. */
    private static final int TELLING_WEIGHTS = 5;

    private ColumnTargets() {}

    /**
     * The pattern's own length, marks ({@code m1} is the plan's mark 1, the first after the start end) and diameters at the check places
     * ({@code d1} is the first).
     *
     * <p>Its mass and balance point are left out: they follow the wood of the day, which spreads by a tenth, so pieces are better compared
     * with one another in them.
     *
     * @param job whose pattern and check places are asked
     * @return what a piece is meant to measure, column by column
     */
    public static Measures shape(Job job) {
        SortedMap<Column, Double> wanted = new TreeMap<>();
        wanted.put(Column.LENGTH, job.pattern().length().mm());
        List<Mark> marks = job.pattern().marks();
        for (int i = 1; i < marks.size(); i++) {
            wanted.put(Column.mark(i), marks.get(i).place().mm());
        }
        for (int i = 0; i < job.checks().size(); i++) {
            Length at = job.checks().get(i).at();
            wanted.put(
                    Column.diameter(i + 1),
                    job.pattern().outline().radiusAt(at).times(2).mm());
        }
        return new Measures(wanted);
    }

    /**
     * The shape with the mass and balance point that the job's wood would give: what a figure typed in is held against.
     *
     * @param job whose pattern, check places and density are asked
     * @return what a piece is meant to measure and, roughly, to weigh
     */
    public static Measures all(Job job) {
        Solid solid = Solid.of(job.pattern().outline(), job.wood().density());
        return shape(job).with(solid.mass()).with(Column.BALANCE, solid.balance());
    }

    /**
     * {@return which of the job's lengths a piece is made in, by what each is meant to measure}
     *
     * @param job whose frame tells the lengths
     */
    public static LengthsOfPieces lengths(Job job) {
        return new LengthsOfPieces(
                all(job),
                OneLength.of(job).stream().map(each -> all(each.job())).toList());
    }

    /**
     * What the marks and check places are called in a sentence: {@code edge between fillet and hub bead}, {@code belly}.
     *
     * @param job whose marks and check places are named
     * @return a name for each of their columns; none for the other columns
     */
    public static Map<Column, String> names(Job job) {
        Map<Column, String> names = new HashMap<>();
        List<Mark> marks = job.pattern().marks();
        for (int i = 1; i < marks.size(); i++) {
            names.put(Column.mark(i), name(marks.get(i)));
        }
        for (int i = 0; i < job.checks().size(); i++) {
            names.put(Column.diameter(i + 1), job.checks().get(i).name());
        }
        return names;
    }

    /**
     * What a column is called: {@code weight}, {@code belly}; a mark or check place the job does not have goes by its number.
     *
     * @param job whose names are used
     * @param column any column of measures
     * @return the name without a capital and without a unit
     */
    public static String name(Job job, Column column) {
        return switch (column.kind()) {
            case MASS -> "weight";
            case LENGTH -> "length";
            case BALANCE -> "balance";
            case MARK -> names(job).getOrDefault(column, "mark " + column.place());
            case DIAMETER -> names(job).getOrDefault(column, "diameter " + column.place());
        };
    }

    /**
     * A column's heading with the unit its figures are typed in: {@code Weight, g}, {@code Belly, in}.
     *
     * @param job whose names and units are used
     * @param column any column of measures
     * @return the name with a capital and its unit; a weight's is the scale's
     */
    public static String heading(Job job, Column column) {
        String unit = column.isMass()
                ? job.tolerances().masses().symbol()
                : job.units().symbol();
        return SentenceCase.capital(name(job, column)) + ", " + unit;
    }

    /**
     * {@code 3 hub bead crest} is the hub bead crest; {@code 2 fillet | 3 hub bead} the edge between fillet and hub bead, and
     * {@code 4: 3 mm quirk} the 3 mm quirk.
     */
    private static String name(Mark mark) {
        String plain = mark.label().replaceAll("(^|\\| )\\d+:? ", "$1");
        String[] sides = plain.split(" \\| ", 2);
        return sides.length == 2 ? "edge between %s and %s".formatted(sides[0], sides[1]) : plain;
    }

    /**
     * How a piece's unlikeness is told in this job.
     *
     * @param job whose names and units of length are used
     * @param mass the unit that weights are told in
     * @return the teller
     */
    public static LikenessWords words(Job job, MassUnit mass) {
        return new LikenessWords(names(job), keyed(job, mass));
    }

    /**
     * How this job's figures are asked about when they read like a slip.
     *
     * @param job whose pattern, tolerances and units are used
     * @param mass the unit that weights are told in
     * @return the asker
     */
    public static Slips slips(Job job, MassUnit mass) {
        return new Slips(all(job), forSlips(job), keyed(job, mass));
    }

    private static KeyedFigure keyed(Job job, MassUnit mass) {
        return new KeyedFigure(job.units(), mass, job.tolerances().weighing());
    }

    /** On a coarse scale a step up or down is no slip, nor are two: within four tolerances nothing is asked about, here three steps. */
    private static LikenessTolerances forSlips(Job job) {
        LikenessTolerances own = job.tolerances().forLikeness();
        double pieceG =
                Solid.of(job.pattern().outline(), job.wood().density()).mass().grams();
        double stepPct = 100 * job.tolerances().scale().grams() / pieceG;
        return new LikenessTolerances(own.mark(), own.diameter(), Math.max(own.massPct(), 0.75 * stepPct));
    }

    /**
     * Everything in a table of pieces that reads like a slip: its header first, then its figures, in the table's own unit of mass.
     *
     * @param job whose pieces they are
     * @param read the table as it was read
     * @return a question for each; none in a table that reads well
     */
    public static List<Slip> questions(Job job, PiecesFile.Read read) {
        List<Slip> questions = new ArrayList<>(read.slips());
        questions.addAll(asked(job, read));
        wholeGrams(job, read).ifPresent(questions::add);
        return questions;
    }

    /** Pieces of one length are asked about among themselves. */
    private static List<Slip> asked(Job job, PiecesFile.Read read) {
        LengthsOfPieces lengths = lengths(job);
        if (lengths.isOne()) {
            return slips(job, read.massUnit()).askAll(read.pieces());
        }
        List<Slip> out = new ArrayList<>();
        for (Piece piece : read.pieces()) {
            lengths.question(piece, job.tolerances().mark(), job.units())
                    .ifPresent(question -> out.add(new Slip(
                            "piece %s, column %s".formatted(piece.label(), Column.LENGTH.format()),
                            Slip.Kind.FAR_OFF,
                            question,
                            Optional.empty())));
        }
        List<OneLength> all = OneLength.of(job);
        for (int i = 0; i < all.size(); i++) {
            int index = i;
            List<Piece> own = read.pieces().stream()
                    .filter(piece ->
                            lengths.of(piece).filter(each -> each == index).isPresent())
                    .toList();
            out.addAll(slips(all.get(i).job(), read.massUnit()).askAll(own));
        }
        return out;
    }

    /** Whether the scale shows whole grams only, where the job says a tenth, which it does when it says nothing. */
    private static Optional<Slip> wholeGrams(Job job, PiecesFile.Read read) {
        double[] grams = read.pieces().stream()
                .flatMap(piece -> piece.mass().stream())
                .mapToDouble(Mass::grams)
                .toArray();
        boolean whole = grams.length >= TELLING_WEIGHTS && Arrays.stream(grams).allMatch(g -> g == Math.rint(g));
        boolean tenths = job.tolerances().scale().equals(Tolerances.USUAL.scale());
        return whole && tenths && read.massUnit() == MassUnit.GRAM
                ? Optional.of(new Slip(
                        "column mass_g",
                        Slip.Kind.SCALE,
                        "every weight is a whole gram: does your scale show no tenths? Then set what the scale shows, among the tolerances, to 1 g; as it"
                                + " is, the balance is thought surer than it is",
                        Optional.empty()))
                : Optional.empty();
    }
}
