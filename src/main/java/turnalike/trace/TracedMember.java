package turnalike.trace;

import java.util.List;
import turnalike.pattern.Member;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * A member found in an original.
 *
 * @param member with its sizes
 * @param from where it starts, from the piece's start end
 * @param miss how far what was seen lies off it; nothing of a member of which nothing was seen
 * @param uncertain whether it rests on what was not seen or hardly seen, or may as well be of another kind
 * @param rivalled whether it is uncertain only because another kind explains nearly as well what a picture shows of it
 * @param guessed the keys of those of its sizes that nothing read tells: they are what its form makes of what was read farther off
 */
public record TracedMember(
        Member member, Length from, Miss miss, boolean uncertain, boolean rivalled, List<String> guessed) {
    public TracedMember {
        guessed = List.copyOf(guessed);
    }

    /** {@return where it ends} */
    public Length to() {
        return from.plus(member.length());
    }

    /**
     * How far stations lie off an outline, each measured to the nearest point of it, walls of shoulders included.
     *
     * @param rms the root of the mean square
     * @param worst the greatest
     * @param worstAt the place of that station; of no meaning where none is off
     * @param stations how many there were
     */
    public record Miss(Length rms, Length worst, Length worstAt, int stations) {
        /** {@return whether every station lies on the outline: no place is the worst then} */
        public boolean isNone() {
            return !worst.isPositive();
        }

        /**
         * {@return the same in a sentence of which what was taken to be known is the rest}
         *
         * @param units to print in
         */
        public String words(UnitSystem units) {
            if (isNone()) {
                return "All %d places read lie on the members".formatted(stations);
            }
            return "Off by %s in the mean over %d places, at worst %s at %s"
                    .formatted(
                            rms.formatMeasuredBoth(units),
                            stations,
                            worst.formatMeasuredBoth(units),
                            worstAt.formatBoth(units));
        }
    }
}
