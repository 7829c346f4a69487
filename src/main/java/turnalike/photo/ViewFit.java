package turnalike.photo;

/**
 * Finds where the camera stood: the axis such that the two edges are mirror images, and tilt and focal length such that flat ends bulge as they
 * must, held by what was known of both before.
 */
final class ViewFit {
    /** What is known of a view is by so much more than it has unknowns: two ends and two guesses for lean and focal length; rings are two more. */
    private static final double DEGREES = 2;

    /** An end whose bulge strays by more of its uncertainties than this from a view is not explained by it. */
    private static final double MOST_OFF = 3;

    /**
     * How often the rims are read anew in the view that they asked for themselves where nothing was known of the lens, unless it moved by less, in radians
     * and in the focal length's log; once where the lens is known.
     */
    private static final int AGAIN = 5;

    private static final double STILL = 0.02;

    private final double[] x;

    private final double[] y;

    private final double[] doubts;

    private final int width;

    private final int height;

    private final FocalGuess focal;

    private final TiltGuess tiltGuess;

    private final Rings rings;

    private final KnownSquares squares;

    /**
     * What is thought of the tilt before the ends are asked, radians.
     *
     * @param tilt the guess
     * @param uncertainty one standard deviation
     */
    record TiltGuess(double tilt, double uncertainty) {
        /** A camera held square to the piece by eye. */
        static final TiltGuess BY_EYE = new TiltGuess(0, Math.toRadians(2.5));
    }

    /**
     * Takes a closed contour.
     *
     * @param x of its points
     * @param y of them
     * @param doubts what each of them is uncertain by, pixels
     * @param width of the picture
     * @param height of it
     * @param focal what is thought of the lens
     * @param tiltGuess and of the tilt
     */
    ViewFit(double[] x, double[] y, double[] doubts, int width, int height, FocalGuess focal, TiltGuess tiltGuess) {
        this(x, y, doubts, width, height, focal, tiltGuess, Rings.NONE, KnownSquares.NONE);
    }

    private ViewFit(
            double[] x,
            double[] y,
            double[] doubts,
            int width,
            int height,
            FocalGuess focal,
            TiltGuess tiltGuess,
            Rings rings,
            KnownSquares squares) {
        this.x = x;
        this.y = y;
        this.doubts = doubts;
        this.width = width;
        this.height = height;
        this.focal = focal;
        this.tiltGuess = tiltGuess;
        this.rings = rings;
        this.squares = squares;
    }

    /**
     * A view that explains the contour.
     *
     * @param contour as seen so
     * @param axis the axis' picture
     * @param logFocal log of the focal length over the guess
     * @param tilt radians
     * @param focalUncertainty of the log, afterwards
     * @param tiltUncertainty radians, afterwards
     * @param start the start end's cap
     * @param end the other's
     */
    record View(
            SquaredContour contour,
            Sight.AxisLine axis,
            double logFocal,
            double tilt,
            double focalUncertainty,
            double tiltUncertainty,
            EndCap start,
            EndCap end) {
        View withUncertainty(double ofFocal, double ofTilt) {
            return new View(contour, axis, logFocal, tilt, ofFocal, ofTilt, start, end);
        }

        View withEnds(EndCap otherStart, EndCap otherEnd) {
            return new View(contour, axis, logFocal, tilt, focalUncertainty, tiltUncertainty, otherStart, otherEnd);
        }
    }

    /** The view that agrees best with what was known and with the ends, each of which has a sharp rim or a chamfered one. */
    View fit(Sight.AxisLine guess) throws Unsure {
        return new RimChoice(this, focal, squares, guess, tiltGuess.tilt()).best();
    }

