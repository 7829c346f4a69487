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
    private static final String LENGTH_MEND = "give a number or text like \"1 1/2\", \"38 mm\" or \"1' 10\\\"\"";

    private final String where;
    private final ObjectNode node;
    private final Reading reading;
    private final Set<String> taken = new LinkedHashSet<>();

    public Fields(String where, ObjectNode node, Reading reading) {
        this.where = where;
        this.node = node;
        this.reading = reading;
    }

    public String where() {
        return where;
    }

    public Reading reading() {
        return reading;
    }

    public String at(String key) {
        return where.isEmpty() ? key : where + ": " + key;
    }

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

    public boolean has(Key<?> key) {
        return has(key.name());
    }

    /** A length that must be there, of a member whose kind says so. */
    public Optional<Length> length(String key) {
        return require(key, LENGTH_MEND).flatMap(value -> asLength(at(key), value));
    }

    public Optional<Length> lengthOr(String key, Length otherwise) {
        return find(key).map(value -> asLength(at(key), value)).orElse(Optional.of(otherwise));
    }

    /** The length; when it is left out, what counts then, if anything always does. */
    public Optional<Length> size(Key<KeyType.Size> key) {
        if (!has(key) && !key.isNeeded()) {
            return key.type().otherwise();
        }
        return needed(key);
    }

    /** The length of a key that must be there because of another key. */
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
            reading.problem(place, "is more than 20 m, was " + excerpt(value), "check the number and the job's units");
        } else {
            return Optional.of(reading.units().length(count));
        }
        return Optional.empty();
    }

    /** The value, or the refusal told at that place. */
    public <T> Optional<T> accept(String place, Parsed<T> parsed) {
        return parsed.<Optional<T>>fold(Optional::of, (what, mend) -> {
            reading.problem(place, what, mend);
            return Optional.empty();
        });
    }

    /** The number; when it is left out, what counts then, if anything always does. */
    public Optional<Double> number(Key<KeyType.Number> key) {
        if (!has(key) && !key.isNeeded()) {
            OptionalDouble otherwise = key.type().otherwise();
            return otherwise.isPresent() ? Optional.of(otherwise.getAsDouble()) : Optional.empty();
        }
        return number(key.name(), key.type());
    }

    /** The number under a name of the user's own. */
    public Optional<Double> number(String key, KeyType.Number range) {
        String mend = "give a number from %s to %s".formatted(plain(range.least()), plain(range.most()));
        return require(key, mend).flatMap(value -> {
            if (isIn(range, value)) {
                return Optional.of(value.doubleValue());
            }
            reading.problem(at(key), "was " + excerpt(value), mend);
            return Optional.empty();
        });
    }

    /** Whether the value is a number in that range. */
    public static boolean isIn(KeyType.Number range, JsonNode value) {
        double number = value.isNumber() ? value.doubleValue() : Double.NaN;
        return number >= range.least() && number <= range.most();
    }

    /** The whole number; when it is left out, what counts then, if anything always does. */
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

    public static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15
                ? String.valueOf((long) number)
                : String.valueOf(number);
    }

    private Optional<String> text(String key, String mend) {
        return require(key, mend).flatMap(value -> asText(key, value));
    }

    public Optional<String> findText(Key<KeyType.Text> key) {
        return findText(key.name());
    }

    public Optional<String> findText(String key) {
        return find(key).flatMap(value -> asText(key, value));
    }

    /** The one word that can stand there, if it does. */
    public Optional<String> only(Key<KeyType.Word> key, String missing, String mend) {
        String word = key.type().words().get(0);
        return text(key.name(), missing).filter(given -> {
            if (!given.equals(word)) {
                reading.problem(at(key.name()), "was '%s'".formatted(given), mend);
            }
            return given.equals(word);
        });
    }

    /** One of the key's words; the first where it may be left out and is. */
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

    /** One word out of a few. */
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

    public Optional<Fields> object(Key<?> key, String mend) {
        return require(key.name(), mend).flatMap(value -> asObject(key.name(), value, mend));
    }

    /** The object, or an empty one when the key is left out. */
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

    public Optional<List<JsonNode>> list(Key<?> key, String mend) {
        return list(key.name(), mend);
    }

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

    /** Tells what cannot be of what these keys describe; whether nothing is wrong. */
    public boolean sound(List<Fault> faults) {
        for (Fault fault : faults) {
            reading.problem(at(fault.key()), fault.what().in(units()), fault.mend());
        }
        return faults.isEmpty();
    }

    /** Every key that is there, in the file's order. */
    public List<String> names() {
        List<String> out = new ArrayList<>();
        node.fieldNames().forEachRemaining(out::add);
        return out;
    }

    /**
     * The keys that the description does not have. Call it last, when every key has been taken: one that is described and was not taken, or
     * the other way round, is a fault of ours.
     */
    public void refuseUnknown(KeyType.Group described) {
        Set<String> names = described.keys().stream().map(Key::name).collect(Collectors.toCollection(TreeSet::new));
        if (!names.equals(new TreeSet<>(taken))) {
            throw new IllegalStateException("%s: described are %s, read were %s".formatted(where, names, taken));
        }
        refuseUnknown();
    }

    /** The keys that nobody asked for. */
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

    public UnitSystem units() {
        return reading.units();
    }

    /** A length that stands in a list instead of under a key. */
    public Optional<Length> lengthAt(String place, JsonNode value) {
        return asLength(at(place), value);
    }

    public static String excerpt(JsonNode value) {
        return excerpt(value.isTextual() ? "'" + value.textValue() + "'" : value.toString());
    }

    private static String excerpt(String text) {
        String oneLine = text.replaceAll("\\p{Cntrl}", " ");
        return oneLine.length() > 40 ? String.format(Locale.ROOT, "%s…", oneLine.substring(0, 40)) : oneLine;
    }
}
