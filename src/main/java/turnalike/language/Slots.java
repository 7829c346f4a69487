package turnalike.language;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The places in a translation where a line's figures and words go. */
final class Slots {
    static final Pattern SLOT = Pattern.compile("([#*])(\\d?)");

    /** Within the program a figure's number is one letter, so that a digit beside it is no part of it. */
    static final char BASE = '\uE000';

    /** A line's own {@code #} and {@code *}, which are no slots: "board 1#2". */
    private static final char HASH = '\uF8FE';

    private static final char STAR = '\uF8FF';

    private Slots() {}

    /** {@return whether a line has letters of its own that stand for something here; nobody's words do} */
    static boolean isTaken(String line) {
        return line.chars().anyMatch(letter -> letter >= BASE && letter <= STAR);
    }

    /** {@return the line without signs that would be slots} */
    static String plain(String line) {
        return line.replace('#', HASH).replace('*', STAR);
    }

    /** {@return what was said, with the line's own signs again} */
    static String asWas(String said) {
        return said.replace(HASH, '#').replace(STAR, '*');
    }

    /** {@return how many figures a frame has} */
    static int count(String frame) {
        return (int) frame.chars().filter(letter -> letter == '#').count();
    }

    /** {@return a translation with its figures numbered} */
    static String numbered(String translation) {
        int[] next = new int[1];
        return SLOT.matcher(translation).replaceAll(slot -> {
            if (slot.group(1).equals("*")) {
                return Matcher.quoteReplacement(slot.group());
            }
            int at = slot.group(2).isEmpty() ? ++next[0] : Integer.parseInt(slot.group(2));
            return "#" + (char) (at + BASE);
        });
    }

    /** {@return what was said of a part of a line, its figures numbered from after those before it} */
    static String shifted(String said, int before) {
        StringBuilder out = new StringBuilder(said.length());
        for (int i = 0; i < said.length(); i++) {
            char letter = said.charAt(i);
            out.append(letter >= BASE && letter < BASE + 1000 ? (char) (letter + before) : letter);
        }
        return out.toString();
    }

    /** {@return what was said, with its figures in it} */
    static String filled(String said, List<String> figures, String inch) {
        StringBuilder out = new StringBuilder(said.length() + 8 * figures.size());
        for (int i = 0; i < said.length(); i++) {
            char letter = said.charAt(i);
            boolean numbered = letter == '#' && i + 1 < said.length() && said.charAt(i + 1) > BASE;
            if (numbered) {
                out.append(Figures.written(figures.get(said.charAt(++i) - BASE - 1), inch));
            } else {
                out.append(letter);
            }
        }
        return out.toString();
    }
}
