package turnalike.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.Necks.Neck;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What is unwise to turn as drawn: what each member says of itself, and necks that the run as a whole makes too weak. From where on
 * stands in {@link ShapeRules}.
 */
public final class Turnability {
    /** How many slender necks are warned of one by one. */
    static final int MOST_NECKS_APART = 3;

    /** Diameters nearer to one another than this are one. */
    private static final double SAME_MM = 1e-6;

    private final UnitSystem units;
    private final Hold hold;
    private final ShapeRules rules;

    private Turnability(UnitSystem units, Hold hold, ShapeRules rules) {
        this.units = units;
        this.hold = hold;
        this.rules = rules;
    }

    /**
     * What bears the piece while it is turned.
     *
     * @param start whether something bears its start end
     * @param end whether something bears its far end
     * @param startAlone held by one end alone, whether that is its start: then it is turned from the other end back
     * @param steady whether it is long enough for a steady rest
     */
    public record Hold(boolean start, boolean end, Optional<Boolean> startAlone, boolean steady) {
        /** Borne at both ends, and long. */
        public static final Hold CENTRES = new Hold(true, true, Optional.empty(), true);

        private Length away(Length place, Length length) {
            Length other = length.minus(place);
            if (!start) {
                return other;
            }
            return !end || place.compareTo(other) < 0 ? place : other;
        }
    }

    /**
     * {@return what is unwise between centres: member by member from the datum end, then neck by neck; empty when nothing is}
     *
     * @param pattern the piece as drawn
     * @param units in which lengths are printed, the other system's beside
     */
    public static List<Warning> warnings(Pattern pattern, UnitSystem units) {
        return warnings(pattern, units, Hold.CENTRES, ShapeRules.USUAL);
    }

    /**
     * {@return the same for a piece held in any way, by rules of one's own}
     *
     * @param pattern the piece as drawn
     * @param units in which lengths are printed, the other system's beside
     * @param hold what bears it
     * @param rules from where on a shape is warned of
     */
    public static List<Warning> warnings(Pattern pattern, UnitSystem units, Hold hold, ShapeRules rules) {
        return new Turnability(units, hold, rules).warnings(pattern);
    }

    private List<Warning> warnings(Pattern pattern) {
        List<Warning> out = new ArrayList<>();
        List<PlacedMember> run = pattern.placed();
        for (int i = 0; i < run.size(); i++) {
            String where = run.get(i).where();
            run.get(i)
                    .member()
                    .unwise(new Surroundings(run, i, units, rules))
                    .forEach(what -> out.add(new Warning(where, what)));
        }
        List<Neck> necks = Necks.of(pattern.outline());
        List<Neck> slender =
                necks.stream().filter(neck -> isSlender(neck, pattern.length())).toList();
        boolean apart = slender.size() <= MOST_NECKS_APART;
        for (Neck neck : necks) {
            if (apart && slender.contains(neck)) {
                out.add(slender(neck, pattern, run));
            }
            outboard(neck, pattern, run).ifPresent(out::add);
        }
        if (!apart) {
            out.add(slender(slender, pattern, run));
        }
        // Two necks beside one shoulder are one member's, in the same words.
        return out.stream().distinct().toList();
    }

    private boolean isSlender(Neck neck, Length length) {
        Length reach = hold.away(weakest(neck, length), length);
        return neck.diameter().mm() < rules.thin() * reach.mm() * (1 - 1e-9);
    }

    /** All slender necks of a long piece in one: a dozen equal lines are read by nobody. */
    private Warning slender(List<Neck> necks, Pattern pattern, List<PlacedMember> run) {
        Length thinnest = necks.stream()
                .map(Neck::diameter)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        Length farthest = necks.stream()
                .map(neck -> hold.away(weakest(neck, pattern.length()), pattern.length()))
                .max(Comparator.naturalOrder())
                .orElseThrow();
        String members = necks.stream()
                .map(neck -> String.valueOf(memberAt(run, weakest(neck, pattern.length()), neck.diameter())
                        .number()))
                .distinct()
                .collect(Collectors.joining(", "));
        return new Warning(
                "members " + members,
                ("their necks, the thinnest %s, stand up to %s from the nearer %s, each more than %s its thickness: expect whip;"
                                + " take light cuts, the thinnest last%s")
                        .formatted(
                                print(thinnest),
                                print(farthest),
                                hold.startAlone().isPresent() ? "support" : "end",
                                ShapeRules.times(rules.thin()),
                                hold.steady() ? ", and steady the piece" : ""));
    }

