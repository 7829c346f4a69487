package turnalike.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.text.Bidi;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import turnalike.drawing.svg.Typeface;

/** The shipped typefaces in one document, embedded as the letters used of them; text stays text and can be searched and copied. */
final class PdfFonts {
    private final PDDocument document;
    private final Map<Typeface, PDType0Font> loaded = new EnumMap<>(Typeface.class);

    PdfFonts(PDDocument document) {
        this.document = document;
    }

    PDType0Font of(Typeface face) throws IOException {
        PDType0Font font = loaded.get(face);
        if (font == null) {
            try (InputStream ttf = face.ttf()) {
                TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(ttf));
                // Each letter as its own glyph, as it is measured. PDFBox would ask the font for ligatures, word by
                // word, with regular expressions made anew: half of a sheet's time.
                letters.setEnableGsub(false);
                font = PDType0Font.load(document, letters, true);
            }
            loaded.put(face, font);
        }
        return font;
    }

    /**
     * What this typeface can print of a text, in the order it stands on the paper: a question mark for each letter it lacks, and what is
     * written from right to left turned round, since PDF knows only places.
     */
    static String printable(Typeface face, String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints()
                .map(letter -> Character.isWhitespace(letter) ? ' ' : letter)
                .forEach(letter -> out.appendCodePoint(face.has(letter) ? letter : '?'));
        char[] letters = out.toString().toCharArray();
        return Bidi.requiresBidi(letters, 0, letters.length) ? asItStands(out.toString()) : out.toString();
    }

    private static String asItStands(String text) {
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_LEFT_TO_RIGHT);
        int count = bidi.getRunCount();
        byte[] levels = new byte[count];
        String[] runs = new String[count];
        for (int i = 0; i < count; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            String run = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
            runs[i] = levels[i] % 2 == 1 ? new StringBuilder(run).reverse().toString() : run;
        }
        Bidi.reorderVisually(levels, 0, runs, 0, count);
        return String.join("", runs);
    }
}
