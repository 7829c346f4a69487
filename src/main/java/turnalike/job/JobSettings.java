package turnalike.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import turnalike.pattern.Member;
import turnalike.pattern.PlacedMember;
import turnalike.settings.CaliperSetting;
import turnalike.settings.Calipers;
import turnalike.settings.DividerOutcome;
import turnalike.settings.DividerPlan;
import turnalike.settings.DividerProblem;
import turnalike.settings.Dividers;
import turnalike.settings.OtherUses;
import turnalike.settings.SizedDiameter;
import turnalike.units.Length;
import turnalike.units.Working;

/**
 * How the pattern is laid out and sized.
 *
 * @param dividers the openings that reach every mark
 * @param calipers the openings that size every diameter but those too thin for one
 * @param tooThin what is worked by eye since no caliper is set to so little, each member's sizes once, in the order of the run
 * @param otherUses for each divider setting, what else it is good for
 * @param tenons the wrenches that size each tenon which is measured
 * @param workings how they were found
 */
public record JobSettings(
        DividerPlan dividers,
        List<CaliperSetting> calipers,
        List<SizedDiameter> tooThin,
        List<OtherUses> otherUses,
        List<TenonFit> tenons,
        List<Working> workings) {
    public JobSettings {
        calipers = List.copyOf(calipers);
        tooThin = List.copyOf(tooThin);
        otherUses = List.copyOf(otherUses);
        tenons = List.copyOf(tenons);
        workings = List.copyOf(workings);
    }

    /** @param search finds the openings; it must answer with a plan whenever {@link Dividers#obstacles} names none */
    static JobSettings of(Job job, Function<DividerProblem, DividerOutcome> search) {
        DividerOutcome outcome = search.apply(problem(job));
        // A job whose wishes leave no plan is refused when it is read.
        DividerPlan dividers = outcome.findPlan().orElseThrow();
        List<CaliperSetting> calipers = calipers(job);
        List<Working> workings = new ArrayList<>(dividers.workings());
        workings.add(caliperWorking(job));
        List<TenonFit> fits = TenonFit.list(job.pattern());
        if (!fits.isEmpty()) {
            workings.add(TenonFit.WORKING);
        }
        List<SizedDiameter> tooThin = measured(job).stream()
                .filter(each -> !Calipers.canSize(each.finished()))
                .distinct()
                .toList();
        return new JobSettings(dividers, calipers, tooThin, otherUses(job, dividers, calipers), fits, workings);
    }

    static DividerProblem problem(Job job) {
        return job.wishes().dividers(job.pattern(), job.tolerances(), job.units());
    }

    /** Diameters that the blank is too small for share the widest opening there is wood for. */
    private static List<CaliperSetting> calipers(Job job) {
        Map<Length, CaliperSetting> out = new LinkedHashMap<>();
        Calipers.group(sized(job), job.tolerances().diameter(), job.cutting().sizing()).stream()
                .map(each -> each.atMost(job.largestRound()))
                .forEach(each -> out.merge(each.opening(), each, CaliperSetting::with));
        return List.copyOf(out.values());
    }

    private static Working caliperWorking(Job job) {
        String tolerance = job.tolerances().diameter().format(job.units());
        return new Working(
                "caliper openings",
                ("finished diameter + sizing allowance; one opening serves every diameter for which it is within %s of that and not"
                                + " below the finished size; the fewest that serve all, none wider than the blank cleans up to;"
                                + " what is finished below %s is left to the eye")
                        .formatted(tolerance, Calipers.LEAST.format(job.units())),
                Working.COMMON_PRACTICE + "; fewest by the greedy rule for interval stabbing, from memory",
                "exact; sized over, then cut to the line; the sanding allowance lies within the sizing allowance");
    }

    private static List<OtherUses> otherUses(Job job, DividerPlan dividers, List<CaliperSetting> calipers) {
        List<Length> widths =
                job.pattern().members().stream().map(Member::length).toList();
        return dividers.settings().stream()
                .map(setting -> OtherUses.of(setting.opening(), widths, calipers, DividerProblem.MATCH_TOLERANCE))
                .toList();
    }

    private static List<SizedDiameter> sized(Job job) {
        return measured(job).stream()
                .filter(each -> Calipers.canSize(each.finished()))
                .toList();
    }

    /** Every diameter that is measured; what is done by eye is not. */
    private static List<SizedDiameter> measured(Job job) {
        List<SizedDiameter> out = new ArrayList<>();
        for (PlacedMember placed : job.pattern().placed()) {
            if (!placed.member().details().byEye()) {
                for (Member.Diameter diameter : placed.diameters()) {
                    out.add(new SizedDiameter(placed.number() - 1, diameter.size()));
                }
            }
        }
        return out;
    }
}
