package turnalike.pieces;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the pieces alone cannot show, for they agree with each other: a column that is in another unit throughout, or two columns under
 * each other's names. The pattern shows it, by where half of each column's figures lie.
 *
 * @param slips the questions
 * @param inDoubt the columns they are about
 */
record WholeColumns(List<Slip> slips, Set<Column> inDoubt) {
    /** A column whose middle is not where the pattern has it. */
    private record Odd(Column column, double middle, UsualRange pattern) {}

    static WholeColumns of(List<Measures> all, Measures wanted, KeyedFigure keyed) {
        List<Odd> odd = new ArrayList<>();
        for (Map.Entry<Column, Double> each : wanted.figures().entrySet()) {
            double[] figures = UsualRange.figures(each.getKey(), all);
            UsualRange pattern = UsualRange.roughly(each.getKey(), each.getValue());
            if (figures.length >= UsualRange.FEW && !pattern.fits(UsualRange.median(figures))) {
                odd.add(new Odd(each.getKey(), UsualRange.median(figures), pattern));
            }
        }
        List<Slip> slips = new ArrayList<>();
        Set<Column> explained = new HashSet<>();
        for (Odd a : odd) {
            for (Odd b : odd.subList(odd.indexOf(a) + 1, odd.size())) {
                swapped(a, b, keyed)
                        .filter(slip -> !explained.contains(a.column()) && !explained.contains(b.column()))
                        .ifPresent(slip -> {
                            slips.add(slip);
                            explained.addAll(List.of(a.column(), b.column()));
                        });
            }
        }
        odd.stream()
                .filter(each -> explained.add(each.column()))
                .map(each -> single(each, keyed))
                .forEach(slips::add);
        return new WholeColumns(slips, explained);
    }

    private static Optional<Slip> swapped(Odd a, Odd b, KeyedFigure keyed) {
        double forA = LikelyCorrection.figure(a.column(), LikelyCorrection.count(b.column(), b.middle(), keyed), keyed);
        double forB = LikelyCorrection.figure(b.column(), LikelyCorrection.count(a.column(), a.middle(), keyed), keyed);
        if (!a.pattern().fits(forA) || !b.pattern().fits(forB)) {
            return Optional.empty();
        }
        String where = "columns %s and %s"
                .formatted(a.column().format(keyed.mass()), b.column().format(keyed.mass()));
        return Optional.of(new Slip(
                where, Slip.Kind.SWAPPED_COLUMNS, "do they stand under each other's names?", Optional.empty()));
    }

    private static Slip single(Odd odd, KeyedFigure keyed) {
        Optional<LikelyCorrection> meant = LikelyCorrection.unit(odd.column(), odd.middle(), odd.pattern(), keyed);
        return new Slip(
                "column " + odd.column().format(keyed.mass()),
                meant.map(LikelyCorrection::kind).orElse(Slip.Kind.FAR_OFF),
                "its middle figure is %s where the pattern has %s: %s?"
                        .formatted(
                                FigureText.roughly(odd.column(), odd.middle(), keyed),
                                FigureText.roughly(odd.column(), odd.pattern().centre(), keyed),
                                meant.map(LikelyCorrection::how).orElse("is it measured as the pattern is")),
                Optional.empty());
    }
}
