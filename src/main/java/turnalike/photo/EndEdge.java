package turnalike.photo;

/**
 * What was done to the rim of a flat end: nothing, a chamfer at 45 degrees, or rounding over by a quarter of a circle; or whether the end is no flat one but
 * a dome, half an ellipsoid, which has no rim.
 *
 * @param chamfer how wide the chamfer is, as a share of the piece's radius right behind it; 0 where there is none
 * @param round the rounding's radius, as the same share; 0 where there is none
 * @param open how much of the log of the end's bulge it leaves open that this is not known better, one standard deviation
 * @param domed whether it is a dome
 * @param byBulge whether it is as wide as the end's bulge asks in the view, which then tells nothing of that
 * @param eased how far the chamfer's corners are taken off, from 0, where they are sharp, to 1, where it is a quarter of a circle
 */
record EndEdge(double chamfer, double round, double open, boolean domed, boolean byBulge, double eased) {
    static final EndEdge SHARP = new EndEdge(0, 0, 0, false, false, 0);

    static final EndEdge DOME = new EndEdge(0, 0, 0, true, false, 0);

    static EndEdge chamfered(double share) {
        return new EndEdge(share, 0, 0, false, false, 0);
    }

    static EndEdge eased(double share, double eased) {
        return new EndEdge(share, 0, 0, false, false, eased);
    }

    static EndEdge rounded(double share) {
        return new EndEdge(0, share, 0, false, false, 0);
    }

    EndEdge opened(double log) {
        return new EndEdge(chamfer, round, log, domed, byBulge, eased);
    }

    EndEdge asItBulges() {
        return new EndEdge(chamfer, round, open, domed, true, eased);
    }

    /** Whether it is of the same kind, whatever its width. */
    boolean isLike(EndEdge other) {
        return chamfer > 0 == other.chamfer > 0 && round > 0 == other.round > 0 && domed == other.domed;
    }

    boolean isSharp() {
        return chamfer == 0 && round == 0 && !domed;
    }

    /** The flat face's radius as a share of the piece's right behind the edge. */
    double face() {
        return 1 - chamfer - round;
    }

    /**
     * Where the end stands along the axis. Of a rim that nothing rounds the near point is seen, at the depth 1 − r: the place is X of it times that. Over a
     * rounded one slides the ray that touches its circle in the plane of camera and axis, whose middle lies deeper by the face's radius and farther back by
     * the rounding's; over an eased chamfer the ray that grazes the outermost of its circles.
     *
     * @param apex X where the contour crosses the axis
     * @param behind the piece's radius right behind the edge, in units of the distance
     */
    double place(double apex, double behind) {
        if (eased > 0) {
            return Math.signum(apex) * SeenRim.Eased.place(Math.abs(apex), behind, this);
        }
        return apex * (1 - behind * face()) - Math.signum(apex) * behind * round * (Math.sqrt(1 + apex * apex) - 1);
    }
}
