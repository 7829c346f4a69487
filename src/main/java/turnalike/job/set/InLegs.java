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
import turnalike.pattern.Pattern;
import turnalike.pieces.Piece;
import turnalike.units.Density;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * Together under one table, or one of several: all are seen at once, so each piece is compared with every other one of its group.
 *
 * @param places how many make one group, at least 1
 * @param groups how many groups are wanted; without it, as many as the pieces allow
 * @param stance how they stand
 */
record InLegs(int places, OptionalInt groups, LegStance stance) implements Frame {
    private static final int USUAL_PLACES = 4;

    static final Key<Whole> PLACES = Key.needed(
                    "places", new Whole(2, 8, OptionalInt.empty()), "how many make one group")
            .asked(KeySection.FRAME, "Places", FrameKind.PLACES_HINT);

    static final Key<Whole> GROUPS = Key.may(
                    "groups",
                    new Whole(1, FrameKind.MOST_PLACES, OptionalInt.empty()),
                    "how many groups are wanted",
                    "as many as the pieces allow")
            .asked(KeySection.FRAME, "Groups of legs", "");

    static final List<Key<?>> KEYS = keys();

    private static List<Key<?>> keys() {
        List<Key<?>> out = new ArrayList<>(List.of(PLACES, GROUPS));
        out.addAll(LegStance.KEYS);
        return List.copyOf(out);
    }

    public InLegs {
        if (places < 1) {
            throw new IllegalArgumentException("legs need at least 1 place, was %d".formatted(places));
        }
    }

    static Optional<InLegs> read(Fields fields) {
        Optional<Integer> size = fields.whole(PLACES);
        OptionalInt groups = fields.whole(GROUPS).map(OptionalInt::of).orElse(OptionalInt.empty());
        Optional<LegStance> stance = LegStance.read(fields, size);
        return size.flatMap(n -> stance.map(stand -> new InLegs(n, groups, stand)));
    }

    static ObjectNode start(int pieces, UnitSystem units) {
        return Json.object().put(PLACES.name(), USUAL_PLACES);
    }

    @Override
    public FrameKind kind() {
        return FrameKind.LEGS;
    }

    @Override
    public int pieces() {
        return places * groups.orElse(1);
    }

    @Override
    public OptionalInt group() {
        return OptionalInt.of(places);
    }

    @Override
    public Optional<Bored> bored(End end, Pattern pattern) {
        return end == LegsFitting.up(pattern)
                ? Optional.of(new Bored(LegsFitting.board(this, pattern).word(), stance.seatWood()))
                : Optional.empty();
    }

    @Override
    public Optional<FrameFit> fit(Pattern pattern, Density density, UnitSystem units) {
        return stance.told() ? Optional.of(LegsFitting.of(this, pattern, units)) : Optional.empty();
    }

    @Override
    public List<Problem> problems(SetTerms terms, List<Piece> pieces) {
        return LegsSet.problems(terms, this, pieces);
    }

    @Override
    public SetMatch fill(SetTerms terms, List<Piece> pieces, boolean strict, Effort effort) {
        return LegsSet.of(terms, this, pieces, effort);
    }
}
