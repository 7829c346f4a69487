package turnalike.job.fields;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import turnalike.pattern.Fault;
import turnalike.units.Length;
import turnalike.units.Parsed;
import turnalike.units.PlainNumber;
import turnalike.units.UnitSystem;

/**
 * The keys of one JSON object, taken one by one. Whatever is wrong goes to the {@link Reading} with the place's name; what nobody took
 * is an unknown key. An empty answer to a required key means that its problem has been told.
 */
public final class Fields {
    private final String where;
    private final ObjectNode node;
    private final Reading reading;
    private final Values values;
    private final Set<String> taken = new LinkedHashSet<>();

    /**
     * The keys of an object, none of them taken yet.
     *
     * @param where the object's place as problems name it; empty for the file itself
     * @param node the object
     * @param reading takes the problems, and knows the units of bare numbers
     */
    public Fields(String where, ObjectNode node, Reading reading) {
        this.where = where;
        this.node = node;
        this.reading = reading;
        this.values = new Values(reading);
    }

    /** {@return the object's place as problems name it; empty for the file itself} */
    public String where() {
        return where;
    }

    /** {@return where the problems go} */
    public Reading reading() {
        return reading;
    }

    /**
     * The place of a key as problems name it.
     *
     * @param key its name
     * @return the object's place and the name
     */
    public String at(String key) {
        return where.isEmpty() ? key : where + ": " + key;
    }

    /**
     * Whether the key is there; {@code null} counts as left out. The key is taken by being asked for.
     *
     * @param key its name
     * @return whether it has a value
     */
    public boolean has(String key) {
        taken.add(key);
        return node.has(key) && !node.get(key).isNull();
    }

    private Optional<JsonNode> find(String key) {
        return has(key) ? Optional.of(node.get(key)) : Optional.empty();
    }

    private Optional<JsonNode> require(String key, String mend) {
        Optional<JsonNode> found = find(key);
        if (found.isEmpty()) {
            reading.problem(at(key), "is missing", mend);
        }
        return found;
    }

    /**
     * Whether the key is there; {@code null} counts as left out. The key is taken by being asked for.
     *
     * @param key the key
     * @return whether it has a value
     */
    public boolean has(Key<?> key) {
        return has(key.name());
    }

    /**
     * A length that must be there, of a member whose kind says so.
     *
     * @param key its name
     * @return zero to 20 m; empty when a problem was told
     */
    public Optional<Length> length(String key) {
        return require(key, Values.LENGTH_MEND).flatMap(value -> values.length(at(key), value));
    }

    /**
     * A length that may be left out.
     *
     * @param key its name
     * @param otherwise what counts when it is left out
     * @return zero to 20 m; empty when a problem was told
     */
    public Optional<Length> lengthOr(String key, Length otherwise) {
        return find(key).map(value -> values.length(at(key), value)).orElse(Optional.of(otherwise));
    }

    /**
     * The length; when it is left out, what counts then, if anything always does.
     *
     * @param key the key; whether it may be left out, and whether zero is refused, it says itself
     * @return the length; empty when a problem was told, or when it was left out and nothing stands in its place
     */
    public Optional<Length> size(Key<KeyType.Size> key) {
        if (!has(key) && !key.isNeeded()) {
            return key.type().otherwise();
        }
        return needed(key);
    }

    /**
     * The length of a key that must be there because of another key.
     *
     * @param key the key, which by itself might be left out
     * @return the length; empty when a problem was told
     */
    public Optional<Length> needed(Key<KeyType.Size> key) {
        return length(key.name())
                .filter(length ->
                        length.isPositive() || !key.type().aboveZero() || tell(key.name(), "must be above zero"));
    }

    private boolean tell(String key, String what) {
        reading.problem(at(key), what, "give a size above zero");
        return false;
    }

    /**
     * The value, or the refusal told at that place.
     *
     * @param <T> what was parsed
     * @param place as {@link #at} names it
     * @param parsed what came of it
     * @return the value; empty when it was refused, which has then been told
     */
    public <T> Optional<T> accept(String place, Parsed<T> parsed) {
        return values.accept(place, parsed);
    }

