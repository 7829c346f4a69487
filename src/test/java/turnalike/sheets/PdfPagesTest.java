package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Lettering;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.Typeface;
import turnalike.units.Length;

class PdfPagesTest {
    private static Svg drawing(double widthMm, double heightMm, Shape... shapes) {
        return new Svg(Length.ofMm(widthMm), Length.ofMm(heightMm), "a test", List.of(shapes));
    }

    private static byte[] page(Paper.Format format, PlacedDrawing... placed) {
        return PdfPages.pdf("a test", List.of(new PdfPages.Page(format, List.of(placed))));
    }

    private static PlacedDrawing at(double rightMm, double downMm, Svg svg) {
        return PlacedDrawing.whole(svg, Length.ofMm(rightMm), Length.ofMm(downMm));
    }

    @Test
    void a_line_has_its_true_length_and_place() {
        for (Paper paper : Paper.values()) {
            for (Paper.Format format : List.of(paper.portrait(), paper.landscape())) {
                byte[] pdf = page(
                        format,
                        at(12, 20, drawing(180, 20, Path.line(Pen.LINE, 10, 5, 110, 5))),
                        at(12, 60, drawing(180, 90, Path.line(Pen.HEAVY, 3, 1.5, 3, 81.5))));
                List<PdfReading.Painted> painted = PdfReading.painted(pdf);
                assertThat(painted).hasSize(2);
                assertThat(painted.get(0).width()).isCloseTo(100, within(0.001));
                assertThat(painted.get(0).least(0)).isCloseTo(22, within(0.001));
                assertThat(painted.get(0).least(1)).isCloseTo(25, within(0.001));
                assertThat(painted.get(0).lineWidthMm()).isCloseTo(0.3, within(0.001));
                assertThat(painted.get(1).height()).isCloseTo(80, within(0.001));
                assertThat(painted.get(1).least(1)).isCloseTo(61.5, within(0.001));
            }
        }
    }

