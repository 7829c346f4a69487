package turnalike.job.set;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Size;
import turnalike.job.fields.KeyType.Whole;
import turnalike.job.wood.WoodKeys;
import turnalike.job.wood.WoodReader;
import turnalike.units.Length;
import turnalike.wood.Wood;

/**
 * How a wheel is put together: what is bored into its hub and rim, and what its rim is made of.
 *
 * @param hubSeat depth of a mortise in the hub; the hub tenon's length if not told
 * @param hubLength of the hub along the axle, if told
 * @param axleHole diameter of the hole for the axle; zero where none is told
 * @param stagger how far every second place is set off along the axle; zero for one row
 * @param rimSeat depth of a mortise in the rim; the rim tenon's length if not told
 * @param rimWidth of the rim, radially, if told
 * @param rimThickness of the rim, along the axle, if told
 * @param rimWood what the rim is made of, if told; else the piece's own
 * @param hubWood what the hub is made of, likewise
 * @param segments how many pieces the rim is made of, if told
 * @param rimSegments what each of them weighs, if told; then as many as {@code segments}, which is told with {@code rimWidth}
 * @param leastGap what is left at least between two neighbours, unwarned
 * @param leastWall what is left at least between two mortises, unwarned; where not told {@link #leastWall(Length)}
 */
