package turnalike.units;

/**
 * An angle in degrees, anticlockwise positive.
 *
 * @param degrees finite, else {@link IllegalArgumentException}
 */
public record Angle(double degrees) implements Comparable<Angle> {
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
