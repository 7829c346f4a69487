package turnalike.job.set;

import com.fasterxml.jackson.databind.node.ObjectNode;
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
import turnalike.pieces.Piece;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * Side by side along a rail, as balusters: the eye compares each piece with its neighbours. An open row: the ends do not meet.
 *
 * @param places how many stand in it, at least 1
 * @param seenFrom the end that people come from: pieces there are looked at most
 */
record InRow(int places, End seenFrom) implements Frame {
    static final Key<Whole> PLACES = Key.needed(
                    "places", new Whole(1, FrameKind.MOST_PLACES, OptionalInt.empty()), "how many stand in it")
            .asked(KeySection.FRAME, "Places", FrameKind.PLACES_HINT);

    static final Key<Word> SEEN_FROM = Key.may(
                    "seen_from", End.WORDS, "the end that people come from: pieces there are looked at most", "start")
            .asked(KeySection.FRAME, "Seen from", "left empty: the start");

    static final List<Key<?>> KEYS = List.of(PLACES, SEEN_FROM);

    public InRow {
        if (places < 1) {
            throw new IllegalArgumentException("a row needs at least 1 place, was %d".formatted(places));
        }
    }

    static Optional<InRow> read(Fields fields) {
        Optional<Integer> places = fields.whole(PLACES);
        Optional<End> seenFrom = fields.word(SEEN_FROM).map(End::of);
        return places.flatMap(n -> seenFrom.map(end -> new InRow(n, end)));
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
    public List<Problem> problems(SetTerms terms, List<Piece> pieces) {
        return RowSet.problem(terms, this, pieces).problems();
    }

    @Override
    public SetMatch fill(SetTerms terms, List<Piece> pieces, boolean strict, Effort effort) {
        return RowSet.of(terms, this, pieces, effort);
    }
}
