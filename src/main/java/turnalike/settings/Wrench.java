package turnalike.settings;

import java.util.Optional;
import turnalike.units.Length;

/**
 * An open-end wrench used as a fixed gauge.
 *
 * @param name its size as it is stamped: {@code 1/2 in}, {@code 13 mm}
 * @param nominal the width across flats it is made for
 * @param opening how wide it truly opens, where a standard says
 */
public record Wrench(String name, Length nominal, Optional<Opening> opening) {
    /**
     * The least and the most that a wrench of that size may open.
     *
     * @param least between the jaws
     * @param most between the jaws; not below the least, else {@link IllegalArgumentException}
     */
    public record Opening(Length least, Length most) {
        public Opening {
            if (least.compareTo(most) > 0) {
                throw new IllegalArgumentException(
                        "least opening must not exceed the most, were %s and %s mm".formatted(least.mm(), most.mm()));
            }
        }
    }
}
