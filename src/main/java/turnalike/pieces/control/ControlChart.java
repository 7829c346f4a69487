package turnalike.pieces.control;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import turnalike.units.Parsed;
import turnalike.units.Working;

/**
 * The chart of individual values with its moving ranges: centre = mean, sigma = mean moving range / d2, limits three sigmas either side,
 * the range's limit D4 times its mean. Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2.
 *
 * @param points the points in the order they were turned; at least two
 * @param ranges each point's distance from the one before; the first belongs to the second point
 * @param centre the mean
 * @param meanMovingRange the mean of the ranges
 * @param sigma the standard deviation from piece to piece, 0 when all values are equal
 * @param lower the lower limit
 * @param upper the upper limit
 * @param rangeUpper the ranges' limit; their lower limit is 0
 * @param signals where the rules speak, by point, then by rule; those of the self-starting watch last
 * @param changes what the self-starting watch tells, in order; none where its rules do not speak
 * @param sample the values' own mean, deviation and lag-1 correlation
 */
public record ControlChart(
        List<ChartPoint> points,
        List<Double> ranges,
        double centre,
        double meanMovingRange,
        double sigma,
        double lower,
        double upper,
        double rangeUpper,
        List<Signal> signals,
        List<WorkChange> changes,
        SampleStatistics sample) {
    /** Fewer points than this give trial limits only (common practice, no source). */
    public static final int ENOUGH = 20;

    private static final double LIMIT_SIGMAS = 3;
    private static final double MEMORY = 3;
    /** Below, a jump of two sigma is seen less often than not (by simulation, see {@link Power}). */
    private static final int SEEING = 10;

    public ControlChart {
        points = List.copyOf(points);
        ranges = List.copyOf(ranges);
        signals = List.copyOf(signals);
        changes = List.copyOf(changes);
    }

    /**
     * {@return the chart with the printed constants and the usual rules; fewer than two points are refused}
     *
     * @param points in the order they were turned
     */
    public static Parsed<ControlChart> of(List<ChartPoint> points) {
        return of(points, ChartConstants.PRINTED, RunRule.usual());
    }

    /**
     * {@return the chart of at least two points; fewer are refused} Time grows with points times rules.
     *
     * @param points in the order they were turned
     * @param constants the factors of sigma and of the ranges' limit
     * @param rules the rules that may signal; none for limits alone
     */
    public static Parsed<ControlChart> of(List<ChartPoint> points, ChartConstants constants, Set<RunRule> rules) {
        if (points.size() < 2) {
            return Parsed.refused(
                    "a chart needs two measured pieces, there %s %d"
                            .formatted(points.size() == 1 ? "is" : "are", points.size()),
                    "measure at least two, better twenty");
        }
        List<Double> ranges = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            ranges.add(Math.abs(points.get(i).value() - points.get(i - 1).value()));
        }
        SampleStatistics sample =
                SampleStatistics.of(points.stream().map(ChartPoint::value).toList());
        double centre = sample.mean();
        double meanRange = SampleStatistics.of(ranges).mean();
        double sigma = meanRange / constants.d2();
        double rangeUpper = constants.d4() * meanRange;
        List<WorkChange> changes = rules.containsAll(RunRule.selfStarting()) ? SelfStarting.changes(points) : List.of();
        List<Signal> signals = new ArrayList<>(new Signals(points, ranges).find(centre, sigma, rangeUpper, rules));
        changes.forEach(change -> signals.add(change.signal()));
        return Parsed.of(new ControlChart(
                points,
                ranges,
                centre,
                meanRange,
                sigma,
                centre - LIMIT_SIGMAS * sigma,
                centre + LIMIT_SIGMAS * sigma,
                rangeUpper,
                signals,
                changes,
                sample));
    }

    /**
     * {@return the same chart with every value in another unit} The rules see no unit, so they speak as before.
     *
     * @param factor how many of the new unit one of the old makes, above zero
     */
    public ControlChart times(double factor) {
        return new ControlChart(
                points.stream()
                        .map(each -> new ChartPoint(each.piece(), each.value() * factor))
                        .toList(),
                ranges.stream().map(each -> each * factor).toList(),
                centre * factor,
                meanMovingRange * factor,
                sigma * factor,
                lower * factor,
                upper * factor,
                rangeUpper * factor,
                signals,
                changes.stream().map(each -> each.times(factor)).toList(),
                new SampleStatistics(
                        sample.count(), sample.mean() * factor, sample.deviation() * factor, sample.neighbours()));
    }

    /**
     * {@return the same chart with its last points only; its lines and its sample stay those of all}
     *
     * @param most how many points, two or more
     */
    public ControlChart last(int most) {
        if (points.size() <= most) {
            return this;
        }
        List<ChartPoint> shown = points.subList(points.size() - most, points.size());
        Set<String> pieces = shown.stream().map(ChartPoint::piece).collect(Collectors.toSet());
        return new ControlChart(
                shown,
                ranges.subList(ranges.size() - most + 1, ranges.size()),
                centre,
                meanMovingRange,
                sigma,
                lower,
                upper,
                rangeUpper,
                signals.stream().filter(each -> pieces.contains(each.piece())).toList(),
                changes.stream()
                        .filter(each -> pieces.contains(each.signal().piece()))
                        .toList(),
                sample);
    }

    /** {@return whether there are fewer than {@link #ENOUGH} points, too few for more than trial limits} */
    public boolean isTrial() {
        return points.size() < ENOUGH;
    }

    /**
     * {@return what to say where no rule speaks: that there are too few pieces for any to speak, or that nothing looks like a change; empty
     * where there are signals}
     */
    public Optional<String> verdict() {
        if (!signals.isEmpty()) {
            return Optional.empty();
        }
        int count = points.size();
        if (count < SelfStarting.fewest()) {
            return Optional.of("Too few to tell: %d pieces, and no rule can speak before the %dth."
                    .formatted(count, SelfStarting.fewest()));
        }
        return Optional.of(
                count < SEEING
                        ? "Nothing looks like a change in the work; with %d pieces only a gross one would."
                                .formatted(count)
                        : "Nothing looks like a change in the work.");
    }

    /**
     * {@return a warning when neighbours are so alike (or so unlike) that the moving range no longer says how much pieces differ} That is
     * when the lag-1 correlation of twenty pieces or more lies further than 3/√n from 0. Without memory it does so at any of the looks up to
     * forty pieces in fewer than one set in two hundred (simulated, see the test).
     */
    public Optional<String> memory() {
        double bound = MEMORY / Math.sqrt(points.size());
        if (isTrial() || Math.abs(sample.neighbours()) <= bound) {
            return Optional.empty();
        }
        return Optional.of(
                sample.neighbours() > 0
                        ? "each piece follows the one before it, so the limits are drawn too tight"
                        : "heavy and light take turns, so the limits are drawn too wide");
    }

    /** {@return how the limits were found} */
    public Working working() {
        return new Working(
                "control limits",
                String.format(
                        Locale.ROOT,
                        "mean %.5g, mean moving range %.4g, sigma = range / d2 = %.4g; limits mean ± 3 sigma, range limit D4 x mean range",
                        centre,
                        meanMovingRange,
                        sigma),
                "NIST/SEMATECH e-Handbook of Statistical Methods 6.3.2.2",
                isTrial()
                        ? "%d pieces give trial limits; twenty or more make them firm".formatted(points.size())
                        : "assumes pieces that differ by chance alone");
    }
}
