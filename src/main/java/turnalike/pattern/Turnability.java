package turnalike.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.outline.Outline;
import turnalike.pattern.Necks.Neck;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What is unwise to turn as drawn. Every bound here is common practice, no source: they tell where turners start to have trouble, not
 * where wood fails.
 */
public final class Turnability {
    /** A cove deeper than half its width is deeper than a semicircle: a gouge's bevel can no longer follow it down. */
    static final double COVE_DEPTH_TO_WIDTH = 0.5;

    /** A vee deeper than its width closes below 53° and a skew's long point binds between its walls. */
    static final double VEE_DEPTH_TO_WIDTH = 1.0;

    /** A groove is cut with a parting tool; thin ones are about 1.5 mm (1/16 in) wide. */
    static final Length NARROWEST_GROOVE = Length.ofMm(1.5);

    /** A neck thinner than a tenth of its distance to the nearer end whips and chatters. */
    static final double NECK_TO_DISTANCE = 0.1;

    /** A neck below this share of the heaviest part inboard of it carries that part's cutting forces on too little wood. */
    static final double NECK_TO_HEAVY_PART = 0.4;

    /** Wood glue bridges no more play than about this on the diameter. */
    static final Length LOOSEST_TENON = Length.ofMm(0.5);

    private final UnitSystem units;

    private Turnability(UnitSystem units) {
        this.units = units;
    }

    /** All warnings, member by member from the datum end, then those about necks; lengths in {@code units}, the other system's beside. */
    public static List<Warning> warnings(Pattern pattern, UnitSystem units) {
        return new Turnability(units).warnings(pattern);
    }

    private List<Warning> warnings(Pattern pattern) {
        List<Warning> out = new ArrayList<>();
        List<Placed> run = pattern.placed();
        for (int i = 0; i < run.size(); i++) {
            Placed placed = run.get(i);
            tooDeep(placed).ifPresent(out::add);
            if (i > 0) {
                joint(placed, run.get(i - 1), endRadius(run.get(i - 1))).ifPresent(out::add);
            }
            if (i + 1 < run.size()) {
                joint(placed, run.get(i + 1), startRadius(run.get(i + 1))).ifPresent(out::add);
            }
            strayTenon(placed, run.size()).ifPresent(out::add);
            loose(placed).ifPresent(out::add);
            holeless(placed, run).ifPresent(out::add);
        }
        for (Neck neck : Necks.of(pattern.outline())) {
            slender(neck, pattern, run).ifPresent(out::add);
            outboard(neck, pattern, run).ifPresent(out::add);
        }
        return out;
    }

    private static Length startRadius(Placed placed) {
        return Length.ofMm(placed.outline().segments().get(0).curve().startRadiusMm());
    }

    private static Length endRadius(Placed placed) {
        var segments = placed.outline().segments();
        return Length.ofMm(segments.get(segments.size() - 1).curve().endRadiusMm());
    }

    private Optional<Warning> tooDeep(Placed placed) {
        if (placed.member() instanceof Cove cove) {
            Length depth = cove.rim().minus(cove.bottom()).times(0.5);
            return when(
                    depth.mm() > COVE_DEPTH_TO_WIDTH * cove.length().mm() * (1 + 1e-9),
                    placed,
                    "is %s deep but only %s wide: deeper than half its width a gouge cannot be swung to its bottom; widen it, make it shallower, or scrape with care"
                            .formatted(print(depth), print(cove.length())));
        }
        if (placed.member() instanceof Vee vee) {
            Length depth = vee.rim().minus(vee.bottom()).times(0.5);
            return when(
                    depth.mm() > VEE_DEPTH_TO_WIDTH * vee.length().mm() * (1 + 1e-9),
                    placed,
                    "is %s deep but only %s wide: deeper than its width a skew's point binds between the walls; widen it or make it shallower"
                            .formatted(print(depth), print(vee.length())));
        }
        if (placed.member() instanceof Groove groove) {
            return when(
                    groove.length().compareTo(NARROWEST_GROOVE) < 0,
                    placed,
                    "is %s wide, narrower than a thin parting tool".formatted(print(groove.length())));
        }
        return Optional.empty();
    }

