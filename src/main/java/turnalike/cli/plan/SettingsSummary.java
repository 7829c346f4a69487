package turnalike.cli.plan;

import static java.lang.String.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import turnalike.job.ByEyeSizes;
import turnalike.job.GivenWords;
import turnalike.job.Job;
import turnalike.job.JobSettings;
import turnalike.job.Plan;
import turnalike.job.TenonFit;
import turnalike.settings.CaliperSetting;
import turnalike.settings.DividerPlan;
import turnalike.settings.DividerSetting;
import turnalike.settings.DividerStep;
import turnalike.settings.GivenMarks;
import turnalike.settings.MarkError;
import turnalike.settings.OtherUses;
import turnalike.settings.Wrench;
import turnalike.units.Article;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The settings of a plan as text: dividers, what the stick gives instead, the error of each mark, calipers. */
final class SettingsSummary {
    private final Plan plan;
    private final JobSettings settings;
    private final Job job;
    private final UnitSystem units;
    private final StringBuilder out = new StringBuilder();

    private SettingsSummary(Plan plan) {
        this.plan = plan;
        this.settings = plan.settings();
        this.job = plan.job();
        this.units = plan.job().units();
    }

    static String text(Plan plan) {
        SettingsSummary summary = new SettingsSummary(plan);
        summary.dividers();
        summary.stick();
        summary.errors();
        summary.calipers();
        summary.tenons();
        return summary.out.toString();
    }

    private void line(String text, Object... values) {
        out.append(format(Locale.ROOT, text, values)).append('\n');
    }

    private void dividers() {
        DividerPlan dividers = settings.dividers();
        String fewest = dividers.fewestProven()
                ? "no fewer will do"
                : "fewer may do, at least %d; ended %s"
                        .formatted(dividers.lowerBound(), dividers.endedBy().words());
        line("");
        GivenWords.stickAlone(plan).ifPresent(text -> line("Layout     %s", text));
        line(
                "Dividers   %s (%s); worst mark error %s",
                Article.count(dividers.settings().size(), "opening"),
                fewest,
                dividers.worst().formatFineUpBoth(units));
        for (int i = 0; i < dividers.settings().size(); i++) {
            DividerSetting each = dividers.settings().get(i);
            String pinned = each.pinned() ? "pinned  " : "";
            String steps = each.steps().isEmpty() ? "serves no mark here" : steps(each);
            line("  %-22s %s%s", each.opening().formatBoth(units), pinned, steps);
            String uses = uses(settings.otherUses().get(i));
            if (!uses.isEmpty()) {
                line("  %-22s serves again: %s", "", uses);
            }
        }
        line(
                "           marks are numbered from 0 at the start end to %d at the far end;",
                plan.marks().size() - 1);
        line("           strike every mark of a round before any of the next");
    }

    /** {@code round 1: 0>2 17>15  round 3: 14>12}: what the opening strikes in each round. */
    private static String steps(DividerSetting setting) {
        StringBuilder out = new StringBuilder();
        int round = 0;
        for (DividerStep step : setting.steps()) {
            if (step.round() != round) {
                round = step.round();
                out.append(out.length() == 0 ? "" : "  ")
                        .append("round ")
                        .append(round)
                        .append(':');
            }
            out.append(' ').append(step.from()).append('>').append(step.to());
        }
        return out.toString();
    }

    /** Two or more members of that width, or one opening for dividers and calipers; one width alone is no second use. */
    private String uses(OtherUses uses) {
        List<String> parts = new ArrayList<>();
        if (uses.widths().size() > 1) {
            parts.add("width of " + members(uses.widths()));
        }
        for (int caliper : uses.calipers()) {
            parts.add("calipers for " + members(settings.calipers().get(caliper).members()));
        }
        return String.join("; ", parts);
    }

    private String members(List<Integer> indices) {
        return indices.stream()
                .map(index -> job.pattern().placed().get(index).caption())
                .collect(Collectors.joining(", "));
    }

