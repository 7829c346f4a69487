package turnalike.job.edit;

import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The number that an entry of pieces was given where it was made, before it was sent: however often it comes, it is kept once.
 *
 * @param text 16 to 32 digits, hexadecimal in small letters
 */
public record EntrySerial(String text) {
    private static final Pattern FORM = Pattern.compile("[0-9a-f]{16,32}");

    /**
     * Refuses a text that is no such number.
     *
     * @param text 16 to 32 digits, hexadecimal in small letters
     * @throws IllegalArgumentException when it is none
     */
    public EntrySerial {
        if (!FORM.matcher(text).matches()) {
            throw new IllegalArgumentException(
                    "an entry's number has 16 to 32 hexadecimal digits, was '%s'".formatted(text));
        }
    }

    /**
     * {@return the number in a text; empty where it is none}
     *
     * @param text as it was sent
     */
    public static Optional<EntrySerial> find(String text) {
        return Optional.of(text).filter(each -> FORM.matcher(each).matches()).map(EntrySerial::new);
    }

    /** {@return how the words of the step that keeps it end; benches kept entries so from the beginning} */
    public String mark() {
        return " (bench entry " + text + ")";
    }

    /**
     * {@return whether a step of a job's history keeps it}
     *
     * @param what the step's words
     */
    public boolean isOf(String what) {
        return what.endsWith(mark());
    }
}
