package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import turnalike.frame.Moment;
import turnalike.frame.RockingTest;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * A wheel with its hub and rim, built or yet to be.
 *
 * @param spokes mass of all of them
 * @param hub mass of the hub, if its length is told
 * @param rim mass of the rim, if its width and thickness are
 * @param spokesGMm2 the spokes' inertia about the axle, in g·mm²
 * @param restGMm2 the same of hub and rim, of as much as is told
 * @param rest where that is from
 * @param pull what hub and rim pull by themselves, as the job gives it; none where it gives nothing
 * @param segmentsPull what of that the rim's segments pull, where each was weighed
 * @param trialAt how far from the axle a weight is stuck on to see the wheel rock
 * @param revPerMin how fast it will turn, if told
 */
public record WholeWheel(
        Mass spokes,
        Optional<Mass> hub,
        Optional<Mass> rim,
        double spokesGMm2,
        double restGMm2,
        Rest rest,
        Moment pull,
        Optional<Moment> segmentsPull,
        Length trialAt,
        OptionalDouble revPerMin) {
    /** What is stuck on to see a wheel rock; a few coins weigh as much. */
    public static final Mass TRIAL = Mass.ofGrams(10);

    /** Where the inertia of hub and rim is from. */
    public enum Rest {
        /** Both are told by their sizes. */
        BY_SIZES,
        /** Not both are, but the bare wheel was rocked, and the inertia told with that stands for them. */
        BY_ROCKING,
        /** Not both are told, and it is that of what is. */
        IN_PART
    }

    /** {@return the inertia about the axle, in g·mm², of as much as is told} */
    public double inertiaGMm2() {
        return spokesGMm2 + restGMm2;
    }

    /** {@return whether that is the inertia of all of it} */
    public boolean rocks() {
        return rest != Rest.IN_PART;
    }

    /**
     * {@return the period in seconds, there and back, in which the whole wheel rocks by such a pull, on a free and level axle; empty where the
     * inertia of hub and rim is not known, or nothing pulls} Small swings.
     *
     * @param gMm the pull, in g·mm
     */
    public OptionalDouble periodS(double gMm) {
        return rocks() && gMm > 0
                ? OptionalDouble.of(RockingTest.periodS(inertiaGMm2(), new Moment(gMm, pull.at())))
                : OptionalDouble.empty();
    }

    /** {@return the same by what hub and rim pull; the spokes, all as drawn, pull nothing together} */
    public OptionalDouble rockingPeriodS() {
        return periodS(pull.gMm());
    }

    /** {@return how its rocking is worked out; empty where it is not known} */
    public Optional<Working> working() {
        Working rocking = RockingTest.working();
        return rocks()
                ? Optional.of(new Working(
                        "rocking of the whole wheel",
                        "the same the other way round, T = 2π √(I / (g U)), for small swings: " + rocking.how(),
                        rocking.source(),
                        "friction left out, and an axle that drags stops a slow swing; the spokes all as drawn, so that"
                                + " they pull nothing together"))
                : Optional.empty();
    }

    /** {@return what {@link #TRIAL} pulls where it is stuck on, in g·mm} */
    public double trialGMm() {
        return TRIAL.grams() * trialAt.mm();
    }

    /** {@return what all of it weighs, as far as it is told} */
    public Mass mass() {
        return Mass.ofGrams(spokes.grams()
                + hub.map(Mass::grams).orElse(0.0)
                + rim.map(Mass::grams).orElse(0.0));
    }

    /** {@return whether hub and rim are both in its weight} */
    public boolean complete() {
        return hub.isPresent() && rim.isPresent();
    }

    /**
     * {@return the same wheel with spokes of that mass in all, their wood spread as in those drawn}
     *
     * @param other what they weigh together
     */
    WholeWheel withSpokes(Mass other) {
        double by = other.grams() / spokes.grams();
        return new WholeWheel(other, hub, rim, spokesGMm2 * by, restGMm2, rest, pull, segmentsPull, trialAt, revPerMin);
    }

    /** {@return what grades allow it at the speed told; none where none is, or its weight is not known} */
    public List<SpeedGrade.Permitted> permitted() {
        return revPerMin.isPresent() && complete() ? SpeedGrade.permitted(mass(), revPerMin.getAsDouble()) : List.of();
    }

    /** What it weighs, its inertia, and how it would rock, a line each. */
    List<String> lines(UnitSystem units, MassUnit masses) {
        List<String> out = new ArrayList<>();
        out.add(said(
                "  whole    %s: spokes %s%s%s; inertia about the axle %.3g kg·m²%s",
                told(mass(), units, masses),
                told(spokes, units, masses),
                hub.map(each -> ", hub " + told(each, units, masses)).orElse(""),
                rim.map(each -> ", rim " + told(each, units, masses)).orElse(""),
                inertiaGMm2() * 1e-9,
                switch (rest) {
                    case BY_SIZES -> "";
                    case BY_ROCKING -> ", hub and rim as the bare wheel rocked";
                    case IN_PART -> ", of what is told";
                }));
        if (!rocks()) {
            out.add(
                    "           how it would rock follows once the hub's length and the rim's width and thickness are told");
            return out;
        }
        rockingPeriodS()
                .ifPresent(period -> out.add(said(
                        "           by what hub and rim pull, %s toward %s, it would rock in %s there and back",
                        pull.format(), pull.at().formatDirection(), seconds(period))));
        out.add(said(
                "           once balanced, %s stuck on %s from the axle would rock it in %s there and back; a quarter as much takes twice"
                        + " as long",
                trial(units, masses),
                trialAt.formatBoth(units),
                seconds(periodS(trialGMm()).orElseThrow())));
        if (!permitted().isEmpty()) {
            out.add(said(
                    "           for information, at %s turns a minute %s",
                    SpeedGrade.speed(revPerMin.getAsDouble()),
                    permitted().stream().map(this::allowed).collect(Collectors.joining(", "))));
        }
        return out;
    }

    private String allowed(SpeedGrade.Permitted each) {
        return said(
                "balance grade G%.0f allows %s g·mm (a swing of %s)",
                each.grade().mmPerS(),
                Moment.figure(each.gMm()),
                seconds(periodS(each.gMm()).orElseThrow()));
    }

    /** Beside inches, in pounds too; whose scale shows ounces reads pounds first. */
    private static String told(Mass mass, UnitSystem units, MassUnit masses) {
        String pounds = said("%.2f lb", mass.pounds());
        if (masses == MassUnit.OUNCE) {
            return "%s (%s)".formatted(pounds, mass.formatGrams());
        }
        return units == UnitSystem.INCH ? "%s (%s)".formatted(mass.formatGrams(), pounds) : mass.formatGrams();
    }

    /** The lump that is stuck on; beside inches, in ounces too. */
    private static String trial(UnitSystem units, MassUnit masses) {
        if (masses == MassUnit.OUNCE) {
            return "%s (%s)".formatted(TRIAL.formatOunces(1), TRIAL.formatGrams());
        }
        return units == UnitSystem.INCH
                ? "%s (%s)".formatted(TRIAL.formatGrams(), TRIAL.formatOunces(1))
                : TRIAL.formatGrams();
    }

    /** To a tenth of a second, as a watch in the hand tells it at best; slow swings to a whole one. */
    static String seconds(double periodS) {
        return said(periodS < 20 ? "%.1f s" : "%.0f s", periodS);
    }

    private static String said(String text, Object... values) {
        return String.format(Locale.ROOT, text, values);
    }
}
