package turnalike.pieces;

import java.util.regex.Pattern;

/**
 * What was noted by eye of a piece in one column: a number of grades, or a word.
 *
 * @param word as noted, without blanks around it
 * @param number the same as a number; not a number for a word
 */
record Grade(String word, double number) {
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,15}(?:[.,]\\d{1,15})?");

    static Grade of(String noted) {
        String word = noted.strip();
        return new Grade(
                word, NUMBER.matcher(word).matches() ? Double.parseDouble(word.replace(',', '.')) : Double.NaN);
    }

    /** Less the other where both are numbers; else 1 for unlike words and 0 for like ones. */
    double less(Grade other) {
        double off = number - other.number;
        return Double.isNaN(off) ? word.equalsIgnoreCase(other.word) ? 0 : 1 : off;
    }
}
