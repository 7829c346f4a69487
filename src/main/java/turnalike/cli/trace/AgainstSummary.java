package turnalike.cli.trace;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import turnalike.job.pieces.AgainstReport;
import turnalike.job.pieces.ColumnTargets;
import turnalike.pieces.Column;
import turnalike.trace.TraceWarnings;
import turnalike.trace.Traced;
import turnalike.trace.against.Figure;
import turnalike.trace.against.MemberOff;
import turnalike.units.Length;
import turnalike.units.SentenceCase;
import turnalike.units.UnitSystem;

/** A piece held against its job, for people: what sets it apart first, then member by member, then what a caliper would read. */
final class AgainstSummary {
    /** More is not read. */
    private static final int MOST_WORDS = 8;

    private AgainstSummary() {}

    static String text(AgainstReport report, Traced traced, UnitSystem units, String file) {
        StringBuilder out = new StringBuilder();
        out.append("%s, a %s, held against %s\n\n"
                .formatted(file, traced.source().word(), report.job().title()));
        report.words().stream()
                .limit(MOST_WORDS)
                .forEach(each -> out.append("  ").append(each).append('\n'));
        if (report.words().size() > MOST_WORDS) {
            int more = report.words().size() - MOST_WORDS;
            out.append("  And %d more, of less weight; the table and --json have them all.\n".formatted(more));
        }
        out.append('\n').append(row("", "member", "stands", "thick", "long", "deep"));
        for (MemberOff each : report.comparison().members()) {
            out.append(row(
                    String.valueOf(each.placed().number()),
                    each.placed().member().title(),
                    off(each.stands(), units),
                    off(each.thicker(), units),
                    off(each.longer(), units),
                    off(each.deeper(), units)));
        }
        out.append(
                "     + is high (toward the far end), thick, long, deep; ± is one standard deviation; - was not seen.\n");
        checks(out, report, units);
        out.append('\n').append(report.unlikeness()).append('\n');
        report.notes().forEach(each -> out.append("! ").append(each).append('\n'));
        return out.toString();
    }

    /** What the source itself has to say, without what is said of the members read out of it: it is the pattern's that are told here. */
    static String warnings(Traced traced, UnitSystem units) {
        List<String> ofMembers = TraceWarnings.of(traced.original(), traced.run(), units);
        StringBuilder out = new StringBuilder();
        traced.warnings().stream().filter(each -> !ofMembers.contains(each)).forEach(each -> out.append("! ")
                .append(SentenceCase.capital(each))
                .append('\n'));
        return out.toString();
    }

    private static void checks(StringBuilder out, AgainstReport report, UnitSystem units) {
        for (int i = 0; i < report.job().checks().size(); i++) {
            Column column = Column.diameter(i + 1);
            Length asked = ColumnTargets.shape(report.job()).length(column).orElseThrow();
            String name = ColumnTargets.name(report.job(), column);
            Map<Column, Figure> figures = report.figures();
            out.append(
                    figures.containsKey(column)
                            ? "%s, at %s: %s across for %s (± %s)\n"
                                    .formatted(
                                            SentenceCase.capital(name),
                                            report.job().checks().get(i).at().format(units),
                                            figures.get(column).value().formatFine(units),
                                            asked.formatFine(units),
                                            figures.get(column).uncertainty().formatFineUp(units))
                            : "%s: not seen\n".formatted(SentenceCase.capital(name)));
        }
    }

    private static String off(Optional<Figure> figure, UnitSystem units) {
        return figure.map(each -> "%s ± %s"
                        .formatted(
                                signed(each.value().mm(), units),
                                plain(each.uncertainty().mm(), units)))
                .orElse("-");
    }

    private static String signed(double mm, UnitSystem units) {
        String text = plain(Math.abs(mm), units);
        boolean nothing = text.chars().noneMatch(each -> each > '0' && each <= '9');
        return (nothing ? " " : mm > 0 ? "+" : "−") + text;
    }

    private static String plain(double mm, UnitSystem units) {
        return units == UnitSystem.METRIC
                ? String.format(Locale.ROOT, "%.2f", mm)
                : String.format(Locale.ROOT, "%.3f", mm / Length.MM_PER_INCH);
    }

    private static String row(String number, String member, String stands, String thick, String length, String deep) {
        return String.format(Locale.ROOT, "%3s  %-16s %15s %15s %15s %15s", number, member, stands, thick, length, deep)
                        .stripTrailing()
                + "\n";
    }
}
