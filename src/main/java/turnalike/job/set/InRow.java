package turnalike.job.set;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import turnalike.effort.Effort;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Json;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType.Whole;
import turnalike.job.fields.KeyType.Word;
import turnalike.job.fields.Reading;
import turnalike.pattern.Pattern;
import turnalike.pieces.Piece;
import turnalike.units.Density;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * Side by side along a rail, as balusters: the eye compares each piece with its neighbours. An open row: the ends do not meet.
 *
 * @param places how many stand in it, at least 1
 * @param counted whether the places were not told and follow from the largest opening: until the pattern is known, 1
 * @param seenFrom the end that people come from: pieces there are looked at most
 * @param rails what it stands between
 * @param lengths that its pieces are made in, in the order told; none where all are as drawn
 * @param inTurn whether the lengths follow one another and begin again, as on the treads of a stair; else those of one length stand together
 */
record InRow(int places, boolean counted, End seenFrom, RowRails rails, List<PieceLength> lengths, boolean inTurn)
        implements Frame {
    static final Key<Whole> PLACES = Key.may(
                    "places",
                    new Whole(1, FrameKind.MOST_PLACES, OptionalInt.empty()),
                    "how many stand in it",
                    "as many as `lengths` count, else the fewest that keep `largest_opening`; needed without either")
            .asked(KeySection.FRAME, "Places", FrameKind.PLACES_HINT);

    static final Key<Word> SEEN_FROM = Key.may(
                    "seen_from", End.WORDS, "the end that people come from: pieces there are looked at most", "start")
            .asked(KeySection.FRAME, "Seen from", "left empty: the start");

    private static final String TOGETHER = "together";
    private static final String IN_TURN = "in_turn";

    static final Key<Word> LENGTHS_STAND = Key.may(
                    "lengths_stand",
                    new Word(List.of(TOGETHER, IN_TURN)),
                    "whether the pieces of one length stand together in the order of `lengths`, or the lengths follow one another and begin again, as"
                            + " on the treads of a stair",
                    "together")
            .asked(KeySection.FRAME, "Lengths stand", "left empty: together");

    static final List<Key<?>> KEYS = keys();

    private static List<Key<?>> keys() {
        List<Key<?>> out = new ArrayList<>(List.of(PLACES, SEEN_FROM));
        out.addAll(RowRails.KEYS);
        out.add(PieceLength.LENGTHS);
        out.add(LENGTHS_STAND);
        return List.copyOf(out);
    }

    public InRow {
        lengths = List.copyOf(lengths);
        if (places < 1) {
            throw new IllegalArgumentException("a row needs at least 1 place, was %d".formatted(places));
        }
    }

    static Optional<InRow> read(Fields fields) {
        int before = fields.reading().count();
        Optional<Integer> told = fields.whole(PLACES);
        Optional<End> seenFrom = fields.word(SEEN_FROM).map(End::of);
        List<PieceLength> lengths = PieceLength.read(fields);
        boolean inTurn = fields.word(LENGTHS_STAND).filter(IN_TURN::equals).isPresent();
        Optional<Integer> known =
                told.or(() -> Optional.of(PieceLength.count(lengths)).filter(sum -> sum > 0));
        Optional<RowRails> rails =
                RowRails.read(fields, known.map(OptionalInt::of).orElse(OptionalInt.empty()));
        boolean ruled = fields.has(RowRails.CLEAR) && fields.has(RowRails.LARGEST_OPENING);
        if (!fields.has(PLACES) && !fields.has(PieceLength.LENGTHS) && !ruled) {
            fields.reading()
                    .problem(
                            fields.at(PLACES.name()),
                            "is missing",
                            "give a whole number from 1 to %d, or lengths, or clear and largest_opening, from which the fewest follow"
                                    .formatted(FrameKind.MOST_PLACES));
        }
        if (fields.reading().count() == before) {
            tellPlaces(fields, told, lengths);
        }
        return fields.reading().count() > before
                ? Optional.empty()
                : Optional.of(new InRow(
                        known.orElse(1),
                        known.isEmpty(),
                        seenFrom.orElseThrow(),
                        rails.orElseThrow(),
                        lengths,
                        inTurn));
    }

    private static void tellPlaces(Fields fields, Optional<Integer> places, List<PieceLength> lengths) {
        places.ifPresent(number -> PieceLength.tellSum(lengths, number, "places says", fields.reading()));
        int sum = PieceLength.count(lengths);
        if (sum > FrameKind.MOST_PLACES) {
            fields.reading()
                    .problem(
                            fields.at(PieceLength.LENGTHS.name()),
                            "count %d pieces in all".formatted(sum),
                            "use %d at most: fill a longer row in stretches".formatted(FrameKind.MOST_PLACES));
        }
        if (fields.has(LENGTHS_STAND) && lengths.isEmpty()) {
            fields.reading()
                    .problem(
                            fields.at(LENGTHS_STAND.name()),
                            "means nothing while all pieces are of one length",
                            "give lengths, or leave it out");
        }
    }

    static ObjectNode start(int pieces, UnitSystem units) {
        return Json.object().put(PLACES.name(), FrameKind.placesFor(pieces));
    }

    @Override
    public FrameKind kind() {
        return FrameKind.ROW;
    }

    @Override
    public int pieces() {
        return places;
    }

    @Override
    public Optional<Frame> over(Pattern pattern, Reading reading) {
        int before = reading.count();
        rails.tell(ExposedPart.of(pattern), reading);
        PieceLength.tell(lengths, pattern, reading);
        if (reading.count() > before) {
            return Optional.empty();
        }
        return Optional.of(
                counted
                        ? new InRow(
                                RowRoom.of(rails, pattern).fewest().places(), true, seenFrom, rails, lengths, inTurn)
                        : this);
    }

    @Override
    public void tellCount(int count, Reading reading) {
        PieceLength.tellSum(lengths, count, "the job's count is", reading);
    }

    /**
     * {@return the index of the length that each place wants, in the order of the places} In turn, as many of each length as divide all counts
     * evenly stand on one tread.
     */
    List<Integer> wanted() {
        int treads = inTurn ? lengths.stream().mapToInt(PieceLength::count).reduce(0, InRow::divisor) : 1;
        List<Integer> out = new ArrayList<>();
        for (int tread = 0; tread < treads; tread++) {
            for (int i = 0; i < lengths.size(); i++) {
                out.addAll(Collections.nCopies(lengths.get(i).count() / treads, i));
            }
        }
        return out;
    }

    private static int divisor(int one, int other) {
        return other == 0 ? one : divisor(other, one % other);
    }

    @Override
    public Optional<Bored> bored(End end, Pattern pattern) {
        return Optional.of(new Bored(end == End.START ? "lower rail" : "upper rail", rails.wood()));
    }

    @Override
    public Optional<FrameFit> fit(Pattern pattern, Density density, UnitSystem units) {
        return rails.clear().map(clear -> RowFitting.of(this, pattern, units));
    }

    @Override
    public Optional<Misfit> otherwiseCounted(int count) {
        return counted && count != places
                ? Optional.of(new Misfit(
                        false,
                        "row",
                        "%d pieces keep the largest opening, but count says %d".formatted(places, count),
                        "leave count out, or say how many places you want"))
                : Optional.empty();
    }

    @Override
    public List<Problem> problems(SetTerms terms, List<Piece> pieces) {
        return RowSet.problems(terms, this, pieces);
    }

    @Override
    public SetMatch fill(SetTerms terms, List<Piece> pieces, boolean strict, Effort effort) {
        return RowSet.of(terms, this, pieces, effort);
    }
}
