package turnalike.pieces.mend;

import turnalike.units.Length;

/**
 * A member that may be cut.
 *
 * @param member its index in the run, as the job counts
 * @param name what it is and where, to follow {@code off the}: {@code long taper between marks 5 and 7}
 * @param from where it begins, from the start end
 * @param to where it ends, beyond {@code from}
 * @param removal what a cut takes off
 * @param room how deep a cut may go; the mass must still fall with the diameter there
 * @param weight its likeness weight, zero or above; {@link IllegalArgumentException} as for the others
 */
public record Mendable(int member, String name, Length from, Length to, Removal removal, CutRange room, double weight) {
    public Mendable {
        if (to.compareTo(from) <= 0 || !(weight >= 0) || !Double.isFinite(weight)) {
            throw new IllegalArgumentException("member %d cannot be mended: from %s mm to %s mm, weight %s"
                    .formatted(member, from.mm(), to.mm(), weight));
        }
        if (!(removal.slope(room.risked().mm()) > 0)) {
            throw new IllegalArgumentException("member %d is cut through at %s mm"
                    .formatted(member, room.risked().mm()));
        }
    }
}
