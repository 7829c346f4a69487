package turnalike.turning;

/**
 * A piece between centres as a slender beam (Euler and Bernoulli), pinned at both ends, on its true outline: what it does by itself and
 * under a force. Finite elements in their force form: the moment is exact by statics, the curvature M/EI is integrated at four Gauss
 * points in each element, the inertia likewise. For a piece pinned at both ends this needs no system of equations, so it stays accurate
 * beside the thinnest neck, where elements with cubic displacements lose digits; the tests hold it against those.
 *
 * <p>Lengths in mm, forces in N, stiffness in N/mm² (MPa), density in t/mm³, so that speeds come in radians a second.
 */
final class Beam {
    /** How far a figure settles; far finer than the elements are. */
    private static final double SETTLED = 1e-10;

    /** The same for a figure that is only looked at beside others. */
    private static final double ROUGHLY = 1e-6;

    private final BeamMesh mesh;
    private final PoissonSolver span;
    private final double moeMpa;
    private final double tonnesPerMm3;

    Beam(BeamMesh mesh, double moeMpa, double tonnesPerMm3) {
        this.mesh = mesh;
        this.span = new PoissonSolver(mesh);
        this.moeMpa = moeMpa;
        this.tonnesPerMm3 = tonnesPerMm3;
    }

    Beam halved() {
        return new Beam(mesh.halved(), moeMpa, tonnesPerMm3);
    }

    BeamMesh mesh() {
        return mesh;
    }

    /**
     * The first two natural speeds, and where the second mode's node stands.
     *
     * @param first radians a second
     * @param second radians a second
     * @param nodeMm from the start: the one place inside that stays at rest in the second mode
     */
    record Natural(double first, double second, double nodeMm) {}

    Natural natural() {
        SubspaceIteration modes = vibration(3).settle(2, SETTLED);
        return new Natural(Math.sqrt(1 / modes.value[0]), Math.sqrt(1 / modes.value[1]), nodeMm(modes.shape[1]));
    }

    /** The first natural speed alone, in radians a second; quicker. */
    double first() {
        return Math.sqrt(1 / vibration(1).settle(1, ROUGHLY).value[0]);
    }

    private SubspaceIteration vibration(int vectors) {
        double[] mass = weights();
        for (int i = 0; i < mass.length; i++) {
            mass[i] *= tonnesPerMm3 * mesh.areaMm2[i];
        }
        return new SubspaceIteration(mesh.stationMm, mass, this::swing, vectors);
    }

    /** Takes a shape to its deflection under its own inertia at one radian a second. */
    private void swing(double[] shape, double[] out) {
        span.solve(inertia(shape), out);
        bend(out);
        span.solve(out, out);
    }

    private double[] inertia(double[] shape) {
        double[] out = new double[shape.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = tonnesPerMm3 * mesh.areaMm2[i] * shape[i];
        }
        return out;
    }

    /** Moment to curvature, in place. */
    private void bend(double[] moment) {
        for (int i = 0; i < moment.length; i++) {
            moment[i] /= moeMpa * mesh.inertiaMm4[i];
        }
    }

    private double nodeMm(double[] secondShape) {
        double[] curvature = new double[secondShape.length];
        span.solve(inertia(secondShape), curvature);
        bend(curvature);
        double[] at = span.atNodes(curvature);
        int e = 1;
        while (e + 2 < at.length && at[e] * at[e + 1] > 0) {
            e++;
        }
        // Where the shape crosses zero it is all but straight, so a straight line between the element's ends is near
        // enough.
        double share = at[e] / (at[e] - at[e + 1]);
        return mesh.nodeMm[e] + share * (mesh.nodeMm[e + 1] - mesh.nodeMm[e]);
    }

    /**
     * The end force that bows the piece: M″ + P·M/EI = 0 with M = 0 at both ends, so 1/P is the largest eigenvalue of what takes a moment
     * to the deflection it causes (Vianello's method; Timoshenko, Theory of Elastic Stability; from memory).
     */
    double bucklingN() {
        double[] give = weights();
        for (int i = 0; i < give.length; i++) {
            give[i] /= moeMpa * mesh.inertiaMm4[i];
        }
        SubspaceIteration modes = new SubspaceIteration(
                mesh.stationMm,
                give,
                (moment, out) -> {
                    System.arraycopy(moment, 0, out, 0, out.length);
                    bend(out);
                    span.solve(out, out);
                },
                2);
        return 1 / modes.settle(1, SETTLED).value[0];
    }

    /** What each station's value counts in an integral over the piece. */
    private double[] weights() {
        double[] out = new double[mesh.stationMm.length];
        for (int i = 0; i < out.length; i++) {
            int e = i / GaussLegendre.COUNT;
            out[i] = GaussLegendre.whole(i % GaussLegendre.COUNT) * (mesh.nodeMm[e + 1] - mesh.nodeMm[e]);
        }
        return out;
    }

    /**
     * The deflection at each element's end under one newton at that very place, in mm/N: (1 − a/L)² ∫₀ᵃ x²/EI dx + (a/L)² ∫ₐᴸ (L−x)²/EI dx,
     * the unit-load theorem on the moment of a piece pinned at both ends (any handbook of mechanics; derived here).
     */
    double[] sagMmPerN() {
        int elements = mesh.elements();
        double length = mesh.lengthMm();
        double[] weight = weights();
        double[] before = new double[elements + 1];
        double[] after = new double[elements + 1];
        for (int e = 0; e < elements; e++) {
            before[e + 1] = before[e] + moment2(e, weight, 0);
        }
        for (int e = elements - 1; e >= 0; e--) {
            after[e] = after[e + 1] + moment2(e, weight, length);
        }
        double[] out = new double[elements + 1];
        for (int i = 0; i <= elements; i++) {
            double a = mesh.nodeMm[i] / length;
            out[i] = (1 - a) * (1 - a) * before[i] + a * a * after[i];
        }
        return out;
    }

    /** ∫ (x − origin)²/EI dx over an element. */
    private double moment2(int element, double[] weight, double originMm) {
        double sum = 0;
        for (int i = element * GaussLegendre.COUNT; i < (element + 1) * GaussLegendre.COUNT; i++) {
            double arm = mesh.stationMm[i] - originMm;
            sum += weight[i] * arm * arm / (moeMpa * mesh.inertiaMm4[i]);
        }
        return sum;
    }
}
