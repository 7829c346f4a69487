package turnalike.job.read;

import java.util.Optional;
import turnalike.frame.RockingTest;
import turnalike.job.Rocking;
import turnalike.job.keys.FrameKeys.WheelKeys;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;

/** A rocking test from JSON: the wheel's inertia is given, or follows from its rim taken as a thin ring. */
final class RockingReader {
    static final String MEND =
            "write it like {\"period_s\": 6.4, \"rim_mass_g\": 2300, \"rim_radius\": 400, \"rests_at_deg\": 90}";

    private RockingReader() {}

    private record Inertia(double gMm2, boolean ofThinRing) {}

    static Optional<Rocking> read(Fields fields) {
        Optional<Double> period = fields.number(WheelKeys.PERIOD);
        Optional<Double> amplitude = fields.number(WheelKeys.AMPLITUDE);
        Optional<Double> restsAt = fields.number(WheelKeys.RESTS_AT);
        boolean given = fields.has(WheelKeys.INERTIA);
        boolean massGiven = fields.has(WheelKeys.RIM_MASS);
        boolean ofRing = fields.has(WheelKeys.RIM_RADIUS) || massGiven;
        Optional<Inertia> inertia = given == ofRing ? neitherOrBoth(fields, given) : inertia(fields, given, period);
        fields.refuseUnknown(WheelKeys.ROCKING.type());
        return period.flatMap(t -> amplitude.flatMap(wide -> restsAt.flatMap(at -> inertia.map(
                each -> new Rocking(each.gMm2(), each.ofThinRing(), t, Angle.ofDegrees(wide), Angle.ofDegrees(at))))));
    }

    private static Optional<Inertia> neitherOrBoth(Fields fields, boolean both) {
        fields.reading()
                .problem(
                        fields.where(),
                        both ? "has an inertia and a rim to take it from" : "has no inertia",
                        both
                                ? "give inertia_g_mm2, or rim_mass_g with rim_radius, not both"
                                : "give inertia_g_mm2, or rim_mass_g with rim_radius to take the rim as a ring");
        return Optional.empty();
    }

    private static Optional<Inertia> inertia(Fields fields, boolean given, Optional<Double> periodS) {
        if (given) {
            return fields.number(WheelKeys.INERTIA).map(gMm2 -> new Inertia(gMm2, false));
        }
        Optional<Double> massG = fields.number(WheelKeys.RIM_MASS.name(), WheelKeys.RIM_MASS.type());
        Optional<Length> radius = fields.needed(WheelKeys.RIM_RADIUS);
        return massG.flatMap(
                m -> radius.filter(r -> periodS.map(t -> canSwing(fields, t, r)).orElse(true))
                        .map(r -> new Inertia(RockingTest.ringInertiaGMm2(Mass.ofGrams(m), r), true)));
    }

    /** A ring's balance point lies within it, so U ≤ m·R and T ≥ 2π √(R/g): quicker is a half swing counted as a whole one. */
    private static boolean canSwing(Fields fields, double periodS, Length radius) {
        double quickestS = 2 * Math.PI * Math.sqrt(radius.mm() / RockingTest.GRAVITY_MM_S2);
        if (periodS < quickestS) {
            fields.reading()
                    .problem(
                            fields.at(WheelKeys.PERIOD.name()),
                            "is quicker than any ring of that radius swings, was " + periodS,
                            "time one full swing there and back, and check the radius");
            return false;
        }
        return true;
    }
}
