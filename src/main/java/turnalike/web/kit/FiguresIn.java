package turnalike.web.kit;

import java.util.Arrays;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where in a field figures are typed: on the page their decimal sign is the language's own, in the job it is a point. */
public enum FiguresIn {
    /** Words alone, which stay to the letter. */
    NOWHERE(""),
    /** One figure, or several with nothing between them but semicolons and ends of lines. */
    ALL("figure"),
    /** A figure behind the last semicolon of each line; what stands before it is a name. */
    LINE_ENDS("line-figure");

    private static final Pattern PART = Pattern.compile("[^;\\r\\n]+");
    private static final Pattern LINE_END = Pattern.compile("(?m);[^;\\r\\n]*$|^[^;\\r\\n]+$");
    private static final Pattern COMMA = Pattern.compile("(?<=[0-9]),(?=[0-9])");
    private static final Pattern POINT = Pattern.compile("(?<=[0-9])\\.(?=[0-9])");

    private final String style;

    FiguresIn(String style) {
        this.style = style;
    }

    /** The class that such a field has in a page, by which its figures are found there. */
    public String style() {
        return style;
    }

    static FiguresIn of(String style) {
        return Arrays.stream(values())
                .filter(each -> each.style.equals(style))
                .findFirst()
                .orElse(NOWHERE);
    }

    private Pattern parts() {
        return this == LINE_ENDS ? LINE_END : PART;
    }

    /** What was typed, its figures with a point; a figure that has one keeps its commas, whatever they are to mean. */
    public String kept(String typed) {
        if (this == NOWHERE || typed.indexOf(',') < 0) {
            return typed;
        }
        return parts().matcher(typed)
                .replaceAll(part -> Matcher.quoteReplacement(
                        part.group().indexOf('.') < 0
                                ? COMMA.matcher(part.group()).replaceAll(".")
                                : part.group()));
    }

    /** What is kept, its figures with that sign. */
    String shown(String kept, String sign) {
        if (this == NOWHERE || kept.indexOf('.') < 0) {
            return kept;
        }
        return parts().matcher(kept)
                .replaceAll((MatchResult part) ->
                        Matcher.quoteReplacement(POINT.matcher(part.group()).replaceAll(sign)));
    }
}
