package turnalike.pieces.control;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Watches pieces one by one without knowing beforehand what mean and scatter the work has. Each piece is compared with all before it, as
 * Student's t of a new value, and that is turned into the normal score of the same tail; while the work is steady these scores are
 * independent and standard normal, whatever mean and scatter are. Two cumulative sums of the scores, one up and one down, tell a lasting
 * change; a single score beyond a limit tells one piece that stands apart. Source: D. M. Hawkins, Self-starting CUSUM charts for location
 * and scale, The Statistician 36 (1987) 299–315; the sums, E. S. Page, Biometrika 41 (1954) 100–115; the single limit beside them,
 * J. M. Lucas, Journal of Quality Technology 14 (1982) 51–59 (all from memory).
 *
 * <p>The limits are chosen so that of stable sets of {@link #SET} pieces, looked at after every piece, at most one in twenty brings any
 * signal; that is computed, not simulated, as the scores' law is known: see the test, which also holds it against simulation. Assumes
 * pieces that scatter normally and independently.
 */
final class SelfStarting {
    /** The sets the false alarms are counted over. */
    static final int SET = 40;
    /** So many pieces give the first mean and scatter; the next is the first to be judged. */
    static final int FIRST = 4;
    /** What a score must exceed to count toward a change: half of the shift of one sigma looked for. */
    static final double SLACK = 0.5;
    /** Where a sum speaks: 3.7 % of stable sets of 40 reach it, up or down. */
    static final double LIMIT = 5.55;
    /** Where one score speaks by itself: in 0.8 % of stable sets of 40. */
    static final double APART = 3.7;

    private final List<ChartPoint> points;
    private final List<WorkChange> changes = new ArrayList<>();
    /** The values so far, each once, for the smallest step between two of them: what was rounded off. */
    private final TreeSet<Double> seen = new TreeSet<>();

    private double smallestStep = Double.POSITIVE_INFINITY;
    private int start;
    private int count;
    private double mean;
    private double squares;
    private double up;
    private double down;
    private int upSince;
    private int downSince;
    private int apart;
    private int silentTo;

    private SelfStarting(List<ChartPoint> points) {
        this.points = points;
        forget(0, -1);
    }

    /** The changes in the order they are told; each was told when its piece was the newest. Time grows with the pieces' number squared at worst. */
    static List<WorkChange> changes(List<ChartPoint> points) {
        SelfStarting watch = new SelfStarting(points);
        for (int at = 0; at < points.size(); at++) {
            at = watch.look(at);
        }
        return watch.changes;
    }

    /** From which piece on a signal can come. */
    static int fewest() {
        return FIRST + 1;
    }

    /** Looks at a piece; answers where to go on from: that piece, or the one before a change, whose pieces are the new beginning. */
    private int look(int at) {
        double value = points.get(at).value();
        see(value);
        if (count < FIRST || at <= silentTo) {
            take(value);
            return at;
        }
        double score = score(value);
        if (Math.abs(score) > APART) {
            return standsApart(at, score);
        }
        if (up == 0) {
            upSince = at;
        }
        if (down == 0) {
            downSince = at;
        }
        up = Math.max(0, up + score - SLACK);
        down = Math.max(0, down - score - SLACK);
        if (up > LIMIT || down > LIMIT) {
            return changed(up > LIMIT ? upSince : downSince, at);
        }
        take(value);
        return at;
    }

    /** One piece alone is left out of mean and scatter; a second in a row on the same side is a change that lasts. */
    private int standsApart(int at, double score) {
        double off = points.get(at).value() - mean;
        if (apart == at - 1 && at > 0 && (points.get(apart).value() - mean) * score > 0) {
            return changed(apart, at);
        }
        String label = points.get(at).piece();
        changes.add(new WorkChange(WorkChange.Kind.APART, label, label, 1, off, at == points.size() - 1));
        apart = at;
        return at;
    }

    private int changed(int since, int at) {
        changes.add(new ChangeShape(points, start, since, at).change());
        forget(since, at);
        return since - 1;
    }

    private void forget(int from, int silent) {
        start = from;
        silentTo = silent;
        count = 0;
        mean = 0;
        squares = 0;
        up = 0;
        down = 0;
        upSince = from;
        downSince = from;
        apart = -2;
    }

    private void see(double value) {
        Double below = seen.lower(value);
        Double above = seen.higher(value);
        double same = 1e-9 * Math.abs(value);
        for (Double beside : new Double[] {below, above}) {
            if (beside != null && Math.abs(beside - value) > same) {
                smallestStep = Math.min(smallestStep, Math.abs(beside - value));
            }
        }
        seen.add(value);
    }

    private void take(double value) {
        count++;
        double off = value - mean;
        mean += off / count;
        squares += off * (value - mean);
    }

    /**
     * The newest value's score. Its scatter is no smaller than rounding alone leaves, a twelfth of the step's square: four readings that are
     * alike only because the scale is coarse would make any fifth one a signal.
     */
    private double score(double value) {
        double rounding = Double.isInfinite(smallestStep) ? 0 : smallestStep * smallestStep / 12;
        double scatter = Math.sqrt(Math.max(squares / (count - 1), rounding));
        double off = value - mean;
        if (scatter == 0 || off == 0) {
            return 0;
        }
        return TailScore.of(off / scatter * Math.sqrt(count / (count + 1.0)), count - 1);
    }
}
