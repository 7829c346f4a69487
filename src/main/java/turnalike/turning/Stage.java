package turnalike.turning;

import java.util.Optional;
import turnalike.units.Force;
import turnalike.units.Speed;

/**
 * The piece as it stands in the lathe after some of the cuts.
 *
 * @param name what has been done: {@code roughed cylinder}
 * @param first its first natural speed under the thrust; free of it where the thrust is not {@link #borne}
 * @param second its second natural speed, likewise
 * @param buckling the end force that bows it
 * @param most where it gives way most under the cutting force, and how far; likewise
 * @param thrust what the tailstock presses with; empty for nothing
 */
public record Stage(String name, Speed first, Speed second, Force buckling, Whip.Sag most, Optional<Force> thrust) {
    /**
     * A stage that nothing presses along.
     *
     * @param name as of the record
     * @param first as of the record
     * @param second as of the record
     * @param buckling as of the record
     * @param most as of the record
     */
    public Stage(String name, Speed first, Speed second, Force buckling, Whip.Sag most) {
        this(name, first, second, buckling, most, Optional.empty());
    }

    /** {@return whether the piece stays straight under the thrust} Where it does not, no speed is sound. */
    public boolean borne() {
        return thrust.map(force -> EndThrust.isBorne(force.newtons(), buckling.newtons()))
                .orElse(true);
    }
}
