package turnalike.web.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import turnalike.drawing.piece.CutDrawing;
import turnalike.drawing.svg.Svg;
import turnalike.job.Plan;
import turnalike.pattern.Tool;
import turnalike.turning.Cut;
import turnalike.turning.Phase;
import turnalike.turning.SpeedRange;
import turnalike.turning.Turning;
import turnalike.units.Length;
import turnalike.units.Speed;
import turnalike.units.UnitSystem;

/**
 * One cut as it is read from two metres.
 *
 * @param number from 1
 * @param phase the part of the work
 * @param tool what to take in hand
 * @param setting the opening, in the job's units
 * @param other the same in the other units; empty without a setting
 * @param what what to do
 * @param place from where to where along the piece
 * @param speed how fast the lathe may turn for it; empty where it stands still, or no speed is offered
 * @param caution what to beware of; empty for none
 * @param drawing the place in the piece
 */
public record BenchStep(
        int number,
        String phase,
        String tool,
        Optional<String> setting,
        String other,
        String what,
        String place,
        String speed,
        String caution,
        Svg drawing) {
    static BenchStep of(Plan plan, CutDrawing drawing, Cut cut) {
        UnitSystem units = plan.job().units();
        return new BenchStep(
                cut.order(),
                cut.phase().text(),
                cut.tool().text(),
                cut.setting().map(each -> each.format(units)),
                cut.setting().map(each -> each.format(units.other())).orElse(""),
                cut.what(),
                place(cut, units),
                speed(plan.turning(), cut),
                cut.caution(),
                cut.strides().isEmpty()
                        ? drawing.svg(cut.what(), cut.members(), cut.from(), cut.to(), cut.places())
                        : drawing.steps(cut.what(), cut.strides(), cut.places()));
    }

    /** While it is out of round the speed for roughing; from the first cut on the round, the slower one of a piece that whips. */
    private static String speed(Turning turning, Cut cut) {
        boolean still = cut.tool() == Tool.HOLD || cut.tool() == Tool.SAW;
        return still
                ? ""
                : turning.offered()
                        .map(speeds -> cut.phase().compareTo(Phase.ROUND) <= 0
                                ? speed(speeds.roughing(), speeds.roughingSteps())
                                : speed(speeds.turning(), speeds.turningSteps()))
                        .orElse("");
    }

    private static String speed(SpeedRange range, List<Speed> steps) {
        return "no faster than %s rpm%s"
                .formatted(range.to().noFaster(), steps.isEmpty() ? "" : "; " + Speed.ofLathe(steps));
    }

    private static String place(Cut cut, UnitSystem units) {
        boolean several = cut.sizes() || cut.strides().size() > 1;
        if (several && cut.places().size() > 1) {
            return "at %s from the start end"
                    .formatted(cut.places().stream()
                            .map(each -> each.format(units))
                            .collect(Collectors.joining(", ")));
        }
        boolean oneLine = cut.to().minus(cut.from()).abs().compareTo(Length.ofMm(0.01)) < 0;
        return oneLine
                ? "at %s from the start end".formatted(cut.from().format(units))
                : "from %s to %s, measured from the start end"
                        .formatted(cut.from().format(units), cut.to().format(units));
    }
}
