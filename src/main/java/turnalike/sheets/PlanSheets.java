package turnalike.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import turnalike.drawing.gauge.MarkingStick;
import turnalike.job.ByEyeSizes;
import turnalike.job.FinishedSizes;
import turnalike.job.GivenWords;
import turnalike.job.Job;
import turnalike.job.LengthPlan;
import turnalike.job.Plan;
import turnalike.job.TenonFit;
import turnalike.pattern.Warning;
import turnalike.units.Article;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.units.WeighingScale;

/** How each of a plan's sheets is made; {@link PlanSheet} lists them. */
final class PlanSheets {
    private static final double LIGHT_G = 10;

    private PlanSheets() {}

    /** The card that hangs by the lathe. */
    static Sheet benchCard(Plan plan, Paper paper) {
        return each(plan, one -> BenchCard.of(content(one), paper));
    }

    /** Made for each length that the pieces are made in, one after the other; once where all are as drawn. */
    private static Sheet each(Plan plan, Function<Plan, Sheet> making) {
        List<Sheet> sheets = LengthPlan.each(plan).stream().map(making).toList();
        return sheets.size() == 1 ? sheets.get(0) : Sheet.joined(plan.job().title(), sheets);
    }

    /** The full-size marking stick, in strips that fit the paper. */
    static Sheet markingStick(Plan plan, Paper paper) {
        MarkingStick.Edge edge = plan.job().wishes().notched() ? MarkingStick.Edge.NOTCHES : MarkingStick.Edge.LINES;
        return each(plan, one -> StickSheets.of(one.job().pattern(), one.job().units(), edge, within(one), paper));
    }

    /** The full-size checking template, in strips that fit the paper. */
    static Sheet checkingTemplate(Plan plan, Paper paper) {
        return each(
                plan, one -> TemplateSheets.of(one.job().pattern(), one.job().units(), within(one), paper));
    }

    /** As true as a mark must be; no truer than a rule tells. */
    static Length within(Plan plan) {
        Length mark = plan.job().tolerances().mark();
        return mark.compareTo(StickSheets.WITHIN) > 0 ? mark : StickSheets.WITHIN;
    }

    /** The order of cuts, each with a drawing of its place. */
    static Sheet cutOrder(Plan plan, Paper paper) {
        return each(plan, one -> CutCard.of(TurningFacts.content(one), paper));
    }

    private static BenchCardContent content(Plan plan) {
        Job job = plan.job();
        String subtitle = "%s: %s from %s; %s"
                .formatted(
                        job.pattern().name(),
                        Article.count(job.count(), "good piece"),
                        Article.count(plan.stock().spares().blanks(), "blank"),
                        job.wood().text());
        return new BenchCardContent(
                job.title(),
                subtitle,
                job.units(),
                job.pattern(),
                facts(plan),
                Stream.concat(GivenWords.stickAlone(plan).stream(), GivenWords.list(plan).stream())
                        .toList(),
                dividers(plan),
                calipers(plan),
                ByEyeSizes.sentence(plan),
                cautions(plan));
    }

    private static List<BenchCardContent.Fact> facts(Plan plan) {
        UnitSystem units = plan.job().units();
        Length size = plan.job().pattern().stock().size();
        Mass mass = plan.solid().mass();
        WeighingScale scale = plan.job().tolerances().weighing();
        // In whole grams a pawn and a knob weigh the same.
        boolean light = mass.grams() < LIGHT_G;
        return List.of(
                fact("length", plan.job().pattern().length(), units),
                fact("blank, across", size, units),
                new BenchCardContent.Fact(
                        "weight",
                        light ? scale.reading(mass) : scale.large(mass),
                        String.format(
                                Locale.ROOT,
                                "%s at %.0f kg/m³",
                                light ? scale.other(mass) : scale.largeOther(mass),
                                plan.solid().density().kgPerM3())),
                fact("balance from datum", plan.solid().balance(), units));
    }

    private static BenchCardContent.Fact fact(String name, Length length, UnitSystem units) {
        return new BenchCardContent.Fact(name, length.format(units), length.format(units.other()));
    }

    private static List<BenchCardContent.Divider> dividers(Plan plan) {
        return plan.settings().dividers().settings().stream()
                .map(each -> new BenchCardContent.Divider(
                        each.opening(),
                        each.steps().stream()
                                .map(step -> new BenchCardContent.Step(step.from(), step.to(), step.round()))
                                .toList()))
                .toList();
    }

    private static List<BenchCardContent.Caliper> calipers(Plan plan) {
        return plan.settings().calipers().stream()
                .map(each -> new BenchCardContent.Caliper(
                        each.opening(),
                        FinishedSizes.text(plan, each),
                        each.members().stream()
                                .map(index ->
                                        plan.job().pattern().placed().get(index).caption())
                                .collect(Collectors.joining(", "))))
                .toList();
    }

    private static List<String> cautions(Plan plan) {
        List<String> out = new ArrayList<>();
        out.add(
                "Guards on, face shield on, stock sound and tight, start slow. Stop the lathe to caliper what is still square or out of round.");
        tenons(plan).ifPresent(out::add);
        for (Warning warning : plan.warnings()) {
            out.add(warning.sentence());
        }
        return out;
    }

    private static Optional<String> tenons(Plan plan) {
        String wrenches = plan.settings().tenons().stream()
                .filter(tenon -> !tenon.wrenches().isEmpty())
                .map(tenon -> "member %d with %s open-end wrench"
                        .formatted(
                                tenon.member() + 1,
                                Article.with(tenon.wrenches().get(0).name())))
                .collect(Collectors.joining(", "));
        return wrenches.isEmpty()
                ? Optional.empty()
                : Optional.of("Size the tenons: %s; %s.".formatted(wrenches, TenonFit.CAUTION));
    }
}
