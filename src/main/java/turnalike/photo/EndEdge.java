package turnalike.photo;

/**
 * What was done to the rim of a flat end: nothing, a chamfer at 45 degrees, or rounding over by a quarter of a circle; or whether the end is no flat one but
 * a dome, half an ellipsoid, which has no rim.
 *
 * @param chamfer how wide the chamfer is, as a share of the piece's radius right behind it; 0 where there is none
 * @param round the rounding's radius, as the same share; 0 where there is none
 * @param eased how far the chamfer's corners are taken off, from 0, where they are sharp, to 1, where it is a quarter of a circle
 * @param domed whether it is a dome
 * @param steep whether the flank right behind a sharp rim runs steeply, as behind the foot of a bun
 */
record EndEdge(double chamfer, double round, double eased, boolean domed, boolean steep) {
    /** Rounded over by more than this, an end has hardly a face that could tell anything. */
    private static final double BALL = 0.69;

    static final EndEdge SHARP = new EndEdge(0, 0, 0, false, false);

    static final EndEdge DOME = new EndEdge(0, 0, 0, true, false);

    static final EndEdge STEEP = new EndEdge(0, 0, 0, false, true);

    static EndEdge chamfered(double share) {
        return eased(share, 0);
    }

    static EndEdge eased(double share, double eased) {
        return new EndEdge(share, 0, eased, false, false);
    }

    static EndEdge rounded(double share) {
        return new EndEdge(0, share, 0, false, false);
    }

    boolean isBall() {
        return round > BALL;
    }

    /** How wide the chamfer or the rounding is, a share of the radius right behind it. */
    double width() {
        return chamfer + round;
    }

    /** A chamfer or a rounding of the same kind, so wide. */
    EndEdge asWide(double share) {
        return round > 0 ? rounded(share) : eased(share, eased);
    }

    /** The flat face's radius as a share of the piece's right behind the edge. */
    double face() {
        return 1 - width();
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
