package turnalike.photo;

/**
 * Finds where the camera stood: the axis such that the two edges are mirror images, and tilt and focal length such that flat ends bulge as they
 * must, held by what was known of both before.
 */
final class ViewFit {
    /**
     * How often the rims are read anew in the view that they asked for themselves where nothing was known of the lens, unless it moved by less, in radians
     * and in the focal length's log; once where the lens is known.
     */
    private static final int AGAIN = 2;

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

    /** The view in the mean of all, each as likely as what was known and the ends, of whatever form, make it. */
    View fit(Sight.AxisLine guess) throws Unsure {
        return new LeanOdds(this, focal, tiltGuess, rings, squares).mean(guess);
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
        Rings seen = first;
        View at = view;
        for (int round = 0; round < (focal.uncertainty() < LeanOdds.VAGUE ? 1 : AGAIN); round++) {
            View next = with(seen).fit(at.axis());
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
        return with(seen).fit(at.axis());
    }

    private ViewFit with(Rings seen) {
        return new ViewFit(x, y, doubts, width, height, focal, tiltGuess, seen, squares);
    }

    /** The same, what is known of a piece's squares told: the axis then hangs on what is round, and no square's end is asked as a round's. */
    ViewFit with(KnownSquares known) {
        return new ViewFit(x, y, doubts, width, height, focal, tiltGuess, Rings.NONE, known);
    }

    /**
     * What is seen of a piece in a view.
     *
     * @param axis straightened for it
     * @param logFocal log of the focal length over the guess
     * @param tilt radians
     * @param uncertain what focal length and tilt are uncertain by
     * @param start what was done to the start's rim
     * @param end and to the other end's
     */
    View seen(Sight.AxisLine axis, double logFocal, double tilt, double[] uncertain, EndEdge start, EndEdge end)
            throws Unsure {
        SquaredContour contour = contour(axis, logFocal, tilt);
        EndCap first = EndCap.of(contour, true, start);
        EndCap last = EndCap.of(contour, false, end);
        return new View(contour, axis, logFocal, tilt, uncertain[0], uncertain[1], first, last);
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
