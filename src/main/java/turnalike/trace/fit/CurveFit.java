package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;
import turnalike.outline.MonotoneCubic;
import turnalike.outline.Polynomial;
import turnalike.units.Length;

/**
 * The curve through fewest points that explains the stations between two joints. It begins with a point at every joint, extreme and middle
 * of the forms found before and leaves out whichever point costs least to lose as long as the whole gets cheaper; the radii are bettered by
 * Gauss and Newton's method, the places by trying. Good, not proven best: the curve's slopes make it a hard problem, and its cost is
 * compared with that of the forms as it stands.
 */
final class CurveFit {
    private static final double NUDGE_MM = 0.01;
    private static final double[] MOVES_MM = {-2, -1, -0.5, 0.5, 1, 2};
    private static final double CLOSEST_MM = 1.5;
    private static final int MOST_POINTS = 24;
    private static final double LEAST_RADIUS_MM = 0.05;
    /** Between stations further apart than this the curve is held to what was measured at both. */
    private static final double FAR_MM = 1.5;
    /** By so many standard deviations of a radius it may still leave that range. */
    private static final double SIGMAS = 3;

    private final Data data;
    private final int first;
    private final int last;
    private final double perSize;

    private CurveFit(Data data, int first, int last, double perSize) {
        this.data = data;
        this.first = first;
        this.last = last;
        this.perSize = perSize;
    }

    /** Points of place and radius, and what they cost. */
    record Found(List<double[]> points, double chi, double cost) {
        Found {
            points = List.copyOf(points);
        }
    }

    /**
     * Fits a curve.
     *
     * @param start points to begin with, the first and the last of which stay where they are along the piece
     */
    static Found of(Data data, int first, int last, List<double[]> start, double perSize) {
        CurveFit fit = new CurveFit(data, first, last, perSize);
        Found at = fit.bettered(fit.found(spaced(start)));
        at = fit.thinned(at);
        at = fit.moved(at);
        at = fit.thinned(at);
        return fit.moved(at);
    }

    /** What given points cost. */
    static double cost(Data data, int first, int last, List<double[]> points, double perSize) {
        return new CurveFit(data, first, last, perSize).found(points).cost();
    }

    private static List<double[]> spaced(List<double[]> start) {
        List<double[]> out = new ArrayList<>();
        double end = start.get(start.size() - 1)[0];
        double apart = Math.max(CLOSEST_MM, (end - start.get(0)[0]) / MOST_POINTS);
        for (int i = 0; i + 1 < start.size(); i++) {
            double[] each = start.get(i);
            boolean beyond = out.isEmpty() || each[0] - out.get(out.size() - 1)[0] >= apart;
            if (beyond && (out.isEmpty() || end - each[0] >= apart)) {
                out.add(each);
            }
        }
        out.add(start.get(start.size() - 1));
        return out;
    }

    private Found found(List<double[]> points) {
        List<double[]> measured = points.stream().map(this::measured).toList();
        double chi = chi(measured);
        return new Found(measured, chi, chi + perSize * (2 * measured.size() - 1));
    }

    /**
     * The point with its radius brought into the range of the two stations it stands between, where these are far apart: whoever measures a
     * piece by hand measures where it is thickest and thinnest, and a neck or a belly that nobody measured is none.
     */
    private double[] measured(double[] point) {
        int after = Math.min(last, Math.max(first, data.firstFrom(point[0])));
        int before = data.x[after] > point[0] ? Math.max(first, after - 1) : after;
        double radius = Math.max(LEAST_RADIUS_MM, point[1]);
        if (data.x[after] - data.x[before] > FAR_MM) {
            double low = Math.min(data.r[before], data.r[after]) - SIGMAS * data.sigma;
            double high = Math.max(data.r[before], data.r[after]) + SIGMAS * data.sigma;
            radius = Math.max(LEAST_RADIUS_MM, Math.min(high, Math.max(low, radius)));
        }
        return new double[] {point[0], radius};
    }

    private double chi(List<double[]> points) {
        return data.chi(first, misses(radii(points)), points.get(0)[0], points.get(points.size() - 1)[0]);
    }

