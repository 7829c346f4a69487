package turnalike.drawing.svg;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import turnalike.language.Speech;
import turnalike.units.Length;

/**
 * A picture. Its own unit is the millimetre: printed at 100 % every number in it is a true size. The same picture goes on the page
 * ({@link #inline()}), into a file ({@link #file()}) and on paper (the sheets).
 *
 * @param width of the paper it takes, above zero
 * @param height of the paper it takes, above zero
 * @param title what it shows, in words; read aloud in place of the picture
 */
public record Svg(Length width, Length height, String title, List<Shape> shapes) {
    public Svg {
        if (!width.isPositive() || !height.isPositive()) {
            throw new IllegalArgumentException(
                    "a picture's size must be above zero, was %s × %s mm".formatted(width.mm(), height.mm()));
        }
        title = Speech.of(title);
        shapes = List.copyOf(shapes);
    }

    /** As a file of its own, with its styles; the same picture gives the same text, byte for byte. */
    public String file() {
        return file(css());
    }

    /** As a file that a page shows: it goes dark with the page, where {@link #file()} keeps the colours of paper. */
    public String screenFile() {
        return file(screenCss());
    }

    private String file(String styles) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + open("\n") + "<style>" + styles + "</style>\n"
                + body("\n");
    }

    /** As part of a page that has {@link #screenCss()} among its styles; as wide as the page lets it be. */
    public String inline() {
        return open("") + body("");
    }

    /** The styles every picture uses. */
    public static String css() {
        return Stream.concat(
                        Stream.of(Pen.values()).map(Pen::css),
                        Stream.of(Lettering.values()).map(Lettering::css))
                .collect(Collectors.joining("\n", "\n", "\n"));
    }

    /**
     * The same, and what is of another colour where the screen is dark. Lit wood keeps its tones at night: the lines on it stay dark too, or
     * they would vanish in it.
     */
    public static String screenCss() {
        String night = Stream.concat(
                        Stream.of(Pen.values()).map(Pen::nightCss),
                        Stream.of(Lettering.values()).map(Lettering::nightCss))
                .collect(Collectors.joining("\n"));
        return css() + "@media screen and (prefers-color-scheme:dark){\n" + night + "\npath[fill]~.p-fine{stroke:"
                + Pen.Palette.INK + "}\n}\n";
    }

    private String open(String lineEnd) {
        String w = SvgNumbers.mm(width.mm());
        String h = SvgNumbers.mm(height.mm());
        return ("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" role=\"img\" width=\"%smm\" height=\"%smm\""
                        + " viewBox=\"0 0 %s %s\">%s<title>%s</title>%s")
                .formatted(w, h, w, h, lineEnd, SvgText.escape(title), lineEnd);
    }

    private String body(String lineEnd) {
        StringBuilder out = new StringBuilder();
        SvgText writer = new SvgText(out, lineEnd);
        shapes.forEach(shape -> shape.match(writer));
        return out.append("</svg>").append(lineEnd).toString();
    }
}
