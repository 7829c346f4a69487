package turnalike.cli.plan;

import static java.lang.String.format;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import turnalike.job.Plan;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.turning.Cut;
import turnalike.turning.Phase;
import turnalike.turning.SpeedRange;
import turnalike.turning.Turning;
import turnalike.turning.Whip;
import turnalike.units.Length;
import turnalike.units.PlainNumber;
import turnalike.units.Speed;
import turnalike.units.UnitSystem;

/** How the piece is turned, in a few lines: speeds, whip, and the parts of the work. The sheet {@code cut-order} and {@code --json} have each cut. */
final class TurningSummary {
    private final Turning turning;
    private final UnitSystem units;
    private final Pattern pattern;
    private final List<PlacedMember> members;
    private final StringBuilder out = new StringBuilder();

    private TurningSummary(Plan plan) {
        this.turning = plan.turning();
        this.units = plan.job().units();
        this.pattern = plan.job().pattern();
        this.members = pattern.placed();
    }

    static String text(Plan plan) {
        TurningSummary summary = new TurningSummary(plan);
        summary.line("");
        summary.speeds();
        plan.turning().whip().ifPresent(summary::whip);
        summary.cuts();
        summary.cautions();
        return summary.out.toString();
    }

    private void line(String text, Object... values) {
        out.append(format(Locale.ROOT, text, values)).append('\n');
    }

    private void speeds() {
        if (turning.offered().isEmpty()) {
            line("Turning    no speed is offered: the tailstock bows the piece out");
            return;
        }
        line(
                "Turning    %s, set by %s",
                range(turning.speeds().turning(), turning.speeds().turningSteps()),
                turning.speeds().limit().text());
        line("  held     %s", turning.heldText());
        line(
                "  rough    %s",
                range(turning.speeds().roughing(), turning.speeds().roughingSteps()));
    }

    private static String range(SpeedRange range, List<Speed> steps) {
        String listed = steps.isEmpty() ? "" : "; " + Speed.ofLathe(steps);
        return format(
                Locale.ROOT,
                "%s to %s rpm (%s)%s",
                range.from().about(),
                range.to().noFaster(),
                range.surface(),
                listed);
    }

    private void whip(Whip whip) {
        line(
                "  whip     %s; under %s%s it %s at %s; %s",
                turning.isFarFromWhip()
                        ? "no lathe comes near the speed it whips at"
                        : "at about %s rpm%s"
                                .formatted(
                                        rpm(whip.first()),
                                        turning.isBeyondLathes(whip.second())
                                                ? ""
                                                : ", and again at " + rpm(whip.second())),
                whip.cutting().format(units),
                turning.lathe().isHeavyOn(across(whip.most().place())) ? ", a heavy cut on what is so thin," : "",
                whip.most().beyond()
                        ? whip.most().text(units)
                        : "gives way " + whip.most().text(units),
                whip.most().place().isPositive() ? whip.most().place().formatBoth(units) : "its start end",
                !whip.ends().bearsThrust()
                        ? "no tailstock presses on it then"
                        : turning.isFarFromBowing()
                                ? "no tailstock presses hard enough to bow it"
                                : "bows under the tailstock at "
                                        + whip.buckling().formatRoughly(units));
        turning.steady()
                .ifPresent(place -> line("  steady   helps most %s from the datum", place.formatRoughly(units)));
    }

    private Length across(Length place) {
        return pattern.outline().radiusAt(place).times(2);
    }

    /** The wood's stiffness spreads by a fifth, a natural speed by half of that: two figures are sure. */
    private static String rpm(Speed speed) {
        return PlainNumber.toFigures(speed.rpm(), 2);
    }

    /** The cuts by number, one line for each part of the work; quick parts share a line. */
    private void cuts() {
        Map<Integer, List<Cut>> lines = turning.cuts().stream()
                .collect(Collectors.groupingBy(cut -> lineOf(cut.phase()), TreeMap::new, Collectors.toList()));
        lines.values().forEach(cuts -> {
            int first = cuts.get(0).order();
            int last = cuts.get(cuts.size() - 1).order();
            String numbers = first == last ? String.valueOf(first) : first + "-" + last;
            String phases =
                    cuts.stream().map(cut -> cut.phase().text()).distinct().collect(Collectors.joining(", "));
            line("  %-8s %s%s", numbers, phases, told(cuts));
        });
    }

    private static int lineOf(Phase phase) {
        return switch (phase) {
            case HOLDING, SHOULDERS, ROUND, DATUM -> 0;
            case LAYOUT, AWAY -> 1;
            case SIZING -> 2;
            case FROM_TIP, DETAILS -> 3;
            case SLENDER -> 4;
            case TENONS -> 5;
            case THIN -> 6;
            case SANDING, TIP, PARTING -> 7;
        };
    }

    /** The members in the order they are cut, where that matters. */
    private String told(List<Cut> cuts) {
        if (!cuts.get(0).phase().cutsMembers()) {
            return "";
        }
        return ": "
                + cuts.stream()
                        .flatMap(cut -> cut.members().stream())
                        .distinct()
                        .map(index -> members.get(index).caption())
                        .collect(Collectors.joining(", "));
    }

    private void cautions() {
        turning.cautions().forEach(each -> line("  Caution, %s: %s", each.where(), each.what()));
    }
}
