package turnalike.drawing.svg;

import java.util.List;
import java.util.Locale;

/** Writes shapes as SVG, one element a line, or all on one: a browser keeps every line's end as a piece of text of its own. */
public final class SvgText implements Shape.Cases<StringBuilder> {
    private final StringBuilder out;
    private final String lineEnd;

    SvgText(StringBuilder out, String lineEnd) {
        this.out = out;
        this.lineEnd = lineEnd;
    }

    @Override
    public StringBuilder group(Group group) {
        out.append("<g");
        group.attributes().forEach((name, value) -> out.append(' ')
                .append(name)
                .append("=\"")
                .append(escape(value))
                .append('"'));
        if (group.rightMm() != 0 || group.downMm() != 0) {
            SvgNumbers.mm(out.append(" transform=\"translate("), group.rightMm());
            SvgNumbers.mm(out.append(' '), group.downMm()).append(")\"");
        }
        out.append('>').append(lineEnd);
        group.tip().ifPresent(tip -> out.append("<title>")
                .append(escape(tip))
                .append("</title>")
                .append(lineEnd));
        group.shapes().forEach(shape -> shape.match(this));
        return out.append("</g>").append(lineEnd);
    }

    @Override
    public StringBuilder path(Path path) {
        out.append("<path class=\"").append(path.pen().className());
        return data(path.steps());
    }

    @Override
    public StringBuilder tone(ShadedArea tone) {
        out.append("<path fill=\"").append(tone.fill());
        return data(tone.steps());
    }

    private StringBuilder data(List<Path.Step> steps) {
        out.append("\" d=\"");
        steps.forEach(step -> step.svg(out));
        return out.append("\"/>").append(lineEnd);
    }

    @Override
    public StringBuilder words(TextLine words) {
        String x = SvgNumbers.mm(words.xMm());
        String y = SvgNumbers.mm(words.yMm());
        out.append("<text class=\"")
                .append(words.lettering().className())
                .append("\" x=\"")
                .append(x)
                .append("\" y=\"")
                .append(y)
                .append('"');
        if (words.anchor() != TextLine.Anchor.START) {
            out.append(" text-anchor=\"").append(words.anchor().svg()).append('"');
        }
        if (words.upright()) {
            out.append(" transform=\"rotate(-90 ")
                    .append(x)
                    .append(' ')
                    .append(y)
                    .append(")\"");
        }
        return out.append('>').append(escape(words.text())).append("</text>").append(lineEnd);
    }

    @Override
    public StringBuilder backdrop(Backdrop backdrop) {
        out.append("<image class=\"backdrop\" href=\"").append(escape(backdrop.address()));
        out.append("\" width=\"")
                .append(backdrop.widthPx())
                .append("\" height=\"")
                .append(backdrop.heightPx());
        out.append("\" preserveAspectRatio=\"none\" transform=\"matrix(");
        for (int i = 0; i < 6; i++) {
            // A pixel is a small part of a millimetre: its six decimals are carried over thousands of them.
            out.append(i == 0 ? "" : " ")
                    .append(String.format(Locale.ROOT, "%.6f", backdrop.matrix().get(i)));
        }
        return out.append(")\"/>").append(lineEnd);
    }

    /** Text that is safe inside an element or a double-quoted attribute; what XML 1.0 cannot carry at all becomes a question mark. */
    public static String escape(String text) {
        if (text.chars().allMatch(SvgText::isPlain)) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length() + 16);
        for (int at = 0; at < text.length(); ) {
            int letter = text.codePointAt(at);
            at += Character.charCount(letter);
            switch (letter) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                case '\t', '\n', '\r' -> out.append(' ');
                default -> out.appendCodePoint(inXml(letter) ? letter : '?');
            }
        }
        return out.toString();
    }

    /** Stands for itself, and is no half of a letter. */
    private static boolean isPlain(int letter) {
        return letter >= 0x20
                && letter < 0x7F
                && letter != '&'
                && letter != '<'
                && letter != '>'
                && letter != '"'
                && letter != '\'';
    }

    private static boolean inXml(int letter) {
        boolean surrogate = letter >= 0xD800 && letter <= 0xDFFF;
        return letter >= 0x20 && !surrogate && (letter < 0x7F || letter > 0x9F) && letter != 0xFFFE && letter != 0xFFFF;
    }
}
