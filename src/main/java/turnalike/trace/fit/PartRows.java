package turnalike.trace.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The rows of a table that lie on a part, and how well a form explains them between the part's ends. */
final class PartRows {
    /** A row farther from the part than so many standard deviations, or this far, is another's. */
    private static final double SIGMAS = 6;

    private static final double LEAST_MM = 0.3;
    static final double ALONG_MM = 1e-3;

    private final Data data;
    private final Part part;
    private final List<Integer> stations = new ArrayList<>();

    private PartRows(Data data, Part part) {
        this.data = data;
        this.part = part;
    }

    /** Of two rows at a shoulder the one on this side of it. */
    static PartRows of(Data data, Part part) {
        PartRows rows = new PartRows(data, part);
        int n = data.size();
        for (int i = 0; i < n; i++) {
            double x = data.x[i];
            boolean within = x > part.fromMm() - ALONG_MM && x < part.toMm() + ALONG_MM;
            boolean endsBefore = isAt(x, part.fromMm()) && i + 1 < n && isAt(data.x[i + 1], x);
            boolean beginsAfter = isAt(x, part.toMm()) && i > 0 && isAt(data.x[i - 1], x);
            boolean ofOther = !part.isCurve() && Math.abs(data.r[i] - rows.radius(i)) > farMm(data);
            if (within && !endsBefore && !beginsAfter && !ofOther) {
                rows.stations.add(i);
            }
        }
        return rows;
    }

    /** A row so far from a part is another's. */
    static double farMm(Data data) {
        return Math.max(LEAST_MM, SIGMAS * data.sigma);
    }

    static boolean isAt(double oneMm, double otherMm) {
        return Math.abs(oneMm - otherMm) < ALONG_MM;
    }

    int count() {
        return stations.size();
    }

    private double u(int station) {
        return Math.max(0, Math.min(1, (data.x[station] - part.fromMm()) / part.lengthMm()));
    }

    private double radius(int station) {
        return radius(part.form(), part.sizes(), u(station));
    }

    static double radius(Form form, List<Double> sizes, double u) {
        double[] weights = new double[3];
        form.weights(u, weights);
        double sum = 0;
        for (int k = 0; k < form.sizes(); k++) {
            sum += weights[k] * sizes.get(k);
        }
        return sum;
    }

    /** The sizes of a form that explain these rows best; none where they do not tell them. */
    List<Double> sizes(Form form) {
        int n = form.sizes();
        double[][] m = new double[n][n];
        double[] right = new double[n];
        double[] weights = new double[3];
        for (int i : stations) {
            form.weights(u(i), weights);
            for (int k = 0; k < n; k++) {
                right[k] += weights[k] * data.r[i];
                for (int l = 0; l < n; l++) {
                    m[k][l] += weights[k] * weights[l];
                }
            }
        }
        List<Double> out = new ArrayList<>();
        for (double each : Cholesky.solve(m, right, 1e-9)) {
            out.add(each);
        }
        return out;
    }

    /** The squared misses of a form's best sizes, in mm²; empty where the rows do not tell them. */
    OptionalDouble squares(Form form) {
        List<Double> sizes = sizes(form);
        if (sizes.isEmpty()) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        for (int i : stations) {
            double miss = data.r[i] - radius(form, sizes, u(i));
            sum += miss * miss;
        }
        return OptionalDouble.of(sum);
    }
}
