package turnalike.units;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * How fast a piece turns.
 *
 * @param rpm turns in a minute; finite and above zero, else {@link IllegalArgumentException}
 */
public record Speed(double rpm) implements Comparable<Speed> {
    /** Feet in a metre, exact: 1 / 0.3048. */
    public static final double FEET_PER_METRE = 1 / 0.3048;

    public Speed {
        if (!(rpm > 0) || !Double.isFinite(rpm)) {
            throw new IllegalArgumentException("speed must be above zero and finite, was %s rpm".formatted(rpm));
        }
    }

    /**
     * {@return the speed of that many turns in a minute}
     *
     * @param rpm finite and above zero, else {@link IllegalArgumentException}
     */
    public static Speed ofRpm(double rpm) {
        return new Speed(rpm);
    }

    /**
     * {@return the speed of whatever turns by that many radians in a second}
     *
     * @param radians angular speed, finite and above zero, else {@link IllegalArgumentException}
     */
    public static Speed ofRadiansPerSecond(double radians) {
        return new Speed(radians * 60 / (2 * Math.PI));
    }

    /**
     * {@return how fast the wood passes the tool at that diameter: π · d · n, in metres a second}
     *
     * @param diameter the wood's where the tool cuts
     */
    public double surfaceMetresPerSecond(Length diameter) {
        return Math.PI * diameter.mm() / 1000 * rpm / 60;
    }

    /**
     * {@return the same in feet a minute}
     *
     * @param diameter the wood's where the tool cuts
     */
    public double surfaceFeetPerMinute(Length diameter) {
        return surfaceMetresPerSecond(diameter) * FEET_PER_METRE * 60;
    }

    /**
     * {@return this speed that many times over}
     *
     * @param factor finite and above zero, else {@link IllegalArgumentException}
     */
    public Speed times(double factor) {
        return new Speed(rpm * factor);
    }

    /** {@return in turns a minute as a turner tells it, in fifties, below 1000 in tens, below 100 in ones: the nearest} */
    public String about() {
        return String.format(Locale.ROOT, "%.0f", step() * Math.rint(rpm / step()));
    }

    /** {@return the same, never above this speed} */
    public String noFaster() {
        return String.format(Locale.ROOT, "%.0f", step() * Math.floor(rpm / step() * (1 + 1e-9)));
    }

    private double step() {
        return rpm < 100 ? 1 : rpm < 1000 ? 10 : 50;
    }

    /**
     * {@return some of a lathe's own speeds, in words: {@code lathe steps 500, 700}}
     *
     * @param steps at least one, in the order they are told
     */
    public static String ofLathe(List<Speed> steps) {
        return (steps.size() == 1 ? "lathe step " : "lathe steps ")
                + steps.stream()
                        .map(step -> String.format(Locale.ROOT, "%.0f", step.rpm()))
                        .collect(Collectors.joining(", "));
    }

    /**
     * {@return the slower of the two}
     *
     * @param other the other one
     */
    public Speed orSlower(Speed other) {
        return compareTo(other) <= 0 ? this : other;
    }

    @Override
    public int compareTo(Speed other) {
        return Double.compare(rpm, other.rpm);
    }
}
