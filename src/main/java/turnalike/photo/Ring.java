package turnalike.photo;

/**
 * What the light says of one circle round the axis: how well it leaps along the circle's picture, if the view were wrong by so much that the picture
 * bends by so many pixels more than it should.
 *
 * @param place along the axis, from the foot of the perpendicular out of the camera
 * @param pixels the circle's radius
 * @param unit pixels to a unit of the curve's
 * @param doubt what the bend is uncertain by in any case, in pixels
 * @param curve how well it leaps, from 0 to 1, by the bend in steps of {@link #STEP} units, 0 in the middle
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Ring(double place, double pixels, double unit, double doubt, double[] curve) {
    static final double STEP = 0.2;

    /** The nearest peak counts if it lies within so many units. */
    private static final double NEAR = 1;

    /** How much of the curve's height is one standard deviation's fall; by trying. */
    private static final double FALL = 0.002;

    /**
     * A peak of the curve.
     *
     * @param error radians by which the view is wrong there: the lean, and the focal length times the place
     * @param uncertainty of that
     * @param height how well the light leaps there
     */
    record Peak(double error, double uncertainty, double height) {}

    /** Where the curve stands for the view as it is. */
    private int middle() {
        return curve.length / 2;
    }

    private double at(double error) {
        return middle() - error * pixels / unit / STEP;
    }

    /** How well it leaps if the view is wrong by so much; 0 where nobody looked. */
    double value(double error) {
        double at = at(error);
        if (!(at >= 0 && at < curve.length - 1)) {
            return 0;
        }
        int i = (int) at;
        return curve[i] + (at - i) * (curve[i + 1] - curve[i]);
    }

    double highest() {
        double most = 0;
        for (double each : curve) {
            most = Math.max(most, each);
        }
        return most;
    }

    /** The peak next to where the view is thought to be; one without height where there is none. */
    Peak peak(double error) {
        if (curve.length < 3) {
            return new Peak(error, 1, 0);
        }
        int from = (int) Math.round(at(error));
        int i = Math.max(1, Math.min(curve.length - 2, from));
        while (i > 1 && curve[i - 1] > curve[i]) {
            i--;
        }
        while (i < curve.length - 2 && curve[i + 1] > curve[i]) {
            i++;
        }
        double bend = curve[i - 1] - 2 * curve[i] + curve[i + 1];
        if (Math.abs(i - from) * STEP > NEAR || curve[i] < curve[i - 1] || curve[i] < curve[i + 1] || !(bend < 0)) {
            return new Peak(error, 1, 0);
        }
        double top = i + 0.5 * (curve[i - 1] - curve[i + 1]) / bend;
        double wide = STEP * unit * Math.sqrt(2 * FALL / -bend);
        return new Peak((middle() - top) * STEP * unit / pixels, Math.hypot(doubt, wide) / pixels, curve[i]);
    }
}
