package turnalike.job.set;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.frame.Moment;
import turnalike.frame.RockingTest;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Size;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.Working;

/**
 * How the bare wheel, hub and rim without spokes, rocks about its axle; from it follows what it pulls by itself, see {@link RockingTest}. Its
 * inertia is given, or follows from its rim taken as a thin ring.
 *
 * @param inertiaGMm2 its inertia about the axle in g·mm²; positive
 * @param ofThinRing whether that was taken from the rim's mass and radius alone
 * @param periodS one full swing there and back, in seconds; positive
 * @param amplitude how far to one side it swung from rest, 0° to 60°
 * @param restsAtBottom the direction, in the wheel's own angles, that settles lowest
 */
public record Rocking(double inertiaGMm2, boolean ofThinRing, double periodS, Angle amplitude, Angle restsAtBottom) {
    static final String MEND =
            "write it like {\"period_s\": 6.4, \"rim_mass_g\": 2300, \"rim_radius\": 400, \"rests_at_deg\": 90}";

    private static final Key<Number> PERIOD = Key.needed(
                    "period_s", KeyType.number(0.05, 3600), "one swing there and back: time ten")
            .asked(KeySection.BARE_WHEEL, "Rocking: there and back in, s", "time ten swings");

    private static final Key<Number> RESTS_AT = Key.needed(
                    "rests_at_deg", KeyType.number(-360, 720), "which direction of the wheel settles lowest")
            .asked(KeySection.BARE_WHEEL, "Rocking: it rests at, degrees", "");

    private static final Key<Number> AMPLITUDE = Key.may(
                    "amplitude_deg", KeyType.number(0, 60, 0), "how far it was pushed aside", "0")
            .asked(KeySection.BARE_WHEEL, "Rocking: pushed by, degrees", "left empty: 0");

    private static final Key<Number> RIM_MASS = Key.may(
                    "rim_mass_g",
                    KeyType.number(0.1, 1e7),
                    "of the rim, taken as a thin ring of `rim_radius`",
                    "`inertia_g_mm2` must stand in their place")
            .asked(KeySection.BARE_WHEEL, "Rocking: the rim weighs, g", "");

    private static final Key<Size> RIM_RADIUS = Key.may(
                    "rim_radius", KeyType.aboveZero(), "of that ring", "`inertia_g_mm2` must stand in their place")
            .asked(KeySection.BARE_WHEEL, "Rocking: the rim's radius", "");

    private static final Key<Number> INERTIA = Key.may(
                    "inertia_g_mm2",
                    KeyType.number(1, 1e15),
                    "of the bare wheel about its axle, in place of the rim",
                    "as the ring's, m·r²")
            .asked(KeySection.BARE_WHEEL, "Rocking: or its inertia, g·mm²", "in place of the rim");

    static final Group KEYS = new Group(
            List.of(PERIOD, RESTS_AT, AMPLITUDE, RIM_MASS, RIM_RADIUS, INERTIA),
            List.of(List.of(INERTIA.name()), List.of(RIM_MASS.name(), RIM_RADIUS.name())));

    private record Inertia(double gMm2, boolean ofThinRing) {}

    static Optional<Rocking> read(Fields fields) {
        Optional<Double> period = fields.number(PERIOD);
        Optional<Double> amplitude = fields.number(AMPLITUDE);
        Optional<Double> restsAt = fields.number(RESTS_AT);
        boolean given = fields.has(INERTIA);
        boolean massGiven = fields.has(RIM_MASS);
        boolean ofRing = fields.has(RIM_RADIUS) || massGiven;
        Optional<Inertia> inertia = given == ofRing ? neitherOrBoth(fields, given) : inertia(fields, given, period);
        fields.refuseUnknown(KEYS);
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
            return fields.number(INERTIA).map(gMm2 -> new Inertia(gMm2, false));
        }
        Optional<Double> massG = fields.number(RIM_MASS.name(), RIM_MASS.type());
        Optional<Length> radius = fields.needed(RIM_RADIUS);
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
                            fields.at(PERIOD.name()),
                            "is quicker than any ring of that radius swings, was " + periodS,
                            "time one full swing there and back, and check the radius");
            return false;
        }
        return true;
    }

    /** {@return what the bare wheel pulls by itself: {@link RockingTest#unbalance} of these figures} */
    public Moment unbalance() {
        return RockingTest.unbalance(inertiaGMm2, periodS, amplitude, restsAtBottom);
    }

    /** {@return how {@link #unbalance} was found, with these figures} */
    public Working working() {
        Working general = RockingTest.working();
        Moment found = unbalance();
        String figures = String.format(
                Locale.ROOT,
                "; I = %.6g g·mm², T = %.6g s, θ = %s, so U = %.6g g·mm toward %s",
                inertiaGMm2,
                periodS,
                amplitude.format(),
                found.gMm(),
                found.at().format());
        String ring = ofThinRing ? "; I is the rim's mass × radius², a thin ring: the hub is left out" : "";
        return new Working(general.figure(), general.how() + figures, general.source(), general.sureness() + ring);
    }
}
