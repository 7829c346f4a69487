package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import turnalike.frame.SegmentedRim;
import turnalike.job.set.WheelRoom.Trial;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Length;
import turnalike.units.UnitSystem;

/**
 * What of a wheel cannot be built or is thin, and what of it, changed alone, would leave enough. Room grows with the hub, with a stagger as far
 * as hub and rim hold both rows, with fewer places and with a shallower seat, so the least change is found by halving, in steps that a rule
 * shows.
 */
final class WheelMisfits {
    private final WheelRoom room;
    private final Trial given;
    private final Pattern pattern;
    private final RuleSteps steps;
    private final List<Misfit> out = new ArrayList<>();
    private Optional<Ways> ways = Optional.empty();

    WheelMisfits(WheelRoom room, Trial given, Pattern pattern, UnitSystem units) {
        this.room = room;
        this.given = given;
        this.pattern = pattern;
        this.steps = new RuleSteps(units);
    }

    /** With fewer the grain at a joint is short (common practice, no source). */
    private static final int USUAL_SEGMENTS = 6;

    List<Misfit> list(
            WheelFit.Neighbours neighbours,
            Optional<WheelFit.Seats> hub,
            Optional<WheelFit.Seats> rim,
            Optional<Length> outside,
            Optional<SegmentedRim> segments) {
        axle();
        room.axleWall(given).ifPresent(this::axleWall);
        unentered(WheelFit.HUB, room.joinery().hubSeat(), room.hubHole(), "the hub's face");
        unentered(WheelFit.RIM, room.joinery().rimSeat(), room.rimHole(), "the rim's inside");
        butts(WheelFit.HUB, room.joinery().tellsHub(), room.joinery().hubSeat(), room.hubHole(), "the hub's face");
        butts(WheelFit.RIM, room.joinery().tellsRim(), room.joinery().rimSeat(), room.rimHole(), "the rim's inside");
        gap(neighbours);
        hub.ifPresent(seats -> wall(WheelFit.HUB, seats, true));
        rim.ifPresent(seats -> wall(WheelFit.RIM, seats, false));
        beyond(WheelFit.HUB, room.hubHole(), room.hubEnds(given), "ends", "a hub %s long leaves enough");
        beyond(WheelFit.RIM, room.rimHole(), room.rimFaces(given), "faces", "a rim %s thick leaves enough");
        outside.ifPresent(this::outside);
        segments.ifPresent(this::joints);
        segments.ifPresent(this::shortGrain);
        List<Misfit> sorted =
                new ArrayList<>(out.stream().filter(Misfit::forbids).toList());
        out.stream().filter(each -> !each.forbids()).forEach(sorted::add);
        return sorted;
    }

    private void axle() {
        if (room.reachesAxle(given)) {
            Length left = given.hubRadius().minus(given.hubDepth());
            Length axle = room.joinery().axleHole().times(0.5);
            String what = left.mm() < 0
                    ? "a mortise %s deep passes the axle in a hub of %s radius"
                    : "a mortise %s deep comes to the axle in a hub of %s radius";
            out.add(new Misfit(
                    true,
                    WheelFit.HUB,
                    what.formatted(steps.print(given.hubDepth()), steps.print(given.hubRadius()))
                            + (axle.isPositive()
                                    ? ", whose hole is %s wide".formatted(steps.print(axle.times(2)))
                                    : ""),
                    mends(true, Optional.empty())));
        }
    }

    private void axleWall(Length left) {
        Length least = room.joinery().leastWall(room.hubHole().orElseThrow());
        if (left.isPositive() && left.compareTo(least) < 0) {
            out.add(new Misfit(
                    false,
                    WheelFit.HUB,
                    "%s is left from a mortise's bottom to the axle's hole".formatted(steps.left(left)),
                    mends(true, Optional.empty())));
        }
    }

    /** A taper at the end goes by its face: what it enters is told of in vain. */
    private void unentered(String where, Optional<Length> seat, Optional<Length> hole, String face) {
        seat.filter(depth -> hole.isEmpty())
                .ifPresent(depth -> out.add(new Misfit(
                        false,
                        where,
                        "a mortise %s deep is told, but the piece has no tenon at that end and is taken to stand on %s"
                                .formatted(steps.print(depth), face),
                        "make its last member there a tenon, as thick as it is at its shoulder; a taper is cut"
                                + " on it when it is fitted")));
    }

