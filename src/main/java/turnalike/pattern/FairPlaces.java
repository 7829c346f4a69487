package turnalike.pattern;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import turnalike.outline.Chords;

/**
 * The fewest places between two others at which a curve is sized so that the straight line from each to the next stays within a tolerance of
 * it all along.
 *
 * <p>Places are looked for among stations: the stretch divided evenly, at most {@link #STATION_MM} apart or into {@link #MOST_STATIONS}
 * where it is long, and besides the curve's own points there. A chord between two stations may stand when its exact gap (see
 * {@link Chords#gapMm}) is within the tolerance, and between neighbouring stations always, since nothing nearer is marked. A choice of
 * places is a path of chords from the first station to the last, and what is to be least adds up along it: first the chords that are not
 * within the tolerance (none, unless the stations are too far apart for the curve), then the chords, then what places stand nearer to one
 * another than a tool for sizing cuts is wide, then the sum of the gaps' squares, which spreads what is left evenly. Every chord goes
 * forward, so the least that a station can be reached with is known before any chord that leaves it is looked at, and no choice among
 * these stations has fewer places (shortest path in a graph without circles, a textbook method; from memory). Taking the furthest chord
 * each time would not do: past a bend a shorter one may lead further.
 */
final class FairPlaces {
    private static final double STATION_MM = CurveRules.USUAL.line().mm();
    private static final int MOST_STATIONS = 200;

    /** Comparisons give way by this, in millimetres, for rounding. */
    private static final double SLACK_MM = 1e-9;

    /** How wide a tool for sizing cuts usually is (common practice, no source): two cuts nearer together are one. */
    private static final double TOOL_MM = 3;

    private final Chords curve;
    private final double withinMm;
    private final double[] xMm;
    private final double[] radiusMm;
    /** The least each station can be reached with, so far, and from which one. */
    private final Cost[] least;

    private final int[] before;

    private FairPlaces(Chords curve, double withinMm, double[] xMm) {
        this.curve = curve;
        this.withinMm = withinMm;
        this.xMm = xMm;
        this.radiusMm = DoubleStream.of(xMm).map(curve::radiusMm).toArray();
        this.least = new Cost[xMm.length];
        this.before = new int[xMm.length];
    }

    private record Cost(int outside, int chords, double crowdedMm, double squares) {
        static final Cost NOTHING = new Cost(0, 0, 0, 0);
        static final Cost NEVER = new Cost(Integer.MAX_VALUE, 0, 0, 0);

        Cost with(double runMm, double gapMm, boolean isOutside) {
            return new Cost(
                    outside + (isOutside ? 1 : 0),
                    chords + 1,
                    crowdedMm + Math.max(0, TOOL_MM - runMm),
                    squares + gapMm * gapMm);
        }

        boolean below(Cost other) {
            if (outside != other.outside) {
                return outside < other.outside;
            }
            if (chords != other.chords) {
                return chords < other.chords;
            }
            return Math.abs(crowdedMm - other.crowdedMm) > SLACK_MM
                    ? crowdedMm < other.crowdedMm
                    : squares < other.squares;
        }
    }

    /**
     * Strictly between, in order.
     *
     * @param curve on which both ends lie
     * @param fromMm the place before
     * @param toMm the place after
     * @param ownMm the curve's own points, anywhere on it
     * @param withinMm how far a radius may be off, above zero
     */
    static List<Double> between(Chords curve, double fromMm, double toMm, List<Double> ownMm, double withinMm) {
        return new FairPlaces(curve, withinMm, stations(fromMm, toMm, ownMm)).fewest();
    }

    /** Both ends and all stations between, rising. */
    static double[] stations(double fromMm, double toMm, List<Double> ownMm) {
        List<Double> own = ownMm.stream().filter(x -> fromMm < x && x < toMm).toList();
        int parts = (int) Math.max(1, Math.min(MOST_STATIONS, Math.ceil((toMm - fromMm) / STATION_MM)));
        List<Double> all = new ArrayList<>(own.size() <= MOST_STATIONS ? own : List.of());
        for (int i = 1; i < parts; i++) {
            double x = fromMm + (toMm - fromMm) * i / parts;
            if (all.stream().noneMatch(each -> Math.abs(each - x) < SLACK_MM)) {
                all.add(x);
            }
        }
        all.add(fromMm);
        all.add(toMm);
        Collections.sort(all);
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private List<Double> fewest() {
        Arrays.fill(least, Cost.NEVER);
        least[0] = Cost.NOTHING;
        for (int from = 0; from + 1 < xMm.length; from++) {
            leave(from);
        }
        List<Double> out = new ArrayList<>();
        for (int at = before[xMm.length - 1]; at > 0; at = before[at]) {
            out.add(0, xMm[at]);
        }
        return out;
    }

    /**
     * Looks at the chords that leave a station. Every chord passes within the tolerance of the curve at each station on its way, so each of
     * these narrows the slopes a further chord can have; when none is left, no further chord can stand.
     */
    private void leave(int from) {
        double lowest = Double.NEGATIVE_INFINITY;
        double highest = Double.POSITIVE_INFINITY;
        double room = withinMm + SLACK_MM;
        for (int to = from + 1; to < xMm.length && lowest <= highest; to++) {
            double run = xMm[to] - xMm[from];
            double rise = radiusMm[to] - radiusMm[from];
            boolean neighbours = to == from + 1;
            if (neighbours || (lowest <= rise / run && rise / run <= highest)) {
                reach(from, to, neighbours);
            }
            lowest = Math.max(lowest, (rise - room) / run);
            highest = Math.min(highest, (rise + room) / run);
        }
    }

    private void reach(int from, int to, boolean neighbours) {
        double runMm = xMm[to] - xMm[from];
        // Even with no gap at all it would be no better: the gap, which costs a look at every piece of the curve
        // between, is not asked.
        if (!least[from].with(runMm, 0, false).below(least[to])) {
            return;
        }
        double gapMm = curve.gapMm(xMm[from], xMm[to]);
        boolean outside = gapMm > withinMm + SLACK_MM;
        Cost cost = least[from].with(runMm, gapMm, outside);
        if ((neighbours || !outside) && cost.below(least[to])) {
            least[to] = cost;
            before[to] = from;
        }
    }
}
