package turnalike.job.pieces;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.job.Job;
import turnalike.job.Tolerances;
import turnalike.pieces.Column;
import turnalike.pieces.KeyedFigure;
import turnalike.pieces.MassUnit;
import turnalike.pieces.Piece;
import turnalike.pieces.control.Capability;
import turnalike.pieces.control.ChartConstants;
import turnalike.pieces.control.ControlChart;
import turnalike.pieces.control.Drift;
import turnalike.pieces.control.RunRule;
import turnalike.pieces.control.Series;
import turnalike.units.Parsed;
import turnalike.units.SentenceCase;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * One column of the pieces watched while the work goes on.
 *
 * @param series the column's values
 * @param things what they are, as a person says it: {@code weights}, {@code diameters at the belly}
 * @param chart their control chart, in the column's unit
 * @param units the job's, in which lengths are shown
 * @param drift what the last pieces are doing, if anything, in words
 * @param limits the tolerance's limits in the column's unit, if a job gives them
 */
public record ControlReport(
        Series series,
        String things,
        ControlChart chart,
        UnitSystem units,
        Optional<Drifting> drift,
        Optional<Capability.Limits> limits) {
    /** With fewer pieces a capability says more about luck than about the work (common practice, no source). */
    private static final int FEWEST_FOR_CAPABILITY = 5;

    private static final int TELLING_SIGMAS = 2;

    /**
     * A drift and its sentence.
     *
     * @param drift from which piece on, and by how much in the column's unit
     * @param words the same without a capital and without its point
     */
    public record Drifting(Drift drift, String words) {}

    /**
     * Charts a column: the limits of an individuals chart with its usual run rules, and what the last pieces are doing.
     *
     * @param job gives the tolerances, units and names; without one a drift is told from two sigmas on and capability is not known
     * @param pieces in the order they were turned; those without a figure in the column are passed over
     * @param column as the pieces file names it: {@code mass_g}, {@code mass_oz}, {@code d1}, or a further column of numbers
     * @param constants of the chart's limits
     * @return the report; refused when fewer than two pieces have a figure there, or a further column holds words
     */
    public static Parsed<ControlReport> of(
            Optional<Job> job, List<Piece> pieces, String column, ChartConstants constants) {
        return Series.of(pieces, column)
                .fold(
                        series -> ControlChart.of(series.points(), constants, RunRule.usual())
                                .fold(
                                        chart -> Parsed.of(of(job, series, chart)),
                                        (what, mend) -> Parsed.refused(what, mend)),
                        Parsed::refused);
    }

    private static ControlReport of(Optional<Job> job, Series series, ControlChart chart) {
        Watched watched = new Watched(series, Column.find(series.name()), job);
        OptionalDouble tolerance = watched.tolerance(chart.centre());
        double telling = tolerance.isPresent() ? tolerance.getAsDouble() / 2 : TELLING_SIGMAS * chart.sigma();
        Optional<Drifting> drift = Drift.find(chart.points(), telling)
                .map(each -> new Drifting(each, each.words(watched.things(), watched.amount(each.change()))));
        Optional<Capability.Limits> limits = tolerance.isPresent()
                ? Optional.of(
                        Capability.Limits.around(watched.target().orElse(chart.centre()), tolerance.getAsDouble()))
                : Optional.empty();
        return new ControlReport(
                series, watched.things(), chart, job.map(Job::units).orElse(UnitSystem.METRIC), drift, limits);
    }

    /** {@return the chart as it is shown: lengths in the job's own units} */
    public ControlChart shown() {
        return chart.times(perShown());
    }

    /** {@return the unit of what is shown: {@code g}, {@code oz}, {@code mm} or {@code in}; empty for a column whose unit nobody told} */
    public String shownUnit() {
        return isLength() ? units.symbol() : series.unit();
    }

    private boolean isLength() {
        return Column.find(series.name()).filter(column -> !column.isMass()).isPresent();
    }

    /** What a value is multiplied by to be shown. */
    private double perShown() {
        return isLength() ? 1 / units.length(1).mm() : 1;
    }

    /**
     * {@return Cp and Cpk with the chart's own sigma, which is the spread from piece to piece; empty without limits, without any spread, or
     * with fewer than five pieces}
     */
    public Optional<Capability> fromPieceToPiece() {
        return capability(chart.sigma());
    }

    /** {@return Pp and Ppk with the deviation of all the values, drift included; empty as {@link #fromPieceToPiece} is} */
    public Optional<Capability> overall() {
        return capability(chart.sample().deviation());
    }

    private Optional<Capability> capability(double deviation) {
        boolean known = deviation > 0 && chart.points().size() >= FEWEST_FOR_CAPABILITY;
        return known ? limits.map(each -> Capability.of(chart.centre(), deviation, each)) : Optional.empty();
    }

    /**
     * {@return what the values say beyond the chart's own signals: drift, and whether the work holds the tolerance; a sentence each, none
     * when there is nothing to say}
     */
    public List<String> findings() {
        List<String> out = new ArrayList<>();
        drift.ifPresent(
                each -> out.add(SentenceCase.capital(each.words()) + ": check the setting before the next piece."));
        fromPieceToPiece().ifPresent(each -> out.add(holds(each)));
        return out;
    }

    private String holds(Capability capability) {
        String verdict = capability.worst() >= Capability.CAPABLE
                ? "The work holds the tolerance with room to spare"
                : capability.worst() >= 1
                        ? "The work only just holds the tolerance"
                        : "The work does not hold the tolerance; expect pieces outside it";
        Capability.Limits between = limits.orElseThrow();
        return String.format(
                Locale.ROOT,
                "%s: Cpk %.2f within %.5g to %.5g%s, Ppk %.2f over all pieces.",
                verdict,
                capability.worst(),
                between.lower().orElse(Double.NEGATIVE_INFINITY) * perShown(),
                between.upper().orElse(Double.POSITIVE_INFINITY) * perShown(),
                shownUnit().isEmpty() ? "" : " " + shownUnit(),
                overall().orElseThrow().worst());
    }

    /** {@return how the figures were found} */
    public List<Working> workings() {
        Working drifting = new Working(
                "drift",
                "the last four pieces or more, each above (or each below) the one before, by half the tolerance or two sigmas in all;"
                        + " six or more whatever the size",
                Working.COMMON_PRACTICE,
                "four pieces stand so by chance one time in twelve");
        if (limits.isEmpty()) {
            return List.of(shown().working(), drifting);
        }
        return List.of(
                shown().working(),
                drifting,
                new Working(
                        "capability",
                        "Cp = (U − L)/6s, Cpk the nearer limit's distance from the mean over 3s; s from the moving range, for Pp and Ppk"
                                + " from all values",
                        "NIST/SEMATECH e-Handbook of Statistical Methods 6.1.6",
                        "limits: the pattern's own figure ± the job's tolerance; for mass and balance the pieces' mean, the mass"
                                + " within half of mass_pct either side, so that any two pass together"));
    }

    /** What is known of the column: its job's tolerance and name. */
    private record Watched(Series series, Optional<Column> column, Optional<Job> job) {
        OptionalDouble tolerance(double centre) {
            if (job.isEmpty() || column.isEmpty()) {
                return OptionalDouble.empty();
            }
            Tolerances tolerances = job.get().tolerances();
            double figure =
                    switch (column.get().kind()) {
                        case MASS -> centre * tolerances.massPct() / 100 / 2;
                        case LENGTH, BALANCE, MARK -> tolerances.mark().mm();
                        case DIAMETER -> tolerances.diameter().mm();
                    };
            return figure > 0 ? OptionalDouble.of(figure) : OptionalDouble.empty();
        }

        OptionalDouble target() {
            return job.isPresent() && column.isPresent()
                    ? ColumnTargets.shape(job.get()).figure(column.get())
                    : OptionalDouble.empty();
        }

        String things() {
            if (column.isEmpty()) {
                return "values of " + series.name();
            }
            Column known = column.get();
            String place =
                    job.map(ColumnTargets::names).map(names -> names.get(known)).orElse(known.format());
            return switch (known.kind()) {
                case MASS -> "weights";
                case LENGTH -> "lengths";
                case BALANCE -> "balance points";
                case MARK -> "places of the " + place;
                case DIAMETER -> "diameters at the " + place;
            };
        }

        /** The size of a change in the column's own unit. */
        String amount(double change) {
            if (column.isEmpty()) {
                return String.format(Locale.ROOT, "%.4g", Math.abs(change));
            }
            MassUnit mass = series.massUnit();
            double inside = column.get().isMass() ? mass.mass(Math.abs(change)).grams() : change;
            return job.map(each -> new KeyedFigure(each.units(), mass))
                    .orElse(new KeyedFigure(UnitSystem.METRIC, mass))
                    .say(column.get(), inside);
        }
    }
}
