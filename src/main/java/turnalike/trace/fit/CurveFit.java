package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.Arrays;
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
    /** A point moves so many pieces to either side of it. */
    private static final int REACH = 2;

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
        int[] starts = starts(points);
        double[] out = new double[last - first + 1];
        fill(out, points, starts, pieces(points, points.get(0)[0]), 0);
        return out;
    }

    /** The first station of each piece, counted from the first of all, and one beyond the last. */
    private int[] starts(List<double[]> points) {
        int[] out = new int[points.size()];
        int piece = 0;
        for (int i = first; i <= last; i++) {
            while (piece + 2 < points.size() && data.x[i] > points.get(piece + 1)[0]) {
                out[++piece] = i - first;
            }
        }
        Arrays.fill(out, piece + 1, out.length, last - first + 1);
        return out;
    }

    private static List<Polynomial> pieces(List<double[]> points, double startMm) {
        List<MonotoneCubic.Point> through = new ArrayList<>();
        for (double[] each : points) {
            through.add(new MonotoneCubic.Point(
                    Length.ofMm(each[0] - startMm), Length.ofMm(Math.max(LEAST_RADIUS_MM, each[1]))));
        }
        return MonotoneCubic.through(through);
    }

    /** Puts in the radii that some pieces give, the first of which is the piece {@code from} of the whole curve. */
    private void fill(double[] out, List<double[]> points, int[] starts, List<Polynomial> pieces, int from) {
        for (int k = 0; k < pieces.size(); k++) {
            int piece = from + k;
            for (int i = starts[piece]; i < starts[piece + 1]; i++) {
                out[i] = pieces.get(k).radiusMm(data.x[first + i] - points.get(piece)[0]);
            }
        }
    }

    /**
     * By how much every station's radius follows a point's: dr/dρₖ. A point moves the slopes at its neighbours and so the two pieces to either
     * side of it, no others; of the curve only these are made anew, with the one point more to either side that their slopes rest on.
     */
    private double[] following(List<double[]> points, int[] starts, int k, double[] here) {
        int from = Math.max(0, k - REACH);
        int to = Math.min(points.size() - 1, k + REACH);
        int low = Math.max(0, from - 1);
        List<double[]> some = new ArrayList<>(points.subList(low, Math.min(points.size(), to + 2)));
        double[] moved = {points.get(k)[0], points.get(k)[1] + NUDGE_MM};
        some.set(k - low, moved);
        List<Polynomial> pieces = pieces(some, points.get(0)[0]).subList(from - low, to - low);
        double[] out = here.clone();
        fill(out, points, starts, pieces, from);
        for (int i = 0; i < out.length; i++) {
            out[i] = (out[i] - here[i]) / NUDGE_MM;
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
        int[] starts = starts(at.points());
        double from = at.points().get(0)[0];
        double to = at.points().get(n - 1)[0];
        for (int k = 0; k < n; k++) {
            slopes[k] = data.apart(first, following(at.points(), starts, k, here), from, to);
        }
        double[] misses = data.apart(first, misses(here), from, to);
        double[][] m = new double[n][n];
        double[] right = new double[n];
        for (int i = 0; i < here.length; i++) {
            for (int a = 0; a < n; a++) {
                double da = slopes[a][i];
                if (da != 0) {
                    right[a] += da * misses[i];
                    // Points so far apart move no station together.
                    for (int b = Math.max(0, a - 2 * REACH); b <= Math.min(n - 1, a + 2 * REACH); b++) {
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
