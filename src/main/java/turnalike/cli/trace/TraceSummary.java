package turnalike.cli.trace;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import turnalike.cli.kit.WrittenFiles;
import turnalike.job.original.MemberRow;
import turnalike.trace.Traced;
import turnalike.units.Article;
import turnalike.units.SentenceCase;
import turnalike.units.UnitSystem;

/** A traced original for people: the members as a table, and how sure they are. */
final class TraceSummary {
    private TraceSummary() {}

    static String text(Traced traced, UnitSystem units, String file) {
        StringBuilder out = new StringBuilder();
        int count = traced.run().members().size();
        out.append("%s: %s of a piece %s long; %d %s explain%s it.\n\n"
                .formatted(
                        file,
                        Article.with(traced.source().word()),
                        traced.original().profile().length().formatBoth(units),
                        count,
                        count == 1 ? "member" : "members",
                        count == 1 ? "s" : ""));
        out.append(row("", "member", "from", "long", "off by", "sizes, diameters"));
        for (MemberRow each : MemberRow.of(traced, units)) {
            out.append(row(
                    String.valueOf(each.number()),
                    each.kind() + (each.uncertain() ? " ?" : ""),
                    each.from(),
                    each.length(),
                    each.offBy().isEmpty() ? "unseen" : each.offBy(),
                    each.sizes()));
        }
        out.append("\n%s; a radius was taken to be known within %s.\n"
                .formatted(
                        traced.run().miss().words(units), traced.run().scatter().formatMeasuredBoth(units)));
        out.append(
                "Found by the least of misfit and number of sizes together (Schwarz's criterion): a detail smaller than what is known of a radius is not told.\n");
        traced.warnings()
                .forEach(each ->
                        out.append("! ").append(SentenceCase.capital(each)).append('\n'));
        return out.toString();
    }

    static String begun(List<Path> files) {
        return WrittenFiles.list(files)
                + "The job takes white ash, one piece and a blank a little larger than the piece: set what is yours in it,"
                + " then run plan on it.\n";
    }

    private static String row(String number, String member, String from, String length, String off, String sizes) {
        return String.format(Locale.ROOT, "%3s  %-14s %11s %11s %10s  %s%n", number, member, from, length, off, sizes);
    }
}