    /**
     * The same, held by the rims of the piece's shoulders too. They are read in the view that the ends lead to, and again in the one that they ask
     * for themselves: there their radii are the right ones.
     */
    View fit(Sight.AxisLine guess, Picture picture, Lens lens) throws Unsure {
        View view = fit(guess);
        Rings first = Rings.of(picture, lens, view, view, squares);
        if (first.count() == 0) {
            return view;
        }
        EndEdge[] edges = {view.start().edge(), view.end().edge()};
        boolean askStart = !squares.atStart() && agrees(view.start());
        boolean askEnd = !squares.atEnd() && agrees(view.end());
        Rings seen = first;
        View at = view;
        for (int round = 0; round < (focal.uncertainty() < RimChoice.VAGUE ? 1 : AGAIN); round++) {
            View next = with(seen)
                    .tried(at.axis(), at.logFocal(), edges, askStart, askEnd)
                    .view();
            Rings again = Rings.of(picture, lens, next, view, squares);
            if (again.count() == 0) {
                break;
            }
            seen = again;
            boolean settled =
                    Math.abs(next.tilt() - at.tilt()) < STILL && Math.abs(next.logFocal() - at.logFocal()) < STILL;
            at = next;
            if (settled) {
                break;
            }
        }
        return with(seen).fit(view.axis());
    }

    /** Whether a view explains an end: one that it does not leads a view astray that is asked for it once more. */
    private static boolean agrees(EndCap cap) {
        return off(cap) < MOST_OFF * MOST_OFF && !cap.edge().byBulge();
    }

    private ViewFit with(Rings seen) {
        return new ViewFit(x, y, doubts, width, height, focal, tiltGuess, seen, squares);
    }

    /** The same, what is known of a piece's squares told: the axis then hangs on what is round, and no square's end is asked as a round's. */
    ViewFit with(KnownSquares known) {
        return new ViewFit(x, y, doubts, width, height, focal, tiltGuess, Rings.NONE, known);
    }

    /**
     * A view that explains ends with such rims.
     *
     * @param view the view
     * @param strays what it strays by from all that was known, over what that is uncertain by, squared and added up
     */
    record Tried(View view, double strays) {}

    /**
     * The view that explains the ends best.
     *
     * @param guess the axis
     * @param near the log of the focal length over its guess to begin at
     * @param edges each end's rim, start first
     * @param asked whether each end's bulge is asked what the view is
     */
    Tried tried(Sight.AxisLine guess, double near, EndEdge[] edges, boolean... asked) throws Unsure {
        Sight.AxisLine axis = guess;
        double logFocal = near;
        double tilt = tiltGuess.tilt();
        double[] uncertain = {focal.uncertainty(), tiltGuess.uncertainty()};
        for (int round = 0; round < 8; round++) {
            axis = straightened(axis, logFocal, tilt);
            double step = 1e-3;
            SquaredContour now = contour(axis, logFocal, tilt);
            SquaredContour farther = contour(axis, logFocal + step, tilt);
            SquaredContour leaning = contour(axis, logFocal, tilt + step);
            double[][] here = residuals(edges, now);
            double[][] byFocal = residuals(edges, farther);
            double[][] byTilt = residuals(edges, leaning);
            double[][] rows = {
                {1 / square(focal.uncertainty()), 0, -logFocal / square(focal.uncertainty())},
                {0, 1 / square(tiltGuess.uncertainty()), (tiltGuess.tilt() - tilt) / square(tiltGuess.uncertainty())}
            };
            for (int k = 0; k < 2; k++) {
                if (asked[k] && here[k][1] < 1 && byFocal[k][1] < 1 && byTilt[k][1] < 1) {
                    double weight = 1 / square(here[k][1]);
                    double f = (byFocal[k][0] - here[k][0]) / step;
                    double t = (byTilt[k][0] - here[k][0]) / step;
                    rows[0][0] += weight * f * f;
                    rows[0][1] += weight * f * t;
                    rows[1][0] += weight * f * t;
                    rows[1][1] += weight * t * t;
                    rows[0][2] -= weight * f * here[k][0];
                    rows[1][2] -= weight * t * here[k][0];
                }
            }
            rings.add(rows, logFocal, tilt);
            squares.add(rows, now, farther, leaning, step);
            double determinant = rows[0][0] * rows[1][1] - rows[0][1] * rows[1][0];
            uncertain = new double[] {Math.sqrt(rows[1][1] / determinant), Math.sqrt(rows[0][0] / determinant)};
            double[] move = LeastSquares.solve(rows);
            logFocal += Math.max(-0.3, Math.min(0.3, move[0]));
            tilt += Math.max(-0.1, Math.min(0.1, move[1]));
            if (Math.abs(move[0]) < 1e-6 && Math.abs(move[1]) < 1e-7) {
                break;
            }
        }
        Tried told = seen(straightened(axis, logFocal, tilt), logFocal, tilt, uncertain, edges, asked);
        double wide = Math.sqrt(Math.max(1, told.strays() / (DEGREES + (rings.count() > 0 ? 2 : 0))));
        return new Tried(told.view().withUncertainty(wide * uncertain[0], wide * uncertain[1]), told.strays());
    }

