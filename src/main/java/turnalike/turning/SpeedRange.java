package turnalike.turning;

import java.util.Locale;
import turnalike.units.Length;
import turnalike.units.Speed;

/**
 * Speeds from slowest to fastest.
 *
 * @param from the slowest
 * @param to the fastest; not below {@code from}, else {@link IllegalArgumentException}
 * @param diameter the widest part that passes the tool at these speeds, across the corners where it is square
 */
public record SpeedRange(Speed from, Speed to, Length diameter) {
    public SpeedRange {
        if (from.compareTo(to) > 0) {
            throw new IllegalArgumentException(
                    "a range of speeds must rise, was %s to %s rpm".formatted(from.rpm(), to.rpm()));
        }
    }

    /** {@return how fast the widest part passes the tool: {@code 2.1 to 4.3 m/s, 413 to 846 ft/min}} */
    public String surface() {
        return String.format(
                Locale.ROOT,
                "%.1f to %.1f m/s, %.0f to %.0f ft/min",
                from.surfaceMetresPerSecond(diameter),
                to.surfaceMetresPerSecond(diameter),
                from.surfaceFeetPerMinute(diameter),
                to.surfaceFeetPerMinute(diameter));
    }

    /** The same with nothing above a speed; when that leaves nothing, from half that speed to that speed. */
    SpeedRange limited(Speed most) {
        Speed fastest = to.orSlower(most);
        return new SpeedRange(from.compareTo(fastest) <= 0 ? from : fastest.times(0.5), fastest, diameter);
    }

    boolean holds(Speed speed) {
        return from.compareTo(speed) <= 0 && speed.compareTo(to) <= 0;
    }
}
