package turnalike.trace.against;

import java.util.List;
import java.util.Optional;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;

/**
 * One member of the pattern as it was found on the piece. What was not seen, or not surely enough to say anything of, is empty.
 *
 * @param placed the member as the pattern has it
 * @param stands how far it stands from where it should: of a member with a crest the crest, else the middle between its ends; above zero
 *     toward the far end
 * @param longer how much longer it is
 * @param thicker how much thicker it is at its crest, in diameter; of a member without a crest on average
 * @param deeper of a hollow, how much deeper its bottom lies below its rims, along a radius; of others nothing
 * @param ends how much thicker it is where it starts and where it ends, in diameter, one for each
 * @param stations how many of what was seen or measured lay on it
 */
public record MemberOff(
        PlacedMember placed,
        Optional<Figure> stands,
        Optional<Figure> longer,
        Optional<Figure> thicker,
        Optional<Figure> deeper,
        List<Optional<Figure>> ends,
        int stations) {
    public MemberOff {
        ends = List.copyOf(ends);
    }

    /** {@return whether anything of it was seen surely enough to speak of} */
    public boolean isSeen() {
        return stands.isPresent() || thicker.isPresent();
    }

    /** {@return where it starts on the pattern} */
    public Length from() {
        return placed.start();
    }
}
