package turnalike.turning;

/**
 * A beam at rest under loads: bending, shear and the thrust along it, on the true outline, with any of the supports at its ends.
 *
 * <p>With w the deflection, t the turn of the section, M the moment and V the force across the straight axis, P the thrust and S the
 * shear stiffness, the beam is four equations of the first order (Timoshenko's beam with Engesser's shear under a thrust; derived here
 * from the energy ½∫(EI t′² + S(w′−t)² − P w′²)):
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
    private final Way onward;
    private final Field[] fromStart;

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
        onward = new Way(true);
        fromStart = free(ends.start(), onward);
    }

    /**
     * A solution along the piece: by station the deflection, the turn and the slope, by element's end the whole state.
     */
    final class Field {
        final double[] aside = new double[give.length];
        final double[] turn = new double[give.length];
        final double[] slope = new double[give.length];
        private final double[] atNode = new double[mesh.nodeMm.length * STATE];

        private void add(double share, Field other) {
            for (int i = 0; i < aside.length; i++) {
                aside[i] += share * other.aside[i];
                turn[i] += share * other.turn[i];
                slope[i] += share * other.slope[i];
            }
            for (int i = 0; i < atNode.length; i++) {
                atNode[i] += share * other.atNode[i];
            }
        }

        private void keep(int node, double[] state) {
            System.arraycopy(state, 0, atNode, node * STATE, STATE);
        }

        private double at(int node, int what) {
            return atNode[node * STATE + what];
        }

        double asideAt(int node) {
            return at(node, ASIDE);
        }
    }

    /** Under a load by length and a turning load by length, by station. */
    Field under(double[] load, double[] turning) {
        return held(march(onward, new double[STATE], load, turning, none));
    }

    /** Under unit thrust on a shape of those slopes. */
    Field underSlopes(double[] slopes) {
        return held(march(onward, new double[STATE], none, none, slopes));
    }

    /** The solution with what the start's support leaves open so chosen that the end's is kept. */
    private Field held(Field field) {
        int last = mesh.elements();
        int[] keep = zeroAt(ends.end());
        Field one = fromStart[0];
        Field two = fromStart[1];
        double det = one.at(last, keep[0]) * two.at(last, keep[1]) - two.at(last, keep[0]) * one.at(last, keep[1]);
        double first = field.at(last, keep[0]);
        double second = field.at(last, keep[1]);
        field.add((two.at(last, keep[0]) * second - first * two.at(last, keep[1])) / det, one);
        field.add((first * one.at(last, keep[1]) - one.at(last, keep[0]) * second) / det, two);
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
    private Field[] free(Support support, Way way) {
        int[] open = openAt(support);
        Field[] out = new Field[open.length];
        for (int k = 0; k < open.length; k++) {
            double[] state = new double[STATE];
            state[open[k]] = 1;
            out[k] = march(way, state, none, none, none);
        }
        return out;
    }

    private Field march(Way way, double[] state, double[] load, double[] turning, double[] slopes) {
        Field out = new Field();
        Step step = new Step(way, state, load, turning, slopes, out);
        int elements = mesh.elements();
        for (int k = 0; k < elements; k++) {
            int e = way.forward ? k : elements - 1 - k;
            out.keep(way.forward ? e : e + 1, state);
            step.over(e);
        }
        out.keep(way.forward ? elements : 0, state);
        return out;
    }

    /** From the start on or from the end back, and what the slopes become when the thrust bends the elements. */
    private final class Way {
        private final boolean forward;

        /** By element, row by row; empty without a thrust. */
        private final double[] pressed;

        private Way(boolean forward) {
            this.forward = forward;
            pressed = new double[thrustN > 0 ? mesh.elements() * N * N : 0];
            for (int e = 0; e * N * N < pressed.length; e++) {
                double[][] inverse = SmallSystem.inverse(pressing(e));
                for (int i = 0; i < N; i++) {
                    System.arraycopy(inverse[i], 0, pressed, (e * N + i) * N, N);
                }
            }
        }

        /** w′ + P/(1 − P/S) ∬ w′/EI: what the slopes at the four points are multiplied by. */
        private double[][] pressing(int e) {
            double h = lengthMm(e);
            double[][] out = new double[N][N];
            for (int i = 0; i < N; i++) {
                out[i][i] = 1;
                for (int j = 0; j < N; j++) {
                    int at = e * N;
                    double bent = thrustN * lean[at + i] * h * GaussLegendre.upTo(forward, i, j) * give[at + j];
                    for (int k = 0; k < N; k++) {
                        out[i][k] += bent * h * GaussLegendre.upTo(forward, j, k);
                    }
                }
            }
            return out;
        }
    }

    private double lengthMm(int e) {
        return mesh.nodeMm[e + 1] - mesh.nodeMm[e];
    }

    /** Takes the state over one element after another. */
    private final class Step {
        private final Way way;
        private final double[] state;
        private final double[] load;
        private final double[] turning;
        private final double[] slopes;
        private final Field out;

        /** By point of the element. */
        private final double[] across = new double[N];

        private final double[] fall = new double[N];
        private final double[] moment = new double[N];
        private final double[] bent = new double[N];
        private final double[] turn = new double[N];
        private final double[] slope = new double[N];
        private final double[] free = new double[N];
        private final double[] aside = new double[N];

        private Step(Way way, double[] state, double[] load, double[] turning, double[] slopes, Field out) {
            this.way = way;
            this.state = state;
            this.load = load;
            this.turning = turning;
            this.slopes = slopes;
            this.out = out;
        }

        /** The four equations one after the other. */
        void over(int e) {
            int at = e * N;
            double h = lengthMm(e);
            GaussLegendre.upTo(way.forward, state[ACROSS], -h, load, at, across);
            for (int i = 0; i < N; i++) {
                across[i] += slopes[at + i];
                fall[i] = -across[i] - turning[at + i];
            }
            bend(at, h);
            for (int i = 0; i < N; i++) {
                slope[i] = lean[at + i] * (turn[i] + soft[at + i] * across[i]);
            }
            if (thrustN > 0) {
                press(at);
                bend(at, h);
            }
            GaussLegendre.upTo(way.forward, state[ASIDE], h, slope, 0, aside);
            System.arraycopy(aside, 0, out.aside, at, N);
            System.arraycopy(turn, 0, out.turn, at, N);
            System.arraycopy(slope, 0, out.slope, at, N);
            double whole = way.forward ? h : -h;
            state[ASIDE] += whole * GaussLegendre.whole(slope, 0);
            state[TURN] += whole * GaussLegendre.whole(bent, 0);
            state[MOMENT] += whole * GaussLegendre.whole(fall, 0);
            state[ACROSS] -= whole * GaussLegendre.whole(load, at);
        }

        /** From the fall of the moment to the turn. */
        private void bend(int at, double h) {
            GaussLegendre.upTo(way.forward, state[MOMENT], h, fall, 0, moment);
            for (int i = 0; i < N; i++) {
                bent[i] = moment[i] * give[at + i];
            }
            GaussLegendre.upTo(way.forward, state[TURN], h, bent, 0, turn);
        }

        /** The thrust's share in the slopes, and in the fall of the moment. */
        private void press(int at) {
            System.arraycopy(slope, 0, free, 0, N);
            for (int i = 0; i < N; i++) {
                int row = (at + i) * N;
                double sum = 0;
                for (int j = 0; j < N; j++) {
                    sum += way.pressed[row + j] * free[j];
                }
                slope[i] = sum;
                fall[i] -= thrustN * sum;
            }
        }
    }

    /** The piece under one newton across it, now here, now there. */
    Pushes pushes() {
        return new Pushes();
    }

    /** What solves it on either side of a force. */
    final class Pushes {
        private final Field[] fromEnd = free(ends.end(), new Way(false));

        private Pushes() {}

        /** Under one newton at an element's end. */
        Push at(int node) {
            double[][] rows = new double[STATE][STATE];
            double[] right = new double[STATE];
            for (int k = 0; k < STATE; k++) {
                for (int i = 0; i < 2; i++) {
                    rows[k][i] = fromStart[i].at(node, k);
                    rows[k][2 + i] = -fromEnd[i].at(node, k);
                }
            }
            // The force across drops by the load: that of the part before less that of the part behind is one.
            right[ACROSS] = 1;
            return new Push(node, SmallSystem.solve(rows, right), fromEnd);
        }
    }

    /** What one newton does at every element's end. */
    final class Push {
        private final int loaded;
        private final double[] shares;
        private final Field[] fromEnd;

        private Push(int loaded, double[] shares, Field[] fromEnd) {
            this.loaded = loaded;
            this.shares = shares;
            this.fromEnd = fromEnd;
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
            return shares[from] * parts[0].at(node, what) + shares[from + 1] * parts[1].at(node, what);
        }
    }
}
