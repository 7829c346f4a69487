package turnalike.job.read;

import java.util.Optional;
import turnalike.frame.RockingTest;
import turnalike.job.Rocking;
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
        Optional<Double> period = fields.number("period_s", 0.05, 3600);
        Optional<Double> amplitude = fields.numberOr("amplitude_deg", 0, 0, 60);
        Optional<Double> restsAt = fields.number("rests_at_deg", -360, 720);
        boolean given = fields.has("inertia_g_mm2");
        boolean massGiven = fields.has("rim_mass_g");
        boolean ofRing = fields.has("rim_radius") || massGiven;
        Optional<Inertia> inertia = given == ofRing ? neitherOrBoth(fields, given) : inertia(fields, given, period);
        fields.refuseUnknown();
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
            return fields.number("inertia_g_mm2", 1, 1e15).map(gMm2 -> new Inertia(gMm2, false));
        }
        Optional<Double> massG = fields.number("rim_mass_g", 0.1, 1e7);
        Optional<Length> radius = fields.positive("rim_radius");
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
                            fields.at("period_s"),
                            "is quicker than any ring of that radius swings, was " + periodS,
                            "time one full swing there and back, and check the radius");
            return false;
        }
        return true;
    }
}