    /** What stands before any step besides the ends, and why. */
    private void stick() {
        GivenMarks given = settings.dividers().given();
        marks("shoulder lines, struck with square and knife from the stick before mounting:", given.shoulders());
        marks("taken from the marking stick, as you wish:", given.wished());
        String fewest = given.fewestProven()
                ? "no fewer will do"
                : "fewer may do, at least %d".formatted(given.leastOutOfReach());
        marks(
                "taken from the marking stick, since %s (%s):".formatted(plan.whyOutOfReach(), fewest),
                given.outOfReach());
    }

    private void marks(String head, List<Integer> marks) {
        if (!marks.isEmpty()) {
            line("  %s", head);
        }
        for (int mark : marks) {
            line(
                    "  %-22s mark %d, %s",
                    plan.marks().get(mark).place().formatBoth(units),
                    mark,
                    plan.marks().get(mark).label());
        }
    }

    /** Marks as many steps out stand on one line. */
    private void errors() {
        Map<Integer, List<MarkError>> bySteps = new TreeMap<>();
        for (MarkError error : settings.dividers().errors()) {
            if (error.steps() > 0) {
                bySteps.computeIfAbsent(error.steps(), steps -> new ArrayList<>())
                        .add(error);
            }
        }
        for (List<MarkError> alike : bySteps.values()) {
            int steps = alike.get(0).steps();
            Length miss = alike.stream()
                    .map(error -> error.miss().abs())
                    .max(Comparator.naturalOrder())
                    .orElse(Length.ZERO);
            line(
                    "  %d step%s: off by %s at worst%s, %s root-sum-square: mark%s %s",
                    steps,
                    steps == 1 ? "" : "s",
                    range(alike, MarkError::worst, Length::formatFineUp),
                    miss.isPositive()
                            ? " (up to %s of it since openings miss)".formatted(miss.formatFineUp(units))
                            : "",
                    range(alike, MarkError::rootSumSquare, Length::formatFine),
                    alike.size() == 1 ? "" : "s",
                    alike.stream().map(each -> String.valueOf(each.mark())).collect(Collectors.joining(" ")));
        }
    }

    /** {@code 0.4 mm} where all are told alike, else {@code 0.4 mm to 0.53 mm}. */
    private String range(
            List<MarkError> errors, Function<MarkError, Length> figure, BiFunction<Length, UnitSystem, String> told) {
        List<Length> figures = errors.stream().map(figure).sorted().toList();
        String least = told.apply(figures.get(0), units);
        String most = told.apply(figures.get(figures.size() - 1), units);
        return least.equals(most) ? most : least + " to " + most;
    }

    private void calipers() {
        line("");
        line(
                "Calipers   %s, %s, within %s",
                Article.count(settings.calipers().size(), "opening"),
                job.cutting().sizing().isPositive()
                        ? "sizing allowance %s included"
                                .formatted(job.cutting().sizing().formatBoth(units))
                        : "at finished sizes, nothing left on for sanding",
                job.tolerances().diameter().formatBoth(units));
        for (CaliperSetting each : settings.calipers()) {
            line("  %-22s %s", each.opening().formatBoth(units), members(each.members()));
        }
        ByEyeSizes.find(plan).ifPresent(text -> line("  %-22s %s", "by eye", text));
    }

    private void tenons() {
        if (settings.tenons().isEmpty()) {
            return;
        }
        line("");
        line("Tenons     by open-end wrench: one that just drops over gives a snug fit");
        for (TenonFit each : settings.tenons()) {
            String given = each.holeGiven() ? "" : ", taken as the tenon's own size";
            line(
                    "  %-22s hole %s%s",
                    members(List.of(each.member())), each.hole().formatBoth(units), given);
            line("  %-22s %s", "", wrenches(each));
        }
        line("           %s", TenonFit.CAUTION);
    }

    private String wrenches(TenonFit tenon) {
        if (tenon.wrenches().isEmpty()) {
            return "no common wrench has that size: set calipers to the hole";
        }
        return tenon.wrenches().stream().map(this::wrench).collect(Collectors.joining(", or "));
    }

    private String wrench(Wrench wrench) {
        return wrench.opening()
                .map(opening -> "%s wrench, open %s to %s"
                        .formatted(
                                wrench.name(),
                                opening.least().formatFine(units),
                                opening.most().formatFine(units)))
                .orElse(wrench.name() + " wrench, a little over nominal");
    }
}
