package turnalike.year;

import java.util.Optional;
import turnalike.wood.Equilibrium;
import turnalike.wood.Moisture;

/**
 * A moisture that wood comes to at one end of the year.
 *
 * @param moisture what it comes to
 * @param from the air it follows from; empty when the moisture itself was told
 */
public record Season(Moisture moisture, Optional<Equilibrium> from) {
    /**
     * {@return the season of that moisture}
     *
     * @param moisture as told or measured
     */
    public static Season of(Moisture moisture) {
        return new Season(moisture, Optional.empty());
    }

    /**
     * {@return the season of wood left long in that air}
     *
     * @param equilibrium the air, with the moisture that wood comes to in it
     */
    public static Season in(Equilibrium equilibrium) {
        return new Season(equilibrium.moisture(), Optional.of(equilibrium));
    }
}
