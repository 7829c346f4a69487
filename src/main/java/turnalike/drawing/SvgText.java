package turnalike.drawing;

import java.util.stream.Collectors;

/** Writes shapes as SVG, one element a line. */
final class SvgText implements Shape.Cases<StringBuilder> {
    private final StringBuilder out;

    SvgText(StringBuilder out) {
        this.out = out;
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
            out.append(" transform=\"translate(%s %s)\""
                    .formatted(Numbers.mm(group.rightMm()), Numbers.mm(group.downMm())));
        }
        out.append(">\n");
        group.tip().ifPresent(tip -> out.append("<title>").append(escape(tip)).append("</title>\n"));
        group.shapes().forEach(shape -> shape.match(this));
        return out.append("</g>\n");
    }

    @Override
    public StringBuilder path(Path path) {
        String data = path.steps().stream().map(Path.Step::svg).collect(Collectors.joining());
        return out.append("<path class=\"%s\" d=\"%s\"/>\n".formatted(path.pen().className(), data));
    }

    @Override
    public StringBuilder tint(Tint tint) {
        String data = tint.area().steps().stream().map(Path.Step::svg).collect(Collectors.joining());
        return out.append("<path fill=\"%s\" d=\"%s\"/>\n".formatted(tint.colour(), data));
    }

    @Override
    public StringBuilder words(Words words) {
        String x = Numbers.mm(words.xMm());
        String y = Numbers.mm(words.yMm());
        out.append("<text class=\"%s\" x=\"%s\" y=\"%s\""
                .formatted(words.lettering().className(), x, y));
        if (words.anchor() != Words.Anchor.START) {
            out.append(" text-anchor=\"").append(words.anchor().svg()).append('"');
        }
        if (words.upright()) {
            out.append(" transform=\"rotate(-90 %s %s)\"".formatted(x, y));
        }
        return out.append('>').append(escape(words.text())).append("</text>\n");
    }

    /** Text that is safe inside an element or a double-quoted attribute; what XML 1.0 cannot carry at all becomes a question mark. */
    static String escape(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                case '\t', '\n', '\r' -> out.append(' ');
                default -> out.appendCodePoint(inXml(letter) ? letter : '?');
            }
        });
        return out.toString();
    }

    private static boolean inXml(int letter) {
        boolean surrogate = letter >= 0xD800 && letter <= 0xDFFF;
        return letter >= 0x20 && !surrogate && (letter < 0x7F || letter > 0x9F) && letter != 0xFFFE && letter != 0xFFFF;
    }
}
