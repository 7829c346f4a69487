package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import turnalike.job.Job;
import turnalike.job.OneLength;
import turnalike.pattern.Mark;
import turnalike.pieces.Column;
import turnalike.pieces.Likeness;
import turnalike.pieces.Measures;
import turnalike.pieces.Piece;
import turnalike.trace.Original;
import turnalike.trace.against.Against;
import turnalike.trace.against.Comparison;
import turnalike.trace.against.Figure;
import turnalike.units.Length;
import turnalike.units.SentenceCase;
import turnalike.units.UnitSystem;

/**
 * A finished piece held against its job from a photograph, a table or a drawing: its measures as the pieces log has them, how unlike the
 * pattern they make it, and what a turner says of it.
 *
 * @param job the job; of several lengths the one that the piece's own comes nearest to
 * @param letter of that length, where there are several
 * @param comparison member by member
 * @param figures what was seen of the columns of a pieces file, in their order: marks, diameters at the check places, and the length where
 *     it was measured
 * @param likeness the figure and its parts, as {@code likeness} reckons it
 * @param byChance what the uncertainty of the figures alone brings to the likeness figure on average
 * @param words what sets the piece apart, the gravest first, each a sentence; one that says so when nothing does
 * @param notes what to know before relying on it, each a sentence
 */
