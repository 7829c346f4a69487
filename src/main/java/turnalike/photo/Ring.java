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

    /**
     * By how much more likely a bend is for each part of a whole leap that it has more than another, as a log. Of a rim that leaps by 0.6 one that leaps by 0.57
     * is two fifths as likely.
     */
    private static final double TELLING = 30;

    /** So often what leaps best is no rim but a shadow's border or a streak of the wood: then any bend is as likely. */
    private static final double ASTRAY = 0.2;

    /** The doubt is laid out to so many of its standard deviations. */
    private static final double FAR = 4;

    double highest() {
        double most = 0;
        for (double each : curve) {
            most = Math.max(most, each);
        }
        return most;
    }

    /** How likely each bend is, up to a factor, at the curve's steps. */
    double[] likely() {
        double most = highest();
        double[] leaps = new double[curve.length];
        double sum = 0;
        for (int k = 0; k < leaps.length; k++) {
            leaps[k] = Math.exp(TELLING * (curve[k] - most));
            sum += leaps[k];
        }
        double deviation = doubt / unit / STEP;
        int reach = (int) Math.ceil(FAR * deviation);
        double[] bell = new double[2 * reach + 1];
        double whole = 0;
        for (int k = 0; k < bell.length; k++) {
            bell[k] = Math.exp(-0.5 * (k - reach) * (k - reach) / (deviation * deviation));
            whole += bell[k];
        }
        double[] likely = new double[leaps.length];
        for (int k = 0; k < likely.length; k++) {
            double smooth = 0;
            for (int i = Math.max(0, k - reach); i <= Math.min(leaps.length - 1, k + reach); i++) {
                smooth += leaps[i] * bell[k - i + reach];
            }
            likely[k] = (1 - ASTRAY) * smooth / whole / sum + ASTRAY / leaps.length;
        }
        return likely;
    }

    /** How likely the view is wrong by so many radians, by a table of {@link #likely}; nobody looked beyond its ends. */
    double likely(double[] table, double error) {
        int middle = table.length / 2;
        double at = middle - error * pixels / unit / STEP;
        if (!(at >= 0 && at < table.length - 1)) {
            return ASTRAY / table.length;
        }
        int k = (int) at;
        return table[k] + (at - k) * (table[k + 1] - table[k]);
    }
}
