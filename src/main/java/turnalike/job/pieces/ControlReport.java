package turnalike.job.pieces;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import turnalike.job.Job;
import turnalike.job.Tolerances;
import turnalike.pieces.Column;
import turnalike.pieces.KeyedFigure;
import turnalike.pieces.Piece;
import turnalike.pieces.PiecesFile;
import turnalike.pieces.control.Capability;
import turnalike.pieces.control.ChartConstants;
import turnalike.pieces.control.ControlChart;
import turnalike.pieces.control.Power;
import turnalike.pieces.control.RuleChoice;
import turnalike.pieces.control.Series;
import turnalike.pieces.control.WorkChange;
import turnalike.units.MassUnit;
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
 * @param rules which rules speak
 * @param change the latest change that still stands, if there is any, in words
 * @param limits the tolerance's limits in the column's unit, if a job gives them
 */
public record ControlReport(
        Series series,
        String things,
        ControlChart chart,
        UnitSystem units,
        RuleChoice rules,
        Optional<Changed> change,
        Optional<Capability.Limits> limits) {
    /** With fewer pieces a capability says more about luck than about the work (common practice, no source). */
    private static final int FEWEST_FOR_CAPABILITY = 5;

    /** The drift whose chance of being seen is told where no job gives a tolerance, in sigmas. */
    private static final double DRIFT_SIGMAS = 3;

    /**
     * A change and its sentence.
     *
     * @param change of the column's values, in the column's unit
     * @param words the same without a capital and without its point
     */
    public record Changed(WorkChange change, String words) {}

    /**
     * Charts a column: the limits of an individuals chart, what the rules chosen say, and what the work is doing.
     *
     * @param job gives the tolerances, units and names; without one capability is not known
     * @param pieces in the order they were turned, of whatever length: each is charted as it would measure were it of the drawn one; those
     *     without a figure in the column are passed over
     * @param column as the pieces file names it: {@code mass_g}, {@code mass_oz}, {@code d1}, or a further column of numbers
     * @param constants of the chart's limits
     * @param rules which rules speak; they leave the limits as they are
     * @return the report; refused when fewer than two pieces have a figure there, or a further column holds words
     */
    public static Parsed<ControlReport> of(
            Optional<Job> job, List<Piece> pieces, String column, ChartConstants constants, RuleChoice rules) {
        MassUnit masses = job.map(each -> each.tolerances().masses()).orElse(MassUnit.GRAM);
        return of(job, new PiecesFile.Read(pieces, List.of(), List.of(), masses), column, constants, rules);
    }

    /**
     * The same of a table's pieces.
     *
     * @param job as above
     * @param read the table, nothing wrong in it; what else of it may be charted is told by its own names
     * @param column as above
     * @param constants as above
     * @param rules as above
     * @return as above
     */
    public static Parsed<ControlReport> of(
            Optional<Job> job, PiecesFile.Read read, String column, ChartConstants constants, RuleChoice rules) {
        return Series.of(
                        job.map(each -> ColumnTargets.lengths(each).allAsDrawn(read.pieces()))
                                .orElse(read.pieces()),
                        column,
                        read.massUnit())
                .fold(
                        series -> ControlChart.of(series.points(), constants, rules.rules())
                                .fold(
                                        chart -> Parsed.of(of(job, series, chart, rules)),
                                        (what, mend) -> Parsed.refused(what, mend)),
                        Parsed::refused);
    }

    private static ControlReport of(Optional<Job> job, Series series, ControlChart chart, RuleChoice rules) {
        Watched watched = new Watched(series, Column.find(series.name()), job);
        OptionalDouble tolerance = watched.tolerance(chart.centre());
        Optional<Changed> change = chart.changes().stream()
                .filter(WorkChange::stands)
                .reduce((earlier, later) -> later)
                .map(each -> new Changed(each, each.words(watched.things(), watched.amount(each.by()))));
        Optional<Capability.Limits> limits = tolerance.isPresent()
                ? Optional.of(
                        Capability.Limits.around(watched.target().orElse(chart.centre()), tolerance.getAsDouble()))
                : Optional.empty();
        return new ControlReport(
                series, watched.things(), chart, job.map(Job::units).orElse(UnitSystem.METRIC), rules, change, limits);
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
     * {@return what the values say beyond the chart's own signals: a change that stands, and whether the work holds the tolerance; a
     * sentence each, none when there is nothing to say} A change is told only where there is a signal of it.
     */
    public List<String> findings() {
        List<String> out = new ArrayList<>();
        change.ifPresent(each -> out.add(SentenceCase.capital(each.words())
                + (each.change().kind() == WorkChange.Kind.APART
                        ? ": measure it again, and check the setting before the next piece."
                        : ": check the setting before the next piece.")));
        fromPieceToPiece().ifPresent(each -> out.add(holds(each)));
        if (chart.meanMovingRange() == 0) {
            out.add("All read the same: such limits call the next step of the scale a change; measure finer.");
        }
        return out;
    }

    /** {@return {@link #findings} and {@link #howSure}, for a sheet} */
    public List<String> sentences() {
        List<String> out = new ArrayList<>(findings());
        out.add(howSure());
        return out;
    }

    /** {@return a drift of one tolerance in the chart's sigmas; of three sigmas where no tolerance or no scatter is known} */
    public double driftSigmas() {
        return tolerance().isPresent() && chart.sigma() > 0 ? tolerance().getAsDouble() / chart.sigma() : DRIFT_SIGMAS;
    }

    private OptionalDouble tolerance() {
        return limits.map(each -> OptionalDouble.of(
                        (each.upper().orElseThrow() - each.lower().orElseThrow()) / 2))
                .orElse(OptionalDouble.empty());
    }

    /** {@return how often the rules speak of steady work; of the self-starting watch also how often it sees a change} */
    public String howSure() {
        if (rules != RuleChoice.SELF_STARTING) {
            return String.format(
                    Locale.ROOT,
                    "If nothing changes, %.0f in 100 sets of 40 pieces raise a false alarm, looked at after every piece (simulated).",
                    rules.falseAlarmsPct(40));
        }
        boolean told = tolerance().isPresent() && chart.sigma() > 0;
        return String.format(
                Locale.ROOT,
                "If nothing changes, at most 1 set in 20 raises a false alarm, of up to 40 pieces, looked at after every piece (computed)."
                        + " After ten steady pieces a sudden step of twice the usual scatter is seen within ten more %.0f times in 100, a drift"
                        + " of %s over those ten %.0f times (simulated; the usual scatter is one sigma).",
                Power.jumpOfTwoSigmaPct(),
                told
                        ? String.format(Locale.ROOT, "one tolerance, %.1f times that scatter,", driftSigmas())
                        : "three times that scatter",
                Power.driftPct(driftSigmas()));
    }

    /**
     * {@return a figure of the chart as it is shown, without its unit: to as many places as give the centre five figures, weights to one place more
     * than the pieces' own have; nobody weighs or measures finer} The answer in JSON has them all.
     *
     * @param shown a limit, a mean or a range, as {@link #shown} has it
     */
    public String told(double shown) {
        double size = Math.max(Math.abs(chart.centre() * perShown()), 1e-3);
        int places = (int) Math.max(0, Math.min(6, 4 - Math.floor(Math.log10(size))));
        boolean weights = Column.find(series.name()).filter(Column::isMass).isPresent();
        return String.format(Locale.ROOT, "%." + (weights ? Math.min(places, 1 + ownPlaces()) : places) + "f", shown);
    }

    /** How many places the pieces' own figures have. */
    private int ownPlaces() {
        return chart.points().stream()
                .mapToInt(point -> Math.max(
                        0,
                        BigDecimal.valueOf(Math.round(point.value() * 1e6) / 1e6)
                                .stripTrailingZeros()
                                .scale()))
                .max()
                .orElse(0);
    }

    private String holds(Capability capability) {
        String verdict = capability.worst() >= Capability.CAPABLE
                ? "The work holds %s with room to spare"
                : capability.worst() >= 1
                        ? "The work only just holds %s"
                        : "The work does not hold %s; expect pieces outside it";
        Capability.Limits between = limits.orElseThrow();
        String range = "%s to %s%s"
                .formatted(
                        told(between.lower().orElse(Double.NEGATIVE_INFINITY) * perShown()),
                        told(between.upper().orElse(Double.POSITIVE_INFINITY) * perShown()),
                        shownUnit().isEmpty() ? "" : " " + shownUnit());
        return String.format(
                Locale.ROOT,
                verdict + " (Cpk %.2f, Ppk %.2f over all pieces).",
                range,
                capability.worst(),
                overall().orElseThrow().worst());
    }

    /** {@return how the figures were found} */
    public List<Working> workings() {
        Working drifting = rules == RuleChoice.SELF_STARTING ? Power.working() : Power.workingOfRuns();
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
                                + " within half of a set's tolerance either side, so that any two pass together"));
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

        /** Where pieces are made in several lengths, each is charted as it would measure were it of the drawn one. */
        String things() {
            boolean several = column.isPresent()
                    && column.get().kind() != Column.Kind.DIAMETER
                    && job.filter(each -> !ColumnTargets.lengths(each).isOne()).isPresent();
            return several ? measured() + " (each as of the drawn length)" : measured();
        }

        private String measured() {
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
            return job.map(each -> new KeyedFigure(
                            each.units(), mass, each.tolerances().weighing()))
                    .orElse(new KeyedFigure(UnitSystem.METRIC, mass))
                    .say(column.get(), inside);
        }
    }
}
