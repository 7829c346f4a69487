package turnalike.settings;

import turnalike.units.Length;

/**
 * What one mark's place may be off by. Worst case: the errors of all its steps the same way, k·e; root-sum-square: √k·e, what is to be
 * expected when they are independent (F. Scholz, Tolerance Stack Analysis Methods, Boeing, December 1995).
 *
 * @param mark index of the mark
 * @param steps from the nearest given mark, 0 for an end and a shoulder line; the stick's one transfer counts as one
 * @param worst k·e
 * @param rootSumSquare √k·e
 * @param fromTheStick whether it is laid out from the marking stick, without dividers
 */
public record MarkError(int mark, int steps, Length worst, Length rootSumSquare, boolean fromTheStick) {
    static MarkError of(int mark, int steps, Length markError, boolean fromTheStick) {
        return new MarkError(mark, steps, markError.times(steps), markError.times(Math.sqrt(steps)), fromTheStick);
    }
}
