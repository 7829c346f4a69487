package turnalike.units;

import java.util.List;
import java.util.Locale;

/**
 * An angle in degrees, anticlockwise positive.
 *
 * @param degrees finite, else {@link IllegalArgumentException}
 */
public record Angle(double degrees) implements Comparable<Angle> {
    private static final List<String> QUARTERS = List.of("", "1/4", "1/2", "3/4");

    /** What reckoning may be off by, in quarters of a degree: a lean that comes out of tangents and was meant to be whole. */
    private static final double JUST_THAT = 1e-6;

    public Angle {
        if (!Double.isFinite(degrees)) {
            throw new IllegalArgumentException("angle must be finite, was %s degrees".formatted(degrees));
        }
        degrees += 0.0; // see Length
    }

    /**
     * {@return the angle of that many degrees}
     *
     * @param degrees finite, else {@link IllegalArgumentException}; anticlockwise positive
     */
    public static Angle ofDegrees(double degrees) {
        return new Angle(degrees);
    }

    /**
     * {@return the angle of that many radians}
     *
     * @param radians finite, else {@link IllegalArgumentException}; anticlockwise positive
     */
    public static Angle ofRadians(double radians) {
        return new Angle(Math.toDegrees(radians));
    }

    /** {@return the angle in radians, degrees · π / 180} */
    public double radians() {
        return Math.toRadians(degrees);
    }

    /**
     * {@return the angle as it is set in a shop: {@code 36°}, {@code 22 1/2°} or {@code 11 1/4°} where it is just that, else to a tenth,
     * {@code 51.4°}}
     */
    public String format() {
        double quarters = degrees * 4;
        long nearest = Math.round(quarters);
        if (Math.abs(quarters - nearest) > JUST_THAT || Math.abs(degrees) >= 1e6) {
            String tenths = String.format(Locale.ROOT, "%.1f°", degrees);
            return tenths.equals("-0.0°") ? "0.0°" : tenths;
        }
        long whole = Math.abs(nearest) / 4;
        String part = QUARTERS.get((int) (Math.abs(nearest) % 4));
        String text = part.isEmpty() ? Long.toString(whole) : whole == 0 ? part : whole + " " + part;
        return (nearest < 0 ? "-" : "") + text + "°";
    }

    /** {@return the direction to a whole degree, {@code 328°}, as told of a wheel, where no tenth can be seen; never {@code 360°}} */
    public String formatDirection() {
        return Math.round(aroundOnce().degrees) % 360 + "°";
    }

    /** {@return the same direction in [0°, 360°)} */
    public Angle aroundOnce() {
        double turned = degrees % 360;
        if (turned < 0) {
            turned += 360;
        }
        return new Angle(turned >= 360 ? 0 : turned); // a tiny negative angle rounds up to 360 exactly
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(degrees, other.degrees);
    }
}
