package turnalike.frame;

import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Working;

/**
 * The unbalance of a wheel found by letting it rock about its own axle. The heavy spot settles at the bottom; pushed a little aside the
 * wheel swings as a physical pendulum of period T = 2π √(I / (g·U)), so U = 4π² I / (g·T²).
 * Source: the compound pendulum, Encyclopaedia Britannica, 11th ed., "Mechanics". Friction is left out. A swing of amplitude θ lengthens T by
 * 1 + θ²/16 + 11θ⁴/3072 (from memory), which is taken out; below 60° that leaves less than 0.1 % in U.
 */
public final class RockingTest {
    /** Standard gravity in mm/s², exact by convention (from memory). The local value differs by up to 0.3 %. */
    public static final double GRAVITY_MM_S2 = 9806.65;

    private RockingTest() {}

    /**
     * The unbalance of a wheel that rocks with that period.
     *
     * @param inertiaGMm2 the wheel's inertia about the axle, in g·mm²; positive
     * @param periodS one full swing there and back, in seconds; positive
     * @param amplitude how far to one side it swung from rest, 0° to 60°
     * @param restsAtBottom the direction, in the wheel's own angles, that settles lowest
     * @return the unbalance, toward the spot that settles lowest
     */
    public static Moment unbalance(double inertiaGMm2, double periodS, Angle amplitude, Angle restsAtBottom) {
        if (!(inertiaGMm2 > 0) || !(periodS > 0)) {
            throw new IllegalArgumentException(
                    "inertia and period must be positive, were %s g·mm² and %s s".formatted(inertiaGMm2, periodS));
        }
        if (amplitude.degrees() < 0 || amplitude.degrees() > 60) {
            throw new IllegalArgumentException("amplitude must be 0 to 60 degrees, was " + amplitude.degrees());
        }
        double smallSwingS = periodS / lengthening(amplitude.radians());
        double gMm = 4 * Math.PI * Math.PI * inertiaGMm2 / (GRAVITY_MM_S2 * smallSwingS * smallSwingS);
        return new Moment(gMm, restsAtBottom);
    }

    /**
     * {@return the period in seconds of small swings of a wheel of that inertia (g·mm²) and unbalance; the inverse of {@link #unbalance}}
     *
     * @param inertiaGMm2 about the axle
     * @param unbalance the pull that makes the wheel swing
     */
    public static double periodS(double inertiaGMm2, Moment unbalance) {
        return 2 * Math.PI * Math.sqrt(inertiaGMm2 / (GRAVITY_MM_S2 * unbalance.gMm()));
    }

    /**
     * {@return the inertia in g·mm² of a thin ring, mass × radius²: enough for a rim, whose section is small beside its radius}
     *
     * @param mass the ring's
     * @param meanRadius half way between its inner and outer edge
     */
    public static double ringInertiaGMm2(Mass mass, Length meanRadius) {
        return mass.grams() * meanRadius.mm() * meanRadius.mm();
    }

    /** {@return how the figure is found, for the page} */
    public static Working working() {
        return new Working(
                "unbalance from rocking",
                "U = 4π² I / (g T²), T shortened by 1 + θ²/16 + 11θ⁴/3072 for the width of the swing",
                "compound pendulum, Encyclopaedia Britannica, 11th ed., Mechanics; the correction from memory",
                "friction left out; U is as sure as I, and twice as unsure as T");
    }

    private static double lengthening(double amplitudeRad) {
        double square = amplitudeRad * amplitudeRad;
        return 1 + square / 16 + 11 * square * square / 3072;
    }
}
