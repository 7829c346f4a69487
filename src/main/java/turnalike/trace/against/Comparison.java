package turnalike.trace.against;

import java.util.List;
import java.util.Optional;
import turnalike.trace.Profile;
import turnalike.units.Length;

/**
 * A finished piece beside its pattern.
 *
 * @param held from which end its places are counted
 * @param turned whether it lay the other way round in the picture or table: places are then counted from its other end
 * @param eitherWay whether it fits as well the other way round, so that which way it lay is not to be told
 * @param profile the piece as it was seen, the pattern's start end first
 * @param longer how much longer it is than the pattern
 * @param members one for each member of the pattern, in its order
 * @param spots where edges and crests were found, in order along the pattern; those not seen are left out
 * @param off how far the piece lies off the pattern along it, in order; what was not seen is left out
 * @param strays the share of what was seen that lies further off the pattern than any turner would leave it, 0 to 1
 * @param caliper tells diameters at places of choice
 */
public record Comparison(
        Held held,
        boolean turned,
        boolean eitherWay,
        Profile profile,
        Length longer,
        List<MemberOff> members,
        List<Spot> spots,
        List<Off> off,
        double strays,
        Caliper caliper) {
    /** Of a piece of this pattern, made ever so carelessly, less than this lies far off. */
    private static final double MOST_STRAYS = 0.3;

    private static final double SAME_MM = 1e-6;

    public Comparison {
        members = List.copyOf(members);
        spots = List.copyOf(spots);
        off = List.copyOf(off);
    }

    /** The end that the piece and its pattern are laid together at. */
    public enum Held {
        /** The start end. */
        START,
        /** The far end. */
        END
    }

    /**
     * An edge or a crest of the pattern as it was found on the piece.
     *
     * @param planned where the pattern has it, from the start end
     * @param place where the piece has it, from its start end
     */
    public record Spot(Length planned, Figure place) {}

    /**
     * How far the piece's surface lies off the pattern's at a place.
     *
     * @param place from the piece's start end
     * @param much square to the pattern's outline; above zero where wood stands proud of it
     */
    public record Off(Length place, Figure much) {}

    /** Tells a diameter of the piece at a place from its start end; nothing where it was not seen. */
    public interface Caliper {
        /**
         * {@return the piece's diameter there; empty where it was not seen, or not surely enough}
         *
         * @param place from the piece's start end
         */
        Optional<Figure> at(Length place);
    }

    /**
     * {@return where the piece has what the pattern has at that place; empty where it has neither edge nor crest, or it was not seen}
     *
     * @param planned from the pattern's start end
     */
    public Optional<Figure> placeOf(Length planned) {
        return spots.stream()
                .filter(each -> each.planned().minus(planned).abs().mm() < SAME_MM)
                .map(Spot::place)
                .findFirst();
    }

    /** {@return whether so much lies so far off that it is another pattern's piece, or was measured wrongly} */
    public boolean isHardlyThis() {
        return strays > MOST_STRAYS;
    }
}
