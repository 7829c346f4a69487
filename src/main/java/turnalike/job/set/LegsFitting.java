package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.frame.LegAngles;
import turnalike.outline.Outline;
import turnalike.outline.Section;
import turnalike.pattern.Member;
import turnalike.pattern.Pattern;
import turnalike.pattern.PlacedMember;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/** Sets a pattern under a seat or a table's top as a leg: the end with a tenon is up, the start where both have one or neither. */
final class LegsFitting {
    /** The point of a bit reaches so far beyond its edges. Common practice, no source; a spade bit's reaches further. */
    private static final Length POINT = Length.ofInches(1 / 4.0);

    private final int places;
    private final LegsFit.Board board;
    private final LegStance stance;
    private final LegAngles angles;
    private final UnitSystem units;
    private final Optional<Member.Hole> hole;
    private final Length tenon;
    private final Outline leg;

    private LegsFitting(InLegs frame, Pattern pattern, UnitSystem units) {
        this.places = frame.places();
        this.stance = frame.stance();
        this.angles = stance.angles();
        this.units = units;
        boolean startUp = up(pattern) == End.START;
        Member top = top(pattern);
        this.board = board(frame, pattern);
        this.hole = top.enters();
        this.tenon = top.lengthInHole();
        Outline exposed = ExposedPart.of(pattern);
        this.leg = startUp ? exposed : exposed.reversed();
    }

    /** Which end of the pattern is under the seat. */
    static End up(Pattern pattern) {
        List<PlacedMember> run = pattern.placed();
        boolean startEnters = run.get(0).member().enters().isPresent();
        boolean endEnters = run.get(run.size() - 1).member().enters().isPresent();
        return startEnters || !endEnters ? End.START : End.END;
    }

    private static Member top(Pattern pattern) {
        List<PlacedMember> run = pattern.placed();
        return run.get(up(pattern) == End.START ? 0 : run.size() - 1).member();
    }

    /** What they stand under: as the job says, else as the head does. */
    static LegsFit.Board board(InLegs frame, Pattern pattern) {
        return frame.stance()
                .under()
                .orElse(top(pattern).section() == Section.SQUARE ? LegsFit.Board.TABLE_TOP : LegsFit.Board.SEAT);
    }

    static LegsFit of(InLegs frame, Pattern pattern, UnitSystem units) {
        return new LegsFitting(frame, pattern, units).fit();
    }

    private LegsFit fit() {
        Optional<LegsFit.Seat> seat = hole.map(each ->
                new LegsFit.Seat(each.diameter(), tenon, stance.seatThickness().map(angles::along)));
        List<Misfit> misfits = new ArrayList<>();
        stance.height().ifPresent(height -> tooShort(height, misfits));
        seat.ifPresent(bored -> comesOut(bored, misfits));
        List<LegsFit.Stretcher> stretchers = new ArrayList<>();
        stance.stretchers().forEach(height -> stretchers.addAll(at(height)));
        for (LegsFit.Stretcher each : stretchers) {
            if (!each.clear().isPositive()) {
                misfits.add(new Misfit(
                        true,
                        "stretcher",
                        "the legs touch %s over the floor, %s".formatted(print(each.height()), each.between()),
                        "set their holes further apart"));
            }
        }
        misfits.sort((one, other) -> Boolean.compare(other.forbids(), one.forbids()));
        return new LegsFit(
                places,
                board,
                angles,
                stance.height(),
                stance.seatThickness(),
                stance.apart(),
                leg,
                seat,
                stretchers,
                misfits,
                workings());
    }

    /** The foot is cut at a bevel: its longer side reaches further down than its axis. */
    private void tooShort(Length height, List<Misfit> misfits) {
        double lean = angles.lean().radians();
        Length below = leg.endRadius().times(Math.tan(lean));
        Length wanted = angles.along(height).plus(below);
        if (wanted.mm() > leg.length().mm() + 1e-9) {
            Length reached = leg.length().minus(below).times(Math.cos(lean));
            misfits.add(new Misfit(
                    false,
                    "leg",
                    "it has %s %s, but %s are wanted from the %s's underside to the floor, the foot's longer side included"
                            .formatted(
                                    print(leg.length()),
                                    board == LegsFit.Board.SEAT || hole.isPresent() ? "below its shoulder" : "in all",
                                    print(wanted),
                                    board.word()),
                    "lengthen the pattern by %s, or let the %s's underside stand %s high"
                            .formatted(print(wanted.minus(leg.length())), board.word(), print(reached))));
        }
    }

