package turnalike.job.fields;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import turnalike.pattern.Fault;
import turnalike.units.Length;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;

/**
 * The keys of one JSON object, taken one by one. Whatever is wrong goes to the {@link Reading} with the place's name; what nobody took
 * is an unknown key. An empty answer to a required key means that its problem has been told.
 */
public final class Fields {
    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");

    private static final String LENGTH_MEND = "give a number or text like \"1 1/2\", \"38 mm\" or \"1' 10\\\"\"";

    private static final String UNITS_MEND = "check the number and the job's units";

    /** A size below it is a slip of whoever wrote the file, and two places nearer than it are one: sums of lengths round to about as much. */
    private static final double LEAST_MM = 1e-6;

    private final String where;
    private final ObjectNode node;
    private final Reading reading;
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
        return require(key, LENGTH_MEND).flatMap(value -> asLength(at(key), value));
    }

    /**
     * A length that may be left out.
     *
     * @param key its name
     * @param otherwise what counts when it is left out
     * @return zero to 20 m; empty when a problem was told
     */
    public Optional<Length> lengthOr(String key, Length otherwise) {
        return find(key).map(value -> asLength(at(key), value)).orElse(Optional.of(otherwise));
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

    private Optional<Length> asLength(String place, JsonNode value) {
        return anyLength(place, value).filter(length -> {
            boolean slip = length.isPositive() && length.mm() < LEAST_MM;
            if (slip) {
                reading.problem(place, "is below a millionth of a millimetre, was " + excerpt(value), UNITS_MEND);
            }
            return !slip;
        });
    }

    private Optional<Length> anyLength(String place, JsonNode value) {
        if (value.isTextual()) {
            return accept(place, Length.parse(value.textValue(), reading.units()));
        }
        if (!value.isNumber()) {
            reading.problem(place, "is no length, was " + excerpt(value), LENGTH_MEND);
            return Optional.empty();
        }
        double count = value.doubleValue();
        if (!Double.isFinite(count)) {
            reading.problem(place, "is not a finite number", LENGTH_MEND);
        } else if (count < 0) {
            reading.problem(place, "is negative, was " + excerpt(value), "give the size itself, above zero");
        } else if (count * reading.units().length(1).mm() > Length.LONGEST.mm()) {
            reading.problem(place, "is more than 20 m, was " + excerpt(value), UNITS_MEND);
        } else {
            return Optional.of(reading.units().length(count));
        }
        return Optional.empty();
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
        return parsed.<Optional<T>>fold(Optional::of, (what, mend) -> {
            reading.problem(place, what, mend);
            return Optional.empty();
        });
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
        return number(key, range, "give a number from %s to %s".formatted(plain(range.least()), plain(range.most())));
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
        return require(key, mend).flatMap(value -> {
            if (isIn(range, value)) {
                return Optional.of(value.doubleValue());
            }
            reading.problem(at(key), "was " + excerpt(value), mend);
            return Optional.empty();
        });
    }

    /**
     * Whether the value is a number in that range.
     *
     * @param range its bounds, both included
     * @param value any JSON value
     * @return whether it is; a number written as a text is not
     */
    public static boolean isIn(KeyType.Number range, JsonNode value) {
        double number = value.isNumber() ? value.doubleValue() : Double.NaN;
        return number >= range.least() && number <= range.most();
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
        return require(key.name(), mend).flatMap(value -> {
            double number = value.isNumber() ? value.doubleValue() : Double.NaN;
            if (number >= least && number <= most && number == Math.rint(number)) {
                return Optional.of((int) number);
            }
            reading.problem(at(key.name()), "was " + excerpt(value), mend);
            return Optional.empty();
        });
    }

    /**
     * A number as a sentence carries it: {@code 2}, not {@code 2.0}.
     *
     * @param number any number
     * @return its digits; whole numbers without a point up to 10¹⁵
     */
    public static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15
                ? String.valueOf((long) number)
                : String.valueOf(number);
    }

    private Optional<String> text(String key, String mend) {
        return require(key, mend).flatMap(value -> asText(key, value));
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
        return find(key).flatMap(value -> asText(key, value));
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

    private Optional<String> asText(String key, JsonNode value) {
        if (!value.isTextual()) {
            reading.problem(at(key), "is no text, was " + excerpt(value), "write it in quotes");
            return Optional.empty();
        }
        if (value.textValue().length() > KeyType.Text.LONGEST) {
            reading.problem(
                    at(key),
                    "has %d letters".formatted(value.textValue().length()),
                    "use %d at most".formatted(KeyType.Text.LONGEST));
            return Optional.empty();
        }
        return Optional.of(value.textValue());
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
                reading.problem(at(key), "was '%s'".formatted(excerpt(word)), mend);
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
        return find(key)
                .map(value -> {
                    if (!value.isBoolean()) {
                        reading.problem(at(key), "was " + excerpt(value), "write true or false without quotes");
                    }
                    return value.asBoolean(false);
                })
                .orElse(false);
    }

    /**
     * An object that must be there.
     *
     * @param key the key
     * @param mend how to mend that it is missing or no object
     * @return its keys, none of them taken; empty when a problem was told
     */
    public Optional<Fields> object(Key<?> key, String mend) {
        return require(key.name(), mend).flatMap(value -> asObject(key.name(), value, mend));
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
                .map(value -> asObject(name, value, "write it in braces"))
                .orElseGet(() -> Optional.of(new Fields(at(name), Json.object(), reading)));
    }

    private Optional<Fields> asObject(String key, JsonNode value, String mend) {
        if (value instanceof ObjectNode object) {
            return Optional.of(new Fields(at(key), object, reading));
        }
        reading.problem(at(key), "is no object, was " + excerpt(value), mend);
        return Optional.empty();
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
        return require(key, mend).flatMap(value -> {
            if (!value.isArray()) {
                reading.problem(at(key), "is no list, was " + excerpt(value), mend);
                return Optional.empty();
            }
            List<JsonNode> out = new ArrayList<>();
            value.forEach(out::add);
            return Optional.of(List.copyOf(out));
        });
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
                        "has an unknown key '%s'".formatted(excerpt(key)),
                        "remove it or use one of " + String.join(", ", taken));
            }
        });
    }

    /** {@return the units of bare numbers} */
    public UnitSystem units() {
        return reading.units();
    }

    /**
     * A length that stands in a list instead of under a key.
     *
     * @param place which entry, as a problem names it within this object: {@code pin 2}
     * @param value what stands there
     * @return zero to 20 m; empty when a problem was told
     */
    public Optional<Length> lengthAt(String place, JsonNode value) {
        return asLength(at(place), value);
    }

    /**
     * A value as a problem quotes it: on one line, at most some forty letters of it.
     *
     * @param value any JSON value
     * @return its beginning, with an ellipsis when there is more; a text in quotation marks
     */
    public static String excerpt(JsonNode value) {
        return excerpt(value.isTextual() ? "'" + value.textValue() + "'" : value.toString());
    }

    private static String excerpt(String text) {
        String oneLine = CONTROL.matcher(text).replaceAll(" ");
        return oneLine.length() > 40 ? String.format(Locale.ROOT, "%s…", oneLine.substring(0, 40)) : oneLine;
    }
}
