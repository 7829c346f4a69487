package turnalike.trace.against;

import java.util.Arrays;
import java.util.List;

/**
 * The bend that lays the pattern onto what was seen, by least squares: each station pulls along the direction in which its nearest point of
 * the outline faces (so a station at a shoulder's wall tells of its place, one on a level side of its thickness), weighed by how sure it is
 * in that direction; beyond three standard deviations its pull grows no more (Huber's weights; from memory). A figure that no station tells
 * of stays with its neighbours, as unsure as a {@link Belief} says.
 */
final class BendFit {
    /** A picture's light and lens move its edges alike over some way along the piece: a choice of ours. */
    private static final double TOGETHER_MM = 5;

    private static final int TURNS = 20;
    private static final double HUBER = 3;
    /** Stations further off than this belong to nothing of the pattern. */
    private static final double FARTHEST_MM = 4;

    /** Less gained than this share is none. */
    private static final double ENOUGH = 1e-9;

    private static final double LEAST_STEP = 1e-3;

    private final Bend bend;
    private final BentLine line;
    private final Seen seen;
    private final boolean squaresTell;
    private final double share;
    private final List<Belief> beliefs;
    final double[] figures;
    private double[][] matrix = new double[0][0];
    private double[][] covariance = new double[0][0];

    /**
     * @param rough shifts of the edges between members, to begin with
     * @param manner how what was seen is to be taken
     */
    BendFit(Bend bend, Seen seen, double[] rough, Against.Manner manner) {
        this.bend = bend;
        this.line = new BentLine(bend);
        this.seen = seen;
        this.squaresTell = manner.squaresTell();
        this.share = seen.share(manner.together() ? TOGETHER_MM : 0);
        this.beliefs = Belief.of(bend, rough[0], rough[rough.length - 1]);
        this.figures = start(bend, rough);
    }

    private static double[] start(Bend bend, double[] rough) {
        double[] out = bend.none();
        for (int i = 0; i < bend.stretches().size(); i++) {
            Bend.Stretch stretch = bend.stretches().get(i);
            double from = bend.spotMm()[stretch.firstSpot()];
            double to = bend.spotMm()[stretch.lastSpot()];
            for (int k = stretch.firstSpot(); k <= stretch.lastSpot(); k++) {
                double share = (bend.spotMm()[k] - from) / (to - from);
                out[k] = rough[i] + share * (rough[i + 1] - rough[i]);
            }
        }
        return out;
    }

    BendFit fit() {
        double[] right = new double[bend.figures()];
        double cost = cost(figures);
        for (int turn = 0; turn < TURNS; turn++) {
            line.bend(figures);
            normal(right);
            double[] step = bounded(solve(right));
            double part = 1;
            double[] next = moved(step, part);
            double then = cost(next);
            // At a corner the nearest point jumps from one side to the other: a whole step may lead past the best.
            while (then >= cost && part > LEAST_STEP) {
                part /= 2;
                next = moved(step, part);
                then = cost(next);
            }
            if (!(then < cost - ENOUGH * cost)) {
                break;
            }
            cost = then;
            System.arraycopy(next, 0, figures, 0, figures.length);
        }
        line.bend(figures);
        normal(right);
        covariance = inverse();
        return this;
    }

    private static double[] bounded(double[] step) {
        double[] out = new double[step.length];
        for (int k = 0; k < step.length; k++) {
            out[k] = Math.max(-1, Math.min(1, step[k]));
        }
        return out;
    }

    private double[] moved(double[] step, double part) {
        double[] out = figures.clone();
        for (int k = 0; k < out.length; k++) {
            out[k] += part * step[k];
        }
        return out;
    }

    /** What is to be least: half the squares of what is off in standard deviations, far ones counted by their distance. */
    private double cost(double[] tried) {
        line.bend(tried);
        double sum = 0;
        for (int i = 0; i < seen.size(); i++) {
            BentLine.Nearest nearest = line.nearest(seen.x()[i], seen.r()[i]);
            if (tells(nearest)) {
                double far = Math.min(FARTHEST_MM, Math.abs(nearest.off())) / sigma(i, nearest);
                sum += share * (far > HUBER ? HUBER * far - HUBER * HUBER / 2 : far * far / 2);
            }
        }
        for (Belief each : beliefs) {
            double off = each.off(tried) / each.sigma();
            sum += off * off / 2;
        }
        return sum;
    }

