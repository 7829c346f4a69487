package turnalike.turning;

import java.util.Arrays;

/**
 * A beam at rest under loads: bending, shear and the thrust along it, on the true outline, with any of the supports at its ends.
 *
 * <p>With w the deflection, t the turn of the section, M the moment and V the force across the straight axis, P the thrust and S the
 * shear stiffness, the beam is four equations of the first order (Timoshenko's beam with Engesser's shear under a thrust; derived here from the energy
 * ½∫(EI t′² + S(w′−t)² − P w′²)):
 *
 * <pre>
 * w′ = (t + (V + s)/S) / (1 − P/S)     t′ = M/EI     M′ = −V − s − P w′ − m     V′ = −q
 * </pre>
 *
 * <p>with q a load by length, m a turning load by length, and s a slope under unit thrust, as buckling needs it. They are stepped element
 * by element through four Gauss points (collocation, exact to the eighth order at the elements' ends). Two solutions that keep the start's
 * conditions and one under the load are put together so that the end's hold too. No step grows faster than a power of the length while the
 * thrust is below what buckles the piece, so this stays accurate beside the thinnest neck, where a stiffness matrix loses its digits.
 */
final class BeamStatics {
    private static final int N = GaussLegendre.COUNT;

    /** Places in the state of a section. */
    private static final int ASIDE = 0;

    private static final int TURN = 1;
    private static final int MOMENT = 2;
    private static final int ACROSS = 3;
    private static final int STATE = 4;

    private final BeamMesh mesh;
    private final Supports ends;
    private final double thrustN;

    /** 1/EI and 1/S by station, and 1/(1 − P/S). */
    private final double[] give;

    private final double[] soft;
    private final double[] lean;

    private final double[] none;
    private final Field[] fromStart;
    private final Field[] fromEnd;

    BeamStatics(BeamMesh mesh, BeamWood wood, Supports ends, double thrustN) {
        this.mesh = mesh;
        this.ends = ends;
        this.thrustN = thrustN;
        int n = mesh.stationMm.length;
        give = new double[n];
        soft = new double[n];
        lean = new double[n];
        none = new double[n];
        for (int i = 0; i < n; i++) {
            give[i] = 1 / (wood.moeMpa() * mesh.inertiaMm4[i]);
            soft[i] = 1 / (wood.shearMpa() * mesh.shearAreaMm2[i]);
            lean[i] = 1 / (1 - thrustN * soft[i]);
        }
        fromStart = free(ends.start(), true);
        fromEnd = free(ends.end(), false);
    }

    /**
     * A solution along the piece: by station the deflection, the turn and the slope, by element's end the whole state.
     */
    final class Field {
        final double[] aside = new double[give.length];
        final double[] turn = new double[give.length];
        final double[] slope = new double[give.length];
        final double[][] atNode = new double[mesh.nodeMm.length][STATE];

        private void add(double share, Field other) {
            for (int i = 0; i < aside.length; i++) {
                aside[i] += share * other.aside[i];
                turn[i] += share * other.turn[i];
                slope[i] += share * other.slope[i];
            }
            for (int i = 0; i < atNode.length; i++) {
                for (int k = 0; k < STATE; k++) {
                    atNode[i][k] += share * other.atNode[i][k];
                }
            }
        }

        double asideAt(int node) {
            return atNode[node][ASIDE];
        }
    }

    /** Under a load by length and a turning load by length, by station. */
    Field under(double[] load, double[] turning) {
        return held(march(true, new double[STATE], load, turning, none));
    }

    /** Under unit thrust on a shape of those slopes. */
    Field underSlopes(double[] slopes) {
        return held(march(true, new double[STATE], none, none, slopes));
    }

    /** The solution with what the start's support leaves open so chosen that the end's is kept. */
    private Field held(Field field) {
        int last = mesh.nodeMm.length - 1;
        int[] keep = zeroAt(ends.end());
        double[] one = fromStart[0].atNode[last];
        double[] two = fromStart[1].atNode[last];
        double[] have = field.atNode[last];
        double det = one[keep[0]] * two[keep[1]] - two[keep[0]] * one[keep[1]];
        field.add((two[keep[0]] * have[keep[1]] - have[keep[0]] * two[keep[1]]) / det, fromStart[0]);
        field.add((have[keep[0]] * one[keep[1]] - one[keep[0]] * have[keep[1]]) / det, fromStart[1]);
        return field;
    }

    /** What is nought in the state at a support. */
    private static int[] zeroAt(Support support) {
        return switch (support) {
            case PINNED -> new int[] {ASIDE, MOMENT};
            case FIXED -> new int[] {ASIDE, TURN};
            case FREE -> new int[] {MOMENT, ACROSS};
        };
    }

    private static int[] openAt(Support support) {
        return switch (support) {
            case PINNED -> new int[] {TURN, ACROSS};
            case FIXED -> new int[] {MOMENT, ACROSS};
            case FREE -> new int[] {ASIDE, TURN};
        };
    }

    /** The two solutions without a load that keep one end's conditions. */
    private Field[] free(Support support, boolean forward) {
        int[] open = openAt(support);
        Field[] out = new Field[open.length];
        for (int k = 0; k < open.length; k++) {
            double[] state = new double[STATE];
            state[open[k]] = 1;
            out[k] = march(forward, state, none, none, none);
        }
        return out;
    }

