package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;

/**
 * Which stretches of a run are better told as a curve through points: one form that explains its stations badly, or several that run into
 * one another without a step and together cost more than a curve over all of them. Of all ways to choose such windows the cheapest is taken,
 * by dynamic programming.
 */
final class CurveWindows {
    private static final int WIDEST = 9;
    /** A form whose stations miss it by more than this many times what they are known to, in the mean square, is asked about. */
    private static final double BADLY = 1.8;

    private static final double SHORTEST_MM = 10;
    private static final double RARITY = 3;
    /** A corner of some ten degrees can be seen (a choice of ours). */
    private static final double SEEN_CORNER = 0.18;

    private static final double BESIDE = 0.1;
    private static final double UNSEEN_SIZES = 3;

    private final Data data;
    private final JointFit fit;
    private final double perSize;

    private CurveWindows(Data data, JointFit fit, double perSize) {
        this.data = data;
        this.fit = fit;
        this.perSize = perSize;
    }

    static List<Part> of(Data data, JointFit fit, double perSize) {
        return new CurveWindows(data, fit, perSize).cheapest();
    }

    private List<Part> cheapest() {
        int n = fit.run().size();
        double[] cost = new double[n + 1];
        List<List<Part>> best = new ArrayList<>();
        best.add(List.of());
        for (int to = 1; to <= n; to++) {
            cost[to] = cost[to - 1] + smooth(to - 1) + costOf(to - 1, to);
            List<Part> parts = new ArrayList<>(best.get(to - 1));
            parts.add(part(to - 1));
            for (int from = to - 1; from >= 0 && to - from <= WIDEST && mayJoin(from, to); from--) {
                double before = cost[from] + smooth(from);
                if (isWorthTrying(from, to) && before + leastCurve() < cost[to]) {
                    CurveFit.Found found = curve(from, to);
                    if (before + found.cost() + RARITY < cost[to]) {
                        cost[to] = before + found.cost() + RARITY;
                        parts = new ArrayList<>(best.get(from));
                        parts.add(Part.curve(joined(found.points(), from, to)));
                    }
                }
            }
            best.add(parts);
        }
        return together(best.get(n));
    }

    /** Two curves side by side that share their joint are one, unless that costs more than the joint's corner is worth. */
    private List<Part> together(List<Part> parts) {
        List<Part> out = new ArrayList<>();
        for (Part part : parts) {
            if (out.isEmpty() || !isLedOn(out.get(out.size() - 1), part)) {
                out.add(part);
                continue;
            }
            Part last = out.get(out.size() - 1);
            List<double[]> points = new ArrayList<>(last.points());
            points.addAll(part.points().subList(1, part.points().size()));
            int first = data.firstFrom(last.fromMm());
            int end = data.firstFrom(part.toMm() + 1e-9) - 1;
            CurveFit.Found one = CurveFit.of(data, first, end, points, perSize);
            double two = alone(last) + alone(part) + smoothWorth();
            if (one.cost() < two) {
                out.set(out.size() - 1, Part.curve(one.points()));
            } else {
                out.add(part);
            }
        }
        return out;
    }

    private static boolean isLedOn(Part last, Part next) {
        return last.isCurve() && next.isCurve() && last.endRadius() == next.startRadius();
    }

    private double smoothWorth() {
        return UNSEEN_SIZES * perSize;
    }

    private double alone(Part curve) {
        int first = data.firstFrom(curve.fromMm());
        int end = data.firstFrom(curve.toMm() + 1e-9) - 1;
        return CurveFit.cost(data, first, end, curve.points(), perSize);
    }

    /**
     * What it costs that a joint between two members cannot be seen: where both run on into one another with neither a step nor a corner, one
     * curve is the likelier tale. A level stretch beside a form that ends level is another matter: its joint is meant to be smooth.
     */
    private double smooth(int joint) {
        if (joint == 0) {
            return 0;
        }
        Form before = fit.run().forms().get(joint - 1);
        Form after = fit.run().forms().get(joint);
        // Whoever set a row there, where others mark their shoulders, saw a joint.
        boolean marked = data.shouldersTwice && fit.run().seams().get(joint).isShared();
        boolean unseen = fit.isTied(joint)
                && !marked
                && before != Form.LEVEL
                && after != Form.LEVEL
                && Math.abs(slope(joint - 1, true) - slope(joint, false)) < SEEN_CORNER;
        return unseen ? smoothWorth() : 0;
    }

    /** Of a form over the tenth of it next to a joint, or over as much less as a picture smears there: an arc may stand upright at its end. */
    private double slope(int form, boolean atEnd) {
        double length = fit.run().seams().get(form + 1).placeMm()
                - fit.run().seams().get(form).placeMm();
        double soft = data.together.softMm;
        double part = soft > 0 ? Math.min(BESIDE, soft / length) : BESIDE;
        double from = atEnd ? 1 - part : 0;
        return (fit.radius(form, from + part) - fit.radius(form, from)) / (part * length);
    }

    private double leastCurve() {
        return 5 * perSize + RARITY;
    }

    private boolean mayJoin(int from, int to) {
        return from == to - 1 || fit.isTied(from + 1);
    }

    private boolean isWorthTrying(int from, int to) {
        double length = fit.run().seams().get(to).placeMm()
                - fit.run().seams().get(from).placeMm();
        if (length < SHORTEST_MM || last(to) - first(from) < 6) {
            return false;
        }
        int stations = last(to) - first(from) + 1;
        return to - from > 1 || fit.chiOf(from) > BADLY * stations;
    }

    private int first(int form) {
        return fit.run().seams().get(form).first();
    }

    private int last(int afterForm) {
        return fit.run().seams().get(afterForm).last();
    }

    /** The window's part of the whole's cost. */
    private double costOf(int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            Form form = fit.run().forms().get(i);
            boolean shared = i > from && fit.isTied(i);
            sum += i > from ? smooth(i) : 0;
            sum += fit.chiOf(i) + perSize * (form.sizes() + 1 - (shared ? 1 : 0)) + fit.rarity(i);
        }
        return sum;
    }

    private CurveFit.Found curve(int from, int to) {
        List<double[]> start = new ArrayList<>();
        for (int i = from; i < to; i++) {
            double place = fit.run().seams().get(i).placeMm();
            double length = fit.run().seams().get(i + 1).placeMm() - place;
            int steps = (int) Math.max(2, Math.min(6, length / 6));
            for (int k = 0; k < steps; k++) {
                start.add(new double[] {place + length * k / steps, fit.radius(i, (double) k / steps)});
            }
        }
        start.add(new double[] {fit.run().seams().get(to).placeMm(), fit.endRadius(to - 1)});
        return CurveFit.of(data, first(from), last(to), start, perSize);
    }

    /** A radius that was shared with the neighbour stays so. */
    private List<double[]> joined(List<double[]> points, int from, int to) {
        List<double[]> out = new ArrayList<>(points);
        if (from > 0 && fit.isTied(from)) {
            out.set(0, new double[] {points.get(0)[0], fit.startRadius(from)});
        }
        if (to < fit.run().size() && fit.isTied(to)) {
            out.set(points.size() - 1, new double[] {points.get(points.size() - 1)[0], fit.endRadius(to - 1)});
        }
        return out;
    }

    private Part part(int i) {
        Form form = fit.run().forms().get(i);
        List<Double> sizes = new ArrayList<>();
        for (int k = 0; k < form.sizes(); k++) {
            sizes.add(fit.size(i, k));
        }
        return Part.of(
                form,
                fit.run().seams().get(i).placeMm(),
                fit.run().seams().get(i + 1).placeMm(),
                sizes);
    }
}
