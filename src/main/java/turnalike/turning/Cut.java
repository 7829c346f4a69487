package turnalike.turning;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import turnalike.pattern.Tool;
import turnalike.units.Length;
import turnalike.units.Speed;

/**
 * One step of the work at the lathe.
 *
 * @param order from 1
 * @param phase the part of the work it belongs to
 * @param tool what it is made with
 * @param setting what dividers or calipers are set to, where there is one
 * @param from the line it begins at, from the datum end
 * @param to the line it reaches, not before {@code from}; the same place for a cut on one line
 * @param places where a setting is used: marks struck, diameters sized; in order of place
 * @param members indices of the members it shapes or sizes
 * @param sizes whether it parts down to the calipers in some places and leaves the shape between them to a later cut
 * @param what what to do, in a sentence without a full stop
 * @param caution what to beware of; empty for none
 * @param natural the piece's first natural speed after the cut, where it was reckoned
 * @param why the computed reason for its place in the order, where there is one
 * @param strides what dividers step: each from the mark that the leg stands in to the one it strikes; none for any other cut
 */
public record Cut(
        int order,
        Phase phase,
        Tool tool,
        Optional<Length> setting,
        Length from,
        Length to,
        List<Length> places,
        List<Integer> members,
        boolean sizes,
        String what,
        String caution,
        Optional<Speed> natural,
        Optional<String> why,
        List<Stride> strides) {
    /**
     * One step of the dividers.
     *
     * @param from the line that stands
     * @param to the line it strikes, on either side
     */
    public record Stride(Length from, Length to) {}

    public Cut {
        places = List.copyOf(places);
        members = List.copyOf(members);
        strides = List.copyOf(strides);
        if (from.compareTo(to) > 0) {
            throw new IllegalArgumentException(
                    "a cut must not end before it begins, was %s to %s mm".formatted(from.mm(), to.mm()));
        }
    }

    Cut numbered(int number) {
        return new Cut(
                number, phase, tool, setting, from, to, places, members, sizes, what, caution, natural, why, strides);
    }

    Cut saying(String other) {
        return new Cut(
                order, phase, tool, setting, from, to, places, members, sizes, other, caution, natural, why, strides);
    }

    Cut withNatural(Speed speed) {
        return new Cut(
                order,
                phase,
                tool,
                setting,
                from,
                to,
                places,
                members,
                sizes,
                what,
                caution,
                Optional.of(speed),
                why,
                strides);
    }

    Cut withWhy(String reason) {
        return new Cut(
                order,
                phase,
                tool,
                setting,
                from,
                to,
                places,
                members,
                sizes,
                what,
                caution,
                natural,
                Optional.of(reason),
                strides);
    }

    /**
     * {@return what each of the cuts has to beware of, in their order; empty where its phase has said it before} Nine equal cautions are
     * read by nobody.
     *
     * @param cuts in their order
     */
    public static List<String> cautions(List<Cut> cuts) {
        Map<Phase, Set<String>> told = new EnumMap<>(Phase.class);
        List<String> out = new ArrayList<>();
        for (Cut cut : cuts) {
            boolean isNew =
                    told.computeIfAbsent(cut.phase(), phase -> new HashSet<>()).add(cut.caution());
            out.add(isNew ? cut.caution() : "");
        }
        return out;
    }
}