    private Warning slender(Neck neck, Pattern pattern, List<PlacedMember> run) {
        Length place = weakest(neck, pattern.length());
        Length reach = hold.away(place, pattern.length());
        boolean one = hold.startAlone().isPresent();
        return new Warning(
                memberAt(run, place, neck.diameter()).where(),
                "the neck of %s stands %s from the nearer %s, more than %s its thickness: expect whip; take light cuts, %s%s"
                        .formatted(
                                print(neck.diameter()),
                                print(reach),
                                one ? "support" : "end",
                                ShapeRules.times(rules.thin()),
                                one ? "with nothing left to cut beyond it" : "the neck last of its member",
                                hold.steady() ? ", and steady it" : ""));
    }

    /** Where it gives most: farthest from what bears the piece. */
    private Length weakest(Neck neck, Length length) {
        if (hold.start() && hold.end()) {
            return neck.weakest(length);
        }
        return hold.start() ? neck.to() : neck.from();
    }

    private Optional<Warning> outboard(Neck neck, Pattern pattern, List<PlacedMember> run) {
        Length place = weakest(neck, pattern.length());
        // Between centres the part inboard loads the neck; held by one end, what stands beyond it toward the tip.
        boolean after = hold.startAlone().orElse(place.mm() <= pattern.length().mm() / 2);
        Length heaviest = Length.ZERO;
        for (Outline.Station station : turned(run)) {
            // The place itself counts: at a shoulder the heavy part may be thickest where it meets the neck.
            boolean beside = after
                    ? station.place().compareTo(place) >= 0
                    : station.place().compareTo(place) <= 0;
            if (beside && station.radius().compareTo(heaviest) > 0) {
                heaviest = station.radius();
            }
        }
        Length heavy = heaviest.times(2);
        String what = hold.startAlone().isPresent()
                ? "the neck of %s carries a part %s thick beyond it: that part's cuts load it; finish the heavy part before the neck is cut"
                : "the neck of %s stands outboard of a part %s thick: that part's cuts load it; turn the heavy part first and the neck last";
        return when(
                neck.diameter().mm() < rules.heavyPart() * heavy.mm(),
                memberAt(run, place, neck.diameter()),
                what.formatted(print(neck.diameter()), print(heavy)));
    }

    private String print(Length length) {
        return length.formatBoth(units);
    }

    /** Whatever the tool cuts: a square that is left loads no neck. */
    private static List<Outline.Station> turned(List<PlacedMember> run) {
        return run.stream()
                .filter(placed -> placed.member().section() == Section.ROUND)
                .flatMap(placed -> placed.outline().stations().stream())
                .toList();
    }

    /** Of two that meet at the place, the one that is so thick there; of two alike the one that is thin all along, whose neck it is. */
    private static PlacedMember memberAt(List<PlacedMember> run, Length place, Length diameter) {
        Comparator<PlacedMember> nearest = Comparator.comparing(placed ->
                Math.round(thinnestAt(placed, place).minus(diameter).abs().mm() / SAME_MM));
        return run.stream()
                .filter(placed -> placed.start().compareTo(place) <= 0 && place.compareTo(placed.end()) <= 0)
                .min(nearest.thenComparing(placed -> placed.outline().largestRadius()))
                .orElse(run.get(run.size() - 1));
    }

    private static Length thinnestAt(PlacedMember placed, Length place) {
        return placed.outline().stations().stream()
                .filter(station -> station.place().minus(place).abs().mm() < 1e-9)
                .map(station -> station.radius().times(2))
                .min(Comparator.naturalOrder())
                .orElse(placed.outline().radiusAt(place).times(2));
    }

    private static Optional<Warning> when(boolean unwise, PlacedMember placed, String what) {
        return unwise ? Optional.of(new Warning(placed.where(), what)) : Optional.empty();
    }
}
