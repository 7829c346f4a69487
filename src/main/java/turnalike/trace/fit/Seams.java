package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Where a run of stations may be seam. Of few stations, at each and between each two. Of many, where the outline steps, has a corner, an
 * extreme or another bend (two straight lines, one on either side, explain what lies around much better than one), at their neighbours, and
 * on a grid besides.
 */
final class Seams {
    /** With so many stations, all places are looked at. */
    private static final int FEW = 130;

    private static final int MOST = 300;
    private static final int GRID = 110;
    private static final int[] WINDOWS = {4, 10};
    private static final double TELLING = 0.5;

    private Seams() {}

    /**
     * The seams of a block of stations, both its ends included, in order.
     *
     * @param from the block's first station
     * @param to its last, beyond {@code from}
     */
    static List<Seam> of(Data data, int from, int to, double startMm, double endMm) {
        List<Seam> out = new ArrayList<>();
        out.add(new Seam(startMm, from - 1, from));
        if (to - from + 1 <= FEW) {
            few(data, from, to, out);
        } else {
            for (int k : many(data, from, to)) {
                if (!data.swept && k > from) {
                    out.add(new Seam(data.x[k], k, k));
                }
                between(data, k, out);
            }
        }
        out.add(new Seam(endMm, to, to + 1));
        return out;
    }

    /** A seam somewhere between a station and the next. */
    static Seam between(Data data, int k) {
        return new Seam(data.gaps.likeliest(k, false), k, k + 1);
    }

    /** Where something is hidden there, behind its edge or farther behind what rounds over. */
    private static void between(Data data, int k, List<Seam> out) {
        Seam edge = between(data, k);
        Seam round = new Seam(data.gaps.likeliest(k, true), k, k + 1);
        out.add(edge.placeMm() <= round.placeMm() ? edge : round);
        if (data.gaps.isAfter(k)) {
            out.add(edge.placeMm() <= round.placeMm() ? round : edge);
        }
    }

    private static void few(Data data, int from, int to, List<Seam> out) {
        for (int k = from; k < to; k++) {
            boolean inside = k > from && data.x[k] > data.x[k - 1] && data.x[k + 1] > data.x[k];
            if (inside) {
                // A shoulder just before the station, a joint on it, a shoulder just after it.
                out.add(new Seam(data.x[k], k - 1, k));
                out.add(new Seam(data.x[k], k, k));
                out.add(new Seam(data.x[k], k, k + 1));
            }
            between(data, k, out);
        }
    }

    private static NavigableSet<Integer> many(Data data, int from, int to) {
        double[] tells = new double[to + 1];
        for (int window : WINDOWS) {
            double[] each = new double[to + 1];
            for (int k = from; k < to; k++) {
                each[k] = telling(data, from, to, k, window);
            }
            for (int k = from; k < to; k++) {
                boolean peak = (k == from || each[k] >= each[k - 1]) && (k + 1 == to || each[k] >= each[k + 1]);
                tells[k] = Math.max(tells[k], peak ? each[k] : each[k] / 50);
            }
        }
        TreeSet<Integer> out = new TreeSet<>();

        int step = Math.max(1, (to - from) / GRID);
        for (int k = from + step / 2; k < to; k += step) {
            out.add(k);
        }
        for (int k = from; k < to; k++) {
            // Two stations at one place say themselves that something begins there.
            if (data.x[k] == data.x[k + 1]) {
                out.add(k);
            }
        }
        Integer[] order = IntStream.range(from, to).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble(k -> -tells[k]));
        for (int k : order) {
            if (tells[k] < TELLING || out.size() >= MOST) {
                break;
            }
            out.add(k);
        }
        return out;
    }

    /** By how much two lines explain the stations around better than one, in squared standard deviations. */
    private static double telling(Data data, int from, int to, int k, int window) {
        int first = Math.max(from, k - window + 1);
        int last = Math.min(to, k + window);
        if (k - first < 1 || last - k < 2) {
            return 0;
        }
        return line(data, first, last) - line(data, first, k) - line(data, k + 1, last);
    }

    private static double line(Data data, int first, int last) {
        double w = 0;
        double wx = 0;
        double wr = 0;
        double x0 = data.x[first];
        double r0 = data.r[first];
        double wxx = 0;
        double wxr = 0;
        double wrr = 0;
        for (int i = first; i <= last; i++) {
            double x = data.x[i] - x0;
            double r = data.r[i] - r0;
            double each = data.weight[i];
            w += each;
            wx += each * x;
            wr += each * r;
            wxx += each * x * x;
            wxr += each * x * r;
            wrr += each * r * r;
        }
        double sxx = wxx - wx * wx / w;
        double sxr = wxr - wx * wr / w;
        double srr = wrr - wr * wr / w;
        return Math.max(0, srr - (sxx > 1e-12 ? sxr * sxr / sxx : 0));
    }
}