    /** A hole that is to stop short: the bit's far corner goes deeper than its middle. */
    private void comesOut(LegsFit.Seat seat, List<Misfit> misfits) {
        if (seat.along().isEmpty()) {
            return;
        }
        if (seat.isThrough()) {
            onOneSide(seat, misfits);
            return;
        }
        double lean = angles.lean().radians();
        Length left = stance.seatThickness()
                .orElseThrow()
                .minus(seat.tenon().times(Math.cos(lean)))
                .minus(seat.hole().times(Math.sin(lean) / 2));
        if (left.mm() < 0) {
            misfits.add(new Misfit(
                    false,
                    board.word(),
                    "a flat-bottomed hole %s deep at %s breaks through its top, though the tenon stops short"
                            .formatted(print(seat.tenon()), angles.lean().format()),
                    "bore %s less deep, or right through".formatted(print(left.abs()))));
            return;
        }
        Length beyond = seat.along().orElseThrow().minus(seat.tenon());
        if (beyond.compareTo(POINT) < 0) {
            misfits.add(new Misfit(
                    false,
                    board.word(),
                    "only %s of it is left beyond the hole, and a bit's point reaches further than its edge: it may prick through the top"
                            .formatted(print(beyond)),
                    "bore %s less deep, or with a bit of a short point, a scrap first"
                            .formatted(print(POINT.minus(beyond)))));
        }
    }

    /** A tenon's end is square to its axis, the seat's top is not: only so much proud stands all of it out of the hole. */
    private void onOneSide(LegsFit.Seat seat, List<Misfit> misfits) {
        Length proud = seat.tenon().minus(seat.along().orElseThrow());
        Length wanted = seat.hole().times(0.5 * Math.tan(angles.lean().radians()));
        if (proud.mm() < wanted.mm() - 1e-9) {
            misfits.add(new Misfit(
                    false,
                    board.word(),
                    "the tenon comes through by %s on its axis, but leaning so it stays below the %s on one side up to %s"
                            .formatted(print(proud), board.face(), print(wanted)),
                    "lengthen it by %s and cut it flush, or let it stop short".formatted(print(wanted.minus(proud)))));
        }
    }

    private List<LegsFit.Stretcher> at(Length height) {
        LegsFit.Apart apart = stance.apart().orElseThrow();
        Length down = stance.height().orElseThrow().minus(height);
        if (places == 3) {
            // The legs' circle grows by the foot's move; a side is √3 of its radius and meets it at 30°.
            Length side = apart.frontToBack().plus(angles.frontOrBack(down).times(Math.sqrt(3)));
            double cos = Math.cos(Math.PI / 6) * Math.sin(angles.lean().radians());
            return List.of(stretcher("from leg to leg", height, side, Angle.ofRadians(Math.acos(cos)), down));
        }
        return List.of(
                stretcher(
                        "from side to side",
                        height,
                        apart.sideways().plus(angles.sideways(down).times(2)),
                        angles.toSideways(),
                        down),
                stretcher(
                        "from front to back",
                        height,
                        apart.frontToBack().plus(angles.frontOrBack(down).times(2)),
                        angles.toFrontBack(),
                        down));
    }

    private LegsFit.Stretcher stretcher(String between, Length height, Length axes, Angle angle, Length down) {
        Length along = angles.along(down);
        Length radius = leg.radiusAt(leg.start().plus(along));
        Length clear = axes.minus(radius.times(2 / Math.sin(angle.radians())));
        return new LegsFit.Stretcher(between, height, axes, clear, angle, along);
    }

    private List<Working> workings() {
        List<Working> out = new ArrayList<>();
        out.add(new Working(
                "lean and sight line",
                "lean = atan √(tan² rake + tan² splay); sight, from the front-back line in the %s's plan, = atan (tan splay / tan rake)"
                        .formatted(board.word()),
                Working.DERIVED,
                "exact; rake and splay are seen square from the side and from the front, from the vertical"));
        out.add(new Working(
                "leg and bevel",
                "leg = height / cos(lean), from the %s's underside to the floor along its axis; the foot is cut level, which is a bevel of the lean"
                        .formatted(board.word()),
                Working.DERIVED,
                "exact for a flat %s and floor".formatted(board.word())));
        if (!stance.stretchers().isEmpty()) {
            out.add(
                    new Working(
                            "stretchers",
                            "between axes at their height; the hole's angle by cos = tan(splay or rake) x cos(lean), of three"
                                    + " legs sin(lean) x cos 30°",
                            Working.DERIVED,
                            "what is seen of one is less by the leg's radius there / sin(angle) at each end, as if the leg were a cylinder"));
        }
        return out;
    }

    private String print(Length length) {
        return length.formatBoth(units);
    }
}
