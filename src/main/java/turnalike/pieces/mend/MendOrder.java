package turnalike.pieces.mend;

import java.util.List;
import turnalike.units.Length;
import turnalike.units.Mass;

/**
 * A piece to be brought to weight.
 *
 * @param piece its label
 * @param mass what it weighs; above zero
 * @param target what it should weigh; above zero
 * @param near how near is near enough: the scale's resolution, or the slack in the set's tolerance; zero or above
 * @param tolerance the job's diameter tolerance, in which the cost of a cut is counted; above zero
 * @param smallest the smallest cut worth setting up for; 0 for any, {@link IllegalArgumentException} below, as for the others
 * @param members what may be cut
 */
public record MendOrder(
        String piece, Mass mass, Mass target, Mass near, Length tolerance, Length smallest, List<Mendable> members) {
    public MendOrder {
        if (!(mass.grams() > 0) || !(target.grams() > 0) || near.grams() < 0) {
            throw new IllegalArgumentException("masses must be above zero, were %s g to %s g near %s g"
                    .formatted(mass.grams(), target.grams(), near.grams()));
        }
        if (!tolerance.isPositive() || smallest.mm() < 0) {
            throw new IllegalArgumentException(
                    "no tolerance %s mm or smallest cut %s mm".formatted(tolerance.mm(), smallest.mm()));
        }
        members = List.copyOf(members);
    }
}
