package turnalike.photo;

/**
 * How the contour goes round one end. A round's flat end with a sharp rim is seen as half an ellipse; how far it bulges tells at what angle the camera
 * sees that end, which settles tilt and focal length. A rounded end tells nothing of that.
 *
 * @param flat whether it looks like a round's flat end seen from within the piece's length
 * @param square whether a square ends there, which somebody else has found
 * @param apex X where the contour crosses the axis
 * @param radius of the end, in units of the distance; of a square how far its nearest side or arris stands before the axis
 * @param disagreement log of bulge expected over bulge seen; 0 when the view is right. Only of a flat end
 * @param uncertainty of that, standard deviation
 * @param face the flat face's radius as a share of the piece's right behind it: below 1 where the rim is chamfered
 * @param misfit how far the contour strays from such a rim, in pixels
 */
record EndCap(
        boolean flat,
        boolean square,
        double apex,
        double radius,
        double disagreement,
        double uncertainty,
        double face,
        double misfit) {
    /** A chamfered rim is looked for in so many such steps of the radius right behind the end. */
    private static final double FACE_STEP = 0.03;

    private static final int FACES = 9;

    /** A chamfered rim that fits by so much worse than a sharp one need not be asked further. */
    private static final double CHAMFERED = 1.15;

    /** By what the face's radius, which is not seen to the last part, leaves the bulge open. */
    private static final double UNSURE_FACE = 0.04;

    /** How many places of either rim are tried for the straight line between them. */
    private static final int BRIDGE = 24;

    /** At so many parts of an end's radius its two sides are compared; one place is taken to be no farther apart than this, in pixels. */
    private static final int SKEWS = 20;

    private static final double MOST_SKEW = 5;

    /** So much of the rim is asked, of its radius: nearer to its side the contour runs along the piece and tells nothing. */
    private static final double ASKED = 0.94;

    /** Whether it is known where the end stands, and not only how far it is seen to reach. */
    boolean isPlaced() {
        return flat || square;
    }

    /** Where the end stands along the axis, if that is known: its near rim is at depth 1 − radius. */
    double place() {
        return apex * (1 - radius);
    }

    /** An end that tells nothing of the view. */
    private static EndCap rounded(double apex, double radius) {
        return new EndCap(false, false, apex, radius, 0, 1, 1, Double.POSITIVE_INFINITY);
    }

    /** A square's end, whose nearest side or arris stands so far before the axis. */
    EndCap squared(double before) {
        return new EndCap(false, true, apex, before, 0, 1, 1, misfit);
    }

    /** The same end in another view of it. */
    static EndCap again(EndCap known, SquaredContour contour, boolean start) {
        EndCap seen = of(contour, start, known.face);
        return known.square ? seen.squared(known.radius) : seen;
    }

    /**
     * What share of the radius right behind an end its flat face may have: the whole first, which is a sharp rim, and then that of the chamfered rim
     * that fits best, if any fits better.
     */
    static double[] faces(SquaredContour contour, boolean start) {
        double[] misfits = new double[FACES + 1];
        int least = FACES;
        for (int k = FACES; k >= 0; k--) {
            misfits[k] = of(contour, start, 1 - FACE_STEP * k).misfit;
            least = k > 0 && misfits[k] < misfits[least] ? k : least;
        }
        boolean sharp = least == 1 && misfits[0] < misfits[1];
        if (sharp || least == FACES || !(misfits[least] < CHAMFERED * misfits[0])) {
            return new double[] {1};
        }
        double bend = misfits[least - 1] - 2 * misfits[least] + misfits[least + 1];
        double within = bend > 0 ? 0.5 * (misfits[least - 1] - misfits[least + 1]) / bend : 0;
        return new double[] {1, 1 - FACE_STEP * (least + within)};
    }

    /**
     * Reads one end of a contour.
     *
     * @param contour the contour
     * @param start whether the start end is meant, else the other
     * @param face the flat face's radius as a share of the piece's right behind it
     */
    static EndCap of(SquaredContour contour, boolean start, double face) {
        double focal = contour.sight().focal();
        double[][] left = contour.points(true, 0);
        double[][] right = contour.points(false, 0);
        int n = left[0].length;
        double apex = start ? left[0][0] : left[0][n - 1];
        double outward = start ? -1 : 1;
        double rim = 0;
        double depth = 6 / focal;
        for (int round = 0; round < 4; round++) {
            double beyond = apex - outward * depth;
            rim = (acrossAt(left, beyond, start) + acrossAt(right, beyond, start)) / 2;
            depth = 1.3 * Math.abs(apex) * rim + 3 / focal;
        }
        double radius = rim / Math.sqrt(1 + rim * rim);
        if (!(apex * outward > 0.03) || !(rim * focal > 4)) {
            return rounded(apex, radius);
        }
        EndCap whole = fitted(new double[][][] {left, right}, start, apex, rim, radius, focal, face);
        if (whole.flat) {
            return whole;
        }
        // A shadow that is taken for wood stands beside one half of the rim; the other tells as much for itself.
        EndCap one = fitted(new double[][][] {left}, start, apex, rim, radius, focal, face);
        EndCap other = fitted(new double[][][] {right}, start, apex, rim, radius, focal, face);
        boolean first = one.flat && !(other.flat && other.misfit < one.misfit);
        return first ? one : other.flat ? other : whole;
    }

    private static EndCap fitted(
            double[][][] edges, boolean start, double apexGuess, double rim, double behind, double focal, double face) {
        double outward = start ? -1 : 1;
        double apex = apexGuess;
        double radius = behind * face;
        Rim shape = Rim.of(behind, face, Math.abs(apex) * (1 - radius));
        double bulge = apex * (1 - radius);
        double spread = 1 / focal;
        double error = 1;
        double misfit = 0;
        for (int round = 0; round < 8; round++) {
            double[][] rows = new double[2][3];
            double squares = 0;
            double weights = 0;
            int count = 0;
            for (double[][] edge : edges) {
                int n = edge[0].length;
                for (int k = 0; k < n; k++) {
                    int i = start ? k : n - 1 - k;
                    double x = edge[0][i];
                    double y = Math.abs(edge[1][i]);
                    if (y > ASKED * rim || (apexGuess - x) * outward > 2.5 * Math.abs(apexGuess) * rim + 6 / focal) {
                        break;
                    }
                    if (round < 4 && y < 0.35 * rim) {
                        // A lathe's centre or its mark may stand in the middle; the rest of the rim tells first where
                        // the end is.
                        continue;
                    }
                    double term = shape.at(y) - shape.at(0);
                    double off = round == 0 ? 0 : x - apex - bulge * term;
                    double slant = bulge * (shape.at(y + 0.25 / focal) - shape.at(y - 0.25 / focal)) * 2 * focal;
                    double normal = 1 + slant * slant;
                    double weight = 1 / normal / Math.pow(1 + off * off / normal / (6.25 * spread * spread), 2);
                    rows[0][0] += weight;
                    rows[0][1] += weight * term;
                    rows[1][1] += weight * term * term;
                    rows[0][2] += weight * x;
                    rows[1][2] += weight * x * term;
                    squares += weight * off * off;
                    weights += weight * normal;
                    count++;
                }
            }
            if (count < 8) {
                return rounded(apexGuess, radius);
            }
            rows[1][0] = rows[0][1];
            double determinant = rows[0][0] * rows[1][1] - rows[0][1] * rows[0][1];
            error = Math.sqrt(rows[0][0] / Math.max(1e-300, determinant));
            double[] line = LeastSquares.solve(rows);
            apex = line[0];
            bulge = line[1];
            misfit = Math.sqrt(squares / weights);
            if (round > 0 && round < 4) {
                spread = Math.max(0.03 / focal, 1.4 * Math.sqrt(squares / weights));
            }
        }
        if (!(bulge * outward > 0)) {
            return rounded(apexGuess, radius);
        }
        double disagreement = Math.log(bulge / (apex * (1 - radius)));
        // Points follow one another within the picture's softness: about one in three speaks for itself.
        double uncertainty = Math.hypot(0.01, 1.7 * spread * error / Math.abs(bulge));
        if (face < 1) {
            uncertainty = Math.hypot(uncertainty, UNSURE_FACE);
        }
        boolean flat = spread * focal < 0.8 && Math.abs(disagreement) < 0.5;
        return new EndCap(flat, false, apex, radius, disagreement, uncertainty, face, misfit * focal);
    }

    /**
     * How far the two sides of an end are from mirror images of one another, as they are of any round piece seen from anywhere: root mean square along
     * the axis, in pixels, of places out to the end's radius.
     */
    double skew(SquaredContour contour, boolean start) {
        double[][] left = contour.points(true, 0);
        double[][] right = contour.points(false, 0);
        double squares = 0;
        for (int k = 1; k < SKEWS; k++) {
            double out = ASKED * radius * k / SKEWS;
            double apart = contour.sight().focal() * (alongAt(left, out, start) - alongAt(right, out, start));
            squares += Math.min(MOST_SKEW * MOST_SKEW, apart * apart);
        }
        return Math.sqrt(squares / (SKEWS - 1));
    }

    /** Where along the axis an edge first stands so far out, from the end inward. */
    private static double alongAt(double[][] edge, double out, boolean start) {
        int n = edge[0].length;
        for (int k = 0; k < n; k++) {
            int i = start ? k : n - 1 - k;
            if (Math.abs(edge[1][i]) >= out) {
                return edge[0][i];
            }
        }
        return edge[0][start ? n - 1 : 0];
    }

    /**
     * How an end with a chamfered rim is seen: the face's near half, the near half of the rim behind the chamfer, and what is straight between
     * the two, each as X over the place of the face.
     */
    private record Rim(double face, double whole, double share, double from, double to, double level, double slope) {
        static Rim of(double radius, double face, double place) {
            Rim rim =
                    new Rim(radius * face, radius, 1 - radius * (1 - face) / place, Double.POSITIVE_INFINITY, 0, 0, 0);
            return face < 1 ? rim.bridged() : rim;
        }

        private static double seen(double y, double radius) {
            return 1 / nearDepth(y * y, radius);
        }

        /** The straight line that lies on both: of all through a point of either, the one farthest out where the two cross. */
        private Rim bridged() {
            double crossing = 0;
            for (double step = face / 2; step > 1e-3 * face; step /= 2) {
                boolean before = seen(crossing + step, face) > share * seen(crossing + step, whole);
                crossing += before ? step : 0;
            }
            double best = 0;
            Rim found = this;
            for (int i = 0; i <= BRIDGE; i++) {
                double one = crossing * i / BRIDGE;
                double x = seen(one, face);
                for (int k = 1; k <= BRIDGE; k++) {
                    double other = crossing + (whole - crossing) * k / BRIDGE;
                    double rise = (share * seen(other, whole) - x) / (other - one);
                    double out = x + rise * (crossing - one);
                    if (out > best) {
                        best = out;
                        found = new Rim(face, whole, share, one, other, x, rise);
                    }
                }
            }
            return found;
        }

        double at(double y) {
            if (Math.abs(y) <= from) {
                return seen(y, face);
            }
            return Math.abs(y) <= to ? level + slope * (Math.abs(y) - from) : share * seen(y, whole);
        }
    }

    /** At what depth the near half of the rim is seen where Y² is so much: the smaller root of (1 + G)z² − 2z + 1 − r² = 0. */
    private static double nearDepth(double squared, double radius) {
        double under = 1 - (1 + squared) * (1 - radius * radius);
        return (1 - Math.sqrt(Math.max(0, under))) / (1 + squared);
    }

    /** How far out an edge stands where it first passes a place, from the end inward. */
    private static double acrossAt(double[][] edge, double beyond, boolean start) {
        int n = edge[0].length;
        for (int k = 0; k < n; k++) {
            int i = start ? k : n - 1 - k;
            if (start ? edge[0][i] >= beyond : edge[0][i] <= beyond) {
                return Math.abs(edge[1][i]);
            }
        }
        return 0;
    }
}
