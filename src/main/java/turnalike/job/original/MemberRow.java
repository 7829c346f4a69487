package turnalike.job.original;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import turnalike.pattern.FreeCurve;
import turnalike.pattern.Member;
import turnalike.trace.Traced;
import turnalike.trace.TracedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * A member found, as a line of a table.
 *
 * @param number from 1
 * @param kind its word
 * @param from where it starts
 * @param length how long it is
 * @param offBy by how much what was read misses it, in the mean; empty where nothing was read
 * @param sizes its diameters; with a question mark those that nothing read tells
 * @param uncertain whether it rests on what was hardly seen, or may as well be of another kind
 */
public record MemberRow(
        int number, String kind, String from, String length, String offBy, String sizes, boolean uncertain) {
    private static final List<String> NOT_SIZES = List.of("length", "chamfer");

    /**
     * {@return the members found, in order}
     *
     * @param traced what was found
     * @param units to print in
     */
    public static List<MemberRow> of(Traced traced, UnitSystem units) {
        List<MemberRow> out = new ArrayList<>();
        for (TracedMember each : traced.run().members()) {
            out.add(new MemberRow(
                    out.size() + 1,
                    each.member().kind().word(),
                    each.from().formatFine(units),
                    each.member().length().formatFine(units),
                    each.miss().stations() == 0 ? "" : each.miss().rms().formatMeasured(units),
                    sizes(each, units),
                    each.uncertain()));
        }
        return out;
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
