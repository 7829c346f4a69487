package turnalike.web.kit;

import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import turnalike.drawing.svg.SvgText;
import turnalike.language.Language;
import turnalike.language.Speech;

/**
 * The words of a page, each put into another language where it stands: text between tags and what is read out or shown of a tag. Reads
 * only what our own templates write, whole pages and parts alike, which a parser of documents would take for broken.
 */
public final class HtmlWords {
    private static final Pattern TAG =
            Pattern.compile("<(/?)([a-zA-Z][a-zA-Z0-9]*)((?:[^<>\"']++|\"[^\"]*+\"|'[^']*+')*+)>|<!--.*?-->|<![^>]*>");
    private static final Pattern SAID =
            Pattern.compile("( (?:title|placeholder|aria-label|aria-valuetext|alt|data-say)=)\"([^\"]*)\"");

    /** A figure to be filled in, whose decimal sign is the language's own; its words, such as a unit, are read again and stay. */
    private static final Pattern FIGURE =
            Pattern.compile(" (?:class=\"(figure|line-figure)[^\"]*\"|inputmode=\"decimal\")");

    private static final Pattern FILLED = Pattern.compile("( (?:value|data-held)=)\"([^\"]*)\"");

    /** What is typed or worked with is the person's own. */
    private static final Set<String> LEFT_ALONE = Set.of("script", "style", "textarea", "code", "kbd");

    private final UnaryOperator<String> say;
    private final UnaryOperator<String> sayDrawn;

    public HtmlWords(UnaryOperator<String> say) {
        this(say, say);
    }

    /**
     * @param sayDrawn for what a picture bears, which is in its language already where it was drawn for a reader: read as English again,
     *     part of it could be taken for some
     */
    private HtmlWords(UnaryOperator<String> say, UnaryOperator<String> sayDrawn) {
        this.say = say;
        this.sayDrawn = sayDrawn;
    }

    /** {@return a page or a part of one in that language; to the letter the same in English} */
    public static String in(Language language, String html) {
        return language == Language.ENGLISH
                ? html
                : new HtmlWords(language::say, words -> Speech.isSaid(words) ? words : language.say(words)).of(html);
    }

    public String of(String html) {
        StringBuilder out = new StringBuilder(html.length() + html.length() / 8);
        Matcher tag = TAG.matcher(html);
        int from = 0;
        boolean drawn = false;
        String before = "";
        while (tag.find(from)) {
            text(html.substring(from, tag.start()), drawn, out);
            from = tag.end();
            String name = tag.group(2) == null ? "" : tag.group(2);
            // A picture's lines and its own title; what a part of it shows under the pointer is said here.
            drawn = tag.group(1) != null
                    && tag.group(1).isEmpty()
                    && (name.equals("text") || (name.equals("title") && before.equals("svg")));
            before = name;
            if (name.isEmpty() || !tag.group(1).isEmpty()) {
                out.append(tag.group());
                continue;
            }
            attributes(tag.group(), out);
            if (LEFT_ALONE.contains(name) || tag.group(3).contains(" translate=\"no\"")) {
                int end = html.indexOf("</" + name + ">", from);
                end = end < 0 ? html.length() : end;
                String alone = html.substring(from, end);
                out.append(name.equals("textarea") ? figures(tag.group()).shown(alone, sign()) : alone);
                from = end;
            }
        }
        text(html.substring(from), drawn, out);
        return out.toString();
    }

    private void text(String text, boolean drawn, StringBuilder out) {
        out.append(text.isBlank() ? text : SvgText.escape((drawn ? sayDrawn : say).apply(plain(text))));
    }

    private void attributes(String tag, StringBuilder out) {
        if (tag.indexOf('"') < 0) {
            out.append(tag);
            return;
        }
        out.append(SAID.matcher(filled(tag))
                .replaceAll(found -> Matcher.quoteReplacement(
                        found.group(1) + '"' + SvgText.escape(say.apply(plain(found.group(2)))) + '"')));
    }

    private static FiguresIn figures(String tag) {
        Matcher figure = FIGURE.matcher(tag);
        if (!(tag.startsWith("<input") || tag.startsWith("<textarea")) || !figure.find()) {
            return FiguresIn.NOWHERE;
        }
        return figure.group(1) == null ? FiguresIn.ALL : FiguresIn.of(figure.group(1));
    }

    private String sign() {
        return say.apply("0.5").replaceAll("[0-9]", "");
    }

    private String filled(String tag) {
        FiguresIn figures = figures(tag);
        return figures == FiguresIn.NOWHERE
                ? tag
                : FILLED.matcher(tag)
                        .replaceAll(found -> Matcher.quoteReplacement(
                                found.group(1) + '"' + figures.shown(found.group(2), sign()) + '"'));
    }

    private static String plain(String text) {
        if (text.indexOf('&') < 0) {
            return text;
        }
        return text.replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&#34;", "\"")
                .replace("&#39;", "'")
                .replace("&nbsp;", "\u00a0")
                .replace("&amp;", "&");
    }
}
