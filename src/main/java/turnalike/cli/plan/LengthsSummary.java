package turnalike.cli.plan;

import static java.lang.String.format;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import turnalike.job.CommonMarks;
import turnalike.job.LengthPlan;
import turnalike.job.Plan;
import turnalike.pattern.Mark;
import turnalike.pattern.Warning;
import turnalike.settings.DividerPlan;
import turnalike.stock.StockPlan;
import turnalike.units.Article;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/** The lengths that a job's pieces are made in, as text: stock and settings of each, then the marks, those common to all once. */
final class LengthsSummary {
    private final Plan drawn;
    private final List<LengthPlan> lengths;
    private final UnitSystem units;
    private final StringBuilder out = new StringBuilder();

    private LengthsSummary(Plan drawn) {
        this.drawn = drawn;
        this.lengths = drawn.lengths();
        this.units = drawn.job().units();
    }

    /** Nothing where all pieces are as drawn. */
    static String text(Plan plan) {
        LengthsSummary summary = new LengthsSummary(plan);
        if (!plan.lengths().isEmpty()) {
            summary.write();
        }
        return summary.out.toString();
    }

    private void line(String text, Object... values) {
        out.append(format(Locale.ROOT, text, values)).append('\n');
    }

    private void write() {
        line("");
        line(
                "Lengths    %d of one turning; what stands above is of the drawn %s",
                lengths.size(), drawn.job().pattern().length().formatBoth(units));
        lengths.forEach(this::length);
        marks();
    }

    private void length(LengthPlan each) {
        Plan plan = each.plan();
        StockPlan stock = plan.stock();
        line(
                "  %-9s%d of %s: %s is %s",
                each.length().letter(),
                each.length().told().count(),
                plan.job().pattern().length().formatBoth(units),
                each.stretch().caption(),
                each.length().told().length().formatBoth(units));
        line(
                "           %s (%d spare), %s; rough %s, %.1f board feet; %s a piece",
                Article.count(stock.spares().blanks(), "blank"),
                stock.spares().spares(),
                stock.finished().text(units),
                stock.rough().text(units),
                stock.timber().boardFeet(),
                plan.job().tolerances().weighing().reading(plan.solid().mass()));
        DividerPlan dividers = plan.settings().dividers();
        String openings = dividers.settings().isEmpty()
                ? "none"
                : dividers.settings().stream()
                        .map(setting -> setting.opening().format(units))
                        .collect(Collectors.joining(", "));
        line(
                "           dividers %s; a mark off by %s at worst",
                openings, dividers.worst().formatFineUp(units));
        plan.warnings().stream()
                .filter(warning -> !drawn.warnings().contains(warning))
                .map(Warning::sentence)
                .forEach(warning -> line("           %s", warning));
    }

    private void marks() {
        CommonMarks common = CommonMarks.of(lengths);
        Plan first = lengths.get(0).plan();
        marks("marks, the same on all from the start end:", first, common.fromStart(), Mark::place);
        marks("the same on all from the far end:", first, common.fromEnd(), mark -> CommonMarks.toEnd(first, mark));
        if (!common.own().isEmpty()) {
            lengths.forEach(each -> marks(
                    "on %s alone, from the start end:".formatted(each.length().letter()),
                    each.plan(),
                    common.own(),
                    Mark::place));
        }
    }

    private void marks(String head, Plan plan, List<Integer> marks, Function<Mark, Length> place) {
        if (marks.isEmpty()) {
            return;
        }
        line("  %s", head);
        for (int mark : marks) {
            Mark each = plan.marks().get(mark);
            line("    %-22s mark %d, %s", place.apply(each).formatBoth(units), mark, each.label());
        }
    }
}
