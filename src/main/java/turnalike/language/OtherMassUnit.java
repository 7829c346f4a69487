package turnalike.language;

import java.util.regex.Pattern;

/** A line of a scale in ounces said by the entry of the same line in grams, and the other way round: {@code # oz (# g)} for {@code # g (# oz)}. */
final class OtherMassUnit {
    /** Behind a figure, or behind the comma of a heading: {@code Weight, g}; a moment's g·mm is none. */
    private static final Pattern UNIT = Pattern.compile("(#[^ ]?|,) (g|oz)\\b(?!·)");

    private OtherMassUnit() {}

    /**
     * {@return the line in the other unit; the same where it has no mass} Both languages write the units alike.
     *
     * @param frame of a line or of its translation, with signs for its figures
     */
    static String swapped(String frame) {
        return UNIT.matcher(frame)
                .replaceAll(found -> found.group(1) + (found.group(2).equals("g") ? " oz" : " g"));
    }
}
