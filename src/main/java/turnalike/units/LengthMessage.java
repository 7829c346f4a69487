package turnalike.units;

import java.util.List;
import java.util.Locale;

/**
 * A sentence with lengths in it, told before it is known in which units its reader thinks.
 *
 * @param format as of {@link String#format}, each length a {@code %s}
 * @param parts lengths, and whatever else stands in the sentence
 */
public record LengthMessage(String format, List<Object> parts) {
    public LengthMessage {
        parts = List.copyOf(parts);
    }

    /**
     * {@return a sentence of these parts}
     *
     * @param format as of {@link String#format}, each length a {@code %s}
     * @param parts lengths, and whatever else stands in the sentence, in their order
     */
    public static LengthMessage of(String format, Object... parts) {
        return new LengthMessage(format, List.of(parts));
    }

    /**
     * {@return the sentence with its lengths in both systems, that one first}
     *
     * @param units the units to print in
     */
    public String in(UnitSystem units) {
        Object[] printed = parts.stream()
                .map(part -> part instanceof Length length ? length.formatFinestBoth(units) : part)
                .toArray();
        return String.format(Locale.ROOT, format, printed);
    }
}
