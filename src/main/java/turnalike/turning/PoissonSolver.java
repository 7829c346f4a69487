package turnalike.turning;

/**
 * Solves −y″ = q with y = 0 at both ends, q given at a mesh's stations: twice integrated, element by element. With q a load by length, y
 * is the bending moment of a piece pinned at both ends, by statics alone; with q = M/EI, y is its deflection. So a load becomes a
 * deflection in two such steps, without any system of equations that a thin neck could make ill-conditioned.
 */
final class PoissonSolver {
    private final BeamMesh mesh;
    private final double[] once;

    PoissonSolver(BeamMesh mesh) {
        this.mesh = mesh;
        this.once = new double[mesh.stationMm.length];
    }

    /** Writes y at the stations into {@code out}, which may be {@code q} itself. */
    void solve(double[] q, double[] out) {
        int n = GaussLegendre.COUNT;
        double slope = 0;
        double value = 0;
        for (int e = 0; e < mesh.elements(); e++) {
            double h = mesh.nodeMm[e + 1] - mesh.nodeMm[e];
            int at = e * n;
            double slopeAfter = slope;
            for (int i = 0; i < n; i++) {
                double sum = 0;
                for (int j = 0; j < n; j++) {
                    sum += GaussLegendre.upTo(i, j) * q[at + j];
                }
                once[at + i] = slope + h * sum;
                slopeAfter += h * GaussLegendre.whole(i) * q[at + i];
            }
            double valueAfter = value;
            for (int i = 0; i < n; i++) {
                double sum = 0;
                for (int j = 0; j < n; j++) {
                    sum += GaussLegendre.upTo(i, j) * once[at + j];
                }
                out[at + i] = value + h * sum;
                valueAfter += h * GaussLegendre.whole(i) * once[at + i];
            }
            slope = slopeAfter;
            value = valueAfter;
        }
        double tilt = value / mesh.lengthMm();
        for (int i = 0; i < out.length; i++) {
            out[i] = mesh.stationMm[i] * tilt - out[i];
        }
    }

    /** y at every element's end. */
    double[] atNodes(double[] q) {
        double[] out = new double[mesh.nodeMm.length];
        double slope = 0;
        double value = 0;
        for (int e = 0; e < mesh.elements(); e++) {
            double h = mesh.nodeMm[e + 1] - mesh.nodeMm[e];
            double whole = 0;
            double first = 0;
            for (int i = 0; i < GaussLegendre.COUNT; i++) {
                double part = h * GaussLegendre.whole(i) * q[e * GaussLegendre.COUNT + i];
                whole += part;
                first += part * h * (1 - GaussLegendre.at(i));
            }
            value += h * slope + first;
            slope += whole;
            out[e + 1] = value;
        }
        for (int i = 0; i < out.length; i++) {
            out[i] = mesh.nodeMm[i] * value / mesh.lengthMm() - out[i];
        }
        out[out.length - 1] = 0;
        return out;
    }
}
