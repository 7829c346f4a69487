package turnalike.drawing.svg;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * How far each letter of a TrueType font moves the pen, read from the file's own tables so that layout and printing agree. Source: Apple,
 * TrueType Reference Manual, tables {@code head}, {@code hhea}, {@code hmtx} and {@code cmap} format 4 (from memory; checked in the tests
 * against PDFBox for every letter of the basic plane).
 */
final class GlyphAdvances {
    private static final int PLANE = 0x10000;

    /** Advances in ems by letter; negative where the font has no such letter. */
    private final float[] ems;

    private GlyphAdvances(float[] ems) {
        this.ems = ems;
    }

    boolean has(int codePoint) {
        return codePoint < PLANE && ems[codePoint] >= 0;
    }

    /** In ems; a letter that is missing counts as one em, about the width of the scripts that are. */
    double ems(int codePoint) {
        return has(codePoint) ? ems[codePoint] : 1;
    }

    static GlyphAdvances of(byte[] file) {
        ByteBuffer font = ByteBuffer.wrap(file); // big endian, as the format is
        int unitsPerEm = font.getShort(table(font, "head") + 18);
        int longMetrics = Short.toUnsignedInt(font.getShort(table(font, "hhea") + 34));
        int metrics = table(font, "hmtx");
        float[] ems = new float[PLANE];
        Arrays.fill(ems, -1);
        int cmap = unicodeMap(font);
        int segments = Short.toUnsignedInt(font.getShort(cmap + 6)) / 2;
        for (int segment = 0; segment < segments; segment++) {
            int endAt = cmap + 14 + 2 * segment;
            int startAt = endAt + 2 * segments + 2;
            int end = Short.toUnsignedInt(font.getShort(endAt));
            for (int letter = Short.toUnsignedInt(font.getShort(startAt)); letter <= end && letter < 0xFFFF; letter++) {
                int glyph = glyph(font, startAt, segments, letter);
                if (glyph != 0) {
                    int metric = metrics + 4 * Math.min(glyph, longMetrics - 1);
                    ems[letter] = Short.toUnsignedInt(font.getShort(metric)) / (float) unitsPerEm;
                }
            }
        }
        return new GlyphAdvances(ems);
    }

    private static int glyph(ByteBuffer font, int startAt, int segments, int letter) {
        int start = Short.toUnsignedInt(font.getShort(startAt));
        int delta = font.getShort(startAt + 2 * segments);
        int offsetAt = startAt + 4 * segments;
        int offset = Short.toUnsignedInt(font.getShort(offsetAt));
        if (offset == 0) {
            return letter + delta & 0xFFFF;
        }
        int listed = Short.toUnsignedInt(font.getShort(offsetAt + offset + 2 * (letter - start)));
        return listed == 0 ? 0 : listed + delta & 0xFFFF;
    }

    private static int unicodeMap(ByteBuffer font) {
        int cmap = table(font, "cmap");
        int maps = Short.toUnsignedInt(font.getShort(cmap + 2));
        for (int i = 0; i < maps; i++) {
            int at = cmap + 4 + 8 * i;
            int offset = cmap + font.getInt(at + 4);
            if (font.getShort(at) == 3 && font.getShort(at + 2) == 1 && font.getShort(offset) == 4) {
                return offset;
            }
        }
        throw new IllegalStateException("font has no Unicode map of format 4");
    }

    private static int table(ByteBuffer font, String tag) {
        int tables = Short.toUnsignedInt(font.getShort(4));
        byte[] name = new byte[4];
        for (int i = 0; i < tables; i++) {
            font.get(12 + 16 * i, name);
            if (new String(name, StandardCharsets.US_ASCII).equals(tag)) {
                return font.getInt(12 + 16 * i + 8);
            }
        }
        throw new IllegalStateException("font has no table " + tag);
    }
}
