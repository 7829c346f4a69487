package turnalike.job.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import turnalike.frame.LegAngles;
import turnalike.outline.Outline;
import turnalike.units.Angle;
import turnalike.units.Length;
import turnalike.units.MassUnit;
import turnalike.units.UnitSystem;
import turnalike.units.Working;

/**
 * How a pattern stands as a leg.
 *
 * @param places how many legs make one group
 * @param board what they stand under; below, "seat" means either
 * @param angles at which they lean
 * @param height from the floor to the seat's underside, if told
 * @param seatThickness of the seat, if told
 * @param apart between hole centres at the seat's underside, if told
 * @param leg what of the pattern stands below the seat, running down from its underside
 * @param seat how the seat is bored, where the pattern has a tenon for it
 * @param stretchers from leg to leg, in order of their heights as told
 * @param misfits what is too short or comes out
 * @param workings how the figures were found
 */
public record LegsFit(
        int places,
        Board board,
        LegAngles angles,
        Optional<Length> height,
        Optional<Length> seatThickness,
        Optional<Apart> apart,
        Outline leg,
        Optional<Seat> seat,
        List<Stretcher> stretchers,
        List<Misfit> misfits,
        List<Working> workings)
        implements FrameFit {
    public LegsFit {
        stretchers = List.copyOf(stretchers);
        misfits = List.copyOf(misfits);
        workings = List.copyOf(workings);
    }

    /** What legs stand under: unless the job says so, a head left square is for the rails that bear a table's top, any other for a seat. */
    public enum Board {
        /** A stool's, chair's or bench's. */
        SEAT("seat", "seat", "seat's top"),

        /** A table's. */
        TABLE_TOP("table top", "top", "table top's face");

        private final String word;
        private final String label;
        private final String face;

        Board(String word, String label, String face) {
            this.word = word;
            this.label = label;
            this.face = face;
        }

        /** {@return its upper side, as a sentence tells it after "the"} */
        String face() {
            return face;
        }

        /** {@return the turner's word for it} */
        public String word() {
            return word;
        }
    }

    /**
     * Between hole centres at the seat's underside.
     *
     * @param frontToBack along the front-back line
     * @param sideways across it
     */
    public record Apart(Length frontToBack, Length sideways) {}

    /**
     * Where one leg enters the seat and how its foot moves, from the middle of all holes; to the back and to the left is below zero.
     *
     * @param front to the front, where it enters
     * @param side to the right
     * @param movesFront how far further to the front the foot stands
     * @param movesSide how far further to the right
     */
    public record Foot(Length front, Length side, Length movesFront, Length movesSide) {}

    /**
     * How the seat is bored.
     *
     * @param hole diameter
     * @param tenon its length
     * @param along the seat's thickness along the hole, if told
     */
    public record Seat(Length hole, Length tenon, Optional<Length> along) {
        /** {@return whether the tenon comes through the seat} */
        public boolean isThrough() {
            return along.filter(through -> tenon.compareTo(through) >= 0).isPresent();
        }
    }

    /**
     * A level stretcher from leg to leg.
     *
     * @param between which legs, in words
     * @param height over the floor
     * @param axes from one leg's axis to the other's
     * @param clear about what is seen of it, less the legs' own thickness there
     * @param angle of its hole to the leg's axis, at most 90°
     * @param along from the seat's underside to the hole's middle, along the leg
     */
    public record Stretcher(String between, Length height, Length axes, Length clear, Angle angle, Length along) {}

    /** {@return how long a leg is from the seat's underside to the floor, along its axis, if the height is told} */
    public Optional<Length> length() {
        return height.map(angles::along);
    }

    /** {@return how much further the foot reaches down on its longer side than on its axis} */
    public Length footBelow() {
        return leg.endRadius().times(Math.tan(angles.lean().radians()));
    }

    /** {@return how far a shoulder square to the leg stands off the seat on its far side; empty where there is none or it stands upright} */
    public Optional<Length> standsOff() {
        return seat.filter(bored -> leg.startRadius().times(2).compareTo(bored.hole) > 0)
                .map(bored -> leg.startRadius().times(2 * Math.tan(angles.lean().radians())))
                .filter(off -> off.mm() >= 0.1);
    }

    /** {@return the height that it stands at: as told, else as high as the pattern's own length reaches} */
    public Length stands() {
        return height.orElseGet(() -> leg.length().times(Math.cos(angles.lean().radians())));
    }

    /** {@return whether each leg leans along its own line from the middle, all alike: legs without a splay that are not four} */
    public boolean isRound() {
        return places != 4 && places != 2 && angles.splay().degrees() == 0;
    }

    /** {@return whether the angles are those of a pair alone: legs with a splay that are neither two nor four} */
    public boolean isPairOnly() {
        return places != 4 && places != 2 && !isRound();
    }

    /**
     * {@return where each leg stands, from the front one or the front right one anticlockwise as seen from below the seat; where the holes are
     * not told to be, a pair or four stand as far apart as half their height} Of legs that are neither four, two nor all leaning outward only
     * a pair is told: which of the others lean how, only the maker knows.
     */
    public List<Foot> feet() {
        Length high = stands();
        Apart holes = apart.orElseGet(() -> new Apart(high.times(0.5), high.times(0.5)));
        List<Foot> out = new ArrayList<>();
        if (isRound()) {
            double radius = holes.frontToBack.mm() / (2 * Math.sin(Math.PI / places));
            for (int i = 0; i < places; i++) {
                double at = 2 * Math.PI * i / places;
                out.add(foot(Math.cos(at), Math.sin(at), radius, radius, high, angles.frontOrBack(high)));
            }
            return out;
        }
        double front = holes.frontToBack.mm() / 2;
        double side = holes.sideways.mm() / 2;
        int[][] corners = {{1, 1}, {-1, 1}, {-1, -1}, {1, -1}};
        for (int[] corner : corners) {
            if (places == 4 || corner[0] == 1) {
                out.add(foot(corner[0], corner[1], front, side, high, angles.sideways(high)));
            }
        }
        return out;
    }

    private Foot foot(double towardsFront, double towardsSide, double front, double side, Length high, Length moves) {
        return new Foot(
                Length.ofMm(towardsFront * front),
                Length.ofMm(towardsSide * side),
                angles.frontOrBack(high).times(towardsFront),
                moves.times(towardsSide));
    }

    /** {@return in which direction each of {@link #feet} moves, in the seat's plan, from the front towards the right} */
    public List<Angle> bearings() {
        return feet().stream()
                .map(foot -> Angle.ofRadians(Math.atan2(foot.movesSide.mm(), foot.movesFront.mm()))
                        .aroundOnce())
                .toList();
    }

    @Override
    public Optional<Length> touches() {
        return Optional.empty();
    }

    @Override
    public List<String> facts(UnitSystem units, MassUnit masses) {
        List<String> out = new ArrayList<>();
        out.add(
                isRound()
                        ? "Frame      groups of %d legs, each leaning outward by %s"
                                .formatted(places, degrees(angles.lean()))
                        : "Frame      groups of %d legs, raked %s and splayed %s"
                                .formatted(places, degrees(angles.rake()), degrees(angles.splay())));
        if (isEntered() || angles.lean().degrees() > 0) {
            out.add("  bore     %s from upright along %s"
                    .formatted(
                            degrees(angles.lean()),
                            isRound()
                                    ? "each leg's own line from the middle, %s from the next"
                                            .formatted(degrees(Angle.ofDegrees(360.0 / places)))
                                    : "a sight line %s off the front-back line".formatted(degrees(angles.sight()))));
        }
        if (isPairOnly()) {
            out.add(
                    ("           two that mirror one another stand so; of %d legs the others lean along lines of their own: without a splay"
                                    + " all lean outward alike")
                            .formatted(places));
        }
        seat.ifPresent(bored -> out.add(
                "  %-8s bore %s%s".formatted(board.label, bored.hole.formatBoth(units), seatWords(bored, units))));
        standsOff()
                .ifPresent(off -> out.add(
                        ("  shoulder meets the %1$s on one side first and stands off by %2$s on the other: face the %1$s square to"
                                        + " the hole, or pare the shoulder to it")
                                .formatted(board.word(), off.formatBoth(units))));
        length().ifPresent(along ->
                out.add("  leg      %s from the %s's underside to the floor, along it; the pattern has %s"
                        .formatted(
                                along.formatBoth(units),
                                board.word(),
                                leg.length().formatBoth(units))));
        out.add("  foot     cut at a bevel of %s to the leg's square; its longer side reaches %s below its middle"
                .formatted(degrees(angles.lean()), footBelow().formatBoth(units)));
        for (Stretcher each : stretchers) {
            out.add(
                    "  stretcher %s, %s over the floor: %s from axis to axis, about %s seen; bored at %s to the leg, %s down it"
                            .formatted(
                                    each.between,
                                    each.height.formatBoth(units),
                                    each.axes.formatBoth(units),
                                    each.clear.formatBoth(units),
                                    degrees(each.angle),
                                    each.along.formatBoth(units)));
        }
        if (places == 4 && !stretchers.isEmpty()) {
            out.add(
                    "           bored both ways at one height they meet inside the leg: set one pair higher by more than its hole, or leave it out");
        }
        out.add("  caution  "
                + (isEntered() ? "bore a scrap of the same wood first and try the tenon in it; " : "")
                + "what bears people is for licensed practice to judge");
        return out;
    }

    /** Whether a hole is bored for them: not for a head left square, which bears rails. */
    private boolean isEntered() {
        return board == Board.SEAT || seat.isPresent();
    }

    private String seatWords(Seat bored, UnitSystem units) {
        return bored.along
                .map(along -> ", the %s is %s thick along it: %s"
                        .formatted(
                                board.word(),
                                along.formatBoth(units),
                                bored.isThrough()
                                        ? "the tenon comes through by "
                                                + bored.tenon.minus(along).formatBoth(units)
                                        : "the tenon goes in %s and stops short"
                                                .formatted(bored.tenon.formatBoth(units))))
                .orElse(", %s deep along it".formatted(bored.tenon.formatBoth(units)));
    }

    private static String degrees(Angle angle) {
        return angle.format();
    }

    @Override
    public <R> R match(Cases<R> cases) {
        return cases.legs(this);
    }
}
