package turnalike.job.set;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import turnalike.effort.Effort;
import turnalike.frame.Moment;
import turnalike.frame.SegmentedRim;
import turnalike.frame.Spread;
import turnalike.frame.Wheel;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Json;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType;
import turnalike.job.fields.KeyType.ListOf;
import turnalike.job.fields.KeyType.Number;
import turnalike.job.fields.KeyType.Size;
import turnalike.job.fields.KeyType.Whole;
import turnalike.job.fields.KeyType.Word;
import turnalike.pattern.Pattern;
import turnalike.pieces.Piece;
import turnalike.units.Density;
import turnalike.units.Length;
import turnalike.units.Problem;
import turnalike.units.UnitSystem;

/**
 * Round a hub.
 *
 * @param wheel places and hub radius
 * @param hubEnd which end of the pattern enters the hub
 * @param joinery how it is put together
 * @param bare what the bare wheel pulls by itself
 * @param seatDepths how much deeper than meant each place's seat lies in the hub, in the order of the places; none when not told
 * @param runOut the run-out of the rim that will do; where it has more, seats are bored deeper; empty when none is to be bored
 * @param counterweightRadius where a counterweight could sit, from the axle
 * @param revPerMin how fast it will turn, if told; positive, for information only
 */
public record OnWheel(
        Wheel wheel,
        End hubEnd,
        WheelJoinery joinery,
        BareWheel bare,
        List<Length> seatDepths,
        Optional<Length> runOut,
        Optional<Length> counterweightRadius,
        OptionalDouble revPerMin)
        implements Frame {
    static final Key<Whole> PLACES = Key.needed(
                    "places", new Whole(2, FrameKind.MOST_PLACES, OptionalInt.empty()), "how many spokes")
            .asked(KeySection.FRAME, "Places", FrameKind.PLACES_HINT);

    static final Key<Size> HUB_RADIUS = Key.needed(
                    "hub_radius", KeyType.size(), "from the axle to the shoulder of the hub tenon")
            .asked(KeySection.FRAME, "Hub radius", "a wheel's; to the shoulder");

    static final Key<Word> TENON_AT = Key.may("tenon_at", End.WORDS, "the end that enters the hub", "start")
            .asked(KeySection.FRAME, "End in the hub", "");

    static final Key<Size> COUNTERWEIGHT_RADIUS = Key.may(
                    "counterweight_radius",
                    KeyType.aboveZero(),
                    "where a counterweight could sit, or wood could come off, from the axle",
                    "the job's own, if any")
            .asked(KeySection.FRAME, "Counterweight radius", "");

    static final Key<Number> RPM = Key.may(
                    "rpm", KeyType.number(0.1, 100_000), "how fast it will turn; for information only", "not told")
            .asked(KeySection.FRAME, "Will turn at, rpm", "for information");

    static final Key<ListOf<Size>> SEAT_DEPTHS = Key.may(
                    "seat_depths",
                    new ListOf<>(KeyType.size(), 0, FrameKind.MOST_PLACES),
                    "one length for each place: how much deeper than meant its seat lies, 0 for the shallowest",
                    "all alike")
            .asked(KeySection.BARE_WHEEL, "Seats too deep by", "one for each place, parted by semicolons");

    static final Key<Size> RUN_OUT = Key.may(
                    "run_out",
                    KeyType.size(),
                    "the run-out of the rim that will do: where it has more, seats are bored deeper",
                    "no seat is bored; what boring would do is told")
            .asked(KeySection.FRAME, "Run-out that will do", "a wheel's; left empty: no seat is bored");

    static final List<Key<?>> KEYS = keys();

    private static List<Key<?>> keys() {
        List<Key<?>> out = new ArrayList<>(List.of(PLACES, HUB_RADIUS, TENON_AT));
        out.addAll(WheelJoinery.KEYS);
        out.addAll(
                List.of(COUNTERWEIGHT_RADIUS, RPM, SEAT_DEPTHS, RUN_OUT, BareWheel.GIVEN_MOMENTS, BareWheel.ROCKING));
        return List.copyOf(out);
    }

    public OnWheel {
        seatDepths = List.copyOf(seatDepths);
        if (!seatDepths.isEmpty() && seatDepths.size() != wheel.places()) {
            throw new IllegalArgumentException(
                    "%d seat depths for %d places".formatted(seatDepths.size(), wheel.places()));
        }
    }

    static Optional<OnWheel> read(Fields fields) {
        Optional<Integer> places = fields.whole(PLACES);
        Optional<Length> hubRadius = fields.size(HUB_RADIUS);
        Optional<End> hubEnd = fields.word(TENON_AT).map(End::of);
        Optional<WheelJoinery> joinery = WheelJoinery.read(fields, places);
        Optional<Length> radius = fields.size(COUNTERWEIGHT_RADIUS);
        Optional<Length> runOut = fields.size(RUN_OUT);
        BareWheel bare = BareWheel.read(fields);
        Optional<List<Length>> depths = seatDepths(fields, places);
        OptionalDouble revPerMin = fields.number(RPM).map(OptionalDouble::of).orElse(OptionalDouble.empty());
        return places.flatMap(n -> hubRadius.flatMap(r -> hubEnd.flatMap(end -> joinery.flatMap(put ->
                depths.map(each -> new OnWheel(new Wheel(n, r), end, put, bare, each, runOut, radius, revPerMin))))));
    }

    /** One depth for each place, or none at all. */
    private static Optional<List<Length>> seatDepths(Fields fields, Optional<Integer> wanted) {
        if (!fields.has(SEAT_DEPTHS) || wanted.isEmpty()) {
            return Optional.of(List.of()); // without places nobody knows how many depths belong
        }
        int places = wanted.get();
        String mend = "give one depth for each of the %d places, 0 for the shallowest seat".formatted(places);
        Optional<List<JsonNode>> nodes = fields.list(SEAT_DEPTHS, mend);
        if (nodes.isPresent() && nodes.get().size() != places) {
            fields.reading()
                    .problem(
                            fields.at(SEAT_DEPTHS.name()),
                            "has %d depths for %d places".formatted(nodes.get().size(), places),
                            mend);
            return Optional.empty();
        }
        return nodes.flatMap(each -> depths(fields, each));
    }

    private static Optional<List<Length>> depths(Fields fields, List<JsonNode> nodes) {
        List<Length> out = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            fields.lengthAt("%s %d".formatted(SEAT_DEPTHS.name(), i + 1), nodes.get(i))
                    .ifPresent(out::add);
        }
        return out.size() == nodes.size() ? Optional.of(out) : Optional.empty();
    }

    /** A place for each piece, and a hub two inches or so in radius. */
    static ObjectNode start(int pieces, UnitSystem units) {
        return Json.object()
                .put(PLACES.name(), FrameKind.placesFor(pieces))
                .put(HUB_RADIUS.name(), units == UnitSystem.INCH ? "2" : "50");
    }

    /** What hub, rim and rim joint pull with spokes of that pattern: given, found by rocking, and by what the rim's segments weigh. */
    List<Pull> pulls(Pattern pattern) {
        List<Pull> out = new ArrayList<>();
        if (!bare.moments().isEmpty()) {
            out.add(new Pull("hub and rim as given", Moment.sum(bare.moments())));
        }
        bare.rocking().ifPresent(each -> out.add(new Pull("hub and rim by rocking", each.unbalance())));
        rimPull(pattern).ifPresent(each -> out.add(new Pull("the rim's segments", each)));
        return out;
    }

    /** The same, without where each comes from. */
    List<Moment> givenMoments(Pattern pattern) {
        return pulls(pattern).stream().map(Pull::moment).toList();
    }

    /** What the rim's segments pull, where each was weighed. */
    Optional<Moment> rimPull(Pattern pattern) {
        return ofWeighedRim(
                pattern, (rim, inner, outer) -> rim.pull(joinery.rimSegments().masses(), inner, outer));
    }

    /** How that scatters for the scale each segment was weighed on, its deviation told; none where they were not weighed. */
    Spread rimScatter(Pattern pattern, double deviationG) {
        return ofWeighedRim(pattern, (rim, inner, outer) -> rim.scatter(deviationG, inner, outer))
                .orElse(Spread.NONE);
    }

    private interface OfRim<T> {
        T of(SegmentedRim rim, Length inner, Length outer);
    }

    private <T> Optional<T> ofWeighedRim(Pattern pattern, OfRim<T> what) {
        int segments = joinery.rimSegments().masses().size();
        if (segments == 0) {
            return Optional.empty();
        }
        Length inner = wheel.hubRadius().plus(ExposedPart.of(pattern).length());
        Length outer = inner.plus(joinery.rimWidth().orElseThrow());
        SegmentedRim rim = SegmentedRim.of(segments, wheel.places(), inner, Optional.of(outer), Length.ZERO);
        return Optional.of(what.of(rim, inner, outer));
    }

    /** Whether spokes of that pattern reach into no rim, as a helm's with its handles: what lies farthest out are their tips. */
    boolean endsInTips(Pattern pattern) {
        return !Seating.of(pattern, hubEnd).rimTenon().isPositive()
                && joinery.rimWidth().isEmpty();
    }

    @Override
    public FrameKind kind() {
        return FrameKind.WHEEL;
    }

    @Override
    public int pieces() {
        return wheel.places();
    }

    @Override
    public Frame withCounterweightAt(Length radius) {
        return new OnWheel(
                wheel,
                hubEnd,
                joinery,
                bare,
                seatDepths,
                runOut,
                counterweightRadius.or(() -> Optional.of(radius)),
                revPerMin);
    }

    @Override
    public Optional<Bored> bored(End end, Pattern pattern) {
        return Optional.of(end == hubEnd ? new Bored("hub", joinery.hubWood()) : new Bored("rim", joinery.rimWood()));
    }

    @Override
    public Optional<FrameFit> fit(Pattern pattern, Density density, UnitSystem units) {
        return Optional.of(WheelFitting.of(this, pattern, density, units));
    }

    @Override
    public List<Problem> problems(SetTerms terms, List<Piece> pieces) {
        return ChosenWheel.problems(terms, this, pieces);
    }

    @Override
    public SetMatch fill(SetTerms terms, List<Piece> pieces, boolean strict, Effort effort) {
        return ChosenWheel.of(terms, this, pieces, strict, effort);
    }
}