    /** What may be wrong where a member meets a neighbour; the radius is the neighbour's at the joint. */
    private Optional<Warning> joint(Placed placed, Placed neighbour, Length neighbourRadius) {
        if (placed.member() instanceof Tenon tenon) {
            Length full = tenon.diameter().times(0.5);
            return when(
                    !(neighbour.member() instanceof Tenon) && full.compareTo(neighbourRadius) > 0,
                    placed,
                    "is thicker (%s) than %s beside it (%s there): it has no shoulder to stop at, so the length in the hole is not fixed"
                            .formatted(print(tenon.diameter()), neighbour.where(), print(neighbourRadius.times(2))));
        }
        if (placed.member() instanceof Square
                && (neighbour.member() instanceof Bead || neighbour.member() instanceof HalfBead)) {
            return Optional.of(new Warning(
                    placed.where(),
                    "its arrises meet %s: the corners catch the tool and break out where the bead begins; cut a shoulder with the skew's point first, or put a fillet between"
                            .formatted(neighbour.where())));
        }
        return Optional.empty();
    }

    private Optional<Warning> loose(Placed placed) {
        if (!(placed.member() instanceof Tenon tenon) || tenon.hole().isEmpty()) {
            return Optional.empty();
        }
        Length play = tenon.hole().get().minus(tenon.diameter());
        return when(
                play.compareTo(LOOSEST_TENON) > 0,
                placed,
                "is %s thinner than its hole; a tenon that rattles is held by glue alone, so turn it to the hole or wedge it"
                        .formatted(print(play)));
    }

    /** Once one tenon's hole is told, a tenon without one was likely forgotten. */
    private static Optional<Warning> holeless(Placed placed, List<Placed> run) {
        boolean forgotten = placed.member() instanceof Tenon tenon
                && tenon.hole().isEmpty()
                && run.stream()
                        .anyMatch(each -> each.member() instanceof Tenon other
                                && other.hole().isPresent());
        return when(forgotten, placed, "has no hole given; one of the tenon's own size is taken for it");
    }

    private static Optional<Warning> strayTenon(Placed placed, int count) {
        boolean inside = placed.number() > 1 && placed.number() < count;
        if (!inside || !(placed.member() instanceof Tenon tenon)) {
            return Optional.empty();
        }
        String chamfer = tenon.chamfer().isPositive() ? "; its chamfer is left off: only a free end has one" : "";
        return Optional.of(new Warning(
                placed.where(),
                "stands inside the run, where no hole can take it: move it to an end or make it a cylinder" + chamfer));
    }

    private Optional<Warning> slender(Neck neck, Pattern pattern, List<Placed> run) {
        Length place = neck.weakest(pattern.length());
        Length reach = nearerEnd(place, pattern.length());
        return when(
                neck.diameter().mm() < NECK_TO_DISTANCE * reach.mm() * (1 - 1e-9),
                memberAt(run, place),
                "the neck of %s stands %s from the nearer end, more than ten times its thickness: expect whip; take light cuts, turn it last, and steady it"
                        .formatted(print(neck.diameter()), print(reach)));
    }

    private Optional<Warning> outboard(Neck neck, Pattern pattern, List<Placed> run) {
        Length place = neck.weakest(pattern.length());
        boolean nearStart = place.mm() <= pattern.length().mm() / 2;
        Outline outline = pattern.outline();
        Length heaviest = Length.ZERO;
        for (Outline.Station station : outline.stations()) {
            boolean inboard = nearStart
                    ? station.place().compareTo(place) > 0
                    : station.place().compareTo(place) < 0;
            if (inboard && station.radius().compareTo(heaviest) > 0) {
                heaviest = station.radius();
            }
        }
        Length heavy = heaviest.times(2);
        return when(
                neck.diameter().mm() < NECK_TO_HEAVY_PART * heavy.mm(),
                memberAt(run, place),
                "the neck of %s stands outboard of a part %s thick: that part's cuts load it; turn the heavy part first and the neck last"
                        .formatted(print(neck.diameter()), print(heavy)));
    }

    private String print(Length length) {
        return length.formatFineBoth(units);
    }

    private static Length nearerEnd(Length place, Length length) {
        Length other = length.minus(place);
        return place.compareTo(other) < 0 ? place : other;
    }

    private static Placed memberAt(List<Placed> run, Length place) {
        for (Placed placed : run) {
            if (place.compareTo(placed.end()) <= 0) {
                return placed;
            }
        }
        return run.get(run.size() - 1);
    }

    private static Optional<Warning> when(boolean unwise, Placed placed, String what) {
        return unwise ? Optional.of(new Warning(placed.where(), what)) : Optional.empty();
    }
}