    /**
     * The number; when it is left out, what counts then, if anything always does.
     *
     * @param key the key, which knows its range
     * @return the number; empty when a problem was told, or when it was left out and nothing stands in its place
     */
    public Optional<Double> number(Key<KeyType.Number> key) {
        if (!has(key) && !key.isNeeded()) {
            OptionalDouble otherwise = key.type().otherwise();
            return otherwise.isPresent() ? Optional.of(otherwise.getAsDouble()) : Optional.empty();
        }
        return number(key.name(), key.type());
    }

    /**
     * The number under a name of the user's own, or of a key that must be there because of another.
     *
     * @param key its name
     * @param range what it may be
     * @return the number; empty when a problem was told
     */
    public Optional<Double> number(String key, KeyType.Number range) {
        return number(
                key,
                range,
                "give a number from %s to %s"
                        .formatted(PlainNumber.exact(range.least()), PlainNumber.exact(range.most())));
    }

    /**
     * The same, of a range whose reason is told.
     *
     * @param key its name
     * @param range what it may be
     * @param mend how to mend that it is missing or out of range
     * @return the number; empty when a problem was told
     */
    public Optional<Double> number(String key, KeyType.Number range, String mend) {
        return require(key, mend).flatMap(value -> values.number(at(key), value, range, mend));
    }

    /**
     * The whole number; when it is left out, what counts then, if anything always does. {@code 3.0} is whole.
     *
     * @param key the key, which knows its range
     * @return the number; empty when a problem was told, or when it was left out and nothing stands in its place
     */
    public Optional<Integer> whole(Key<KeyType.Whole> key) {
        int least = key.type().least();
        int most = key.type().most();
        if (!has(key) && !key.isNeeded()) {
            OptionalInt otherwise = key.type().otherwise();
            return otherwise.isPresent() ? Optional.of(otherwise.getAsInt()) : Optional.empty();
        }
        String mend = least == most ? "use " + least : "give a whole number from %d to %d".formatted(least, most);
        return require(key.name(), mend).flatMap(value -> values.whole(at(key.name()), value, key.type(), mend));
    }

    private Optional<String> text(String key, String mend) {
        return require(key, mend).flatMap(value -> values.text(at(key), value));
    }

    /**
     * A text that may be left out.
     *
     * @param key the key
     * @return at most {@link KeyType.Text#LONGEST} letters; empty when it was left out or a problem was told
     */
    public Optional<String> findText(Key<KeyType.Text> key) {
        return findText(key.name());
    }

    /**
     * A text that may be left out.
     *
     * @param key its name
     * @return at most {@link KeyType.Text#LONGEST} letters; empty when it was left out or a problem was told
     */
    public Optional<String> findText(String key) {
        return find(key).flatMap(value -> values.text(at(key), value));
    }

    /**
     * The one word that can stand there.
     *
     * @param key whose first word it is
     * @param missing how to mend that it is missing
     * @param mend how to mend that it is another
     * @return the word; empty when it is missing or another, which has then been told
     */
    public Optional<String> only(Key<KeyType.Word> key, String missing, String mend) {
        String word = key.type().words().get(0);
        return text(key.name(), missing).filter(given -> {
            if (!given.equals(word)) {
                reading.problem(at(key.name()), "was '%s'".formatted(given), mend);
            }
            return given.equals(word);
        });
    }

    /**
     * One of the key's words.
     *
     * @param key which says the words
     * @return the word, the first where it may be left out and is; empty when a problem was told
     */
    public Optional<String> word(Key<KeyType.Word> key) {
        if (!has(key) && !key.isNeeded()) {
            return Optional.of(key.type().words().get(0));
        }
        return choice(key.name(), key.type().told(), word -> Optional.of(word)
                .filter(key.type().words()::contains));
    }

    /**
     * One word out of a few.
     *
     * @param <T> what the word stands for
     * @param key its name
     * @param words the words as a problem tells them
     * @param meaning what a word stands for; empty for any other
     * @return what the word means; empty when a problem was told
     */
    public <T> Optional<T> choice(String key, String words, Function<String, Optional<T>> meaning) {
        String mend = "use " + words;
        return text(key, mend).flatMap(word -> {
            Optional<T> meant = meaning.apply(word);
            if (meant.isEmpty()) {
                reading.problem(at(key), "was '%s'".formatted(Values.excerpt(word)), mend);
            }
            return meant;
        });
    }

