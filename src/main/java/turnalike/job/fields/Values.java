package turnalike.job.fields;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import turnalike.units.Length;
import turnalike.units.Parsed;

/**
 * The values of a job file, whatever key or list they stand under: each is taken as what it should be, or it is told at its place why it is
 * not, and the answer is empty.
 */
public final class Values {
    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");

    static final String LENGTH_MEND = "give a number or text like \"1 1/2\", \"38 mm\" or \"1' 10\\\"\"";

    private static final String UNITS_MEND = "check the number and the job's units";

    /** A size below it is a slip of whoever wrote the file, and two places nearer than it are one: sums of lengths round to about as much. */
    private static final double LEAST_MM = 1e-6;

    private static final int QUOTED = 40;

    private final Reading reading;

    Values(Reading reading) {
        this.reading = reading;
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
     * A value as a problem quotes it: on one line, at most some forty letters of it.
     *
     * @param value any JSON value
     * @return its beginning, with an ellipsis when there is more; a text in quotation marks
     */
    public static String excerpt(JsonNode value) {
        return excerpt(value.isTextual() ? "'" + value.textValue() + "'" : value.toString());
    }

    static String excerpt(String text) {
        String oneLine = CONTROL.matcher(text).replaceAll(" ");
        return oneLine.length() > QUOTED ? String.format(Locale.ROOT, "%s…", oneLine.substring(0, QUOTED)) : oneLine;
    }

    <T> Optional<T> accept(String place, Parsed<T> parsed) {
        return parsed.<Optional<T>>fold(Optional::of, (what, mend) -> {
            reading.problem(place, what, mend);
            return Optional.empty();
        });
    }

    /** Zero to 20 m. */
    Optional<Length> length(String place, JsonNode value) {
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

    Optional<Double> number(String place, JsonNode value, KeyType.Number range, String mend) {
        if (isIn(range, value)) {
            return Optional.of(value.doubleValue());
        }
        reading.problem(place, "was " + excerpt(value), mend);
        return Optional.empty();
    }

    /** {@code 3.0} is whole. */
    Optional<Integer> whole(String place, JsonNode value, KeyType.Whole range, String mend) {
        double number = value.isNumber() ? value.doubleValue() : Double.NaN;
        if (number >= range.least() && number <= range.most() && number == Math.rint(number)) {
            return Optional.of((int) number);
        }
        reading.problem(place, "was " + excerpt(value), mend);
        return Optional.empty();
    }

    /** At most {@link KeyType.Text#LONGEST} letters. */
    Optional<String> text(String place, JsonNode value) {
        if (!value.isTextual()) {
            reading.problem(place, "is no text, was " + excerpt(value), "write it in quotes");
            return Optional.empty();
        }
        if (value.textValue().length() > KeyType.Text.LONGEST) {
            reading.problem(
                    place,
                    "has %d letters".formatted(value.textValue().length()),
                    "use %d at most".formatted(KeyType.Text.LONGEST));
            return Optional.empty();
        }
        return Optional.of(value.textValue());
    }

    /** No where it is neither yes nor no. */
    boolean flag(String place, JsonNode value) {
        if (!value.isBoolean()) {
            reading.problem(place, "was " + excerpt(value), "write true or false without quotes");
        }
        return value.asBoolean(false);
    }

    /** Its keys, none of them taken. */
    Optional<Fields> object(String place, JsonNode value, String mend) {
        if (value instanceof ObjectNode object) {
            return Optional.of(new Fields(place, object, reading));
        }
        reading.problem(place, "is no object, was " + excerpt(value), mend);
        return Optional.empty();
    }

    /** Its entries in order, however many. */
    Optional<List<JsonNode>> list(String place, JsonNode value, String mend) {
        if (!value.isArray()) {
            reading.problem(place, "is no list, was " + excerpt(value), mend);
            return Optional.empty();
        }
        List<JsonNode> out = new ArrayList<>();
        value.forEach(out::add);
        return Optional.of(List.copyOf(out));
    }
}
