package turnalike.job;

import java.util.Locale;
import turnalike.frame.Moment;
import turnalike.frame.RockingTest;
import turnalike.units.Angle;
import turnalike.units.Working;

/**
 * How the bare wheel, hub and rim without spokes, rocks about its axle; from it follows what it pulls by itself, see {@link RockingTest}.
 *
 * @param inertiaGMm2 its inertia about the axle in g·mm²; positive
 * @param ofThinRing whether that was taken from the rim's mass and radius alone
 * @param periodS one full swing there and back, in seconds; positive
 * @param amplitude how far to one side it swung from rest, 0° to 60°
 * @param restsAtBottom the direction, in the wheel's own angles, that settles lowest
 */
public record Rocking(double inertiaGMm2, boolean ofThinRing, double periodS, Angle amplitude, Angle restsAtBottom) {

    /** What the bare wheel pulls by itself. */
    public Moment unbalance() {
        return RockingTest.unbalance(inertiaGMm2, periodS, amplitude, restsAtBottom);
    }

    public Working working() {
        Working general = RockingTest.working();
        Moment found = unbalance();
        String figures = String.format(
                Locale.ROOT,
                "; I = %.6g g mm², T = %.6g s, θ = %.3g°, so U = %.6g g mm toward %.4g°",
                inertiaGMm2,
                periodS,
                amplitude.degrees(),
                found.gMm(),
                found.at().degrees());
        String ring = ofThinRing ? "; I is the rim's mass × radius², a thin ring: the hub is left out" : "";
        return new Working(general.figure(), general.how() + figures, general.source(), general.sureness() + ring);
    }
}
