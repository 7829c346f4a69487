package turnalike.photo;

/** Reads the light along circles round the axis, as one view of a piece has them. */
final class RingLight {
    /** At so many places of the near half, up to so far to either side, radians round the axis. */
    private static final int COLUMNS = 36;

    private static final double ASIDE = Math.toRadians(72);

    /** A rim of so many pixels is read to the pixel; a larger one as much more coarsely, for the bend is as much larger. */
    private static final double WHOLE = 60;

    /** The outline leaves a rim's place open by so much towards its thinner side and so much the other way, in units. */
    private static final double TOWARDS = 3.2;

    private static final double BACK = 1.4;

    /** Between two samples so many places are looked at. */
    private static final int FINE = 5;

    /** A leap is told from noise of so many codes. */
    private static final double NOISE = 1.5;

    /** A bend is not known better than this, in pixels: beside a step that hides something, and beside one that does not. By trying. */
    private static final double HIDING = 0.3;

    private static final double OPEN = 0.45;

    /** What a rim's radius is off by, in pixels: it moves where the circle is seen as a lean does, the farther along the more. */
    private static final double RADIUS = 0.4;

    private final Picture picture;

    private final Lens lens;

    private final Sight sight;

    RingLight(Picture picture, Lens lens, Sight sight) {
        this.picture = picture;
        this.lens = lens;
        this.sight = sight;
    }

    /**
     * Reads a rim.
     *
     * @param rim where the outline has it
     * @param step the outline's, in pixels: a rim's place is known to some of them
     * @param most for views wrong by up to so much, radians
     */
    Ring read(Shoulders.Rim rim, double step, double most) {
        double pixels = rim.radius() * sight.focal();
        double unit = Math.max(step, pixels / WHOLE);
        int bends = (int) Math.ceil((most * pixels / unit + 0.6) / Ring.STEP);
        double[] curve = new double[2 * bends + 1];
        double far = bends * Ring.STEP;
        int reach = (int) Math.ceil((TOWARDS + far) / StepLight.APART) + 1;
        double[][] leaps = new double[COLUMNS][];
        double[] near = new double[COLUMNS];
        for (int j = 0; j < COLUMNS; j++) {
            double turn = ASIDE * (2.0 * j / (COLUMNS - 1) - 1);
            near[j] = Math.cos(turn);
            leaps[j] = leaps(rim, turn, unit, reach);
        }
        for (int k = 0; k < curve.length; k++) {
            double bend = rim.thin() * (k - bends) * Ring.STEP;
            for (double moved = -BACK; moved <= TOWARDS; moved += Ring.STEP) {
                // Farther along the thicker side's slope the rim is another circle.
                double bent = bend + rim.thin() * rim.place() * rim.slope() * moved;
                double sum = 0;
                for (int j = 0; j < COLUMNS; j++) {
                    sum += between(leaps[j], ((moved + bent * near[j]) / StepLight.APART + reach) * FINE);
                }
                curve[k] = Math.max(curve[k], sum / COLUMNS);
            }
        }
        double doubt = Math.hypot(rim.hides() ? HIDING : OPEN, RADIUS * rim.place()) * Math.sqrt(unit);
        return new Ring(rim.place(), pixels, unit, doubt, curve);
    }

    /** How plainly light leaps at the places around the rim's, at one place round the axis: 1 at most. From its thicker side on. */
    private double[] leaps(Shoulders.Rim rim, double turn, double unit, int reach) {
        double depth = 1 - rim.radius() * Math.cos(turn);
        double across = rim.radius() * Math.sin(turn) / depth;
        double[] light = new double[2 * reach + 1 + StepLight.BEFORE + StepLight.BEHIND];
        double mean = 0;
        for (int i = 0; i < light.length; i++) {
            double aside = rim.thin() * (i - reach - StepLight.BEFORE) * StepLight.APART * unit;
            light[i] = light(rim.place() / depth + aside / sight.focal(), across);
            mean += light[i] / light.length;
        }
        double[] leap = new double[light.length];
        double[] left = new double[light.length];
        StepLight.read(light, leap, left);
        double dark = NOISE / Gamma.slopeAt(Gamma.at(mean));
        double[] plain = new double[2 * reach * FINE + 1];
        double most = 0;
        for (int t = 0; t < plain.length; t++) {
            double at = StepLight.BEFORE + (double) t / FINE;
            double size = cubic(leap, at);
            plain[t] = size * size;
            most = Math.max(most, plain[t]);
        }
        for (int t = 0; t < plain.length; t++) {
            double rest = Math.max(plain[t], cubic(left, StepLight.BEFORE + (double) t / FINE));
            plain[t] *= plain[t] / (rest + dark * dark) / (most + dark * dark);
        }
        return plain;
    }

    /** Smooth between samples: straight lines would make a leap that lies on a sample look the plainest. */
    private static double cubic(double[] v, double at) {
        int i = Math.max(1, Math.min(v.length - 3, (int) at));
        double f = at - i;
        double slope = (v[i + 1] - v[i - 1]) / 2;
        double next = (v[i + 2] - v[i]) / 2;
        double rise = v[i + 1] - v[i];
        return v[i] + f * (slope + f * (3 * rise - 2 * slope - next + f * (slope + next - 2 * rise)));
    }

    private static double between(double[] values, double at) {
        int i = (int) at;
        return i < 0 || i + 1 >= values.length ? 0 : values[i] + (at - i) * (values[i + 1] - values[i]);
    }

    /** Linear light there, between the picture's pixels. */
    private double light(double along, double across) {
        PixelPoint straight = sight.pixel(along, across);
        PixelPoint point = lens.bent(straight.x(), straight.y());
        return picture.lightBetween(point.x(), point.y());
    }
}
