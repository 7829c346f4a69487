package turnalike.turning;

import turnalike.units.Force;

/**
 * How a beam is held and what presses on it.
 *
 * @param ends what holds its ends
 * @param thrust what the tailstock presses along it with; without a support at both ends there is none
 * @param cutting what the tool pushes it aside with
 */
record BeamLoad(Supports ends, EndThrust thrust, Force cutting) {
    /** Between centres that press with nothing. */
    static BeamLoad of(Force cutting) {
        return new BeamLoad(Supports.BETWEEN_CENTRES, EndThrust.NONE, cutting);
    }

    BeamLoad pressing(EndThrust other) {
        return new BeamLoad(ends, other, cutting);
    }

    /** The thrust in newtons, on a piece that bows at that force. */
    double thrustN(double bucklingN) {
        return ends.bearsThrust() ? thrust.newtons(bucklingN) : 0;
    }
}
