package turnalike.photo;

/**
 * In which directions of the upright picture colour is softer than brightness: a JPEG may keep it for every other column and row only.
 *
 * @param acrossVariance of the softening along a row, square pixels
 * @param downVariance along a column
 */
record CoarseColour(double acrossVariance, double downVariance) {
    /** The mean of two pixels, a third, and drawing a straight line between such means, two thirds. */
    private static final double VARIANCE = 1.0 / 3 + 2.0 / 3;

    static CoarseColour of(PictureFile file, int orientation) {
        boolean swapped = orientation >= 5;
        boolean across = swapped ? file.coarseDown() : file.coarseAcross();
        boolean down = swapped ? file.coarseAcross() : file.coarseDown();
        return new CoarseColour(across ? VARIANCE : 0, down ? VARIANCE : 0);
    }

    /** In the picture made so many times smaller. */
    CoarseColour smaller(int factor) {
        return new CoarseColour(acrossVariance / (factor * factor), downVariance / (factor * factor));
    }

    /** The softening along a line, a standard deviation in pixels. */
    double along(double[] direction) {
        return Math.sqrt(acrossVariance * direction[0] * direction[0] + downVariance * direction[1] * direction[1]);
    }
}
