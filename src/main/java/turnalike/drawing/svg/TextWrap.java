package turnalike.drawing.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import turnalike.language.Speech;

/** Text broken to a width. */
public final class TextWrap {
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern FIGURE = Pattern.compile(".*\\d");
    private static final Pattern GOES_ON = Pattern.compile("(?:\\d+/\\d+|in|mm|rpm|N|lbf|g|oz|lb|kg|%)[.,;:)]*|→");

    private TextWrap() {}

    /** The text's lines, broken between words; a word wider than the line is broken where it must be. */
    public static List<String> wrap(String text, Lettering lettering, double widthMm) {
        return lines(Speech.of(text), lettering, widthMm).stream()
                .map(Speech::done)
                .toList();
    }

    private static List<String> lines(String text, Lettering lettering, double widthMm) {
        List<String> out = new ArrayList<>();
        String line = "";
        for (String word : words(text)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (lettering.asItStandsMm(longer) <= widthMm) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                out.add(line);
            }
            line = word;
            while (lettering.asItStandsMm(line) > widthMm && line.codePointCount(0, line.length()) > 1) {
                int fits = fits(line, lettering, widthMm);
                out.add(line.substring(0, fits));
                line = line.substring(fits);
            }
        }
        out.add(line);
        return out;
    }

    /**
     * The words, a figure's fraction and unit kept with it: {@code 46 7/16 in} broken in two is read as another figure; so is a step {@code 7 → 8}.
     */
    private static List<String> words(String text) {
        List<String> out = new ArrayList<>();
        for (String word : BLANKS.split(text.strip(), -1)) {
            int last = out.size() - 1;
            boolean goesOn = last >= 0
                    && (out.get(last).endsWith("→")
                            || (GOES_ON.matcher(word).matches()
                                    && FIGURE.matcher(out.get(last)).matches()));
            if (goesOn) {
                out.set(last, out.get(last) + " " + word);
            } else {
                out.add(word);
            }
        }
        return out;
    }

    /** The text, or as much of it as fits with dots after it. */
    public static String cut(String words, Lettering lettering, double widthMm) {
        String text = Speech.of(words);
        if (lettering.asItStandsMm(text) <= widthMm) {
            return text;
        }
        int fits = fits(text, lettering, widthMm - lettering.asItStandsMm("…"));
        return Speech.done(text.substring(0, fits).stripTrailing() + "…");
    }

    /** How many chars from the start fit, at least one letter's. */
    private static int fits(String text, Lettering lettering, double widthMm) {
        int end = text.offsetByCodePoints(0, 1);
        while (end < text.length()) {
            int next = text.offsetByCodePoints(end, 1);
            if (lettering.asItStandsMm(text.substring(0, next)) > widthMm) {
                break;
            }
            end = next;
        }
        return end;
    }
}
