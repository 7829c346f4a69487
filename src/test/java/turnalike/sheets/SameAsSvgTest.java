package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.FloatSize;
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
import turnalike.drawing.Group;
import turnalike.drawing.Path;
import turnalike.drawing.Pen;
import turnalike.drawing.Shape;
import turnalike.drawing.Svg;
import turnalike.drawing.Words;
import turnalike.units.Length;

/**
 * The PDF and the SVG beside it are one picture: the SVG's text, read and drawn by JSVG, against the PDF drawn by PDFBox. Lettering is
 * left out, since JSVG letters with the machine's fonts; its text and places are checked elsewhere.
 */
class SameAsSvgTest {
    private static final int DOTS_PER_MM = 12;
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

    static void assertAlike(Svg drawing) throws IOException {
        Svg shapesOnly = new Svg(drawing.width(), drawing.height(), drawing.title(), withoutWords(drawing.shapes()));
        BufferedImage svg = drawnByJsvg(shapesOnly.file());
        BufferedImage pdf = drawnByPdfBox(shapesOnly);
        long inked = 0;
        long apart = 0;
        for (int y = 0; y < svg.getHeight(); y++) {
            for (int x = 0; x < svg.getWidth(); x++) {
                int a = grey(svg, x, y);
                int b = grey(pdf, x, y);
                inked += a < 128 ? 1 : 0;
                apart += Math.abs(a - b) > 24 && nearest(a, pdf, x, y) > 96 ? 1 : 0;
            }
        }
        assertThat(inked).as("something is drawn").isGreaterThan(500);
        assertThat(apart)
                .as("dots that have no like within one dot, %d inked", inked)
                .isLessThanOrEqualTo(inked / 5000);
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
            } else if (!(shape instanceof Words)) {
                out.add(shape);
            }
        }
        return out;
    }

    /** How far the likest dot beside this place is from a grey: an edge may fall to either side of a dot. */
    private static int nearest(int grey, BufferedImage image, int x, int y) {
        int least = 255;
        for (int v = Math.max(0, y - 1); v <= Math.min(image.getHeight() - 1, y + 1); v++) {
            for (int u = Math.max(0, x - 1); u <= Math.min(image.getWidth() - 1, x + 1); u++) {
                least = Math.min(least, Math.abs(grey - grey(image, u, v)));
            }
        }
        return least;
    }

    private static int grey(BufferedImage image, int x, int y) {
        Color c = new Color(image.getRGB(x, y));
        return (c.getRed() + c.getGreen() + c.getBlue()) / 3;
    }

    private static BufferedImage drawnByJsvg(String text) {
        SVGDocument svg = Objects.requireNonNull(new SVGLoader()
                .load(
                        new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                        null,
                        LoaderContext.createDefault()));
        FloatSize size = svg.size(); // CSS pixels: 96 to the inch
        double perPixel = DOTS_PER_MM * 25.4 / 96;
        BufferedImage out = new BufferedImage(
                (int) Math.round(size.width * perPixel),
                (int) Math.round(size.height * perPixel),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = out.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, out.getWidth(), out.getHeight());
        g.setRenderingHints(HINTS);
        g.scale(perPixel, perPixel);
        svg.render(null, g);
        g.dispose();
        return out;
    }

    private static BufferedImage drawnByPdfBox(Svg drawing) throws IOException {
        Paper.Format format = new Paper.Format(drawing.width(), drawing.height());
        byte[] pdf = PdfPages.pdf(
                "x", List.of(new PdfPages.Page(format, List.of(Placement.whole(drawing, Length.ZERO, Length.ZERO)))));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            renderer.setRenderingHints(HINTS);
            return renderer.renderImageWithDPI(0, DOTS_PER_MM * 25.4f, ImageType.RGB);
        }
    }
}
