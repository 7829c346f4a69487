package turnalike.photo;

/**
 * How the contour goes round one end. A round's flat end with a sharp rim is seen as half an ellipse; how far it bulges tells at what angle the camera
 * sees that end, which settles tilt and focal length. A rounded end tells nothing of that.
 *
 * @param flat whether it looks like a round's flat end seen from within the piece's length
 * @param square whether a square ends there, which somebody else has found
 * @param apex X where the contour crosses the axis
 * @param behind the piece's radius right behind the rim, in units of the distance; of a square how far its nearest side or arris stands before the axis
 * @param disagreement log of bulge expected over bulge seen; 0 when the view is right. Only of a flat end
 * @param uncertainty of that, standard deviation
 * @param edge what was done to the rim
 * @param misfit how far the contour strays from such a rim, in pixels, across the end's face
 * @param strays how far it strays from the whole of such an end's outline, some of its flank as well
 * @param open what its place is known to, over the distance, one standard deviation; 0 before forms were weighed
 */
record EndCap(
        boolean flat,
        boolean square,
        double apex,
        double behind,
        double disagreement,
        double uncertainty,
        EndEdge edge,
        double misfit,
        double strays,
        double open) {
    /** What strays by more than this, in pixels, is no end of such a form. */
    private static final double MOST_MISFIT = 0.8;

    /** A dome's points are asked so deep, of its radius, beyond what a flat face bulges by. */
    private static final double DOME_DEEP = 0.7;

    /** A face whose bulge's log is farther from what the view asks is not a flat one. */
    private static final double MOST_OFF = 0.5;

    /** No round end's bulge's log is less than a flat one's by more: three degrees of lean make as much. */
    private static final double LEAST_BULGE = -0.35;

    /** Below this share of what is expected a bulge's log tells no more. */
    private static final double LEAST_TOLD = 0.2;

    /** Stands for the bulge's log of an end that is straight or hollow. */
    private static final double HOLLOW = -5;

    /** Nearer to where a steep flank touches the rim than this share of its width, the contour turns into it. */
    private static final double BEFORE_FLANK = 0.98;

    /** A face or a flank strays by so much, pixels, in any case; and so many points of the flank are asked for each of the face. */
    private static final double ACROSS = 0.03;

    private static final double BESIDE = 0.1;

    private static final double ALONG = 0.7;

    private static final double MOST_ASTRAY = 10;

    /**
     * What strays by more than this, pixels, across the face and along the flank, does so over long stretches, not point by point: no form explains it, and how much
     * better one does than another counts for less. By trying.
     */
    private static final double LITTLE = 0.15;

    private static final double LITTLE_BESIDE = 0.25;

    private static final double TEMPERED = 0.35;

    /** At so many parts of an end's radius its two sides are compared; one place is taken to be no farther apart than this, in pixels. */
    private static final int SKEWS = 20;

    private static final double MOST_SKEW = 5;

    /** So much of the rim is asked, of its radius: nearer to its side the contour runs along the piece and tells nothing. */
    private static final double ASKED = 0.94;

    /** So far out from the axis the rim is asked, Y. */
    static double asked(EndFlank.Seen flank) {
        return Math.min(ASKED * flank.rim(), flank.isSteep() ? BEFORE_FLANK * flank.joint() : flank.rim());
    }

    /** Whether it is known where the end stands, and not only how far it is seen to reach. */
    boolean isPlaced() {
        return flat || square;
    }

    /** Whether it surely bulges less than such an end can in a view that is about right. Of all round ends a flat one with a sharp rim bulges least. */
    boolean bulgesTooLittle() {
        return disagreement < LEAST_BULGE - 2 * uncertainty;
    }

    /** Where the end stands along the axis, if that is known. */
    double place() {
        return edge.place(apex, behind);
    }

    /** How ill such an end explains the contour, face and flank, as the log of what either strays by: twice that for each point is its cost. */
    double astray() {
        double across = Math.max(ACROSS, Math.min(MOST_ASTRAY, misfit));
        double beside = Math.hypot(BESIDE, Math.min(MOST_ASTRAY, strays));
        return tempered(across, LITTLE) + ALONG * tempered(beside, LITTLE_BESIDE);
    }

    /** The log of what is strayed by, that of more than so much counting for less. */
    private static double tempered(double strays, double little) {
        return strays < little ? Math.log(strays) : Math.log(little) + TEMPERED * Math.log(strays / little);
    }

    /** The flat face's radius, in units of the distance. */
    double radius() {
        return behind * edge.face();
    }

    /** An end that tells nothing of the view. */
    private static EndCap rounded(double apex, double radius) {
        return new EndCap(
                false, false, apex, radius, 0, 1, EndEdge.SHARP, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, 0);
    }

    /** A square's end, whose nearest side or arris stands so far before the axis. */
    EndCap squared(double before) {
        return new EndCap(false, true, apex, before, 0, 1, EndEdge.SHARP, misfit, strays, open);
    }

    /** The same, its place known to so much. */
    EndCap opened(double to) {
        return new EndCap(flat, square, apex, behind, disagreement, uncertainty, edge, misfit, strays, to);
    }

    /** The same end in another view of it. */
    static EndCap again(EndCap known, SquaredContour contour, boolean start) {
        EndCap seen = of(contour, start, known.edge).opened(known.open);
        return known.square ? seen.squared(known.behind) : seen;
    }

    /**
     * Reads one end of a contour.
     *
     * @param contour the contour
     * @param start whether the start end is meant, else the other
     * @param edge what was done to its rim
     */
    static EndCap of(SquaredContour contour, boolean start, EndEdge edge) {
        return read(contour, start, edge, true);
    }

    /** The same without how far the whole outline strays, which takes longest to ask. */
    static EndCap face(SquaredContour contour, boolean start, EndEdge edge) {
        return read(contour, start, edge, false);
    }

    private static EndCap read(SquaredContour contour, boolean start, EndEdge edge, boolean isWhole) {
        double focal = contour.sight().focal();
        double[][] left = contour.points(true);
        double[][] right = contour.points(false);
        int n = left[0].length;
        double apex = start ? left[0][0] : left[0][n - 1];
        double outward = start ? -1 : 1;
        EndFlank.Seen flank = new EndFlank(new double[][][] {left, right}, start, focal).seen(edge);
        double rim = flank.rim();
        double radius = rim / Math.sqrt(1 + rim * rim);
        if (!(apex * outward > 0.03) || !(rim * focal > 4) || edge.steep() != flank.isSteep()) {
            return rounded(apex, radius);
        }
        EndCap whole = fitted(new double[][][] {left, right}, start, apex, flank, radius, focal, edge, isWhole);
        if (whole.flat) {
            return whole;
        }
        // A shadow that is taken for wood stands beside one half of the rim; the other tells as much for itself.
        EndCap one = fitted(new double[][][] {left}, start, apex, flank, radius, focal, edge, isWhole);
        EndCap other = fitted(new double[][][] {right}, start, apex, flank, radius, focal, edge, isWhole);
        boolean first = one.flat && !(other.flat && other.misfit < one.misfit);
        return first ? one : other.flat ? other : whole;
    }

    private static EndCap fitted(
            double[][][] sides,
            boolean start,
            double apexGuess,
            EndFlank.Seen flank,
            double behind,
            double focal,
            EndEdge edge,
            boolean isWhole) {
        double outward = start ? -1 : 1;
        double apex = apexGuess;
        double rim = flank.rim();
        SeenRim shape = SeenRim.of(behind, edge, Math.abs(edge.place(apex, behind)));
        double bulge = edge.place(apex, behind);
        double reach = 2.5 * (Math.abs(apexGuess) + (edge.domed() ? DOME_DEEP : edge.round())) * rim + 6 / focal;
        EndPoints points = EndPoints.of(sides, start, apexGuess, asked(flank), reach, shape, focal);
        double spread = 1 / focal;
        double error = 1;
        double misfit = 0;
        for (int round = 0; round < 8; round++) {
            double w = 0;
            double wt = 0;
            double wtt = 0;
            double wx = 0;
            double wxt = 0;
            double squares = 0;
            double weights = 0;
            int count = 0;
            for (int k = 0; k < points.count(); k++) {
                // A lathe's centre or its mark may stand in the middle; the rest of the rim tells first where the end
                // is.
                if (round < 4 && points.across(k) < 0.35 * rim) {
                    continue;
                }
                double x = points.along(k);
                double term = points.term(k);
                double off = round == 0 ? 0 : x - apex - bulge * term;
                double slant = bulge * points.slope(k) * 2 * focal;
                double normal = 1 + slant * slant;
                double weight = 1 / normal / Math.pow(1 + off * off / normal / (6.25 * spread * spread), 2);
                w += weight;
                wt += weight * term;
                wtt += weight * term * term;
                wx += weight * x;
                wxt += weight * x * term;
                squares += weight * off * off;
                weights += weight * normal;
                count++;
            }
            if (count < 8) {
                return rounded(apexGuess, behind);
            }
            double determinant = w * wtt - wt * wt;
            error = Math.sqrt(w / Math.max(1e-300, determinant));
            double[] line = LeastSquares.solve(new double[][] {{w, wt, wx}, {wt, wtt, wxt}});
            apex = line[0];
            bulge = line[1];
            misfit = Math.sqrt(squares / weights);
            if (round > 0 && round < 4) {
                spread = Math.max(0.03 / focal, 1.4 * Math.sqrt(squares / weights));
            }
        }
        boolean bulges = bulge * outward > 0;
        double expected = edge.place(apex, behind);
        double disagreement = bulges ? Math.log(bulge / expected) : HOLLOW;
        // Points follow one another within the picture's softness: about one in three speaks for itself.
        double uncertainty =
                Math.hypot(0.01, 1.7 * spread * error / Math.max(Math.abs(bulge), LEAST_TOLD * Math.abs(expected)));
        double strays = isWhole
                ? focal * new EndLine(shape, apex, bulge, outward, flank, focal).strays(sides, start)
                : Double.POSITIVE_INFINITY;
        boolean flat =
                spread * focal < MOST_MISFIT && Math.abs(disagreement) < MOST_OFF && !edge.isBall() && !edge.domed();
        return new EndCap(flat, false, apex, behind, disagreement, uncertainty, edge, misfit * focal, strays, 0);
    }

    /**
     * How far the two sides of an end are from mirror images of one another, as they are of any round piece seen from anywhere: root mean square along
     * the axis, in pixels, of places out to the end's radius.
     */
    double skew(SquaredContour contour, boolean start) {
        double[][] left = contour.points(true);
        double[][] right = contour.points(false);
        double squares = 0;
        for (int k = 1; k < SKEWS; k++) {
            double out = ASKED * behind * k / SKEWS;
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
}