    private Field march(boolean forward, double[] state, double[] load, double[] turning, double[] slopes) {
        Field out = new Field();
        int elements = mesh.elements();
        for (int k = 0; k < elements; k++) {
            int e = forward ? k : elements - 1 - k;
            out.atNode[forward ? e : e + 1] = state.clone();
            step(e, forward, state, load, turning, slopes, out);
        }
        out.atNode[forward ? elements : 0] = state;
        return out;
    }

    /** Takes the state over an element; long since it follows the four equations one after the other. */
    private void step(int e, boolean forward, double[] y, double[] load, double[] turning, double[] slopes, Field out) {
        int at = e * N;
        double[][] upTo = upTo(e, forward);
        double[] whole = whole(e, forward);
        double[] across = new double[N];
        double[] fall = new double[N];
        for (int i = 0; i < N; i++) {
            across[i] = y[ACROSS] - times(upTo[i], load, at) + slopes[at + i];
        }
        for (int i = 0; i < N; i++) {
            fall[i] = -across[i] - turning[at + i];
        }
        double[] moment = integral(y[MOMENT], upTo, fall);
        double[] turn = integral(y[TURN], upTo, bent(moment, at));
        double[] slope = new double[N];
        for (int i = 0; i < N; i++) {
            slope[i] = lean[at + i] * (turn[i] + soft[at + i] * across[i]);
        }
        if (thrustN > 0) {
            slope = SmallSystem.solve(pressed(upTo, at), slope);
            for (int i = 0; i < N; i++) {
                fall[i] -= thrustN * slope[i];
            }
            moment = integral(y[MOMENT], upTo, fall);
            turn = integral(y[TURN], upTo, bent(moment, at));
        }
        double[] aside = integral(y[ASIDE], upTo, slope);
        System.arraycopy(aside, 0, out.aside, at, N);
        System.arraycopy(turn, 0, out.turn, at, N);
        System.arraycopy(slope, 0, out.slope, at, N);
        y[ASIDE] += times(whole, slope, 0);
        y[TURN] += times(whole, bent(moment, at), 0);
        y[MOMENT] += times(whole, fall, 0);
        y[ACROSS] -= times(whole, load, at);
    }

    /** w′ + P/(1 − P/S) ∬ w′/EI: what the slopes at the four points are multiplied by when the thrust bends the element. */
    private double[][] pressed(double[][] upTo, int at) {
        double[][] out = new double[N][N];
        for (int i = 0; i < N; i++) {
            out[i][i] = 1;
            for (int j = 0; j < N; j++) {
                double bent = thrustN * lean[at + i] * upTo[i][j] * give[at + j];
                for (int k = 0; k < N; k++) {
                    out[i][k] += bent * upTo[j][k];
                }
            }
        }
        return out;
    }

    private double[] bent(double[] moment, int at) {
        double[] out = new double[N];
        for (int i = 0; i < N; i++) {
            out[i] = moment[i] * give[at + i];
        }
        return out;
    }

    private static double[] integral(double from, double[][] upTo, double[] of) {
        double[] out = new double[N];
        for (int i = 0; i < N; i++) {
            out[i] = from + times(upTo[i], of, 0);
        }
        return out;
    }

    private static double times(double[] shares, double[] values, int at) {
        double sum = 0;
        for (int j = 0; j < N; j++) {
            sum += shares[j] * values[at + j];
        }
        return sum;
    }

    /** From the element's start, or backward from its end, to each of its points. */
    private double[][] upTo(int e, boolean forward) {
        double h = mesh.nodeMm[e + 1] - mesh.nodeMm[e];
        double[][] out = new double[N][N];
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                double share = GaussLegendre.upTo(i, j);
                out[i][j] = h * (forward ? share : share - GaussLegendre.whole(j));
            }
        }
        return out;
    }

    private double[] whole(int e, boolean forward) {
        double h = mesh.nodeMm[e + 1] - mesh.nodeMm[e];
        double[] out = new double[N];
        for (int j = 0; j < N; j++) {
            out[j] = (forward ? h : -h) * GaussLegendre.whole(j);
        }
        return out;
    }

    /** The piece under one newton across it at an element's end. */
    Push push(int node) {
        double[][] rows = new double[STATE][STATE];
        double[] right = new double[STATE];
        for (int k = 0; k < STATE; k++) {
            for (int i = 0; i < 2; i++) {
                rows[k][i] = fromStart[i].atNode[node][k];
                rows[k][2 + i] = -fromEnd[i].atNode[node][k];
            }
        }
        // The force across drops by the load: that of the part before less that of the part behind is one.
        right[ACROSS] = 1;
        return new Push(node, SmallSystem.solve(rows, right));
    }

    /** What one newton does at every element's end. */
    final class Push {
        private final int loaded;
        private final double[] shares;

        private Push(int loaded, double[] shares) {
            this.loaded = loaded;
            this.shares = Arrays.copyOf(shares, shares.length);
        }

        /** mm. */
        double asideMm(int node) {
            return at(node, ASIDE);
        }

        /** N·mm. */
        double momentNmm(int node) {
            return at(node, MOMENT);
        }

        private double at(int node, int what) {
            Field[] parts = node <= loaded ? fromStart : fromEnd;
            int from = node <= loaded ? 0 : 2;
            return shares[from] * parts[0].atNode[node][what] + shares[from + 1] * parts[1].atNode[node][what];
        }
    }
}
