package turnalike.language;

import java.util.regex.Pattern;

/**
 * A line of a job in inches said by the entry of the same line in millimetres, and the other way round: {@code # in (# mm)} for {@code # mm (# in)}.
 *
 * @param inch what an inch is called in the language
 */
record OtherUnit(String inch) {
    /** Behind a figure, or behind the comma of a heading: {@code Length, mm}. */
    private static final Pattern ENGLISH = Pattern.compile("([#,]) (in|mm)\\b");

    /** {@return the frame in the other unit; the same where it has no length} */
    static String of(String frame) {
        return ENGLISH.matcher(frame)
                .replaceAll(found -> found.group(1) + (found.group(2).equals("in") ? " mm" : " in"));
    }

    /** {@return the translation of such a frame, back in the unit the line was in; words in it that nobody knows stand as the frame had them} */
    String back(String translation) {
        return Pattern.compile("(#[^ ]?|,) (in|mm|%s)\\b".formatted(Pattern.quote(inch)))
                .matcher(translation)
                .replaceAll(found -> found.group(1) + " " + (found.group(2).equals("mm") ? inch : "mm"));
    }
}