    /**
     * Yes or no; left out it is no.
     *
     * @param key its name
     * @return the value; no when it is neither, which has then been told
     */
    public boolean flag(String key) {
        return find(key).map(value -> values.flag(at(key), value)).orElse(false);
    }

    /**
     * An object that must be there.
     *
     * @param key the key
     * @param mend how to mend that it is missing or no object
     * @return its keys, none of them taken; empty when a problem was told
     */
    public Optional<Fields> object(Key<?> key, String mend) {
        return require(key.name(), mend).flatMap(value -> values.object(at(key.name()), value, mend));
    }

    /**
     * The object, or an empty one when the key is left out.
     *
     * @param key the key
     * @return its keys, none of them taken; empty when it is no object, which has then been told
     */
    public Optional<Fields> objectOrEmpty(Key<KeyType.Group> key) {
        String name = key.name();
        return find(name)
                .map(value -> values.object(at(name), value, "write it in braces"))
                .orElseGet(() -> Optional.of(new Fields(at(name), Json.object(), reading)));
    }

    /**
     * A list that must be there; how many entries it may have is not looked at.
     *
     * @param key the key
     * @param mend how to mend that it is missing or no list
     * @return its entries in order; empty when a problem was told
     */
    public Optional<List<JsonNode>> list(Key<?> key, String mend) {
        return list(key.name(), mend);
    }

    /**
     * A list that must be there; how many entries it may have is not looked at.
     *
     * @param key its name
     * @param mend how to mend that it is missing or no list
     * @return its entries in order; empty when a problem was told
     */
    public Optional<List<JsonNode>> list(String key, String mend) {
        return require(key, mend).flatMap(value -> values.list(at(key), value, mend));
    }

    /**
     * A length that stands in a list instead of under a key.
     *
     * @param place which entry, as a problem names it within this object: {@code pin 2}
     * @param value what stands there
     * @return zero to 20 m; empty when a problem was told
     */
    public Optional<Length> lengthAt(String place, JsonNode value) {
        return values.length(at(place), value);
    }

    /**
     * An object that stands in a list instead of under a key.
     *
     * @param place which entry, as a problem names it within this object: {@code held 2}
     * @param value what stands there
     * @param mend how to mend that it is no object
     * @return its keys, none of them taken; empty when a problem was told
     */
    public Optional<Fields> objectAt(String place, JsonNode value, String mend) {
        return values.object(at(place), value, mend);
    }

    /**
     * Tells what cannot be of what these keys describe.
     *
     * @param faults each by its key
     * @return whether there are none
     */
    public boolean sound(List<Fault> faults) {
        for (Fault fault : faults) {
            reading.problem(at(fault.key()), fault.what().in(units()), fault.mend());
        }
        return faults.isEmpty();
    }

    /** {@return the name of every key that is there, in the file's order, taken or not} */
    public List<String> names() {
        List<String> out = new ArrayList<>();
        node.fieldNames().forEachRemaining(out::add);
        return out;
    }

    /**
     * Tells each key that the description does not have. Call it last, when every key has been taken: one that is described and was not
     * taken, or the other way round, is a fault of ours.
     *
     * @param described the keys this object may have
     * @throws IllegalStateException when other keys were taken than are described
     */
    public void refuseUnknown(KeyType.Group described) {
        Set<String> names = described.keys().stream().map(Key::name).collect(Collectors.toCollection(TreeSet::new));
        if (!names.equals(new TreeSet<>(taken))) {
            throw new IllegalStateException("%s: described are %s, read were %s".formatted(where, names, taken));
        }
        refuseUnknown();
    }

    /** Tells each key that nobody took, as one that is unknown. Call it last. */
    public void refuseUnknown() {
        node.fieldNames().forEachRemaining(key -> {
            if (!taken.contains(key)) {
                reading.problem(
                        where.isEmpty() ? "job" : where,
                        "has an unknown key '%s'".formatted(Values.excerpt(key)),
                        "remove it or use one of " + String.join(", ", taken));
            }
        });
    }

    /** {@return the units of bare numbers} */
    public UnitSystem units() {
        return reading.units();
    }
}
