package turnalike.job.set;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
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
 */
record InRow(int places, boolean counted, End seenFrom, RowRails rails) implements Frame {
    static final Key<Whole> PLACES = Key.may(
                    "places",
                    new Whole(1, FrameKind.MOST_PLACES, OptionalInt.empty()),
                    "how many stand in it",
                    "the fewest that keep `largest_opening`; needed without one")
            .asked(KeySection.FRAME, "Places", FrameKind.PLACES_HINT);

    static final Key<Word> SEEN_FROM = Key.may(
                    "seen_from", End.WORDS, "the end that people come from: pieces there are looked at most", "start")
            .asked(KeySection.FRAME, "Seen from", "left empty: the start");

    static final List<Key<?>> KEYS = keys();

    private static List<Key<?>> keys() {
        List<Key<?>> out = new ArrayList<>(List.of(PLACES, SEEN_FROM));
        out.addAll(RowRails.KEYS);
        return List.copyOf(out);
    }

    public InRow {
        if (places < 1) {
            throw new IllegalArgumentException("a row needs at least 1 place, was %d".formatted(places));
        }
    }

    static Optional<InRow> read(Fields fields) {
        int before = fields.reading().count();
        OptionalInt places = fields.whole(PLACES).map(OptionalInt::of).orElse(OptionalInt.empty());
        Optional<End> seenFrom = fields.word(SEEN_FROM).map(End::of);
        Optional<RowRails> rails = RowRails.read(fields, places);
        boolean ruled = fields.has(RowRails.CLEAR) && fields.has(RowRails.LARGEST_OPENING);
        if (!fields.has(PLACES) && !ruled) {
            fields.reading()
                    .problem(
                            fields.at(PLACES.name()),
                            "is missing",
                            "give a whole number from 1 to %d, or clear and largest_opening, from which the fewest follow"
                                    .formatted(FrameKind.MOST_PLACES));
        }
        return fields.reading().count() > before
                ? Optional.empty()
                : Optional.of(
                        new InRow(places.orElse(1), places.isEmpty(), seenFrom.orElseThrow(), rails.orElseThrow()));
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
        if (reading.count() > before) {
            return Optional.empty();
        }
        return Optional.of(
                counted ? new InRow(RowRoom.of(rails, pattern).fewest().places(), true, seenFrom, rails) : this);
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
        return RowSet.problem(terms, this, pieces).problems();
    }

    @Override
    public SetMatch fill(SetTerms terms, List<Piece> pieces, boolean strict, Effort effort) {
        return RowSet.of(terms, this, pieces, effort);
    }
}