    /**
     * The ends as they are in a view that nothing moves.
     *
     * @param axis straightened for it
     * @param logFocal of the view
     * @param tilt of it
     * @param uncertain what both are uncertain by
     * @param edges likewise
     * @param asked likewise
     */
    Tried seen(Sight.AxisLine axis, double logFocal, double tilt, double[] uncertain, EndEdge[] edges, boolean... asked)
            throws Unsure {
        SquaredContour contour = contour(axis, logFocal, tilt);
        EndCap start = EndCap.of(contour, true, edges[0]);
        EndCap end = EndCap.of(contour, false, edges[1]);
        double strays = square(logFocal / focal.uncertainty())
                + square((tilt - tiltGuess.tilt()) / tiltGuess.uncertainty())
                + (asked[0] ? off(start) : 0)
                + (asked[1] ? off(end) : 0)
                + rings.strays(logFocal, tilt)
                + squares.strays(contour);
        return new Tried(new View(contour, axis, logFocal, tilt, uncertain[0], uncertain[1], start, end), strays);
    }

    /** The same ends in a view of so much longer a lens and so much more lean. */
    View moved(View view, double logFocal, double tilt) throws Unsure {
        double f = view.logFocal() + logFocal;
        double t = view.tilt() + tilt;
        Sight.AxisLine axis = straightened(view.axis(), f, t);
        SquaredContour contour = contour(axis, f, t);
        EndCap start = EndCap.again(view.start(), contour, true);
        EndCap end = EndCap.again(view.end(), contour, false);
        return new View(contour, axis, f, t, view.focalUncertainty(), view.tiltUncertainty(), start, end);
    }

    private static double off(EndCap cap) {
        return cap.flat() ? square(cap.disagreement() / cap.uncertainty()) : 0;
    }

    private static double square(double value) {
        return value * value;
    }

    SquaredContour contour(Sight.AxisLine axis, double logFocal, double tilt) throws Unsure {
        Sight sight = new Sight(focal.pixels() * Math.exp(logFocal), width, height, axis, tilt);
        SquaredContour contour = new SquaredContour(sight, x, y, doubts);
        if (!contour.isWhole()) {
            throw new Unsure(
                    PhotoTrace.Reason.NOT_ROUND,
                    "what was found is not one round piece from end to end",
                    "take it again on a plain ground of another colour");
        }
        return contour;
    }

    private static double[][] residuals(EndEdge[] edges, SquaredContour contour) {
        double[][] both = new double[2][];
        for (int k = 0; k < 2; k++) {
            EndCap cap = EndCap.face(contour, k == 0, edges[k]);
            both[k] = new double[] {cap.disagreement(), cap.flat() ? cap.uncertainty() : 1};
        }
        return both;
    }

    /** Moves the axis until the edges are mirror images: each round by the straight line that runs midway between them. */
    Sight.AxisLine straightened(Sight.AxisLine guess, double logFocal, double tilt) throws Unsure {
        Sight.AxisLine axis = guess;
        for (int round = 0; round < 4; round++) {
            SquaredContour contour = contour(axis, logFocal, tilt);
            Midline line = Midline.of(contour, squares);
            PixelPoint one = contour.sight().pixel(line.from(), line.at(line.from()));
            PixelPoint other = contour.sight().pixel(line.to(), line.at(line.to()));
            axis = new Sight.AxisLine(
                    (one.x() + other.x()) / 2,
                    (one.y() + other.y()) / 2,
                    Math.atan2(other.y() - one.y(), other.x() - one.x()));
            if (Math.abs(line.level()) * contour.sight().focal() < 1e-3 && Math.abs(line.slope()) < 1e-6) {
                break;
            }
        }
        return axis;
    }
}
