package turnalike.cli.plan;

import static java.lang.String.format;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import turnalike.cli.kit.PaperChoice;
import turnalike.job.Job;
import turnalike.job.MemberWeight;
import turnalike.job.Plan;
import turnalike.job.YearWords;
import turnalike.job.set.Misfit;
import turnalike.outline.Section;
import turnalike.sheets.Paper;
import turnalike.sheets.PlanSheet;
import turnalike.stock.StockPlan;
import turnalike.units.Article;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;

/** A plan on one screen, in the job's units with the other in reach. */
public final class PlanSummary {
    private static final int HEAVIEST_SHOWN = 4;

    private final Plan plan;
    private final Job job;
    private final UnitSystem units;
    private final StringBuilder out = new StringBuilder();

    private PlanSummary(Plan plan) {
        this.plan = plan;
        this.job = plan.job();
        this.units = plan.job().units();
    }

    public static String text(Plan plan) {
        PlanSummary summary = new PlanSummary(plan);
        summary.impossible();
        summary.piece();
        summary.out.append(SettingsSummary.text(plan));
        if (plan.lengths().isEmpty()) {
            summary.stock();
        }
        summary.out.append(LengthsSummary.text(plan));
        plan.frame()
                .ifPresent(fit -> summary.out.append(FrameSummary.text(
                        fit, plan.job().units(), plan.job().tolerances().masses())));
        summary.trammel();
        summary.year();
        summary.out.append(TurningSummary.text(plan));
        summary.warnings();
        return summary.out.toString();
    }

    /** On the job's usual paper, as its sheets are printed. */
    private void trammel() {
        Paper paper = PaperChoice.usual(units).papers().get(0);
        List<String> told = PlanSheet.insteadOf(plan, paper);
        for (int i = 0; i < told.size(); i++) {
            out.append(i == 0 ? "  rim      " : "           ")
                    .append(told.get(i))
                    .append('\n');
        }
    }

    private void line(String text, Object... values) {
        out.append(format(Locale.ROOT, text, values)).append('\n');
    }

    /** What cannot be built is said before all else. */
    private void impossible() {
        plan.frame().stream()
                .flatMap(fit -> fit.misfits().stream())
                .filter(Misfit::forbids)
                .forEach(misfit -> line("%s", misfit.sentence()));
        if (!out.isEmpty()) {
            line("");
        }
    }

    private void piece() {
        line("%s", job.title());
        line("");
        line(
                "Piece      %s: %s, %s",
                job.pattern().name(),
                Article.count(job.pattern().members().size(), "member"),
                Article.count(plan.marks().size(), "mark"));
        line("  length   %s", job.pattern().length().formatBoth(units));
        line(
                "  weight   %s (%s) at %.0f kg/m3",
                job.tolerances().weighing().reading(plan.solid().mass()),
                job.tolerances().weighing().other(plan.solid().mass()),
                plan.solid().density().kgPerM3());
        line("  made of  %s", job.wood().text());
        line("  balance  %s from the start end", plan.solid().balance().formatBoth(units));
        List<MemberWeight> heaviest =
                plan.weights().stream().limit(HEAVIEST_SHOWN).toList();
        String step = units == UnitSystem.INCH ? "1/64 in" : "0.4 mm";
        MassUnit masses = job.tolerances().masses();
        line(
                "  where the weight sits, per %s of diameter%s: %s",
                step,
                heaviest.stream().anyMatch(each -> each.placed().member().section() == Section.SQUARE)
                        ? " or of a square's side"
                        : "",
                heaviest.stream()
                        .map(each -> format(
                                Locale.ROOT,
                                masses == MassUnit.GRAM ? "%s %.2f %s" : "%s %.3f %s",
                                each.placed().caption(),
                                masses.count(each.perStep()),
                                masses.symbol()))
                        .collect(Collectors.joining(", ")));
    }

    private void stock() {
        StockPlan stock = plan.stock();
        line("");
        line(
                "Stock      %s for %s (%s spare, %.1f %% sure at %.0f %% loss)",
                Article.count(stock.spares().blanks(), "blank"),
                Article.count(job.count(), "piece"),
                stock.spares().spares() == 0 ? "no" : stock.spares().spares(),
                100 * stock.spares().chance(),
                100 * job.lossRate());
        line("  blank    %s", stock.finished().text(units));
        line(
                units == UnitSystem.METRIC ? "  rough    %s, %s (%s) in all" : "  rough    %1$s, %3$s (%2$s) in all",
                stock.rough().text(units),
                String.format(Locale.ROOT, "%.4f m3", stock.timber().cubicMetres()),
                String.format(Locale.ROOT, "%.1f board feet", stock.timber().boardFeet()));
        line("  weights  %s", plan.spread().sentence());
        octagon(stock);
    }

    /** Round stock has no corners to take off, and those of a square that stays are left on. */
    private void octagon(StockPlan stock) {
        if (job.pattern().stock().section() == Section.SQUARE) {
            boolean stays = job.pattern().members().stream().anyMatch(each -> each.section() == Section.SQUARE);
            line(
                    "  octagon  mark each face %s from both its edges%s",
                    stock.cornerCut().markIn().formatBoth(units), stays ? ", between the squares only" : "");
        }
    }

    private void year() {
        plan.year().ifPresent(year -> {
            line("");
            YearWords.lines(year, units).forEach(each -> line("%s", each));
        });
    }

    private void warnings() {
        // What cannot be built stands above already.
        long told = plan.frame().stream()
                .flatMap(fit -> fit.misfits().stream())
                .filter(Misfit::forbids)
                .count();
        if (plan.warnings().size() == told) {
            return;
        }
        line("");
        line("Unwise as drawn");
        plan.warnings().stream().skip(told).forEach(warning -> line("  %s: %s", warning.where(), warning.what()));
    }
}
