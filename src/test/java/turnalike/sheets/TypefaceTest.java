package turnalike.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.junit.jupiter.api.Test;
import turnalike.drawing.svg.Typeface;

/** Our reading of the font files against FontBox's. */
class TypefaceTest {
    @Test
    void every_letter_of_the_basic_plane_has_the_width_fontbox_reads() throws IOException {
        for (Typeface face : Typeface.values()) {
            try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(face.ttf()))) {
                CmapLookup map = font.getUnicodeCmapLookup();
                int letters = 0;
                for (int letter = 0; letter < 0xFFFF; letter++) {
                    int glyph = map.getGlyphId(letter);
                    assertThat(face.has(letter)).as("%s has %04x", face, letter).isEqualTo(glyph != 0);
                    if (glyph != 0) {
                        letters++;
                        double ems = font.getAdvanceWidth(glyph) / (double) font.getUnitsPerEm();
                        assertThat(face.widthMm(Character.toString(letter), 1)).isCloseTo(ems, within(1e-6));
                    }
                }
                assertThat(letters).isGreaterThan(2000);
            }
        }
    }

    @Test
    void what_is_called_printable_prints() throws IOException {
        try (PDDocument document = new PDDocument()) {
            for (Typeface face : Typeface.values()) {
                PDType0Font font = new PdfFonts(document).of(face);
                for (int letter = 1; letter < 0x30000; letter++) {
                    String printable = PdfFonts.printable(face, Character.toString(letter));
                    assertThat(font.encode(printable)).isNotEmpty();
                }
            }
        }
    }
}
