package turnalike.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import turnalike.units.Length;

class SvgTest {
    static final Svg SAMPLE = new Svg(
            Length.ofMm(60),
            Length.ofMm(40),
            "a sample",
            List.of(
                    Path.rectangle(Pen.WOOD, 5, 5, 50, 20),
                    new Path(
                            Pen.OUTLINE,
                            List.of(
                                    new Path.Move(5, 30),
                                    new Path.Arc(10, 5, true, 25, 30),
                                    new Path.Cubic(30, 30, 35, 36.25, 40, 36.25),
                                    new Path.Straight(55, 30))),
                    new Group(
                            2.5,
                            0,
                            Map.of("class", "mark", "data-mark", "3"),
                            Optional.of("14 3/8 in, 365.1 mm"),
                            List.of(
                                    Path.line(Pen.LINE, 10, 25, 10, 35),
                                    TextLine.upwards(Lettering.SMALL, 12, 34, "a & b"),
                                    TextLine.centred(Lettering.BODY, 30, 20, "<bead> \"x\" 'y'")))));

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    @Test
    void file_stays_as_it_was() {
        Golden.check("drawing/sample.svg", SAMPLE.file());
    }

    @Test
    void text_is_the_same_where_a_comma_is_the_decimal_sign() {
        String here = SAMPLE.file();
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(SAMPLE.file()).isEqualTo(here);
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(SAMPLE.file()).isEqualTo(here);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void user_unit_is_a_millimetre() throws Exception {
        var root = parsed(SAMPLE.file()).getDocumentElement();
        assertThat(root.getAttribute("width")).isEqualTo("60mm");
        assertThat(root.getAttribute("height")).isEqualTo("40mm");
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 60 40");
    }

    @Test
    void every_text_comes_back_from_a_parser_or_as_question_marks() throws Exception {
        for (String text : List.of(
                "plain",
                "<script>alert('x')</script>",
                "]]> & &amp; \"'",
                "Füße · ½ in · Ø 38",
                "Ножка стула",
                "椅子の脚",
                "🪵 log")) {
            assertThat(reread(text)).isEqualTo(text);
        }
        assertThat(reread("bell\u0007 null\u0000 half\uD83E noncharacter\uFFFE"))
                .isEqualTo("bell? null? half? noncharacter?");
        assertThat(reread("two\nlines\tand")).isEqualTo("two lines and");
    }

    private static String reread(String text) throws Exception {
        Svg svg = new Svg(
                Length.ofMm(10),
                Length.ofMm(10),
                text,
                List.of(new Group(
                        0,
                        0,
                        Map.of("data-name", text),
                        Optional.of(text),
                        List.of(TextLine.of(Lettering.BODY, 0, 5, text)))));
        Document document = parsed(svg.file());
        String words = document.getElementsByTagName("text").item(0).getTextContent();
        assertThat(document.getElementsByTagName("title").item(0).getTextContent())
                .isEqualTo(words);
        assertThat(document.getElementsByTagName("title").item(1).getTextContent())
                .isEqualTo(words);
        assertThat(document.getElementsByTagName("g")
                        .item(0)
                        .getAttributes()
                        .getNamedItem("data-name")
                        .getNodeValue())
                .isEqualTo(words);
        return words;
    }

    @Test
    void attribute_names_are_kept_to_a_few() {
        assertThatThrownBy(() -> new Group(0, 0, Map.of("onclick", "x"), Optional.empty(), List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("onclick");
    }

    @Test
    void numbers_are_rounded_to_three_decimals_without_needless_ones() {
        assertThat(SvgNumbers.mm(0)).isEqualTo("0");
        assertThat(SvgNumbers.mm(-0.0001)).isEqualTo("0");
        assertThat(SvgNumbers.mm(12)).isEqualTo("12");
        assertThat(SvgNumbers.mm(-12.5)).isEqualTo("-12.5");
        assertThat(SvgNumbers.mm(0.07)).isEqualTo("0.07");
        assertThat(SvgNumbers.mm(1234.0056)).isEqualTo("1234.006");
        assertThat(SvgNumbers.mm(0.9996)).isEqualTo("1");
        assertThatThrownBy(() -> SvgNumbers.mm(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void nothing_is_lettered_too_small_to_read() {
        for (Lettering lettering : Lettering.values()) {
            assertThat(lettering.sizeMm()).isGreaterThanOrEqualTo(2.6);
        }
    }

    /** By WCAG 2.2, relative luminance (from memory). */
    private static double contrast(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        int rgb = Integer.parseInt(colour.substring(1), 16);
        double[] shares = {0.0722, 0.7152, 0.2126};
        double sum = 0;
        for (double share : shares) {
            double v = (rgb & 0xFF) / 255.0;
            sum += share * (v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4));
            rgb >>= 8;
        }
        return sum;
    }

    @Test
    void a_picture_on_a_dark_screen_is_as_legible_as_on_paper() {
        String ink = Pen.Palette.night(Pen.Palette.INK);
        String accent = Pen.Palette.night(Pen.Palette.ACCENT);
        String paper = Pen.Palette.night(Pen.Palette.PAPER);
        String wood = Pen.Palette.night(Pen.Palette.WOOD);
        String flat = Pen.Palette.night(Pen.Palette.WOOD_FLAT);
        assertThat(contrast(ink, paper)).isGreaterThan(7);
        assertThat(contrast(accent, paper)).isGreaterThan(4.5);
        assertThat(contrast(ink, Pen.Palette.night(Pen.Palette.TINT))).isGreaterThan(7);
        assertThat(contrast(ink, wood)).isGreaterThan(4.5);
        assertThat(contrast(ink, flat)).isGreaterThan(3.9);
        assertThat(contrast(accent, wood)).isGreaterThan(3);
        assertThatThrownBy(() -> Pen.Palette.night("#123456")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void only_what_a_screen_shows_goes_dark() {
        assertThat(SAMPLE.file()).doesNotContain("prefers-color-scheme");
        assertThat(SAMPLE.screenFile())
                .contains("@media screen and (prefers-color-scheme:dark){")
                .contains(".p-outline{stroke:#f2ede3}", ".p-paper{fill:#272420;stroke:#f2ede3}");
        for (Pen pen : Pen.values()) {
            assertThat(pen.nightCss())
                    .as(pen.name())
                    .contains(pen.className() + "{")
                    .doesNotContain("{}");
        }
    }
}
