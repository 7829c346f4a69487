package turnalike.job.set;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import turnalike.outline.Segment;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.pieces.Piece;
import turnalike.pieces.control.SampleStatistics;
import turnalike.solid.Solid;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * How far the balance point of a piece that was not measured may lie from the pattern's.
 *
 * @param deviationMm its standard deviation, in mm
 * @param shiftMm how much farther from the start end than the pattern's it lies on average
 * @param freedom degrees of freedom of the sample it was estimated from; 0 where it follows from the diameter tolerance
 * @param stated where it is from, in words
 */
record BalanceScatter(double deviationMm, double shiftMm, int freedom, String stated) {
    /** Fewer pieces tell little of a scatter (common practice, no source). */
    private static final int ENOUGH = 5;

    /** A balance point does not ask for the density. */
    private static final Density ANY = Density.ofKgPerM3(1000);

    static BalanceScatter of(Pattern pattern, Length diameter, List<Piece> pieces, UnitSystem units) {
        double usualMm = Solid.of(pattern.outline(), ANY).balance().mm();
        List<Double> off = pieces.stream()
                .flatMap(piece -> piece.balance().stream())
                .map(balance -> balance.mm() - usualMm)
                .toList();
        return off.size() >= ENOUGH ? sampled(off, units) : fromDiameters(pattern, diameter, usualMm, units);
    }

    private static BalanceScatter sampled(List<Double> off, UnitSystem units) {
        SampleStatistics sample = SampleStatistics.of(off);
        String stated = String.format(
                Locale.ROOT,
                "%s, as the %d measured ones scatter about their mean",
                Length.ofMm(sample.deviation()).formatMeasured(units),
                off.size());
        return new BalanceScatter(sample.deviation(), sample.mean(), off.size() - 1, stated);
    }

    /**
     * Each member's diameter is off by up to the tolerance, all along it and whatever the others are: δ there moves the balance point by
     * δ·∫f(x − x̄)r dx / V, f the section's area factor, to first order; uniform errors, so δ has the variance t²/3.
     */
    private static BalanceScatter fromDiameters(Pattern pattern, Length diameter, double usualMm, UnitSystem units) {
        double volume = 0;
        double squares = 0;
        for (PlacedMember member : pattern.placed()) {
            double lever = 0;
            for (Segment segment : member.outline().segments()) {
                double factor = segment.section().areaFactor();
                volume += factor * segment.integralAbout(usualMm, 0, 2);
                lever += factor * segment.integralAbout(usualMm, 1, 1);
            }
            squares += lever * lever;
        }
        double deviation = Math.sqrt(squares) / volume * uniformMm(diameter);
        String stated = String.format(
                Locale.ROOT,
                "%s, as diameters off by up to %s move it; wood denser at one end is not in it",
                Length.ofMm(deviation).formatMeasured(units),
                diameter.formatFine(units));
        return new BalanceScatter(deviation, 0, 0, stated);
    }

    /** The standard deviation of what is off by up to that, any amount as likely as another. */
    static double uniformMm(Length most) {
        return most.mm() / Math.sqrt(3);
    }

    OptionalDouble shift() {
        return freedom > 0 ? OptionalDouble.of(shiftMm) : OptionalDouble.empty();
    }
}
