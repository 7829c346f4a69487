package turnalike.photo;

/** How carefully what was traced is looked at before it is told. */
enum Care {
    /** As much as is known to go well with what stands alone on its ground; of an end that something lies beside, one half may tell enough. */
    USUAL(1, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY),
    /** So that something better is looked for, if there is any: a flat end's rim must be seen on both sides. */
    BOTH_SIDES(1, Care.MOST_SKEW_AT_RIM, Care.MOST_SKEW, Double.POSITIVE_INFINITY),
    /** For what was picked from among much else by what it looks like: what is not the piece, or not all of it, may be as slender. */
    PICKED(0.6, Care.MOST_SKEW, Care.MOST_SKEW, Care.MOST_SKEW);

    /**
     * An end that is no flat round whose rim tells where it stands, and whose two sides differ by more than this, in pixels or in softnesses, is not seen
     * for what it is: of ends seen well the worst had 1.06, those that went wrong began at 2.4.
     */
    private static final double MOST_SKEW = 1.5;

    /** The same of a flat round whose rim was seen: of those seen well, wood on wood among them, the worst had 2.4, those that went wrong began at 3.5. */
    private static final double MOST_SKEW_AT_RIM = 3;

    /** A flat end the log of whose bulge is known no better was not seen for one: of ends seen well on a stranger's pictures the worst had 0.16. */
    private static final double HARDLY_SEEN = 0.2;

    private final double share;

    private final double atRim;

    /** Of a rim that is chamfered or rounded over, which a shadow on one side can feign, no more than of what has no rim. */
    private final double atBroken;

    private final double atSquare;

    Care(double share, double atRim, double atBroken, double atSquare) {
        this.share = share;
        this.atRim = atRim;
        this.atBroken = atBroken;
        this.atSquare = atSquare;
    }

    /** Of all limits, what is let pass. */
    double share() {
        return share;
    }

    /** By how much an end's two sides may differ, in pixels or in softnesses. */
    double mostSkew(EndCap cap) {
        if (!cap.isPlaced() || (cap.flat() && cap.uncertainty() > HARDLY_SEEN)) {
            return share * MOST_SKEW;
        }
        return share * (cap.flat() ? cap.edge().equals(EndEdge.SHARP) ? atRim : atBroken : atSquare);
    }
}
