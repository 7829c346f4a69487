package turnalike.job.set;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import turnalike.job.fields.Fields;
import turnalike.job.fields.Json;
import turnalike.job.fields.Key;
import turnalike.job.fields.KeySection;
import turnalike.job.fields.KeyType.Group;
import turnalike.job.fields.KeyType.Kinds;
import turnalike.job.fields.KeyType.Word;
import turnalike.units.UnitSystem;

/** The kinds of frame there are, each by what its record says of it. */
@SuppressWarnings("ImmutableEnumChecker") // what it holds has no state: keys, and methods of the records
public enum FrameKind {
    /** Round a hub: balance decides, and roundness where lengths are measured. */
    WHEEL("wheel", OnWheel.KEYS, OnWheel::read, OnWheel::start),
    /** Side by side along a rail: neighbours are to look alike. */
    ROW("row", InRow.KEYS, InRow::read, InRow::start),
    /** Together under a table: all of one group are to look alike. */
    LEGS("legs", InLegs.KEYS, InLegs::read, InLegs::start);

    /** The most places that any frame has. */
    static final int MOST_PLACES = 400;

    /** What stands beside the form's field of the places, whatever the kind: a form asks for it once. */
    static final String PLACES_HINT = "of a wheel, a row, or one group of legs";

    /** Which kind it is: the one key that every frame has. */
    public static final Key<Word> KIND = Key.needed(
                    "kind",
                    new Word(Stream.of(values()).map(FrameKind::word).toList()),
                    "of frame; it says which other keys there are")
            .asked(KeySection.FRAME, "Goes into", "left empty: no frame");

    /** The keys of every kind. */
    public static final Kinds KINDS = new Kinds(KIND, kinds());

    private final String word;
    private final Group keys;
    private final Function<Fields, Optional<? extends Frame>> reader;
    private final BiFunction<Integer, UnitSystem, ObjectNode> start;

    /**
     * @param keys all but {@link #KIND}, in the order they are told
     * @param reader takes the keys, telling what is wrong; empty when it told something
     * @param start sizes that can be, for so many pieces in those units
     */
    FrameKind(
            String word,
            List<Key<?>> keys,
            Function<Fields, Optional<? extends Frame>> reader,
            BiFunction<Integer, UnitSystem, ObjectNode> start) {
        this.word = word;
        this.keys = new Group(keys);
        this.reader = reader;
        this.start = start;
    }

    /** {@return the kind's word, as the job file says it} */
    public String word() {
        return word;
    }

    /**
     * {@return the kind of a word, if it is one's}
     *
     * @param word as the job file says it, to the letter
     */
    public static Optional<FrameKind> find(String word) {
        return Stream.of(values()).filter(kind -> kind.word.equals(word)).findFirst();
    }

    /**
     * {@return the frame in a job file; empty when something is wrong with it, which has then been told}
     *
     * @param fields the keys of the frame's object, none of them taken
     */
    public static Optional<Frame> read(Fields fields) {
        return fields.choice(KIND.name(), KIND.type().told(), FrameKind::find).flatMap(kind -> kind.frame(fields));
    }

    private Optional<Frame> frame(Fields fields) {
        Optional<? extends Frame> read = reader.apply(fields);
        fields.refuseUnknown(KINDS.with(word));
        return read.map(Function.identity());
    }

    /**
     * {@return the object of a frame just chosen on a form, with sizes that can be}
     *
     * @param pieces how many are wanted; a wheel or row gets as many places, as far as it may have so many or so few
     * @param units the job's, in which its sizes are written
     */
    public ObjectNode start(int pieces, UnitSystem units) {
        ObjectNode frame = Json.object().put(KIND.name(), word);
        frame.setAll(start.apply(pieces, units));
        return frame;
    }

    /** As many places as pieces, as far as a frame may have so many or so few. */
    static int placesFor(int pieces) {
        return Math.max(2, Math.min(MOST_PLACES, pieces));
    }

    private static Map<String, Group> kinds() {
        Map<String, Group> out = new LinkedHashMap<>();
        Stream.of(values()).forEach(kind -> out.put(kind.word, kind.keys));
        return out;
    }
}
