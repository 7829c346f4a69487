package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import turnalike.drawing.piece.Samples;
import turnalike.drawing.piece.ShadedSpindle;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.Svg;
import turnalike.drawing.svg.TextLine;
import turnalike.units.Length;

/**
 * The PDF and the SVG beside it are one picture: the SVG's text, read and drawn by JSVG, against the PDF drawn by PDFBox. Lettering is
 * left out, since JSVG letters with the machine's fonts; its text and places are checked elsewhere.
 */
class SameAsSvgTest {
    private static final int DOTS_PER_MM = 12;
    private static final int PATCH = 5;
    private static final RenderingHints HINTS = new RenderingHints(Map.of(
            RenderingHints.KEY_ANTIALIASING,
            RenderingHints.VALUE_ANTIALIAS_ON,
            RenderingHints.KEY_STROKE_CONTROL,
            RenderingHints.VALUE_STROKE_PURE));

    @Test
    void shapes_come_out_alike_in_svg_and_pdf() throws IOException {
        List<Shape> shapes = new ArrayList<>();
        Pen[] pens = Pen.values();
        for (int i = 0; i < pens.length; i++) {
            double x = 8 + 42 * (i % 4);
            double y = 8 + 40 * (i / 4);
            List<Path.Step> steps = List.of(
                    new Path.Move(x, y + 20),
                    new Path.Arc(8, 14, true, x + 8, y + 6),
                    new Path.Arc(9, 5, false, x + 17, y + 1),
                    new Path.Cubic(x + 22, y + 1, x + 24, y + 12, x + 30, y + 12),
                    new Path.Arc(4.5, 3, true, x + 30, y + 18),
                    new Path.Straight(x + 20, y + 30),
                    new Path.Close());
            Path path = new Path(pens[i], steps);
            shapes.add(i % 2 == 0 ? path : Group.at(1.5, -2.25, List.of(path, Group.at(1, 0, List.of(path)))));
        }
        assertAlike(new Svg(Length.ofMm(180), Length.ofMm(180), "all pens", shapes));
    }

    @Test
    void lit_wood_comes_out_alike_in_svg_and_pdf() throws IOException {
        assertAlike(ShadedSpindle.svg(Samples.spoke(), Length.ofMm(180), Length.ofMm(60)));
    }

    static void assertAlike(Svg drawing) throws IOException {
        Svg shapesOnly = new Svg(drawing.width(), drawing.height(), drawing.title(), withoutWords(drawing.shapes()));
        BufferedImage svg = drawnByJsvg(shapesOnly);
        BufferedImage pdf = drawnByPdfBox(shapesOnly);
        int compared = 0;
        int inked = 0;
        int apart = 0;
        for (int y = PATCH; y < svg.getHeight() - PATCH; y += PATCH) {
            for (int x = PATCH; x < svg.getWidth() - PATCH; x += PATCH) {
                int a = meanGrey(svg, x, y);
                int b = meanGrey(pdf, x, y);
                compared++;
                inked += a < 230 ? 1 : 0;
                apart += Math.abs(a - b) > 36 ? 1 : 0;
            }
        }
        assertThat(inked).as("patches with ink").isGreaterThan(compared / 100);
        assertThat(apart).as("patches that differ, of %d with ink", inked).isZero();
    }

    private static List<Shape> withoutWords(List<Shape> shapes) {
        List<Shape> out = new ArrayList<>();
        for (Shape shape : shapes) {
            if (shape instanceof Group group) {
                out.add(new Group(
                        group.rightMm(),
                        group.downMm(),
                        group.attributes(),
                        group.tip(),
                        withoutWords(group.shapes())));
            } else if (!(shape instanceof TextLine)) {
                out.add(shape);
            }
        }
        return out;
    }

    /** Over five dots by five: the libraries soften edges differently, but a line out of place or left out shows. */
    private static int meanGrey(BufferedImage image, int x, int y) {
        int sum = 0;
        for (int v = y - PATCH / 2; v <= y + PATCH / 2; v++) {
            for (int u = x - PATCH / 2; u <= x + PATCH / 2; u++) {
                int rgb = image.getRGB(u, v);
                sum += (rgb >> 16 & 0xFF) + (rgb >> 8 & 0xFF) + (rgb & 0xFF);
            }
        }
        return sum / (3 * PATCH * PATCH);
    }

    private static BufferedImage drawnByJsvg(Svg drawing) {
        SVGDocument svg = Objects.requireNonNull(new SVGLoader()
                .load(
                        new ByteArrayInputStream(drawing.file().getBytes(StandardCharsets.UTF_8)),
                        null,
                        LoaderContext.createDefault()));
        int width = (int) Math.round(drawing.width().mm() * DOTS_PER_MM);
        int height = (int) Math.round(drawing.height().mm() * DOTS_PER_MM);
        BufferedImage out = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, out.getWidth(), out.getHeight());
        g.setRenderingHints(HINTS);
        // Into the very rectangle: JSVG's own millimetre is a few parts in ten thousand short.
        svg.render(null, g, new ViewBox(width, height));
        g.dispose();
        return out;
    }

    private static BufferedImage drawnByPdfBox(Svg drawing) throws IOException {
        Paper.Format format = new Paper.Format(drawing.width(), drawing.height());
        byte[] pdf = PdfPages.pdf(
                "x",
                List.of(new PdfPages.Page(format, List.of(PlacedDrawing.whole(drawing, Length.ZERO, Length.ZERO)))));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            renderer.setRenderingHints(HINTS);
            return renderer.renderImageWithDPI(0, DOTS_PER_MM * 25.4f, ImageType.RGB);
        }
    }
}