    private double[] misses(double[] radii) {
        double[] out = new double[radii.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = data.r[first + i] - radii[i];
        }
        return out;
    }

    private double[] radii(List<double[]> points) {
        List<MonotoneCubic.Point> through = new ArrayList<>();
        double start = points.get(0)[0];
        for (double[] each : points) {
            through.add(new MonotoneCubic.Point(
                    Length.ofMm(each[0] - start), Length.ofMm(Math.max(LEAST_RADIUS_MM, each[1]))));
        }
        List<Polynomial> pieces = MonotoneCubic.through(through);
        double[] out = new double[last - first + 1];
        int piece = 0;
        for (int i = first; i <= last; i++) {
            while (piece + 1 < pieces.size() && data.x[i] > points.get(piece + 1)[0]) {
                piece++;
            }
            out[i - first] = pieces.get(piece).radiusMm(data.x[i] - points.get(piece)[0]);
        }
        return out;
    }

    /** Two steps of Gauss and Newton's method on the radii, each kept when it helps. */
    private Found bettered(Found start) {
        Found at = start;
        for (int step = 0; step < 2; step++) {
            Found next = stepped(at);
            if (next.chi() >= at.chi()) {
                return at;
            }
            at = next;
        }
        return at;
    }

    private Found stepped(Found at) {
        int n = at.points().size();
        double[] here = radii(at.points());
        double[][] slopes = new double[n][];
        double from = at.points().get(0)[0];
        double to = at.points().get(n - 1)[0];
        for (int k = 0; k < n; k++) {
            double[] moved = radii(with(at.points(), k, 0, NUDGE_MM));
            for (int i = 0; i < moved.length; i++) {
                moved[i] = (moved[i] - here[i]) / NUDGE_MM;
            }
            slopes[k] = data.apart(first, moved, from, to);
        }
        double[] misses = data.apart(first, misses(here), from, to);
        double[][] m = new double[n][n];
        double[] right = new double[n];
        for (int i = 0; i < here.length; i++) {
            for (int a = 0; a < n; a++) {
                double da = slopes[a][i];
                if (da != 0) {
                    right[a] += da * misses[i];
                    for (int b = 0; b < n; b++) {
                        m[a][b] += da * slopes[b][i];
                    }
                }
            }
        }
        for (int a = 0; a < n; a++) {
            m[a][a] += 1e-6 * m[a][a] + 1e-9;
        }
        double[] change = Cholesky.solve(m, right, 1e-12);
        List<double[]> points = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            double[] each = at.points().get(k);
            double by = change.length == 0 ? 0 : change[k];
            points.add(new double[] {each[0], each[1] + by});
        }
        return found(points);
    }

    private static List<double[]> with(List<double[]> points, int k, double alongMm, double acrossMm) {
        List<double[]> out = new ArrayList<>(points);
        double[] each = points.get(k);
        out.set(k, new double[] {each[0] + alongMm, each[1] + acrossMm});
        return out;
    }

    private Found thinned(Found start) {
        Found at = start;
        while (at.points().size() > 2) {
            Found best = at;
            for (int k = 1; k + 1 < at.points().size(); k++) {
                List<double[]> fewer = new ArrayList<>(at.points());
                fewer.remove(k);
                Found other = stepped(found(fewer));
                best = other.cost() < best.cost() ? other : best;
            }
            if (best.points().size() == at.points().size()) {
                return at;
            }
            at = bettered(best);
        }
        return at;
    }

    private Found moved(Found start) {
        Found at = start;
        for (int sweep = 0; sweep < 2; sweep++) {
            for (int k = 1; k + 1 < at.points().size(); k++) {
                for (double by : MOVES_MM) {
                    double to = at.points().get(k)[0] + by;
                    boolean room = to - at.points().get(k - 1)[0] >= CLOSEST_MM
                            && at.points().get(k + 1)[0] - to >= CLOSEST_MM;
                    if (room) {
                        Found other = stepped(found(with(at.points(), k, by, 0)));
                        at = other.chi() < at.chi() - 1e-6 ? other : at;
                    }
                }
            }
        }
        return bettered(at);
    }
}
