package turnalike.pieces.control;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Whether a change is a step or a drift: the one that leaves the smaller sum of squares, each fitted by least squares. */
final class ChangeShape {
    private static final int NEWEST = 4;

    private final List<ChartPoint> points;
    private final int start;
    private final int since;
    private final int at;

    /** The work was steady from {@code start} to before {@code since}; the change is told at {@code at}. */
    ChangeShape(List<ChartPoint> points, int start, int since, int at) {
        this.points = points;
        this.start = start;
        this.since = since;
        this.at = at;
    }

    WorkChange change() {
        Fit step = fit(i -> i < since ? 0 : 1);
        Fit line = fit(i -> Math.max(0, i - since + 1));
        int pieces = at - since + 1;
        boolean drifts = pieces > 2 && line.left() < step.left();
        double by = drifts ? line.slope() * pieces : step.slope();
        return new WorkChange(
                drifts ? WorkChange.Kind.DRIFT : WorkChange.Kind.SHIFT,
                points.get(since).piece(),
                points.get(at).piece(),
                pieces,
                by,
                stands(by));
    }

    /** Whether the newest pieces, four at most, lie on average at least half the change to its side of those before it. */
    private boolean stands(double by) {
        int newest = Math.max(at + 1, points.size() - NEWEST);
        double after = mean(newest, points.size()) - mean(start, since);
        return at == points.size() - 1 || after * Math.signum(by) >= Math.abs(by) / 2;
    }

    private double mean(int from, int to) {
        return IntStream.range(from, to)
                .mapToDouble(i -> points.get(i).value())
                .average()
                .orElse(0);
    }

    /** A constant and one regressor: its factor, and the sum of squares left. */
    private record Fit(double slope, double left) {}

    private Fit fit(IntToDoubleFunction regressor) {
        int count = at - start + 1;
        double meanX = 0;
        double meanY = 0;
        for (int i = start; i <= at; i++) {
            meanX += regressor.applyAsDouble(i) / count;
            meanY += points.get(i).value() / count;
        }
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = start; i <= at; i++) {
            double x = regressor.applyAsDouble(i) - meanX;
            double y = points.get(i).value() - meanY;
            xx += x * x;
            xy += x * y;
            yy += y * y;
        }
        double slope = xx == 0 ? 0 : xy / xx;
        return new Fit(slope, yy - slope * xy);
    }
}