public record WheelJoinery(
        Optional<Length> hubSeat,
        Optional<Length> hubLength,
        Length axleHole,
        Length stagger,
        Optional<Length> rimSeat,
        Optional<Length> rimWidth,
        Optional<Length> rimThickness,
        Optional<Wood> rimWood,
        Optional<Wood> hubWood,
        OptionalInt segments,
        RimSegments rimSegments,
        Length leastGap,
        Optional<Length> leastWall) {
    /** A finger's room, or a quarter of an inch. Common practice, no source. */
    private static final Length QUARTER = Length.ofInches(0.25);

    static final Key<Size> HUB_SEAT = Key.may(
                    "hub_seat", KeyType.aboveZero(), "depth of a mortise in the hub", "the hub tenon's length")
            .asked(KeySection.FRAME, "Hub mortise deep", "left empty: as the hub tenon is long");

    static final Key<Size> HUB_LENGTH = Key.may(
                    "hub_length", KeyType.aboveZero(), "of the hub, along the axle", "not told")
            .asked(KeySection.FRAME, "Hub length", "along the axle");

    static final Key<Size> AXLE_HOLE = Key.may(
                    "axle_hole",
                    new Size(false, Optional.of(Length.ZERO)),
                    "diameter of the axle's hole in the hub; a mortise stops short of it",
                    "0")
            .asked(KeySection.FRAME, "Axle hole", "its diameter");

    static final Key<Size> STAGGER = Key.may(
                    "stagger",
                    new Size(false, Optional.of(Length.ZERO)),
                    "how far every second place is set off along the axle; needs an even number of places",
                    "0")
            .asked(KeySection.FRAME, "Two rows, apart by", "left empty: one row");

    static final Key<Size> RIM_SEAT = Key.may(
                    "rim_seat", KeyType.aboveZero(), "depth of a mortise in the rim", "the rim tenon's length")
            .asked(KeySection.FRAME, "Rim mortise deep", "left empty: as the rim tenon is long");

    static final Key<Size> RIM_WIDTH = Key.may("rim_width", KeyType.aboveZero(), "of the rim, radially", "not told")
            .asked(KeySection.FRAME, "Rim width", "from inside to outside");

    static final Key<Size> RIM_THICKNESS = Key.may(
                    "rim_thickness", KeyType.aboveZero(), "of the rim, along the axle", "not told")
            .asked(KeySection.FRAME, "Rim thickness", "along the axle");

    static final Key<Group> RIM_WOOD = Key.may(
            "rim_wood", WoodKeys.beside(KeySection.FRAME, "Rim"), "what the rim is made of", "the piece's own wood");

    static final Key<Group> HUB_WOOD = Key.may(
            "hub_wood", WoodKeys.beside(KeySection.FRAME, "Hub"), "what the hub is made of", "the piece's own wood");

    static final Key<Whole> SEGMENTS = Key.may(
                    "segments",
                    new Whole(3, FrameKind.MOST_PLACES, OptionalInt.empty()),
                    "how many pieces the rim is made of",
                    "not told")
            .asked(KeySection.FRAME, "Rim segments", "");

    static final Key<Size> LEAST_GAP = Key.may(
                    "least_gap",
                    new Size(false, Optional.of(QUARTER)),
                    "what is left between two neighbours unwarned (common practice, no source)",
                    "6.35 mm, 1/4 in")
            .asked(KeySection.FRAME, "Least between spokes", "left empty: 6.35 mm, 1/4 in");

    static final Key<Size> LEAST_WALL = Key.may(
                    "least_wall",
                    KeyType.size(),
                    "what is left between two mortises unwarned (common practice, no source)",
                    "1/4 in, or a third of the mortise's diameter if that is more")
            .asked(KeySection.FRAME, "Least between mortises", "left empty: 1/4 in or a third of the mortise");

    static final List<Key<?>> KEYS = List.of(
            HUB_SEAT,
            HUB_LENGTH,
            AXLE_HOLE,
            STAGGER,
            RIM_SEAT,
            RIM_WIDTH,
            RIM_THICKNESS,
            RIM_WOOD,
            HUB_WOOD,
            SEGMENTS,
            RimSegments.MASSES,
            LEAST_GAP,
            LEAST_WALL);

    static Optional<WheelJoinery> read(Fields fields, Optional<Integer> places) {
        int before = fields.reading().count();
        Optional<Length> hubSeat = fields.size(HUB_SEAT);
        Optional<Length> hubLength = fields.size(HUB_LENGTH);
        Optional<Length> axleHole = fields.size(AXLE_HOLE);
        Optional<Length> stagger = fields.size(STAGGER);
        Optional<Length> rimSeat = fields.size(RIM_SEAT);
        Optional<Length> rimWidth = fields.size(RIM_WIDTH);
        Optional<Length> rimThickness = fields.size(RIM_THICKNESS);
        Optional<Wood> rimWood = WoodReader.besideOf(fields, RIM_WOOD);
        Optional<Wood> hubWood = WoodReader.besideOf(fields, HUB_WOOD);
        OptionalInt segments = fields.whole(SEGMENTS).map(OptionalInt::of).orElse(OptionalInt.empty());
        Optional<RimSegments> rimSegments = RimSegments.read(fields, segments, rimWidth);
        Optional<Length> leastGap = fields.size(LEAST_GAP);
        Optional<Length> leastWall = fields.size(LEAST_WALL);
        if (stagger.filter(Length::isPositive).isPresent()
                && places.filter(n -> n % 2 != 0).isPresent()) {
            fields.reading()
                    .problem(
                            fields.at(STAGGER.name()),
                            "sets off every second place, but there are %d".formatted(places.get()),
                            "take an even number of places or leave stagger out");
        }
        return fields.reading().count() > before
                ? Optional.empty()
                : Optional.of(new WheelJoinery(
                        hubSeat,
                        hubLength,
                        axleHole.orElseThrow(),
                        stagger.orElseThrow(),
                        rimSeat,
                        rimWidth,
                        rimThickness,
                        rimWood,
                        hubWood,
                        segments,
                        rimSegments.orElseThrow(),
                        leastGap.orElseThrow(),
                        leastWall));
    }

    /** Whether anything is told of the hub but its radius. */
    boolean tellsHub() {
        return hubLength.isPresent() || axleHole.isPositive();
    }

    /** Whether anything is told of the rim. */
    boolean tellsRim() {
        return rimWidth.isPresent() || rimThickness.isPresent();
    }

    /**
     * {@return what is left at least between two mortises, unwarned: as the job says, else a quarter of an inch or a third of the mortise,
     * whichever is more (common practice, no source)}
     *
     * @param hole the mortise's diameter
     */
    public Length leastWall(Length hole) {
        Length third = hole.times(1 / 3.0);
        return leastWall.orElse(third.compareTo(QUARTER) > 0 ? third : QUARTER);
    }
}
