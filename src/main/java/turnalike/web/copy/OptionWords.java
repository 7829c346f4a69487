package turnalike.web.copy;

import java.util.LinkedHashMap;
import java.util.Map;
import turnalike.units.Problem;
import turnalike.web.kit.PageWords;

/** What tracing says, in the page's words: it names the command's options, and here the same things are fields. */
public final class OptionWords {
    /** The longer before what it begins with. */
    private static final Map<String, String> WORDS = new LinkedHashMap<>();

    static {
        WORDS.put("as --units says", "as chosen");
        WORDS.put("say so with --units in", "choose inches");
        WORDS.put("say --units in", "choose inches");
        WORDS.put("say --units mm", "choose millimetres");
        WORDS.put("give its overall length with --span", "give its overall length");
        WORDS.put("give its length with --span", "give its overall length");
        WORDS.put("give --span to have it judged", "give the overall length to have it judged");
        WORDS.put("--span scales it", "giving the overall length scales it");
        WORDS.put("--error says it better", "the field for how well it was measured says it better");
        WORDS.put("give it with --bar", "give it as “Its bar of 100 mm”");
        WORDS.put("say how high its axis is with --height", "say how high its axis stands above the sheet");
        WORDS.put("--span", "“Overall length”");
        WORDS.put("--bar", "“Its bar of 100 mm”");
        WORDS.put("--height", "“Axis above the sheet”");
        WORDS.put("--error", "“Measured within”");
        WORDS.put("--units", "“Units”");
    }

    private OptionWords() {}

    /**
     * {@return the same as the page would say it}
     *
     * @param words of the domain
     */
    public static String of(String words) {
        String out = words;
        for (Map.Entry<String, String> each : WORDS.entrySet()) {
            out = out.replace(each.getKey(), each.getValue());
        }
        return PageWords.of(out);
    }

    static Problem of(Problem problem) {
        return new Problem(of(problem.where()), of(problem.what()), of(problem.mend()));
    }
}
