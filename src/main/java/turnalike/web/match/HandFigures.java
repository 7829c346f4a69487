package turnalike.web.match;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.frame.Moment;
import turnalike.job.set.LegsSet;
import turnalike.job.set.RowSet;
import turnalike.job.set.SetMatch;
import turnalike.job.set.WheelSet;
import turnalike.units.UnitSystem;

/**
 * The few figures that a person watches while placing by hand, as they are and as they would be.
 *
 * @param rows one for each figure
 * @param tried whether there is something they would be
 * @param better whether that would be the better set
 */
public record HandFigures(List<Row> rows, boolean tried, boolean better) {
    private static final String UNBALANCE = "Unbalance";

    /**
     * One figure.
     *
     * @param name what it is
     * @param now as it stands
     * @param then as it would be; empty where nothing is tried
     */
    public record Row(String name, String now, String then) {}

    public HandFigures {
        rows = List.copyOf(rows);
    }

    /** {@return whether they are a wheel's} */
    public boolean isWheel() {
        return !rows.isEmpty() && rows.get(0).name().equals(UNBALANCE);
    }

    static HandFigures of(SetMatch now, Optional<SetMatch> then, UnitSystem units) {
        List<Row> is = now.match(new Figures(units));
        List<Row> would = then.map(set -> set.match(new Figures(units))).orElse(List.of());
        List<Row> out = new ArrayList<>();
        for (int i = 0; i < is.size(); i++) {
            out.add(new Row(
                    is.get(i).name(),
                    is.get(i).now(),
                    i < would.size() ? would.get(i).now() : ""));
        }
        return new HandFigures(
                out, then.isPresent(), then.filter(set -> set.isBetterThan(now)).isPresent());
    }

    private record Figures(UnitSystem units) implements SetMatch.Cases<List<Row>> {
        private static Row row(String name, String format, Object... values) {
            return new Row(name, String.format(Locale.ROOT, format, values), "");
        }

        @Override
        public List<Row> wheel(WheelSet set) {
            Moment left = set.placement().unbalance();
            List<Row> out = new ArrayList<>();
            out.add(row(UNBALANCE, set.placement().left()));
            out.add(
                    set.placement().isHeavyOnOneSide()
                            ? row("Heavy at", left.at().formatDirection())
                            : row("Heavy at", "no side that stands out"));
            set.roundness()
                    .ifPresent(round -> out.add(row(
                            "Run-out of " + round.theRim(),
                            "%s",
                            round.placed().rim().runOut().formatMeasuredBoth(units))));
            out.add(row(
                    "Weights within", "%s", set.weighing().apart(set.placement().massSpread())));
            return out;
        }

        @Override
        public List<Row> row(RowSet set) {
            return likeness(
                    "Neighbours differ by",
                    "Most between two",
                    set,
                    set.placement().totalDifference());
        }

        @Override
        public List<Row> legs(LegsSet set) {
            return likeness(
                    "Within groups they differ by",
                    "Most of one piece",
                    set,
                    set.grouping().totalDifference());
        }

        private static List<Row> likeness(String total, String most, SetMatch set, double sum) {
            List<Double> unlike = set.unlike();
            List<Row> out = new ArrayList<>(List.of(row(total, "%.2f", sum)));
            if (!unlike.isEmpty()) {
                double worst = Collections.max(unlike);
                out.add(row(most, "%.2f, place %d", worst, unlike.indexOf(worst) + 1));
            }
            return out;
        }
    }
}
