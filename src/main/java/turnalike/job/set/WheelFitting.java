package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import turnalike.frame.Moment;
import turnalike.frame.RingBody;
import turnalike.frame.SegmentedRim;
import turnalike.frame.SpokeGap;
import turnalike.outline.Outline;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.solid.Solid;
import turnalike.units.Angle;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Mass;
import turnalike.units.UnitSystem;
import turnalike.units.Working;
import turnalike.wood.Wood;

/** Sets a pattern into a wheel and looks where it touches. */
final class WheelFitting {
    private final OnWheel frame;
    private final WheelJoinery joinery;
    private final Pattern pattern;
    private final Density density;
    private final UnitSystem units;
    private final Seating seating;
    private final WheelRoom room;

    private WheelFitting(OnWheel frame, Pattern pattern, Density density, UnitSystem units) {
        this.frame = frame;
        this.joinery = frame.joinery();
        this.pattern = pattern;
        this.density = density;
        this.units = units;
        this.seating = Seating.of(pattern, frame.hubEnd());
        List<PlacedMember> run = pattern.placed();
        PlacedMember hubMember = frame.hubEnd() == End.START ? run.get(0) : run.get(run.size() - 1);
        PlacedMember rimMember = frame.hubEnd() == End.START ? run.get(run.size() - 1) : run.get(0);
        Optional<Length> hubHole =
                seating.onTenon() ? hubMember.member().enters().map(Member.Hole::diameter) : Optional.empty();
        Optional<Length> rimHole = seating.rimTenon().isPositive()
                ? rimMember.member().enters().map(Member.Hole::diameter)
                : Optional.empty();
        this.room = new WheelRoom(
                joinery,
                body(),
                hubHole,
                joinery.hubSeat().orElse(seating.hubTenon()),
                rimHole,
                joinery.rimSeat().orElse(seating.rimTenon()));
    }

    static WheelFit of(OnWheel frame, Pattern pattern, Density density, UnitSystem units) {
        return new WheelFitting(frame, pattern, density, units).fit();
    }

    /** What stands between the two shoulders, running outward from the hub's. */
    private Outline body() {
        Outline exposed = ExposedPart.of(pattern);
        return frame.hubEnd() == End.START ? exposed : exposed.reversed();
    }

    private WheelRoom.Trial asGiven() {
        return new WheelRoom.Trial(
                frame.wheel().places(), frame.wheel().hubRadius(), joinery.stagger(), room.hubDepth());
    }

    private WheelFit fit() {
        WheelRoom.Trial given = asGiven();
        SpokeGap gap = room.gap(given);
        Length inner = frame.wheel().hubRadius().plus(room.body().length());
        Optional<Length> outer = joinery.rimWidth().map(inner::plus);
        Optional<WheelFit.Seats> hub = room.hubHole()
                .map(hole -> new WheelFit.Seats(
                        hole, room.hubDepth(), room.hubWall(given).orElseThrow()));
        Optional<WheelFit.Seats> rim = room.rimHole()
                .map(hole -> new WheelFit.Seats(
                        hole, room.rimDepth(), room.rimWall(given).orElseThrow()));
        Optional<Length> outside = rim.flatMap(seats -> joinery.rimWidth().map(width -> width.minus(seats.depth())));
        Optional<SegmentedRim> segments = joinery.segments().isPresent()
                ? Optional.of(SegmentedRim.of(
                        joinery.segments().getAsInt(),
                        given.places(),
                        inner,
                        outer,
                        room.rimHole().orElse(Length.ZERO)))
                : Optional.empty();
        WheelFit.Neighbours neighbours = neighbours(gap);
        WholeWheel whole = whole(given, inner, outer);
        return new WheelFit(
                given.places(),
                Angle.ofDegrees(360.0 / given.places()),
                joinery.stagger(),
                neighbours,
                hub,
                rim,
                outside,
                frame.wheel().hubRadius(),
                joinery.axleHole(),
                seating.shoulder(),
                frame.hubEnd() == End.START,
                inner,
                outer,
                segments,
                whole,
                new WheelMisfits(room, given, pattern, units).list(neighbours, hub, rim, outside, segments),
                workings(given, whole));
    }

