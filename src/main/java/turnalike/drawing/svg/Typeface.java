package turnalike.drawing.svg;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/**
 * The lettering of every picture: Liberation Sans 2.1.5, under the SIL Open Font License 1.1 (its text stands beside the files). It is
 * shipped, so that nothing depends on the fonts of the machine; and its letters have the widths of the sans-serif most machines do have
 * (Arial, Arimo, Helvetica), so that an SVG opened elsewhere keeps its layout.
 */
public enum Typeface {
    REGULAR("LiberationSans-Regular.ttf"),
    BOLD("LiberationSans-Bold.ttf");

    /** The families an SVG asks for, in order; all of one set of widths. */
    static final String FAMILIES = "'Liberation Sans',Arimo,Arial,Helvetica,sans-serif";

    private final String file;

    Typeface(String file) {
        this.file = file;
    }

    /** The font file's name, under which a page may serve it. */
    public String file() {
        return file;
    }

    /** The TrueType file; the caller closes it. */
    public InputStream ttf() {
        return Objects.requireNonNull(Typeface.class.getResourceAsStream(file), "font is on the class path");
    }

    /** How wide the text sets, in millimetres, without kerning. A letter the font does not have counts as one size wide. */
    public double widthMm(String text, double sizeMm) {
        GlyphAdvances advances = advances();
        double ems = 0;
        for (int at = 0; at < text.length(); ) {
            int letter = text.codePointAt(at);
            ems += advances.ems(letter);
            at += Character.charCount(letter);
        }
        return ems * sizeMm;
    }

    /** Whether the font has this letter. */
    public boolean has(int codePoint) {
        return advances().has(codePoint);
    }

    private GlyphAdvances advances() {
        return this == REGULAR ? Loaded.REGULAR : Loaded.BOLD;
    }

    /** Read once, on first use. */
    private static final class Loaded {
        static final GlyphAdvances REGULAR = read(Typeface.REGULAR);
        static final GlyphAdvances BOLD = read(Typeface.BOLD);

        private static GlyphAdvances read(Typeface face) {
            try (InputStream in = face.ttf()) {
                return GlyphAdvances.of(in.readAllBytes());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
