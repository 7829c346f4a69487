package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import turnalike.job.Job;
import turnalike.job.Plan;
import turnalike.job.set.Misfit;
import turnalike.pattern.Warning;
import turnalike.turning.SpeedRange;
import turnalike.turning.Turning;
import turnalike.turning.Whip;
import turnalike.units.PlainNumber;
import turnalike.units.Speed;
import turnalike.units.UnitSystem;

/** What a plan says of turning, as the card of the order of cuts shows it. */
final class TurningFacts {
    private TurningFacts() {}

    static CutCardContent content(Plan plan) {
        Job job = plan.job();
        return new CutCardContent(
                job.title(),
                "%s, held %s: marks are numbered from 0 at the start end"
                        .formatted(job.pattern().name(), plan.turning().heldText()),
                job.units(),
                job.pattern(),
                facts(plan),
                plan.turning().cuts(),
                cautions(plan));
    }

    private static List<BenchCardContent.Fact> facts(Plan plan) {
        Turning turning = plan.turning();
        UnitSystem units = plan.job().units();
        List<BenchCardContent.Fact> out = new ArrayList<>();
        turning.offered()
                .ifPresentOrElse(
                        speeds -> {
                            out.add(speed("round, no faster than", speeds.turning(), speeds.turningSteps()));
                            out.add(speed("roughing, no faster than", speeds.roughing(), speeds.roughingSteps()));
                        },
                        () -> out.add(new BenchCardContent.Fact("speed", "none", "the tailstock bows the piece out")));
        turning.whip().ifPresent(whip -> turning.steady().ifPresent(place -> out.add(steady(turning, whip, units))));
        return out;
    }

    private static BenchCardContent.Fact speed(String name, SpeedRange range, List<Speed> steps) {
        String own = steps.isEmpty()
                ? String.format(
                        Locale.ROOT,
                        "from %s; %.1f m/s at the widest",
                        range.from().about(),
                        range.to().surfaceMetresPerSecond(range.diameter()))
                : Speed.ofLathe(steps);
        return new BenchCardContent.Fact(name, range.to().noFaster() + " rpm", own);
    }

    private static BenchCardContent.Fact steady(Turning turning, Whip whip, UnitSystem units) {
        return new BenchCardContent.Fact(
                "a steady helps most at",
                whip.steady().formatRoughly(units),
                turning.isFarFromWhip()
                        ? "it bends long before it whips"
                        : "whips at about %s rpm"
                                .formatted(PlainNumber.toFigures(whip.first().rpm(), 2)));
    }

    private static List<String> cautions(Plan plan) {
        List<String> out = new ArrayList<>();
        plan.frame().stream()
                .flatMap(fit -> fit.misfits().stream())
                .filter(Misfit::forbids)
                .forEach(misfit -> out.add(misfit.sentence()));
        plan.turning().cautions().stream().map(Warning::sentence).forEach(out::add);
        return out;
    }
}