    /** Each spoke as drawn; hub and rim where their sizes are told. */
    private WholeWheel whole(WheelRoom.Trial given, Length inner, Optional<Length> outer) {
        int n = given.places();
        Solid spoke = Solid.of(pattern.outline(), density);
        Length reach = frame.wheel().reach(seating.fromShoulder(spoke.balance()));
        double inertia = n * (spoke.swingInertiaGMm2() + spoke.mass().grams() * reach.mm() * reach.mm());
        Optional<RingBody> hub = joinery.hubLength()
                .map(length -> RingBody.of(
                        joinery.axleHole().times(0.5),
                        given.hubRadius(),
                        length,
                        joinery.hubWood().map(Wood::density).orElse(density),
                        new RingBody.Holes(
                                n,
                                room.hubHole().orElse(Length.ZERO),
                                room.hubDepth(),
                                given.hubRadius().minus(room.hubDepth().times(0.5)))))
                .filter(RingBody::isLeft);
        Optional<RingBody> rim = outer.flatMap(out -> joinery.rimThickness()
                        .map(thickness -> RingBody.of(
                                inner,
                                out,
                                thickness,
                                rimDensity(inner, out, thickness),
                                new RingBody.Holes(
                                        n,
                                        room.rimHole().orElse(Length.ZERO),
                                        room.rimDepth(),
                                        inner.plus(room.rimDepth().times(0.5))))))
                .filter(RingBody::isLeft);
        double told = hub.map(RingBody::inertiaGMm2).orElse(0.0)
                + rim.map(RingBody::inertiaGMm2).orElse(0.0);
        boolean bySizes = hub.isPresent() && rim.isPresent();
        Optional<Rocking> rocked = frame.bare().rocking().filter(each -> !bySizes);
        return new WholeWheel(
                Mass.ofGrams(n * spoke.mass().grams()),
                hub.map(RingBody::mass),
                rim.map(RingBody::mass),
                inertia,
                rocked.map(Rocking::inertiaGMm2).orElse(told),
                bySizes
                        ? WholeWheel.Rest.BY_SIZES
                        : rocked.isPresent() ? WholeWheel.Rest.BY_ROCKING : WholeWheel.Rest.IN_PART,
                Moment.sum(frame.givenMoments(pattern)),
                frame.rimPull(pattern),
                frame.counterweightRadius().orElse(inner),
                frame.revPerMin());
    }

    /** As its segments were weighed, else of its wood as the table has it. */
    private Density rimDensity(Length inner, Length outer, Length thickness) {
        double mm3 = Math.PI * (outer.mm() * outer.mm() - inner.mm() * inner.mm()) * thickness.mm();
        return joinery.rimSegments()
                .total()
                .map(mass -> Density.ofKgPerM3(mass.grams() / mm3 * 1e6))
                .or(() -> joinery.rimWood().map(Wood::density))
                .orElse(density);
    }

    private WheelFit.Neighbours neighbours(SpokeGap gap) {
        Length at = frame.hubEnd() == End.START
                ? seating.shoulder().plus(gap.at())
                : seating.shoulder().minus(gap.at());
        return new WheelFit.Neighbours(
                gap.gap(), at, ExposedPart.thickest(pattern, at).number() - 1, gap.apart());
    }

    private List<Working> workings(WheelRoom.Trial given, WholeWheel whole) {
        List<Working> out = new ArrayList<>();
        String skew = given.stagger().isPositive()
                ? "the least distance in space of the discs that two spokes are made of, within 0.01 mm; next but one as in one plane"
                : "2 (s sin(pitch/2) - r cos(pitch/2)), the least along the turned part; s from the axle, r the radius there";
        out.add(new Working(
                "between neighbours",
                skew,
                Working.DERIVED,
                "exact for the drawn shape; a square counts with half its diagonal. Wood warned of below %s"
                        .formatted(joinery.leastGap().formatBoth(units))));
        // Holes that reach the axle have no wood between them; that they do is told among what cannot be built.
        room.hubHole()
                .filter(hole -> given.hubRadius().minus(given.hubDepth()).isPositive())
                .ifPresent(hole -> out.add(new Working(
                        "wood between mortises",
                        String.format(
                                Locale.ROOT,
                                "the same of two holes %s wide that end %s from the axle; in the rim at their mouth",
                                hole.formatBoth(units),
                                given.hubRadius().minus(given.hubDepth()).formatBoth(units)),
                        Working.DERIVED,
                        "flat-bottomed holes, bored square to the hub. Warned of below %s"
                                .formatted(joinery.leastWall(hole).formatBoth(units)))));
        if (joinery.hubLength().isPresent() || joinery.rimThickness().isPresent()) {
            out.add(new Working(
                    "the whole wheel",
                    "spokes as drawn, m R^2 + their own swing; hub and rim as rings, 1/2 m (R^2 + r^2), less their mortises",
                    Working.DERIVED,
                    "exact for the drawn shapes; glue, finish and what the axle weighs are left out"));
        }
        frame.rimPull(pattern).ifPresent(pull -> out.add(SegmentedRim.pullWorking()));
        whole.working().ifPresent(out::add);
        out.add(new Working(
                "what is left at least",
                "a quarter of an inch between neighbours; between mortises that, or a third of the hole if it is more",
                Working.COMMON_PRACTICE,
                "set least_gap and least_wall of the frame for a rule of your own"));
        return out;
    }
}
