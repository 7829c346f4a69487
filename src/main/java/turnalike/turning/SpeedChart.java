package turnalike.turning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.Speed;

/**
 * The speeds turners take by eye for round, balanced work of a diameter. Between two rows both ends of the range go by a power of the
 * diameter, so that they meet the rows; thinner than the thinnest row takes that row's speeds; thicker than the thickest keeps that row's
 * diameter × speed, the wood passing the tool no faster.
 *
 * @param rows by diameter, the thinnest first; at least one
 */
public record SpeedChart(List<Row> rows) {
    /** Nobody tells two diameters apart that are nearer than a millionth of a millimetre, and between them no power of a diameter can be found. */
    private static final double ALIKE_MM = 1e-6;

    /**
     * For spindle work on a hand lathe: under 1/2 in 3,000 to 3,500 rpm, 1 in 2,000 to 2,800, 2 in 1,200 to 1,800. Common practice, no
     * source.
     */
    public static final SpeedChart USUAL =
            new SpeedChart(List.of(inches(0.5, 3000, 3500), inches(1, 2000, 2800), inches(2, 1200, 1800)));

    /** A chart of fastest speeds alone begins its ranges at two thirds of them. Common practice, no source. */
    public static final double SLOW_SHARE = 2.0 / 3;

    /**
     * What is common for one diameter.
     *
     * @param diameter above zero
     * @param from the slow end
     * @param to the fast end, not below {@code from}
     */
    public record Row(Length diameter, Speed from, Speed to) {
        public Row {
            if (!diameter.isPositive() || from.compareTo(to) > 0) {
                throw new IllegalArgumentException(
                        "a row of speeds needs a diameter and a rising range, was %s mm, %s to %s rpm"
                                .formatted(diameter.mm(), from.rpm(), to.rpm()));
            }
        }

        /**
         * {@return the row of a chart that gives fastest speeds alone}
         *
         * @param diameter above zero
         * @param to the fast end
         */
        public static Row fastest(Length diameter, Speed to) {
            return new Row(diameter, to.times(SLOW_SHARE), to);
        }
    }

    public SpeedChart {
        rows = rows.stream().sorted(Comparator.comparing(Row::diameter)).toList();
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a chart of speeds has at least one row, was empty");
        }
    }

    private static Row inches(double inches, double from, double to) {
        return new Row(Length.ofInches(inches), Speed.ofRpm(from), Speed.ofRpm(to));
    }

    /**
     * {@return the range for round work of that diameter}
     *
     * @param diameter above zero
     */
    SpeedRange at(Length diameter) {
        int after = 0;
        while (after < rows.size() && rows.get(after).diameter().compareTo(diameter) < 0) {
            after++;
        }
        if (after == 0) {
            return new SpeedRange(rows.get(0).from(), rows.get(0).to(), diameter);
        }
        Row thinner = rows.get(after - 1);
        if (after == rows.size()) {
            double share = thinner.diameter().mm() / diameter.mm();
            return new SpeedRange(thinner.from().times(share), thinner.to().times(share), diameter);
        }
        Row thicker = rows.get(after);
        double way = Math.log(diameter.mm() / thinner.diameter().mm())
                / Math.log(thicker.diameter().mm() / thinner.diameter().mm());
        return new SpeedRange(
                between(thinner.from(), thicker.from(), way), between(thinner.to(), thicker.to(), way), diameter);
    }

    private static Speed between(Speed first, Speed second, double way) {
        return first.times(Math.pow(second.rpm() / first.rpm(), way));
    }

    /** The rows in words: {@code 12.7 mm 3000 to 3500 rpm, …}. */
    String text() {
        return rows.stream()
                .map(row -> String.format(
                        Locale.ROOT,
                        "%.1f mm %.0f to %.0f rpm",
                        row.diameter().mm(),
                        row.from().rpm(),
                        row.to().rpm()))
                .collect(Collectors.joining(", "));
    }

    /**
     * {@return rows that contradict one another, each where it was given: a diameter twice, a thicker one faster than a thinner}
     *
     * @param at the chart's place in the job
     * @param given the rows as they were given
     */
    public static List<Problem> problems(String at, List<Row> given) {
        List<Problem> out = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            String where = "%s %d".formatted(at, i + 1);
            Row row = given.get(i);
            for (Row before : given.subList(0, i)) {
                boolean same = row.diameter().minus(before.diameter()).abs().mm() < ALIKE_MM;
                int thicker = row.diameter().compareTo(before.diameter());
                int faster = row.to().compareTo(before.to());
                if (same) {
                    out.add(new Problem(where, "its diameter is there twice", "list each diameter once"));
                } else if (thicker * faster > 0) {
                    out.add(new Problem(
                            where,
                            "thicker work would turn faster than thinner",
                            "let the speeds fall as the diameters grow"));
                }
            }
        }
        return out;
    }
}
