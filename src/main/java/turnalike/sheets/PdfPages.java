package turnalike.sheets;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import turnalike.units.Length;

/**
 * Writes pages of placed drawings as a PDF. One millimetre of a drawing is one millimetre of paper: 72/25.4 points (ISO 32000-1, 8.3.2.3:
 * the default user unit is 1/72 in; from memory). Coordinates are written to five decimals of a point, 4 nm.
 *
 * <p>The same pages give the same bytes: no date is written and the file's identifier is fixed. The print dialogue is asked not to scale.
 */
final class PdfPages {
    private PdfPages() {}

    /** One page and what stands on it, drawn in order. */
    record Page(Paper.Format format, List<PlacedDrawing> drawings) {
        Page {
            drawings = List.copyOf(drawings);
        }
    }

    static byte[] pdf(String title, List<Page> pages) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            document.setDocumentId(1L);
            PDDocumentInformation about = document.getDocumentInformation();
            about.setTitle(title);
            about.setCreator("Turnalike");
            document.getDocumentCatalog().setLanguage("en");
            document.getDocumentCatalog().setViewerPreferences(preferred());
            PdfFonts fonts = new PdfFonts(document);
            for (Page page : pages) {
                add(document, fonts, page);
            }
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e); // nothing but memory is written
        }
    }

    private static PDViewerPreferences preferred() {
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
        return preferences;
    }

    private static void add(PDDocument document, PdfFonts fonts, Page page) throws IOException {
        float height = PdfPainter.points(page.format().height().mm());
        PDPage sheet = new PDPage(
                new PDRectangle(PdfPainter.points(page.format().width().mm()), height));
        document.addPage(sheet);
        try (PDPageContentStream stream = new PDPageContentStream(document, sheet)) {
            stream.setMiterLimit(4); // SVG's own; PDF's is 10
            for (PlacedDrawing placed : page.drawings()) {
                stream.saveGraphicsState();
                clip(stream, placed, height);
                PdfPainter painter = new PdfPainter(
                        stream, fonts, placed.right().mm(), placed.down().mm(), height, placed.shown());
                placed.drawing().shapes().forEach(painter::paint);
                stream.restoreGraphicsState();
            }
        }
    }

    private static void clip(PDPageContentStream stream, PlacedDrawing placed, float pageHeight) throws IOException {
        Length from = placed.window().map(PlacedDrawing.Window::from).orElse(Length.ZERO);
        Length to = placed.window()
                .map(PlacedDrawing.Window::to)
                .orElse(placed.drawing().width());
        float x = PdfPainter.points(placed.right().plus(from).mm());
        Length top = placed.tall().map(PlacedDrawing.Window::from).orElse(Length.ZERO);
        Length bottom = placed.tall()
                .map(PlacedDrawing.Window::to)
                .orElse(placed.drawing().height());
        float height = PdfPainter.points(bottom.minus(top).mm());
        float y = pageHeight - PdfPainter.points(placed.down().plus(top).mm()) - height;
        stream.addRect(x, y, PdfPainter.points(to.minus(from).mm()), height);
        stream.clip();
    }
}
