package turnalike.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import turnalike.drawing.svg.Backdrop;
import turnalike.drawing.svg.Box;
import turnalike.drawing.svg.Group;
import turnalike.drawing.svg.Path;
import turnalike.drawing.svg.Pen;
import turnalike.drawing.svg.ShadedArea;
import turnalike.drawing.svg.Shape;
import turnalike.drawing.svg.TextLine;
import turnalike.drawing.svg.Typeface;

/**
 * Paints shapes into a page's content, every millimetre true. Straight to PDFBox rather than through an SVG library: those lay out text
 * with the machine's own fonts, and on a machine without fonts the JDK throws.
 */
final class PdfPainter implements Shape.Cases<Boolean> {
    private static final double POINTS_PER_MM = 72 / 25.4;

    private final PDPageContentStream stream;
    private final PdfFonts fonts;
    private final double rightMm;
    private final double downMm;
    private final float pageHeight;
    private final PlacedDrawing.Shown shown;

    PdfPainter(
            PDPageContentStream stream,
            PdfFonts fonts,
            double rightMm,
            double downMm,
            float pageHeight,
            PlacedDrawing.Shown shown) {
        this.stream = stream;
        this.fonts = fonts;
        this.rightMm = rightMm;
        this.downMm = downMm;
        this.pageHeight = pageHeight;
        this.shown = shown;
    }

    static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }

    void paint(Shape shape) {
        shape.match(this);
    }

    float x(double mm) {
        return points(rightMm + mm);
    }

    /** PDF's y runs up from the bottom of the paper. */
    float y(double mm) {
        return (float) (pageHeight - (downMm + mm) * POINTS_PER_MM);
    }

    @Override
    public Boolean group(Group group) {
        PdfPainter inner =
                new PdfPainter(stream, fonts, rightMm + group.rightMm(), downMm + group.downMm(), pageHeight, shown);
        group.shapes().forEach(inner::paint);
        return true;
    }

    /** A photograph lies behind a drawing on the page alone: no sheet is made of one. */
    @Override
    public Boolean backdrop(Backdrop backdrop) {
        return false;
    }

    @Override
    public Boolean path(Path path) {
        try {
            Pen pen = path.pen();
            dress(pen);
            PdfPath pdf = new PdfPath(stream, this);
            path.steps().forEach(pdf::take);
            if (pen.fill().isPresent() && pen.stroke().isPresent()) {
                stream.fillAndStroke();
            } else if (pen.fill().isPresent()) {
                stream.fill();
            } else {
                stream.stroke();
            }
            return true;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Boolean tone(ShadedArea tone) {
        try {
            float[] rgb = rgb(tone.fill());
            stream.setNonStrokingColor(rgb[0], rgb[1], rgb[2]);
            PdfPath pdf = new PdfPath(stream, this);
            tone.steps().forEach(pdf::take);
            stream.fill();
            return true;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void dress(Pen pen) throws IOException {
        Optional<String> fill = pen.fill();
        if (fill.isPresent()) {
            float[] rgb = rgb(fill.get());
            stream.setNonStrokingColor(rgb[0], rgb[1], rgb[2]);
        }
        Optional<String> stroke = pen.stroke();
        if (stroke.isPresent()) {
            float[] rgb = rgb(stroke.get());
            stream.setStrokingColor(rgb[0], rgb[1], rgb[2]);
            stream.setLineWidth(points(pen.widthMm()));
            float[] dash = new float[pen.dashMm().size()];
            for (int i = 0; i < dash.length; i++) {
                dash[i] = points(pen.dashMm().get(i));
            }
            stream.setLineDashPattern(dash, 0);
        }
    }

    private static float[] rgb(String hex) {
        int packed = Integer.parseInt(hex.substring(1), 16);
        return new float[] {(packed >> 16) / 255f, (packed >> 8 & 0xFF) / 255f, (packed & 0xFF) / 255f};
    }

    @Override
    public Boolean words(TextLine words) {
        Typeface face = words.lettering().typeface();
        String text = PdfFonts.printable(face, words.text());
        double widthMm = face.widthMm(text, words.lettering().sizeMm());
        double back = back(words.anchor(), widthMm);
        // A long stick is laid over many strips, which overlap: a label the clip would cut stands whole on the next.
        Box box = Box.of(words);
        if (!shown.holds(rightMm + box.left(), rightMm + box.right())) {
            return true;
        }
        double xMm = words.upright() ? words.xMm() : words.xMm() - back;
        double yMm = words.upright() ? words.yMm() + back : words.yMm();
        try {
            stream.beginText();
            stream.setNonStrokingColor(0f, 0f, 0f);
            stream.setFont(fonts.of(face), points(words.lettering().sizeMm()));
            stream.setTextMatrix(
                    words.upright() ? new Matrix(0, 1, -1, 0, x(xMm), y(yMm)) : new Matrix(1, 0, 0, 1, x(xMm), y(yMm)));
            stream.showText(text);
            stream.endText();
            return true;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double back(TextLine.Anchor anchor, double widthMm) {
        return switch (anchor) {
            case START -> 0;
            case MIDDLE -> widthMm / 2;
            case END -> widthMm;
        };
    }
}