    @Test
    void paper_has_its_own_size() throws IOException {
        byte[] pdf = PdfPages.pdf(
                "two papers",
                List.of(
                        new PdfPages.Page(Paper.A4.portrait(), List.of()),
                        new PdfPages.Page(Paper.LETTER.landscape(), List.of())));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getPage(0).getMediaBox().getWidth() * 25.4 / 72).isCloseTo(210, within(0.001));
            assertThat(document.getPage(0).getMediaBox().getHeight() * 25.4 / 72)
                    .isCloseTo(297, within(0.001));
            assertThat(document.getPage(1).getMediaBox().getWidth()).isEqualTo(792);
            assertThat(document.getPage(1).getMediaBox().getHeight()).isEqualTo(612);
        }
    }

    @Test
    void an_arc_keeps_to_its_ellipse() {
        Path arcs = new Path(
                Pen.OUTLINE,
                List.of(
                        new Path.Move(50, 60),
                        new Path.Arc(40, 25, true, 90, 35),
                        new Path.Arc(40, 25, true, 130, 60),
                        new Path.Arc(40, 25, true, 90, 85),
                        new Path.Arc(40, 25, true, 50, 60)));
        Path back = new Path(
                Pen.OUTLINE, List.of(new Path.Move(130, 60), new Path.Arc(40, 25, false, 50, 60), new Path.Close()));
        byte[] pdf = page(Paper.A4.portrait(), at(0, 0, drawing(200, 200, arcs, back)));
        List<PdfReading.Painted> painted = PdfReading.painted(pdf);
        for (PdfReading.Painted each : painted) {
            for (double[] p : each.points()) {
                assertThat(Math.hypot((p[0] - 90) / 40, (p[1] - 60) / 25)).isCloseTo(1, within(2e-5));
            }
        }
        assertThat(painted.get(0).height()).isCloseTo(50, within(0.001));
        assertThat(painted.get(1).least(1))
                .as("anticlockwise from the right passes over the top")
                .isCloseTo(35, within(0.001));
        assertThat(painted.get(1).most(1)).isCloseTo(60, within(0.001));
    }

    @Test
    void part_of_an_ellipse_keeps_to_it_and_half_axes_too_small_are_widened() {
        double x = 90 + 40 * Math.cos(1.9);
        double y = 60 + 25 * Math.sin(1.9);
        double endX = 90 + 40 * Math.cos(3.3);
        double endY = 60 + 25 * Math.sin(3.3);
        Path part = new Path(Pen.LINE, List.of(new Path.Move(x, y), new Path.Arc(40, 25, true, endX, endY)));
        Path wide = new Path(Pen.LINE, List.of(new Path.Move(20, 20), new Path.Arc(9.9, 19.8, true, 40, 20)));
        List<PdfReading.Painted> painted =
                PdfReading.painted(page(Paper.A4.portrait(), at(0, 0, drawing(200, 200, part, wide))));
        for (double[] p : painted.get(0).points()) {
            assertThat(Math.hypot((p[0] - 90) / 40, (p[1] - 60) / 25)).isCloseTo(1, within(2e-5));
        }
        assertThat(painted.get(1).least(1)).isCloseTo(0, within(0.001));
    }

    @Test
    void a_window_shows_only_its_stretch_in_its_place() {
        Svg stick = drawing(500, 40, Path.line(Pen.LINE, 0, 10, 500, 10), Path.line(Pen.HEAVY, 250, 0, 250, 40));
        PlacedDrawing part = PlacedDrawing.part(
                stick, new PlacedDrawing.Window(Length.ofMm(240), Length.ofMm(480)), Length.ofMm(20), Length.ofMm(30));
        List<PdfReading.Painted> painted = PdfReading.painted(page(Paper.A4.landscape(), part));
        assertThat(painted.get(1).least(0)).isCloseTo(30, within(0.001));
        PdfReading.Box clip = painted.get(0).clip();
        assertThat(clip.left()).isCloseTo(20, within(0.001));
        assertThat(clip.right()).isCloseTo(260, within(0.001));
        assertThat(clip.top()).isCloseTo(30, within(0.001));
        assertThat(clip.bottom()).isCloseTo(70, within(0.001));
    }

    @Test
    void text_can_be_read_out_of_the_file() {
        String text = "fillet, first half-bead: office ffl ½ Ø 38 × 1 7/8 in – Füße, Ножка, ποδι";
        byte[] pdf = page(
                Paper.A4.portrait(),
                at(
                        0,
                        0,
                        drawing(
                                200,
                                200,
                                TextLine.of(Lettering.BODY, 20, 20, text),
                                TextLine.centred(Lettering.TITLE, 100, 40, "A & B <i>"),
                                TextLine.of(Lettering.STRONG, 20, 60, "one 木 two 🪵 three\nfour"))));
        String read = PdfReading.text(pdf, 1);
        assertThat(read).contains(text).contains("A & B <i>").contains("one ? two ? three four");
    }

    @Test
    void what_is_written_from_right_to_left_stands_so() {
        assertThat(PdfFonts.printable(Typeface.REGULAR, "leg 12 \u05e9\u05dc\u05d5\u05dd end"))
                .isEqualTo("leg 12 \u05dd\u05d5\u05dc\u05e9 end");
        String hebrew = "\u05e9\u05dc\u05d5\u05dd";
        byte[] pdf =
                page(Paper.A4.portrait(), at(0, 0, drawing(200, 200, TextLine.of(Lettering.BODY, 20, 20, hebrew))));
        assertThat(PdfReading.text(pdf, 1)).contains(hebrew);
    }

    @Test
    void the_same_pages_give_the_same_bytes_and_ask_not_to_be_scaled() throws IOException {
        byte[] once = page(Paper.A4.portrait(), at(0, 0, drawing(99, 9, TextLine.of(Lettering.BODY, 1, 8, "same"))));
        byte[] again = page(Paper.A4.portrait(), at(0, 0, drawing(99, 9, TextLine.of(Lettering.BODY, 1, 8, "same"))));
        assertThat(again).isEqualTo(once);
        try (PDDocument document = Loader.loadPDF(once)) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("a test");
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo(PDViewerPreferences.PRINT_SCALING.None.toString());
        }
    }
}
