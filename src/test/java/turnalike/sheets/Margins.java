package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** Looks at a printed page as a picture. */
final class Margins {
    private static final int DOTS_PER_MM = 2;
    private static final int MARGIN_MM = 10;

    private Margins() {}

    /** No dot of ink within 10 mm of the paper's edge, and some ink inside. */
    static void assertFree(byte[] pdf, Paper.Format format) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFRenderer renderer = new PDFRenderer(document);
            for (int page = 0; page < document.getNumberOfPages(); page++) {
                BufferedImage image = renderer.renderImageWithDPI(page, DOTS_PER_MM * 25.4f, ImageType.GRAY);
                assertThat(image.getWidth() / (double) DOTS_PER_MM)
                        .isBetween(format.width().mm() - 1, format.width().mm() + 1);
                int inked = 0;
                int strayed = 0;
                for (int y = 0; y < image.getHeight(); y++) {
                    for (int x = 0; x < image.getWidth(); x++) {
                        if (image.getRaster().getSample(x, y, 0) < 250) {
                            inked++;
                            strayed += inMargin(x, image.getWidth()) || inMargin(y, image.getHeight()) ? 1 : 0;
                        }
                    }
                }
                assertThat(strayed).as("ink in the margin of page %d", page + 1).isZero();
                assertThat(inked).isGreaterThan(500);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean inMargin(int at, int size) {
        return at < MARGIN_MM * DOTS_PER_MM || at >= size - MARGIN_MM * DOTS_PER_MM;
    }
}