public record AgainstReport(
        Job job,
        Optional<String> letter,
        Comparison comparison,
        SortedMap<Column, Figure> figures,
        Likeness.Figure likeness,
        double byChance,
        List<String> words,
        List<String> notes) {
    /** The mean of |N(0, 1)|: √(2/π). */
    private static final double MEAN_NORMAL = Math.sqrt(2 / Math.PI);

    /** A length off by more than this share is another piece's, or the wrong length was given. */
    private static final double MOST_LONGER = 0.1;

    public AgainstReport {
        figures = Collections.unmodifiableSortedMap(new TreeMap<>(figures));
        words = List.copyOf(words);
        notes = List.copyOf(notes);
    }

    /**
     * {@return the piece held against its job}
     *
     * @param job what it was turned for
     * @param original as it was seen or measured
     * @param manner how what was seen is to be taken
     * @param label what is written on the piece, or what it goes by
     * @param lengthMeasured whether its length was measured and not taken from the pattern
     * @param units to tell lengths in
     */
    public static AgainstReport of(
            Job job, Original original, Against.Manner manner, String label, boolean lengthMeasured, UnitSystem units) {
        Optional<OneLength> one = nearest(job, original.profile().length());
        Job its = one.map(OneLength::job).orElse(job);
        Comparison comparison = Against.of(original, its.pattern(), manner);
        SortedMap<Column, Figure> figures = figures(its, original, comparison, lengthMeasured);
        Measures measures = measures(figures);
        Piece piece = Piece.of(label, measures);
        Likeness likeness = Likeness.among(List.of(piece), its.tolerances().forLikeness(), its.likeness());
        Likeness.Figure figure = likeness.figure(piece, ColumnTargets.shape(its));
        return new AgainstReport(
                its,
                one.map(OneLength::letter),
                comparison,
                figures,
                figure,
                byChance(its, figures),
                new AgainstWords(its, units, comparison, lengthMeasured).sentences(),
                notes(its, units, comparison, lengthMeasured));
    }

    private static Optional<OneLength> nearest(Job job, Length length) {
        return OneLength.of(job).stream().min((one, other) -> off(one, length).compareTo(off(other, length)));
    }

    private static Length off(OneLength one, Length length) {
        return one.job().pattern().length().minus(length).abs();
    }

    private static SortedMap<Column, Figure> figures(
            Job job, Original original, Comparison comparison, boolean lengthMeasured) {
        SortedMap<Column, Figure> out = new TreeMap<>();
        if (lengthMeasured) {
            out.put(
                    Column.LENGTH,
                    new Figure(original.profile().length(), original.surest().times(2)));
        }
        List<Mark> marks = job.pattern().marks();
        for (int i = 1; i < marks.size(); i++) {
            // The far end's place is the length: where that was taken from the pattern it tells nothing.
            if (marks.get(i).kind() != Mark.Kind.END || lengthMeasured) {
                Column column = Column.mark(i);
                comparison
                        .placeOf(marks.get(i).place())
                        .filter(each -> each.value().isPositive())
                        .ifPresent(each -> out.put(column, each));
            }
        }
        for (int i = 0; i < job.checks().size(); i++) {
            Column column = Column.diameter(i + 1);
            comparison.caliper().at(job.checks().get(i).at()).ifPresent(each -> out.put(column, each));
        }
        return out;
    }

    private static double byChance(Job job, Map<Column, Figure> figures) {
        double sum = 0;
        for (Map.Entry<Column, Figure> each : figures.entrySet()) {
            Length tolerance = each.getKey().kind() == Column.Kind.DIAMETER
                    ? job.tolerances().diameter()
                    : job.tolerances().mark();
            sum += MEAN_NORMAL
                    * job.likeness().of(each.getKey())
                    * each.getValue().uncertainty().mm()
                    / tolerance.mm();
        }
        return sum;
    }

    /** {@return why it is not to be kept as a piece of this pattern, as a problem tells it; empty where it is one} */
    public Optional<String> unlike() {
        return comparison.isHardlyThis() ? Optional.of(SentenceCase.clause(notes.get(0))) : Optional.empty();
    }

    private static List<String> notes(Job job, UnitSystem units, Comparison comparison, boolean lengthMeasured) {
        List<String> out = new ArrayList<>();
        double longer = comparison.longer().mm() / job.pattern().length().mm();
        if (comparison.isHardlyThis() || Math.abs(longer) > MOST_LONGER) {
            out.add(
                    "It is hardly a piece of this pattern: %d %% of what was read lies more than 2 mm off it, and it is %s %s."
                            .formatted(
                                    Math.round(100 * comparison.strays()),
                                    comparison.longer().abs().formatBoth(units),
                                    comparison.longer().mm() < 0 ? "shorter" : "longer"));
            double times = 1 + longer;
            if (isNear(times, Length.MM_PER_INCH) || isNear(times, 1 / Length.MM_PER_INCH)) {
                out.add("It would be as long as the pattern if its figures were in %s: say --units %s."
                        .formatted(times < 1 ? "inches" : "millimetres", times < 1 ? "in" : "mm"));
            }
        }
        if (comparison.turned()) {
            out.add("It lay the other way round; places are counted from its start end all the same.");
        }
        if (comparison.eitherWay()) {
            out.add(
                    "Which way round it lay is not to be told from its shape: it is taken to have its start end first.");
        }
        if (!lengthMeasured) {
            out.add(
                    "It was taken to be as long as the pattern, %s: whether it is was not judged; give --span to have it judged."
                            .formatted(job.pattern().length().formatBoth(units)));
        }
        List<String> unseen = comparison.members().stream()
                .filter(each -> !each.isSeen())
                .map(each -> each.placed().where())
                .toList();
        if (!unseen.isEmpty()) {
            out.add("Not seen, or not surely enough to speak of: %s.".formatted(String.join(", ", unseen)));
        }
        return out;
    }

    private static boolean isNear(double value, double aim) {
        return Math.abs(value / aim - 1) < MOST_LONGER;
    }

    /** {@return how unlike its pattern it is, in a sentence: a likeness that measuring alone may bring is told as none of the piece's} */
    public String unlikeness() {
        int parts = likeness.parts().size();
        String unlike = String.format(
                Locale.ROOT,
                "Unlike the pattern by %.2f over %d %s",
                likeness.figure(),
                parts,
                parts == 1 ? "measure" : "measures");
        return byChance < likeness.figure()
                ? String.format(Locale.ROOT, "%s; about %.2f of it may be measuring error.", unlike, byChance)
                : String.format(
                        Locale.ROOT, "%s: no more than measuring error alone may make it (%.2f).", unlike, byChance);
    }

    /** {@return the figures alone, as the log takes them} */
    public Measures measures() {
        return measures(figures);
    }

    private static Measures measures(Map<Column, Figure> figures) {
        Measures out = Measures.NONE;
        for (Map.Entry<Column, Figure> each : figures.entrySet()) {
            out = out.with(each.getKey(), each.getValue().value());
        }
        return out;
    }
}
