package turnalike.sheets;

import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import turnalike.drawing.Typeface;

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
                font = PDType0Font.load(document, ttf, true);
            }
            loaded.put(face, font);
        }
        return font;
    }

    /** What this typeface can print of a text: a question mark stands for each letter it lacks. */
    static String printable(Typeface face, String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints()
                .map(letter -> Character.isWhitespace(letter) ? ' ' : letter)
                .forEach(letter -> out.appendCodePoint(face.has(letter) ? letter : '?'));
        return out.toString();
    }
}
