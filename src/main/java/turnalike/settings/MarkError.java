package turnalike.settings;

import turnalike.units.Length;

/**
 * What one mark's place may be off by: what is known, by how much the openings on its path miss their distances, and what is not, the
 * errors of its steps. At worst these are all the same way, k·e for k steps; as root-sum-square √k·e, what is to be expected when they are
 * independent (F. Scholz, Tolerance Stack Analysis Methods, Boeing, December 1995). What is known is added to either as it stands.
 *
 * @param mark index of the mark
 * @param steps from the nearest given mark, 0 for an end and a shoulder line; the stick's one transfer counts as one
 * @param miss what the openings on its path put it off by, positive toward the far end: the sum over the steps of opening less distance,
 *     counted the other way for a step toward the start end
 * @param worst |miss| + k·e
 * @param rootSumSquare |miss| + √k·e
 * @param fromTheStick whether it is laid out from the marking stick, without dividers
 */
public record MarkError(int mark, int steps, Length miss, Length worst, Length rootSumSquare, boolean fromTheStick) {
    static MarkError of(int mark, int steps, Length markError, boolean fromTheStick) {
        return of(mark, steps, Length.ZERO, markError, fromTheStick);
    }

    static MarkError of(int mark, int steps, Length miss, Length markError, boolean fromTheStick) {
        return new MarkError(
                mark,
                steps,
                miss,
                markError.times(steps).plus(miss.abs()),
                markError.times(Math.sqrt(steps)).plus(miss.abs()),
                fromTheStick);
    }

    /** {@return √k·e, what the steps alone are expected to add to what is known} */
    public Length scatter() {
        return rootSumSquare.minus(miss.abs());
    }
}
