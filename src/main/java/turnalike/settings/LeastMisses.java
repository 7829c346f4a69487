package turnalike.settings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Sets openings within what they may be set to so that the marks miss their places by least.
 *
 * <p>A step toward the far end puts a mark too far by what its opening is too wide, a step toward the start end as much too near. What is
 * known of a mark's error is the sum along its path: its <em>miss</em>, positive toward the far end. It is linear in the openings; so the
 * least value of the greatest |miss| + k·e, and beside it the least sum of |miss|, are a linear programme. (Derived here.)
 */
final class LeastMisses {
    /** What the greatest error weighs against the sum of all misses: so much that no sum pays for it. */
    private static final double GREATEST_FIRST = 10_000;

    private final Spans spans;
    private final Strikes strikes;
    private final OpeningRange[] ranges;
    private final double errorMm;
    /** The opening that each variable of the programme stands for, and the other way round; -1 for one that cannot be changed. */
    private final List<Integer> free = new ArrayList<>();

    private final int[] variable;
    private final List<Row> rows = new ArrayList<>();
    private final Map<Row, Integer> alike = new HashMap<>();

    /** One mark's miss: how often it takes each free opening, what it is with all of those at their least, and its steps. */
    private record Row(List<Integer> times, long atLeastNanometres, int steps) {}

    private final List<Double> atLeast = new ArrayList<>();

    private LeastMisses(Spans spans, Strikes strikes, OpeningRange[] ranges, double errorMm) {
        this.spans = spans;
        this.strikes = strikes;
        this.ranges = ranges;
        this.errorMm = errorMm;
        this.variable = new int[ranges.length];
        boolean[] used = new boolean[ranges.length];
        for (int mark = 0; mark < spans.marks(); mark++) {
            if (strikes.isStruck(mark)) {
                used[strikes.with()[mark]] = true;
            }
        }
        Arrays.fill(variable, -1);
        for (int opening = 0; opening < ranges.length; opening++) {
            if (used[opening] && !ranges[opening].isFixed()) {
                variable[opening] = free.size();
                free.add(opening);
            }
        }
        for (int mark = 0; mark < spans.marks(); mark++) {
            if (strikes.isStruck(mark)) {
                add(mark);
            }
        }
    }

    /** Openings with which the greatest |miss| + k·e of the marks struck is least. */
    static double[] forTheGreatest(Spans spans, Strikes strikes, OpeningRange[] ranges, double errorMm) {
        return new LeastMisses(spans, strikes, ranges, errorMm).solve(false);
    }

    /** Of those, openings with which the sum of |miss| over the marks struck is least. */
    static double[] of(Spans spans, Strikes strikes, OpeningRange[] ranges, double errorMm) {
        return new LeastMisses(spans, strikes, ranges, errorMm).solve(true);
    }

    /** A mark's miss with those openings, in mm, positive toward the far end. */
    static double missMm(Spans spans, Strikes strikes, double[] openingsMm, int mark) {
        double miss = 0;
        for (int at = mark; strikes.isStruck(at); at = strikes.from()[at]) {
            double distance = spans.placesMm[at] - spans.placesMm[strikes.from()[at]];
            double step = openingsMm[strikes.with()[at]] - Math.abs(distance);
            // Distances told apart by rounding only are the same distance.
            miss += Math.abs(step) <= Spans.SLACK_MM ? 0 : Math.signum(distance) * step;
        }
        return Math.abs(miss) <= Spans.SLACK_MM ? 0 : miss;
    }

    private void add(int mark) {
        Integer[] times = new Integer[free.size()];
        Arrays.fill(times, 0);
        double miss = 0;
        for (int at = mark; strikes.isStruck(at); at = strikes.from()[at]) {
            double distance = spans.placesMm[at] - spans.placesMm[strikes.from()[at]];
            int sign = distance > 0 ? 1 : -1;
            int opening = strikes.with()[at];
            miss += sign * ranges[opening].leastMm() - distance;
            if (variable[opening] >= 0) {
                times[variable[opening]] += sign;
            }
        }
        Row row = new Row(List.of(times), Math.round(miss * 1e6), strikes.steps()[mark]);
        if (alike.merge(row, 1, Integer::sum) == 1) {
            rows.add(row);
            atLeast.add(miss);
        }
    }

    private double[] solve(boolean sumToo) {
        double[] openings = new double[ranges.length];
        for (int opening = 0; opening < openings.length; opening++) {
            openings[opening] = ranges[opening].leastMm();
        }
        if (!free.isEmpty()) {
            double[] more = programme(sumToo);
            for (int i = 0; i < free.size(); i++) {
                openings[free.get(i)] = ranges[free.get(i)].nearest(openings[free.get(i)] + more[i]);
            }
        }
        return openings;
    }

    /**
     * By how much each free opening is above its least. The variables besides: by how much the greatest error is below what it is with all
     * at their least, then, for each row, by how much its |miss| is below what it can be at all. So every limit is met where all are zero.
     */
    private double[] programme(boolean sumToo) {
        int openings = free.size();
        int columns = openings + 1 + (sumToo ? rows.size() : 0);
        int lines = openings + rows.size() * (sumToo ? 4 : 2);
        double[][] left = new double[lines][columns];
        double[] limits = new double[lines];
        double[] worth = new double[columns];
        worth[openings] = sumToo ? GREATEST_FIRST : 1;
        for (int i = 0; i < openings; i++) {
            left[i][i] = 1;
            limits[i] = width(i);
        }
        double greatest = 0;
        for (int row = 0; row < rows.size(); row++) {
            greatest = Math.max(
                    greatest, Math.abs(atLeast.get(row)) + rows.get(row).steps() * errorMm);
        }
        int line = openings;
        for (int row = 0; row < rows.size(); row++) {
            double room = greatest - rows.get(row).steps() * errorMm;
            limit(left, limits, line, row, openings, room);
            line += 2;
            if (sumToo) {
                limit(left, limits, line, row, openings + 1 + row, most(row));
                worth[openings + 1 + row] = alike.getOrDefault(rows.get(row), 1);
                line += 2;
            }
        }
        return LinearProgram.solve(left, limits, worth);
    }

    /** ±miss + a further variable ≤ room, as two lines. */
    private void limit(double[][] left, double[] limits, int line, int row, int further, double room) {
        for (int i = 0; i < free.size(); i++) {
            int times = rows.get(row).times().get(i);
            left[line][i] = times;
            left[line + 1][i] = -times;
        }
        left[line][further] = 1;
        left[line + 1][further] = 1;
        limits[line] = Math.max(0, room - atLeast.get(row));
        limits[line + 1] = Math.max(0, room + atLeast.get(row));
    }

    /** What |miss| can be at all. */
    private double most(int row) {
        double most = Math.abs(atLeast.get(row));
        for (int i = 0; i < free.size(); i++) {
            most += Math.abs(rows.get(row).times().get(i)) * width(i);
        }
        return most;
    }

    private double width(int freeOpening) {
        OpeningRange range = ranges[free.get(freeOpening)];
        return range.mostMm() - range.leastMm();
    }
}
