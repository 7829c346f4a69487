package turnalike.photo;

/**
 * What rounded ends leave open. A ball's flank hides its tip from a camera aside of it: the piece may reach to the pole of what is seen, as a finial's
 * ball does, or be sawn off flat anywhere from there to the last place that a ray touches, as a foot's is. The pole is taken for its end.
 *
 * @param startMm from the start's pole to the first place that was seen; 0 where the end stands for sure
 * @param endMm the same at the other end
 * @param lengthMm between the poles, as given
 */
record EndsUnseen(double startMm, double endMm, double lengthMm) {
    /**
     * One standard deviation as a share of what is unseen, if half of such ends reach to the pole and the others are sawn off anywhere: √(½·⅓); a
     * choice of ours, there being both.
     */
    static final double SPREAD = 0.41;

    /**
     * {@return what that comes to at a place, one standard deviation in millimetres} With a piece so much shorter in the picture, the length being
     * given, radii are the larger by its share of the length, and places move away from that end, there by all of it and at the other end by none.
     *
     * @param placeMm from the start
     * @param radiusMm there
     * @param slope of the outline there
     */
    double openMm(double placeMm, double radiusMm, double slope) {
        double share = placeMm / lengthMm;
        double atStart = SPREAD * startMm * (radiusMm / lengthMm + slope * (1 - share));
        double atEnd = SPREAD * endMm * (radiusMm / lengthMm - slope * share);
        return Math.hypot(atStart, atEnd);
    }
}