    private boolean tells(BentLine.Nearest nearest) {
        return !line.isChamfer(nearest) && (squaresTell || !line.isSquare(nearest));
    }

    private double sigma(int i, BentLine.Nearest nearest) {
        return Math.hypot(nearest.along() * seen.alongSigma()[i], nearest.across() * seen.acrossSigma()[i]);
    }

    private void normal(double[] right) {
        int n = bend.figures();
        matrix = new double[n][n];
        Arrays.fill(right, 0);
        double[] row = new double[n];
        for (int i = 0; i < seen.size(); i++) {
            BentLine.Nearest nearest = line.nearest(seen.x()[i], seen.r()[i]);
            double weight = weight(i, nearest);
            if (weight > 0) {
                Arrays.fill(row, 0);
                line.slopes(nearest, row);
                add(row, weight, nearest.off(), right);
            }
        }
        prior(right);
    }

    /** Of a station: one over the variance of its offset, less where it lies far off, nothing where it tells nothing. */
    private double weight(int i, BentLine.Nearest nearest) {
        if (Math.abs(nearest.off()) > FARTHEST_MM || !tells(nearest)) {
            return 0;
        }
        double sigma = sigma(i, nearest);
        double far = Math.abs(nearest.off()) / sigma;
        return share * (far > HUBER ? HUBER / far : 1) / (sigma * sigma);
    }

    private void add(double[] row, double weight, double off, double[] right) {
        int[] used = new int[row.length];
        int count = 0;
        for (int k = 0; k < row.length; k++) {
            if (row[k] != 0) {
                used[count++] = k;
            }
        }
        for (int a = 0; a < count; a++) {
            int i = used[a];
            right[i] += weight * row[i] * off;
            for (int b = 0; b < count; b++) {
                matrix[i][used[b]] += weight * row[i] * row[used[b]];
            }
        }
    }

    private void prior(double[] right) {
        for (Belief each : beliefs) {
            double weight = 1 / (each.sigma() * each.sigma());
            double off = each.off(figures);
            for (int a = 0; a < each.of().length; a++) {
                right[each.of()[a]] -= weight * each.times()[a] * off;
                for (int b = 0; b < each.of().length; b++) {
                    matrix[each.of()[a]][each.of()[b]] += weight * each.times()[a] * each.times()[b];
                }
            }
        }
    }

    private double[] solve(double[] right) {
        double[][] inverse = inverse();
        double[] out = new double[right.length];
        for (int i = 0; i < out.length; i++) {
            for (int j = 0; j < out.length; j++) {
                out[i] += inverse[i][j] * right[j];
            }
        }
        return out;
    }

    /** The inverse of the normal matrix, by elimination; what is known beforehand makes it positive definite. */
    private double[][] inverse() {
        int n = matrix.length;
        double[][] a = new double[n][];
        double[][] out = new double[n][n];
        for (int i = 0; i < n; i++) {
            a[i] = matrix[i].clone();
            out[i][i] = 1;
        }
        for (int i = 0; i < n; i++) {
            double pivot = a[i][i];
            for (int k = 0; k < n; k++) {
                a[i][k] /= pivot;
                out[i][k] /= pivot;
            }
            for (int j = 0; j < n; j++) {
                double factor = a[j][i];
                if (j != i && factor != 0) {
                    for (int k = 0; k < n; k++) {
                        a[j][k] -= factor * a[i][k];
                        out[j][k] -= factor * out[i][k];
                    }
                }
            }
        }
        return out;
    }

    /** One standard deviation of a sum of figures, each so many times. */
    double sigma(double[] row) {
        double sum = 0;
        for (int i = 0; i < row.length; i++) {
            if (row[i] != 0) {
                for (int j = 0; j < row.length; j++) {
                    sum += row[i] * covariance[i][j] * row[j];
                }
            }
        }
        return Math.sqrt(Math.max(0, sum));
    }

    BentLine line() {
        return line;
    }

    /** {off, across, told}: how far a station lies off the bent outline in its own standard deviations, how far across in mm, and how much across. */
    double[] miss(int station) {
        BentLine.Nearest nearest = line.nearest(seen.x()[station], seen.r()[station]);
        double sigma = sigma(station, nearest);
        boolean told = weight(station, nearest) > 0;
        return new double[] {
            nearest.off() / sigma, nearest.off() * nearest.across(), told ? Math.abs(nearest.across()) : 0
        };
    }
}