    /** Where hub or rim is told but nothing of the piece enters it: glue alone does not hold end grain. */
    private void butts(String where, boolean told, Optional<Length> seat, Optional<Length> hole, String face) {
        if (told && seat.isEmpty() && hole.isEmpty()) {
            out.add(new Misfit(
                    false,
                    where,
                    "the piece has no tenon at that end and is taken to butt on %s: glue alone does not hold end grain"
                            .formatted(face),
                    "common practice, no source: make its last member there a tenon, or let the end in and pin it"));
        }
    }

    private void gap(WheelFit.Neighbours neighbours) {
        Length least = room.joinery().leastGap();
        boolean touch = (given.stagger().isPositive() && neighbours.apart() == 1)
                ? neighbours.gap().mm() <= 1e-4
                : neighbours.gap().mm() < 0;
        if (!touch && neighbours.gap().compareTo(least) >= 0) {
            return;
        }
        PlacedMember member = pattern.placed().get(neighbours.member());
        String next = neighbours.apart() == 1 ? "its neighbour" : "the next but one";
        String what = !touch
                ? "%s and that of %s leave %s between them, %s from the start end"
                        .formatted(member.where(), next, steps.left(neighbours.gap()), steps.reckoned(neighbours.at()))
                : neighbours.gap().mm() < 0
                        ? "%s runs %s into that of %s, %s from the start end"
                                .formatted(
                                        member.where(),
                                        steps.much(neighbours.gap().abs()),
                                        next,
                                        steps.reckoned(neighbours.at()))
                        : "%s runs into that of %s, %s from the start end"
                                .formatted(member.where(), next, steps.reckoned(neighbours.at()));
        out.add(new Misfit(touch, WheelFit.SPOKES, what, mends(false, slimmest())));
    }

    private void wall(String where, WheelFit.Seats seats, boolean hub) {
        boolean meet = given.stagger().isPositive()
                ? seats.wall().mm() <= 1e-4
                : seats.wall().mm() < 0;
        if (meet || seats.wall().compareTo(room.joinery().leastWall(seats.hole())) < 0) {
            String what = meet
                    ? "mortises %s wide and %s deep meet inside it"
                            .formatted(steps.print(seats.hole()), steps.print(seats.depth()))
                    : "mortises %s wide and %s deep leave %s of wood between them"
                            .formatted(steps.print(seats.hole()), steps.print(seats.depth()), steps.left(seats.wall()));
            out.add(new Misfit(meet, where, what, mends(hub, Optional.empty())));
        }
    }

    /**
     * Whether the mortises run out of hub or rim along the axle.
     *
     * @param beyond what is left there to either side, where its length or thickness is told
     * @param sides what these sides are called
     * @param enough how much of it leaves enough, in words
     */
    private void beyond(String where, Optional<Length> hole, Optional<Length> beyond, String sides, String enough) {
        beyond.ifPresent(left -> {
            Length bored = hole.orElseThrow();
            Length least = room.joinery().leastWall(bored);
            if (left.compareTo(least) < 0) {
                out.add(new Misfit(
                        left.mm() < 0,
                        where,
                        left.mm() < 0
                                ? "the mortises run out of its %s, %s of them".formatted(sides, steps.much(left.abs()))
                                : "%s is left between the mortises and its %s".formatted(steps.left(left), sides),
                        enough.formatted(steps.print(
                                steps.upRoughly(given.stagger().plus(bored).plus(least.times(2))))))); // both sides
            }
        });
    }

    private void outside(Length left) {
        Length least = room.joinery().leastWall(room.rimHole().orElseThrow());
        if (left.compareTo(least) < 0) {
            out.add(new Misfit(
                    false,
                    WheelFit.RIM,
                    left.mm() < 0
                            ? "its mortises come out by %s".formatted(steps.much(left.abs()))
                            : "%s is left from a mortise's bottom to the outside".formatted(steps.left(left)),
                    "a wider rim or a shallower mortise leaves more"));
        }
    }

