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
 */
record EndCap(boolean flat, boolean square, double apex, double radius, double disagreement, double uncertainty) {
    /** Whether it is known where the end stands, and not only how far it is seen to reach. */
    boolean isPlaced() {
        return flat || square;
    }

    /** Where the end stands along the axis, if that is known: its near rim is at depth 1 − radius. */
    double place() {
        return apex * (1 - radius);
    }

    /** A square's end, whose nearest side or arris stands so far before the axis. */
    EndCap squared(double before) {
        return new EndCap(false, true, apex, before, 0, 1);
    }

    /** The same end in another view of it. */
    static EndCap again(EndCap known, SquaredContour contour, boolean start) {
        EndCap seen = of(contour, start);
        return known.square ? seen.squared(known.radius) : seen;
    }

    /**
     * Reads one end of a contour.
     *
     * @param contour the contour
     * @param start whether the start end is meant, else the other
     */
    static EndCap of(SquaredContour contour, boolean start) {
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
            return new EndCap(false, false, apex, radius, 0, 1);
        }
        return fitted(left, right, start, apex, rim, radius, focal);
    }

    private static EndCap fitted(
            double[][] left,
            double[][] right,
            boolean start,
            double apexGuess,
            double rim,
            double radius,
            double focal) {
        double outward = start ? -1 : 1;
        double apex = apexGuess;
        double bulge = apex * (1 - radius);
        double spread = 1 / focal;
        double error = 1;
        for (int round = 0; round < 8; round++) {
            double[][] rows = new double[2][3];
            double squares = 0;
            double weights = 0;
            int count = 0;
            for (double[][] edge : new double[][][] {left, right}) {
                int n = edge[0].length;
                for (int k = 0; k < n; k++) {
                    int i = start ? k : n - 1 - k;
                    double x = edge[0][i];
                    double y = Math.abs(edge[1][i]);
                    if (y > 0.85 * rim || (apexGuess - x) * outward > 2.5 * Math.abs(apexGuess) * rim + 6 / focal) {
                        break;
                    }
                    if (round < 4 && y < 0.35 * rim) {
                        // A lathe's centre or its mark may stand in the middle; the rest of the rim tells first where
                        // the end is.
                        continue;
                    }
                    double depth = nearDepth(y * y, radius);
                    double term = 1 / depth - 1 / (1 - radius);
                    double off = round == 0 ? 0 : x - apex - bulge * term;
                    double slant = bulge * y * depthSlope(y * y, depth) / (depth * depth) * 2;
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
                return new EndCap(false, false, apexGuess, radius, 0, 1);
            }
            rows[1][0] = rows[0][1];
            double determinant = rows[0][0] * rows[1][1] - rows[0][1] * rows[0][1];
            error = Math.sqrt(rows[0][0] / Math.max(1e-300, determinant));
            double[] line = LeastSquares.solve(rows);
            apex = line[0];
            bulge = line[1];
            if (round > 0 && round < 4) {
                spread = Math.max(0.03 / focal, 1.4 * Math.sqrt(squares / weights));
            }
        }
        if (!(bulge * outward > 0)) {
            return new EndCap(false, false, apexGuess, radius, 0, 1);
        }
        double disagreement = Math.log(bulge / (apex * (1 - radius)));
        // Points follow one another within the picture's softness: about one in three speaks for itself.
        double uncertainty = Math.hypot(0.01, 1.7 * spread * error / Math.abs(bulge));
        boolean flat = spread * focal < 0.8 && Math.abs(disagreement) < 0.5;
        return new EndCap(flat, false, apex, radius, disagreement, uncertainty);
    }

    /** At what depth the near half of the rim is seen where Y² is so much: the smaller root of (1 + G)z² − 2z + 1 − r² = 0. */
    private static double nearDepth(double squared, double radius) {
        double under = 1 - (1 + squared) * (1 - radius * radius);
        return (1 - Math.sqrt(Math.max(0, under))) / (1 + squared);
    }

    /** How that depth changes with Y²: the equation differentiated. */
    private static double depthSlope(double squared, double depth) {
        return depth * depth / Math.max(1e-6, 2 - 2 * (1 + squared) * depth);
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
