package turnalike.pattern;

import java.util.ArrayList;
import java.util.List;
import turnalike.pattern.FreeCurve.Point;

/**
 * Where a curve through points has to be sized whatever lies between: its peaks and hollows, and the foot and head of each step. The curve
 * rises and falls only as its points do (see {@link turnalike.outline.MonotoneCubic}), so each of these is a point, or lies on a level
 * stretch between two. A rise and fall of no more than the tolerance, as measuring leaves, is no peak.
 */
final class CurveTurns {
    /** Diameters nearer than this are the same, but for the rounding of units. */
    private static final double SAME_MM = 1e-9;

    private final List<Point> points;
    private final double withinMm;
    private final CurveRules rules;

    private CurveTurns(List<Point> points, double withinMm, CurveRules rules) {
        this.rules = rules;
        this.points = points;
        this.withinMm = withinMm;
    }

    /**
     * A place that has to be sized.
     *
     * @param xMm from the member's start
     * @param word what it is; several may have the same
     * @param marked whether it gets a line of its own: the head of a step as good as upright shares its foot's
     * @param stepFollows whether a step leads from here to the next place, so that nothing between is sized
     */
    record Turn(double xMm, String word, boolean marked, boolean stepFollows) {}

    /** Inside the member, in order, each place once. */
    static List<Turn> of(List<Point> points, double withinMm, CurveRules rules) {
        CurveTurns turns = new CurveTurns(points, withinMm, rules);
        List<Turn> out = turns.peaksAndHollows();
        turns.steps(out);
        return out;
    }

    /** A stretch of points that follow each other with one diameter. */
    private record Level(int first, int last, double diameterMm) {}

    private List<Turn> peaksAndHollows() {
        List<Level> extremes = lasting();
        List<Turn> out = new ArrayList<>();
        for (int i = 1; i + 1 < extremes.size(); i++) {
            Level level = extremes.get(i);
            String word = level.diameterMm() > extremes.get(i - 1).diameterMm() ? "peak" : "hollow";
            double fromMm = xMm(level.first());
            double toMm = xMm(level.last());
            if (toMm - fromMm > rules.longLevel().mm()) {
                out.add(new Turn(fromMm, word, true, false));
                out.add(new Turn(toMm, word, true, false));
            } else {
                out.add(new Turn((fromMm + toMm) / 2, word, true, false));
            }
        }
        return out;
    }

    /** Both ends and the extremes between that differ from their neighbours by more than the tolerance, found by taking the least away. */
    private List<Level> lasting() {
        List<Level> out = extremes();
        while (out.size() > 2) {
            int least = leastRise(out);
            if (rise(out, least) > withinMm) {
                break;
            }
            // Between two inner ones both go, so that what stays still rises and falls by turns; an end stays.
            if (least + 2 < out.size()) {
                out.remove(least + 1);
            }
            if (least > 0) {
                out.remove(least);
            }
        }
        return out;
    }

    private static int leastRise(List<Level> levels) {
        int least = 0;
        for (int i = 1; i + 1 < levels.size(); i++) {
            if (rise(levels, i) < rise(levels, least)) {
                least = i;
            }
        }
        return least;
    }

    private static double rise(List<Level> levels, int i) {
        return Math.abs(levels.get(i + 1).diameterMm() - levels.get(i).diameterMm());
    }

    private List<Level> extremes() {
        List<Level> levels = levels();
        List<Level> out = new ArrayList<>();
        for (int i = 0; i < levels.size(); i++) {
            boolean end = i == 0 || i + 1 == levels.size();
            double here = levels.get(i).diameterMm();
            if (end
                    || (here > levels.get(i - 1).diameterMm())
                            == (here > levels.get(i + 1).diameterMm())) {
                out.add(levels.get(i));
            }
        }
        return out;
    }

    private List<Level> levels() {
        List<Level> out = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= points.size(); i++) {
            if (i == points.size() || Math.abs(diameterMm(i) - diameterMm(first)) > SAME_MM) {
                out.add(new Level(first, i - 1, diameterMm(first)));
                first = i;
            }
        }
        return out;
    }

    /** Adds the ends of each step that are not the member's own; what is there already keeps its word. */
    private void steps(List<Turn> out) {
        int i = 0;
        while (i + 1 < points.size()) {
            int end = i;
            while (end + 1 < points.size() && steep(end) != 0 && steep(end) == steep(i)) {
                end++;
            }
            if (end > i && Math.abs(diameterMm(end) - diameterMm(i)) > withinMm) {
                step(out, i, end);
            }
            i = Math.max(end, i + 1);
        }
    }

    /** Where both ends would be one pencil line, the member's own boundary is it, else the foot, up to which the thick side is left. */
    private void step(List<Turn> out, int first, int last) {
        boolean rises = diameterMm(last) > diameterMm(first);
        boolean apart = xMm(last) - xMm(first) >= rules.line().mm();
        boolean inside = first > 0 && last + 1 < points.size();
        put(out, new Turn(xMm(first), rises ? "step foot" : "step head", apart || (inside && rises), true));
        put(out, new Turn(xMm(last), rises ? "step head" : "step foot", apart || (inside && !rises), false));
    }

    private static void put(List<Turn> out, Turn turn) {
        int at = 0;
        while (at < out.size() && out.get(at).xMm() < turn.xMm() - SAME_MM) {
            at++;
        }
        if (at < out.size() && Math.abs(out.get(at).xMm() - turn.xMm()) <= SAME_MM) {
            Turn there = out.get(at);
            out.set(
                    at,
                    new Turn(
                            there.xMm(),
                            there.word(),
                            there.marked() || turn.marked(),
                            there.stepFollows() || turn.stepFollows()));
        } else {
            out.add(at, turn);
        }
    }

    /** 1 or -1 where the curve goes steeply up or down from that point to the next, else 0. */
    private int steep(int i) {
        double rise = (diameterMm(i + 1) - diameterMm(i)) / 2;
        return Math.abs(rise) > rules.stepSlope() * (xMm(i + 1) - xMm(i)) ? (int) Math.signum(rise) : 0;
    }

    private double xMm(int i) {
        return points.get(i).place().mm();
    }

    private double diameterMm(int i) {
        return points.get(i).diameter().mm();
    }
}
