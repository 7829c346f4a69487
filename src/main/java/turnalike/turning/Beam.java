package turnalike.turning;

import java.util.Arrays;

/**
 * A piece in the lathe as a beam that bends, shears and swings about its sections' middles (Timoshenko), on its true outline, with its
 * supports and the tailstock's thrust: what it does by itself and under a force. The loads are taken at four Gauss points in each element,
 * and {@link BeamStatics} turns them into what the piece gives way by.
 *
 * <p>Lengths in mm, forces in N, stiffness in N/mm² (MPa), density in t/mm³, so that speeds come in radians a second.
 */
final class Beam {
    /** How far a figure settles; far finer than the elements are. */
    private static final double SETTLED = 1e-10;

    /** The same for a figure that is only looked at beside others. */
    private static final double ROUGHLY = 1e-6;

    private final BeamMesh mesh;
    private final BeamWood wood;
    private final Supports ends;
    private final double thrustN;
    private final BeamStatics statics;

    /**
     * @param thrustN along the piece; at or above {@link #bucklingN} there is no natural speed, and nothing but that may be asked
     */
    Beam(BeamMesh mesh, BeamWood wood, Supports ends, double thrustN) {
        this.mesh = mesh;
        this.wood = wood;
        this.ends = ends;
        this.thrustN = thrustN;
        this.statics = new BeamStatics(mesh, wood, ends, thrustN);
    }

    Beam halved() {
        return new Beam(mesh.halved(), wood, ends, thrustN);
    }

    Beam pressed(double newtons) {
        return new Beam(mesh, wood, ends, newtons);
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

    /** A shape is its deflections by station and then its turns by station. */
    private SubspaceIteration vibration(int vectors) {
        int n = mesh.stationMm.length;
        double[] lengths = weights();
        double[] mass = new double[2 * n];
        for (int i = 0; i < n; i++) {
            mass[i] = lengths[i] * wood.tonnesPerMm3() * mesh.areaMm2[i];
            mass[n + i] = lengths[i] * wood.tonnesPerMm3() * mesh.inertiaMm4[i];
        }
        double[][] start = new double[vectors][2 * n];
        for (int k = 0; k < vectors; k++) {
            for (int i = 0; i < n; i++) {
                start[k][i] = wave(k, mesh.stationMm[i] / mesh.lengthMm());
            }
        }
        return new SubspaceIteration(start, mass, this::swing);
    }

    /** One more bow for each shape, and a free end that swings out. */
    private double wave(int k, double share) {
        double out = Math.sin((k + 1) * Math.PI * share);
        out += ends.start() == Support.FREE ? Math.pow(1 - share, k + 2) : 0;
        out += ends.end() == Support.FREE ? Math.pow(share, k + 2) : 0;
        return out;
    }

    /** Takes a shape to its deflection under its own inertia at one radian a second. */
    private void swing(double[] shape, double[] out) {
        int n = mesh.stationMm.length;
        BeamStatics.Field field = swung(shape);
        System.arraycopy(field.aside, 0, out, 0, n);
        System.arraycopy(field.turn, 0, out, n, n);
    }

    private BeamStatics.Field swung(double[] shape) {
        int n = mesh.stationMm.length;
        double[] load = new double[n];
        double[] turning = new double[n];
        for (int i = 0; i < n; i++) {
            load[i] = wood.tonnesPerMm3() * mesh.areaMm2[i] * shape[i];
            turning[i] = wood.tonnesPerMm3() * mesh.inertiaMm4[i] * shape[n + i];
        }
        return statics.under(load, turning);
    }

    private double nodeMm(double[] secondShape) {
        BeamStatics.Field field = swung(secondShape);
        int last = mesh.elements();
        int e = ends.start() == Support.FREE ? 0 : 1;
        int stop = ends.end() == Support.FREE ? last : last - 1;
        while (e + 1 < stop && field.asideAt(e) * field.asideAt(e + 1) > 0) {
            e++;
        }
        // Where the shape crosses zero it is all but straight, so a straight line between the element's ends is near
        // enough.
        double share = field.asideAt(e) / (field.asideAt(e) - field.asideAt(e + 1));
        return mesh.nodeMm[e] + share * (mesh.nodeMm[e + 1] - mesh.nodeMm[e]);
    }

    /**
     * The end force that bows the piece. With w′ the slopes it takes under a thrust, 1/P is the largest eigenvalue of what takes slopes to
     * the slopes that unit thrust on them causes (Vianello's method; Timoshenko, Theory of Elastic Stability; from memory). The thrust that
     * is there already is not counted.
     *
     * <p>No piece bears more than the shear stiffness of its thinnest place, where those slopes would gather (Engesser's model: w′ has 1 −
     * P/S below it); the elements see that place only at their ends, so it is looked at by itself.
     */
    double bucklingN() {
        BeamStatics unpressed = thrustN == 0 ? statics : new BeamStatics(mesh, wood, ends, 0);
        int n = mesh.stationMm.length;
        double[][] start = new double[2][n];
        for (int k = 0; k < start.length; k++) {
            for (int i = 0; i < n; i++) {
                double bow = (k + 1) * Math.PI * mesh.stationMm[i] / mesh.lengthMm();
                start[k][i] = Math.cos(bow) + Math.sin(bow / 2);
            }
        }
        SubspaceIteration modes = new SubspaceIteration(
                start, weights(), (slopes, out) -> System.arraycopy(unpressed.underSlopes(slopes).slope, 0, out, 0, n));
        double thinnestN =
                wood.shearMpa() * Arrays.stream(mesh.leastShearAreaMm2).min().orElseThrow();
        return Math.min(thinnestN, 1 / modes.settle(1, SETTLED).value[0]);
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

    /** The deflection at each element's end under one newton at that very place, in mm/N. */
    double[] sagMmPerN() {
        double[] out = new double[mesh.nodeMm.length];
        BeamStatics.Pushes pushes = statics.pushes();
        Arrays.setAll(out, node -> pushes.at(node).asideMm(node));
        return out;
    }

    /** The piece under one newton, now here, now there. */
    BeamStatics.Pushes pushes() {
        return statics.pushes();
    }
}
