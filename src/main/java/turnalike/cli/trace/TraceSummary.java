package turnalike.cli.trace;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import turnalike.cli.kit.WrittenFiles;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Member;
import turnalike.trace.Traced;
import turnalike.trace.TracedMember;
import turnalike.units.Article;
import turnalike.units.Length;
import turnalike.units.SentenceCase;
import turnalike.units.UnitSystem;

/** A traced original for people: the members as a table, and how sure they are. */
final class TraceSummary {
    private static final List<String> NOT_SIZES = List.of("length", "chamfer");

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
        for (int i = 0; i < count; i++) {
            TracedMember each = traced.run().members().get(i);
            out.append(row(
                    String.valueOf(i + 1),
                    each.member().kind().word() + (each.uncertain() ? " ?" : ""),
                    each.from().formatFine(units),
                    each.member().length().formatFine(units),
                    each.miss().stations() == 0 ? "unseen" : each.miss().rms().formatFine(units),
                    sizes(each, units)));
        }
        TracedMember.Miss miss = traced.run().miss();
        out.append(
                "\nOff by %s in the mean over %d places, at worst %s at %s; a radius was taken to be known within %s.\n"
                        .formatted(
                                miss.rms().formatFineBoth(units),
                                miss.stations(),
                                miss.worst().formatFineBoth(units),
                                miss.worstAt().formatBoth(units),
                                traced.run().scatter().formatFineBoth(units)));
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

    private static String sizes(TracedMember traced, UnitSystem units) {
        Member member = traced.member();
        if (member instanceof FreeCurve curve) {
            return "through "
                    + curve.points().stream()
                            .map(each -> "%s at %s".formatted(fine(each.diameter(), units), fine(each.place(), units)))
                            .collect(Collectors.joining(", "));
        }
        String sizes = member.sizes().lengths().entrySet().stream()
                .filter(each -> !NOT_SIZES.contains(each.getKey()))
                .map(each -> each.getKey() + " " + fine(each.getValue(), units)
                        + (traced.guessed().contains(each.getKey()) ? " ?" : ""))
                .collect(Collectors.joining(", "));
        Length chamfer = member.sizes().lengths().getOrDefault("chamfer", Length.ZERO);
        return chamfer.isPositive() ? sizes + ", chamfer " + fine(chamfer, units) : sizes;
    }

    private static String fine(Length length, UnitSystem units) {
        String text = length.formatFine(units);
        return text.substring(0, text.length() - units.symbol().length() - 1);
    }
}
