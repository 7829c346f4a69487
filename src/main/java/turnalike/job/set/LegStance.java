package turnalike.job.set;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import turnalike.frame.LegAngles;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Size;
import turnalike.job.fields.KeyType.Word;
import turnalike.job.wood.WoodKeys;
import turnalike.job.wood.WoodReader;
import turnalike.units.Angle;
import turnalike.units.Article;
import turnalike.units.Length;
import turnalike.wood.Wood;

/**
 * How legs stand under a seat or a table.
 *
 * @param told whether the job says anything of it
 * @param angles at which they lean
 * @param height from the floor to the seat's underside, if told
 * @param seatThickness of the seat, if told
 * @param apart between hole centres at the seat's underside, front to back and sideways, if told; both the same of three legs
 * @param stretchers heights over the floor, in order as told
 * @param seatWood what the seat is made of, if told
 * @param under what they stand under, if told; else the leg's head says it
 */
record LegStance(
        boolean told,
        LegAngles angles,
        Optional<Length> height,
        Optional<Length> seatThickness,
        Optional<LegsFit.Apart> apart,
        List<Length> stretchers,
        Optional<Wood> seatWood,
        Optional<LegsFit.Board> under) {
    private static final double STEEPEST_DEG = 89;
    private static final int MOST_STRETCHERS = 12;

    static final Key<Number> RAKE_DEG = Key.may(
                    "rake_deg",
                    KeyType.number(0, STEEPEST_DEG),
                    "lean to the front or back, seen from the side, from the vertical",
                    "0")
            .asked(KeySection.FRAME, "Rake, degrees", "left empty: 0");

    static final Key<Number> SPLAY_DEG = Key.may(
                    "splay_deg",
                    KeyType.number(0, STEEPEST_DEG),
                    "lean to the side, seen from the front, from the vertical",
                    "0")
            .asked(KeySection.FRAME, "Splay, degrees", "left empty: 0");

    static final Key<ListOf<Size>> FOOT_MOVES = Key.may(
                    "foot_moves",
                    new ListOf<>(KeyType.size(), 2, 2),
                    "in place of both angles: how far the foot stands to the front or back and to the side of where the leg enters, over `height`",
                    "by the angles")
            .asked(KeySection.FRAME, "Foot moves", "in place of both angles: front or back; sideways");

    static final Key<Size> HEIGHT = Key.may(
                    "height", KeyType.aboveZero(), "from the floor to the underside of seat or table top", "not told")
            .asked(KeySection.FRAME, "Height under seat or top", "from the floor");

    static final Key<Size> SEAT_THICKNESS = Key.may(
                    "seat_thickness",
                    KeyType.aboveZero(),
                    "of the seat, where the legs enter, or of the table top",
                    "not told")
            .asked(KeySection.FRAME, "Thickness of seat or top", "");

    static final Key<ListOf<Size>> APART = Key.may(
                    "apart",
                    new ListOf<>(KeyType.aboveZero(), 1, 2),
                    "hole centres, or a table's legs, at the seat's or top's underside, front to back and sideways; one length where both are the same",
                    "not told")
            .asked(KeySection.FRAME, "Holes apart", "front to back; sideways");

    static final Key<ListOf<Size>> STRETCHERS = Key.may(
                    "stretchers",
                    new ListOf<>(KeyType.aboveZero(), 0, MOST_STRETCHERS),
                    "heights over the floor of stretchers from leg to leg; needs `height` and `apart`",
                    "none")
            .asked(KeySection.FRAME, "Stretchers at", "heights over the floor, parted by semicolons");

    static final Key<Group> SEAT_WOOD = Key.may(
            "seat_wood", WoodKeys.beside(KeySection.FRAME, "Seat"), "what the seat is made of", "the piece's own wood");

    private static final String SEAT = "seat";
    private static final String TABLE_TOP = "table_top";

    static final Key<Word> UNDER = Key.may(
                    "under",
                    new Word(List.of("by_head", SEAT, TABLE_TOP)),
                    "what they stand under, by which it is told of; round tenons may be for either",
                    "by_head: a table top where the leg's head is left square, else a seat")
            .asked(KeySection.FRAME, "Stand under", "left empty: a table top where their head is square, else a seat");

    static final List<Key<?>> KEYS =
            List.of(RAKE_DEG, SPLAY_DEG, FOOT_MOVES, HEIGHT, SEAT_THICKNESS, APART, STRETCHERS, SEAT_WOOD, UNDER);

    LegStance {
        stretchers = List.copyOf(stretchers);
    }

    static Optional<LegStance> read(Fields fields, Optional<Integer> places) {
        int before = fields.reading().count();
        boolean told = Stream.of(RAKE_DEG, SPLAY_DEG, FOOT_MOVES, HEIGHT, SEAT_THICKNESS, APART, STRETCHERS)
                        .filter(fields::has)
                        .count()
                > 0;
        Optional<Double> rake = fields.number(RAKE_DEG);
        Optional<Double> splay = fields.number(SPLAY_DEG);
        Optional<Length> height = fields.size(HEIGHT);
        Optional<Length> seat = fields.size(SEAT_THICKNESS);
        List<Length> moves = sizes(fields, FOOT_MOVES, "give two lengths: to the front or back, and to the side");
        List<Length> apart = sizes(
                fields, APART, "give a list of one length, such as [\"9\"], or of two: front to back, and sideways");
        List<Length> stretchers = sizes(fields, STRETCHERS, "give heights over the floor");
        Optional<Wood> seatWood = WoodReader.besideOf(fields, SEAT_WOOD);
        Optional<LegsFit.Board> under = fields.word(UNDER)
                .filter(List.of(SEAT, TABLE_TOP)::contains)
                .map(word -> word.equals(SEAT) ? LegsFit.Board.SEAT : LegsFit.Board.TABLE_TOP);
        if (fields.reading().count() == before) {
            together(fields, height, stretchers, places);
        }
        if (fields.reading().count() > before) {
            return Optional.empty();
        }
        LegAngles angles = moves.isEmpty()
                ? new LegAngles(Angle.ofDegrees(rake.orElse(0.0)), Angle.ofDegrees(splay.orElse(0.0)))
                : LegAngles.ofFootMoves(moves.get(0), moves.get(1), height.orElseThrow());
        Optional<LegsFit.Apart> holes = apart.isEmpty()
                ? Optional.empty()
                : Optional.of(new LegsFit.Apart(apart.get(0), apart.get(apart.size() - 1)));
        return Optional.of(new LegStance(told, angles, height, seat, holes, stretchers, seatWood, under));
    }

    /** Every length of a list, or none when any is wrong, which has then been told. */
    private static List<Length> sizes(Fields fields, Key<ListOf<Size>> key, String mend) {
        if (!fields.has(key)) {
            return List.of();
        }
        List<JsonNode> nodes = fields.list(key, mend).orElse(List.of());
        int least = key.type().least();
        int most = key.type().most();
        if (fields.has(key) && (nodes.size() < least || nodes.size() > most)) {
            fields.reading().problem(fields.at(key.name()), "has " + Article.count(nodes.size(), "length"), mend);
            return List.of();
        }
        List<Length> out = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            String place = "%s %d".formatted(key.name(), i + 1);
            Optional<Length> length = fields.lengthAt(place, nodes.get(i));
            if (key.type().item().aboveZero()
                    && length.filter(each -> !each.isPositive()).isPresent()) {
                fields.reading().problem(fields.at(place), "must be above zero", "give a size above zero");
            }
            length.ifPresent(out::add);
        }
        return out;
    }

    private static void together(
            Fields fields, Optional<Length> height, List<Length> stretchers, Optional<Integer> places) {
        if (fields.has(FOOT_MOVES) && (fields.has(RAKE_DEG) || fields.has(SPLAY_DEG))) {
            fields.reading()
                    .problem(
                            fields.at(FOOT_MOVES.name()),
                            "stands beside an angle that it would decide",
                            "give foot_moves over height, or rake_deg and splay_deg, not both");
        }
        if (fields.has(FOOT_MOVES) && height.isEmpty()) {
            fields.reading()
                    .problem(
                            fields.at(FOOT_MOVES.name()),
                            "says no angle while the height is not told",
                            "give height, from the floor to the underside of seat or table top");
        }
        if (stretchers.isEmpty()) {
            return;
        }
        if (height.isEmpty() || !fields.has(APART)) {
            fields.reading()
                    .problem(
                            fields.at(STRETCHERS.name()),
                            "have no length while nobody knows where the legs stand",
                            "give height, and apart: between the legs' middles at the underside of seat or table top");
            return;
        }
        for (Length stretcher : stretchers) {
            if (stretcher.compareTo(height.get()) >= 0) {
                fields.reading()
                        .problem(
                                fields.at(STRETCHERS.name()),
                                "has one %s over the floor where the legs are %s high"
                                        .formatted(
                                                stretcher.format(fields.units()),
                                                height.get().format(fields.units())),
                                "give heights below that");
            }
        }
        if (places.filter(n -> n != 3 && n != 4).isPresent()) {
            fields.reading()
                    .problem(
                            fields.at(STRETCHERS.name()),
                            "are worked out between three legs or four, but there are %d".formatted(places.get()),
                            "leave stretchers out");
        }
        boolean aside = fields.has(SPLAY_DEG) || fields.has(FOOT_MOVES);
        if (places.filter(n -> n == 3).isPresent() && aside) {
            fields.reading()
                    .problem(
                            fields.at(STRETCHERS.name()),
                            "are worked out between three legs that lean straight outward",
                            "give rake_deg alone, the lean of each along its own line, or leave stretchers out");
        }
    }
}
