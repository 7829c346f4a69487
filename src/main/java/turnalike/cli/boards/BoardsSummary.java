package turnalike.cli.boards;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import turnalike.job.boards.BoardNotes;
import turnalike.job.boards.BoardWords;
import turnalike.job.boards.JobBlanks;
import turnalike.job.boards.WoodToBuy;
import turnalike.stock.boards.CuttingPlan;
import turnalike.stock.boards.CuttingPlan.CutBoard;
import turnalike.stock.boards.CuttingPlan.Missing;
import turnalike.stock.boards.Wanted;
import turnalike.units.Article;
import turnalike.units.UnitSystem;

/** How the blanks are cut, board after board as they go to the saw. */
final class BoardsSummary {
    private static final int MOST_KEPT = 12;

    private final CuttingPlan plan;
    private final UnitSystem units;
    private final StringBuilder out = new StringBuilder();

    private BoardsSummary(List<JobBlanks.Named> jobs, CuttingPlan plan) {
        this.plan = plan;
        this.units = JobBlanks.units(jobs);
    }

    static String text(List<JobBlanks.Named> jobs, CuttingPlan plan) {
        BoardsSummary summary = new BoardsSummary(jobs, plan);
        summary.missing();
        summary.blanks();
        summary.line("%s", BoardWords.aim(plan, summary.units));
        plan.boards().forEach(summary::board);
        summary.kept();
        summary.list("Note", BoardNotes.of(jobs, plan.order()));
        if (!plan.boards().isEmpty()) {
            summary.list("At the saw", BoardNotes.CAUTIONS);
        }
        return summary.out.toString();
    }

    private void line(String text, Object... values) {
        out.append(String.format(Locale.ROOT, text, values)).append('\n');
    }

    private void list(String heading, List<String> sentences) {
        if (!sentences.isEmpty()) {
            line("");
            line("%s", heading);
            sentences.forEach(each -> line("  %s", each));
        }
    }

    /** Said before all else. */
    private void missing() {
        if (!plan.missing().isEmpty()) {
            line("Wood is missing");
            for (Missing each : plan.missing()) {
                line("  %s", WoodToBuy.missing(plan, each, units));
                line("    to buy: %s", WoodToBuy.buy(plan.order(), each, units));
            }
            line("");
        }
    }

    private void blanks() {
        line("Blanks, rough");
        for (Wanted each : plan.order().wanted()) {
            line(
                    "  %s: %s, %s square and %s long%s",
                    each.job(),
                    Article.count(each.count(), "blank"),
                    each.size().formatBoth(units),
                    each.length().formatBoth(units),
                    each.wood().map(wood -> ", " + wood).orElse(""));
        }
        line("");
    }

    private void board(CutBoard cut) {
        line("");
        line("%s", BoardWords.board(cut, units));
        BoardWords.steps(cut, plan.order().sawing(), units).forEach(each -> line("  %s", each));
    }

    private void kept() {
        line("");
        line(
                "Left over, as long as the shortest blank (%s) or longer",
                plan.keep().format(units));
        List<String> told = BoardWords.kept(plan, units, MOST_KEPT);
        line(
                "%s",
                told.isEmpty()
                        ? "  none"
                        : told.stream().map(each -> "  " + each).collect(Collectors.joining("\n")));
    }
}
