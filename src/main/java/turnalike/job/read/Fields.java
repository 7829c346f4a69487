package turnalike.job.read;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import turnalike.units.Length;
import turnalike.units.Parsed;
import turnalike.units.UnitSystem;

/**
 * The keys of one JSON object, taken one by one. Whatever is wrong goes to the {@link Reading} with the place's name; what nobody took
 * is an unknown key. An empty answer to a required key means that its problem has been told.
 */
final class Fields {
    private static final String LENGTH_MEND = "give a number or text like \"1 1/2\", \"38 mm\" or \"1' 10\\\"\"";

    private final String where;
    private final ObjectNode node;
    private final Reading reading;
    private final Set<String> taken = new LinkedHashSet<>();

    Fields(String where, ObjectNode node, Reading reading) {
        this.where = where;
        this.node = node;
        this.reading = reading;
    }

    String where() {
        return where;
    }

    Reading reading() {
        return reading;
    }

    String at(String key) {
        return where.isEmpty() ? key : where + ": " + key;
    }

    boolean has(String key) {
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

    /** A length that must be there. */
    Optional<Length> length(String key) {
        return require(key, LENGTH_MEND).flatMap(value -> asLength(at(key), value));
    }

    Optional<Length> lengthOr(String key, Length otherwise) {
        return find(key).map(value -> asLength(at(key), value)).orElse(Optional.of(otherwise));
    }

    /** A length above zero, or {@code otherwise} when the key is left out. */
    Optional<Length> positiveOr(String key, Length otherwise) {
        return lengthOr(key, otherwise).filter(length -> length.isPositive() || tell(key, "must be above zero"));
    }

    Optional<Length> positive(String key) {
        return length(key).filter(length -> length.isPositive() || tell(key, "must be above zero"));
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
    <T> Optional<T> accept(String place, Parsed<T> parsed) {
        return parsed.<Optional<T>>fold(Optional::of, (what, mend) -> {
            reading.problem(place, what, mend);
            return Optional.empty();
        });
    }

    /** A number in a range, or {@code otherwise} when the key is left out. */
    Optional<Double> numberOr(String key, double otherwise, double least, double most) {
        return has(key) ? number(key, least, most) : Optional.of(otherwise);
    }

    Optional<Double> number(String key, double least, double most) {
        String mend = "give a number from %s to %s".formatted(plain(least), plain(most));
        return require(key, mend).flatMap(value -> {
            double number = value.isNumber() ? value.doubleValue() : Double.NaN;
            if (number >= least && number <= most) {
                return Optional.of(number);
            }
            reading.problem(at(key), "was " + excerpt(value), mend);
            return Optional.empty();
        });
    }

    Optional<Integer> wholeNumber(String key, int least, int most) {
        String mend = least == most ? "use " + least : "give a whole number from %d to %d".formatted(least, most);
        return require(key, mend).flatMap(value -> {
            double number = value.isNumber() ? value.doubleValue() : Double.NaN;
            if (number >= least && number <= most && number == Math.rint(number)) {
                return Optional.of((int) number);
            }
            reading.problem(at(key), "was " + excerpt(value), mend);
            return Optional.empty();
        });
    }

    private static String plain(double number) {
        return number == Math.rint(number) && Math.abs(number) < 1e15
                ? String.valueOf((long) number)
                : String.valueOf(number);
    }

    Optional<String> text(String key, String mend) {
        return require(key, mend).flatMap(value -> asText(key, value));
    }

    Optional<String> findText(String key) {
        return find(key).flatMap(value -> asText(key, value));
    }

    private Optional<String> asText(String key, JsonNode value) {
        if (!value.isTextual()) {
            reading.problem(at(key), "is no text, was " + excerpt(value), "write it in quotes");
            return Optional.empty();
        }
        if (value.textValue().length() > 400) {
            reading.problem(
                    at(key), "has %d letters".formatted(value.textValue().length()), "use 400 at most");
            return Optional.empty();
        }
        return Optional.of(value.textValue());
    }

    /** One word out of a few. */
    <T> Optional<T> choice(String key, String words, Function<String, Optional<T>> meaning) {
        String mend = "use " + words;
        return text(key, mend).flatMap(word -> {
            Optional<T> meant = meaning.apply(word);
            if (meant.isEmpty()) {
                reading.problem(at(key), "was '%s'".formatted(excerpt(word)), mend);
            }
            return meant;
        });
    }

    boolean flag(String key) {
        return find(key)
                .map(value -> {
                    if (!value.isBoolean()) {
                        reading.problem(at(key), "was " + excerpt(value), "write true or false without quotes");
                    }
                    return value.asBoolean(false);
                })
                .orElse(false);
    }

    Optional<Fields> object(String key, String mend) {
        return require(key, mend).flatMap(value -> asObject(key, value, mend));
    }

    /** The object, or an empty one when the key is left out. */
    Optional<Fields> objectOrEmpty(String key) {
        return find(key)
                .map(value -> asObject(key, value, "write it in braces"))
                .orElseGet(() -> Optional.of(new Fields(at(key), Json.object(), reading)));
    }

    private Optional<Fields> asObject(String key, JsonNode value, String mend) {
        if (value instanceof ObjectNode object) {
            return Optional.of(new Fields(at(key), object, reading));
        }
        reading.problem(at(key), "is no object, was " + excerpt(value), mend);
        return Optional.empty();
    }

    Optional<List<JsonNode>> list(String key, String mend) {
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

    /** Every key that is there, in the file's order. */
    List<String> names() {
        List<String> out = new ArrayList<>();
        node.fieldNames().forEachRemaining(out::add);
        return out;
    }

    /** The keys that nobody asked for. Call it last, when every key has been taken. */
    void refuseUnknown() {
        node.fieldNames().forEachRemaining(key -> {
            if (!taken.contains(key)) {
                reading.problem(
                        where.isEmpty() ? "job" : where,
                        "has an unknown key '%s'".formatted(excerpt(key)),
                        "remove it or use one of " + String.join(", ", taken));
            }
        });
    }

    UnitSystem units() {
        return reading.units();
    }

    /** A length that stands in a list instead of under a key. */
    Optional<Length> lengthAt(String place, JsonNode value) {
        return asLength(at(place), value);
    }

    static String excerpt(JsonNode value) {
        return excerpt(value.isTextual() ? "'" + value.textValue() + "'" : value.toString());
    }

    private static String excerpt(String text) {
        String oneLine = text.replaceAll("\\p{Cntrl}", " ");
        return oneLine.length() > 40 ? String.format(Locale.ROOT, "%s…", oneLine.substring(0, 40)) : oneLine;
    }
}
