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
 * {@link Chords#gapMm}) is within the tolerance, between neighbouring stations always, since nothing nearer is marked, and where it is too
 * short for a place between that keeps its distance from both: there the eye and the template lead. No chord is shorter than that distance
 * unless the whole stretch is. A choice of
 * places is a path of chords from the first station to the last, and what is to be least adds up along it: first the chords that are not
 * within the tolerance (none, unless the curve bends more sharply than its places may stand), then the chords, then the sum of the gaps'
 * squares, which spreads what is left evenly. Every chord goes
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

    /** As much wood as the tool is wide stays between two cuts, or the second breaks into the first. */
    static final double APART_MM = 2 * TOOL_MM;

    private final Chords curve;
    private final double withinMm;
    private final double apartMm;
    private final double[] xMm;
    private final double[] radiusMm;
    /** The least each station can be reached with, so far, and from which one. */
    private final Cost[] least;

    private final int[] before;

    private FairPlaces(Chords curve, double withinMm, double apartMm, double[] xMm) {
        this.curve = curve;
        this.withinMm = withinMm;
        this.apartMm = apartMm;
        this.xMm = xMm;
        this.radiusMm = DoubleStream.of(xMm).map(curve::radiusMm).toArray();
        this.least = new Cost[xMm.length];
        this.before = new int[xMm.length];
    }

    private record Cost(int outside, int chords, double squares) {
        static final Cost NOTHING = new Cost(0, 0, 0);
        static final Cost NEVER = new Cost(Integer.MAX_VALUE, 0, 0);

        Cost with(double gapMm, boolean isOutside) {
            return new Cost(outside + (isOutside ? 1 : 0), chords + 1, squares + gapMm * gapMm);
        }

        boolean below(Cost other) {
            if (outside != other.outside) {
                return outside < other.outside;
            }
            return chords != other.chords ? chords < other.chords : squares < other.squares;
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
     * @param apartMm no nearer than this to one another or to either end; zero for as near as may be
     */
    static List<Double> between(
            Chords curve, double fromMm, double toMm, List<Double> ownMm, double withinMm, double apartMm) {
        return new FairPlaces(curve, withinMm, apartMm, stations(fromMm, toMm, ownMm)).fewest();
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
            if (!least[from].equals(Cost.NEVER)) {
                leave(from);
            }
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
        for (int to = from + 1; to < xMm.length; to++) {
            double run = xMm[to] - xMm[from];
            double rise = radiusMm[to] - radiusMm[from];
            // Between twice the distance and a station more there may be none that keeps it on both sides.
            boolean undivided = apartMm > 0 && run < 2 * apartMm + STATION_MM;
            boolean stands = to == from + 1 || undivided;
            if (!stands && lowest > highest) {
                return;
            }
            boolean isWhole = from == 0 && to == xMm.length - 1;
            if ((run >= apartMm - SLACK_MM || isWhole) && (stands || (lowest <= rise / run && rise / run <= highest))) {
                reach(from, to, stands);
            }
            lowest = Math.max(lowest, (rise - room) / run);
            highest = Math.min(highest, (rise + room) / run);
        }
    }

    private void reach(int from, int to, boolean stands) {
        // Even with no gap at all it would be no better: the gap, which costs a look at every piece of the curve
        // between, is not asked.
        if (!least[from].with(0, false).below(least[to])) {
            return;
        }
        double gapMm = curve.gapMm(xMm[from], xMm[to]);
        boolean outside = gapMm > withinMm + SLACK_MM;
        Cost cost = least[from].with(gapMm, outside);
        if ((stands || !outside) && cost.below(least[to])) {
            least[to] = cost;
            before[to] = from;
        }
    }
}