    private void joints(SegmentedRim rim) {
        if (rim.jointClear().mm() < 0) {
            out.add(new Misfit(
                    false,
                    WheelFit.RIM,
                    "of %d segments one joint at least falls on a mortise, however the rim is turned"
                            .formatted(rim.segments()),
                    "take as many segments as places, or half or a third as many"));
        }
    }

    /** The grain runs along the chord, so at a segment's end it lies across the rim by half of what the segment spans. */
    private void shortGrain(SegmentedRim rim) {
        if (rim.segments() < USUAL_SEGMENTS) {
            out.add(
                    new Misfit(
                            false,
                            WheelFit.RIM,
                            "of %d segments the grain runs out of the rim at %s at each joint: such short grain breaks and splits off"
                                    .formatted(rim.segments(), rim.mitre().format()),
                            "common practice, no source: six segments and more, 30° at the joint and less; else back the joints with a second layer set off by half a segment"));
        }
    }

    /** What, changed alone, gives everything its room. */
    private String mends(boolean seat, Optional<String> slimmer) {
        Ways all = ways.orElseGet(this::find);
        ways = Optional.of(all);
        List<String> out = Stream.of(all.places, all.hub, seat ? all.seat : Optional.<String>empty(), slimmer, all.rows)
                .flatMap(Optional::stream)
                .toList();
        return out.isEmpty() ? "no one change gives it room: take fewer places and a larger hub" : Misfit.ways(out);
    }

    /** What of the wheel may be changed, whatever is amiss in it: looked for once. */
    private record Ways(Optional<String> places, Optional<String> hub, Optional<String> seat, Optional<String> rows) {}

    private Ways find() {
        return new Ways(
                places().map("%d places at most"::formatted),
                least(given.hubRadius(), steps.rough(), given::withHubRadius)
                        .map(radius -> "a hub of %s radius or more".formatted(steps.print(radius))),
                depth().map(depth -> "mortises %s deep at most".formatted(steps.print(depth))),
                stagger().map(by -> "every second place set off by %s or more".formatted(steps.print(by))));
    }

    private Optional<Integer> places() {
        int step = given.stagger().isPositive() ? 2 : 1;
        for (int n = given.places() - step; n >= 2; n -= step) {
            if (room.fits(given.withPlaces(n))) {
                return Optional.of(n);
            }
        }
        return Optional.empty();
    }

    private Optional<Length> stagger() {
        if (given.places() % 2 != 0) {
            return Optional.empty();
        }
        Length most = room.mostStagger().orElse(room.body().largestRadius().times(8));
        return least(given.stagger(), steps.fine(), given::withStagger).filter(by -> by.compareTo(most) <= 0);
    }

    private Optional<Length> depth() {
        int most = (int) Math.floor(given.hubDepth().mm() / steps.fine().mm());
        for (int i = most; i >= 2; i--) {
            if (room.fits(given.withHubDepth(steps.fine().times(i)))) {
                return Optional.of(steps.fine().times(i));
            }
        }
        return Optional.empty();
    }

    /** The least multiple of a step that fits; empty when even many times as much does not. */
    private Optional<Length> least(Length from, Length step, Function<Length, Trial> with) {
        int low = (int) Math.floor(from.mm() / step.mm());
        int high = Math.max(low + 1, 8);
        for (int i = 0; !room.fits(with.apply(step.times(high))); i++) {
            if (i == 5) {
                return Optional.empty();
            }
            low = high;
            high *= 2;
        }
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (room.fits(with.apply(step.times(middle)))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Optional.of(step.times(high));
    }

    /** How thick the member may be where it comes too near, if that alone leaves the room. */
    private Optional<String> slimmest() {
        if (given.stagger().isPositive()) {
            return Optional.empty();
        }
        double half = Math.PI / given.places();
        double cos = Math.cos(half);
        Length s = given.hubRadius().plus(room.gap(given).at());
        double radius = cos < 1e-9
                ? -1
                : (s.mm() * Math.sin(half) - room.joinery().leastGap().mm() / 2) / cos;
        Length most = steps.down(Length.ofMm(2 * radius));
        return most.mm() < 2 * steps.fine().mm()
                ? Optional.empty()
                : Optional.of("no more than %s thick there".formatted(steps.print(most)));
    }
}
