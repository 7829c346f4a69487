package turnalike.photo;

import java.util.Arrays;

/**
 * The light across a piece from the one edge to the other, its mean along a stretch so that grain and noise hardly count, as parts of its own
 * mean. The share h of the half width runs from −{@value #EDGE} to {@value #EDGE}: nearer to an edge the ground's light is mixed in.
 */
final class AcrossLight {
    /** How many places across. */
    static final int ACROSS = 61;

    private static final double EDGE = 0.92;

    private static final int ALONG = 80;

    private final double[] light;

    private AcrossLight(double[] light) {
        this.light = light;
    }

    /** The share of the half width at a place across. */
    static double share(int at) {
        return -EDGE + 2 * EDGE * at / (ACROSS - 1);
    }

    /** Where light is read from. */
    interface Source {
        /** Linear light at a step along, so far across, as a share of the half width there. */
        double at(int k, double share);
    }

    /** Between two steps of the piece. */
    static AcrossLight between(Source source, int from, int to) {
        int[] steps = new int[Math.min(ALONG, to - from + 1)];
        for (int t = 0; t < steps.length; t++) {
            steps[t] = from + (int) ((t + 0.5) / steps.length * (to - from));
        }
        return at(source, steps);
    }

    /** At some steps, each as bright as the others. */
    static AcrossLight at(Source source, int[] steps) {
        double[] sum = new double[ACROSS];
        double[] here = new double[ACROSS];
        for (int k : steps) {
            double mean = 0;
            for (int h = 0; h < ACROSS; h++) {
                here[h] = source.at(k, share(h));
                mean += here[h] / ACROSS;
            }
            for (int h = 0; h < ACROSS; h++) {
                sum[h] += here[h] / Math.max(1e-4, mean) / steps.length;
            }
        }
        return new AcrossLight(sum);
    }

    /** A straight run of light over some places across, in parts of the mean. */
    record Run(double level, double slope, double misfit) {
        double at(double share) {
            return level + slope * share;
        }
    }

    /**
     * The straight run that fits best.
     *
     * @param from its first place across
     * @param to the one after its last
     */
    Run run(int from, int to) {
        double[][] rows = new double[2][3];
        for (int h = from; h < to; h++) {
            double share = share(h);
            rows[0][0] += 1;
            rows[0][1] += share;
            rows[1][1] += share * share;
            rows[0][2] += light[h];
            rows[1][2] += share * light[h];
        }
        rows[1][0] = rows[0][1];
        double[] line = LeastSquares.solve(rows);
        double squares = 0;
        for (int h = from; h < to; h++) {
            double off = light[h] - line[0] - line[1] * share(h);
            squares += off * off;
        }
        return new Run(line[0], line[1], Math.sqrt(squares / Math.max(1, to - from)));
    }

    /** Of a round body: what remains when the light is explained by a level, h and the root of 1 − h². */
    double roundMisfit() {
        double[][] rows = new double[3][4];
        for (int h = 0; h < ACROSS; h++) {
            double[] basis = {1, share(h), Math.sqrt(1 - share(h) * share(h))};
            for (int a = 0; a < 3; a++) {
                for (int b = 0; b < 3; b++) {
                    rows[a][b] += basis[a] * basis[b];
                }
                rows[a][3] += basis[a] * light[h];
            }
        }
        double[] unknown = LeastSquares.solve(rows);
        double squares = 0;
        for (int h = 0; h < ACROSS; h++) {
            double off =
                    light[h] - unknown[0] - unknown[1] * share(h) - unknown[2] * Math.sqrt(1 - share(h) * share(h));
            squares += off * off;
        }
        return Math.sqrt(squares / ACROSS);
    }

    /** How differently another stretch is lit, root mean square. */
    double unlike(AcrossLight other) {
        double squares = 0;
        for (int h = 0; h < ACROSS; h++) {
            squares += (light[h] - other.light[h]) * (light[h] - other.light[h]);
        }
        return Math.sqrt(squares / ACROSS);
    }

    /** Two flats with an arris between them. */
    record Arris(int at, Run left, Run right, double misfit) {
        double share() {
            return AcrossLight.share(at);
        }

        /** How much the light leaps there. */
        double leap() {
            return Math.abs(left.at(share()) - right.at(share()));
        }

        /** The most that the light changes across one of the flats. */
        double unevenness() {
            return Math.max(Math.abs(left.slope()) * (share() + EDGE), Math.abs(right.slope()) * (EDGE - share()));
        }
    }

    /** Where two straight runs explain the light best; the places right beside the arris, which the lens mixes, are left out. */
    Arris arris() {
        int least = 6;
        Arris best = new Arris(0, new Run(0, 0, 0), new Run(0, 0, 0), Double.POSITIVE_INFINITY);
        for (int at = least; at < ACROSS - least; at++) {
            Run left = run(0, at - 1);
            Run right = run(at + 2, ACROSS);
            int count = ACROSS - 3;
            double misfit = Math.sqrt(
                    (left.misfit() * left.misfit() * (at - 1) + right.misfit() * right.misfit() * (ACROSS - at - 2))
                            / count);
            if (misfit < best.misfit()) {
                best = new Arris(at, left, right, misfit);
            }
        }
        return best;
    }

    @Override
    public String toString() {
        return Arrays.toString(light);
    }
}
