package turnalike.photo;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * The usual kinds of PNG read row by row into one byte a colour. Java's own reader first holds all pixels as the file has them: 400 MB for 50
 * megapixels of sixteen bits with a share of what shows through, of which 150 are wanted. Filters are from memory of the W3C's PNG specification;
 * that the chunks are whole is known from {@link PictureFile}.
 */
final class PngRows {
    /** Where the header's fields stand, and the first chunk after it. */
    private static final int DEPTH = 24;

    private static final int COLOURS = 25;

    private static final int INTERLACED = 28;

    private static final int FIRST = 33;

    private final byte[] bytes;

    private final int samples;

    private final int sampleBytes;

    private final Inflater inflater = new Inflater();

    private int next = FIRST;

    private PngRows(byte[] bytes) {
        this.bytes = bytes;
        samples = samples(bytes[COLOURS]);
        sampleBytes = bytes[DEPTH] / 8;
    }

    /** Grey, colours, either with a share of what shows through; 0 for other kinds. */
    private static int samples(int kind) {
        return switch (kind) {
            case 0 -> 1;
            case 2 -> 3;
            case 4 -> 2;
            case 6 -> 4;
            default -> 0;
        };
    }

    /** Whether a whole PNG is of a kind that is read here: not of a palette, not laced, no one colour that shows through. */
    static boolean reads(byte[] bytes) {
        boolean usual = samples(bytes[COLOURS]) > 0 && (bytes[DEPTH] == 8 || bytes[DEPTH] == 16);
        return usual && bytes[INTERLACED] == 0 && find(bytes, FIRST, "tRNS") < 0;
    }

    /** The next chunk of a type, from one on; -1 where there is none. */
    private static int find(byte[] bytes, int from, String type) {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        int at = from;
        while (at + 12 <= bytes.length) {
            String here = new String(bytes, at + 4, 4, StandardCharsets.US_ASCII);
            if (here.equals(type)) {
                return at;
            }
            if (here.equals("IEND")) {
                return -1;
            }
            at += 12 + buffer.getInt(at);
        }
        return -1;
    }

    /** How many bytes a pixel has in {@link #decode}: one for grey, three for red, green and blue. */
    static int pixelBytes(byte[] bytes) {
        return samples(bytes[COLOURS]) < 3 ? 1 : 3;
    }

    /** All pixels, row by row; what shows through shows white. */
    static byte[] decode(byte[] bytes, PictureFile file) throws Unsure {
        PngRows rows = new PngRows(bytes);
        try {
            return rows.all(file.width(), file.height());
        } catch (DataFormatException spoilt) {
            throw PictureFile.damaged("the picture cannot be decoded");
        } finally {
            rows.inflater.end();
        }
    }

    private byte[] all(int width, int height) throws Unsure, DataFormatException {
        int pixel = samples * sampleBytes;
        int colours = samples < 3 ? 1 : 3;
        byte[] all = new byte[width * height * colours];
        byte[] above = new byte[width * pixel];
        byte[] row = new byte[width * pixel];
        byte[] filter = new byte[1];
        int to = 0;
        for (int y = 0; y < height; y++) {
            fill(filter);
            fill(row);
            undo(filter[0], row, above, pixel);
            for (int x = 0; x < width; x++) {
                int from = x * pixel;
                int alpha = samples % 2 == 0 ? row[from + (samples - 1) * sampleBytes] & 0xFF : 255;
                for (int c = 0; c < colours; c++) {
                    int code = row[from + c * sampleBytes] & 0xFF;
                    all[to++] = (byte) (255 + (code - 255) * alpha / 255);
                }
            }
            byte[] held = above;
            above = row;
            row = held;
        }
        return all;
    }

    private void fill(byte[] to) throws Unsure, DataFormatException {
        int done = 0;
        while (done < to.length) {
            int got = inflater.inflate(to, done, to.length - done);
            done += got;
            if (got == 0) {
                int chunk = inflater.needsInput() ? find(bytes, next, "IDAT") : -1;
                if (chunk < 0) {
                    throw PictureFile.damaged(
                            "the file's header promises more than the picture holds, or some of it is spoilt");
                }
                int length = ByteBuffer.wrap(bytes).getInt(chunk);
                inflater.setInput(bytes, chunk + 8, length);
                next = chunk + 12 + length;
            }
        }
    }

    /** Undoes a row's filter: each byte was written less its neighbour on the left, above, the mean of both, or the one that both point at. */
    private static void undo(int filter, byte[] row, byte[] above, int pixel) throws Unsure {
        switch (filter) {
            case 0 -> {}
            case 1 -> {
                for (int i = pixel; i < row.length; i++) {
                    row[i] += row[i - pixel];
                }
            }
            case 2 -> {
                for (int i = 0; i < row.length; i++) {
                    row[i] += above[i];
                }
            }
            case 3 -> {
                for (int i = 0; i < row.length; i++) {
                    int left = i < pixel ? 0 : row[i - pixel] & 0xFF;
                    row[i] += (byte) ((left + (above[i] & 0xFF)) / 2);
                }
            }
            case 4 -> {
                for (int i = 0; i < row.length; i++) {
                    int left = i < pixel ? 0 : row[i - pixel] & 0xFF;
                    int corner = i < pixel ? 0 : above[i - pixel] & 0xFF;
                    row[i] += (byte) nearest(left, above[i] & 0xFF, corner);
                }
            }
            default -> throw PictureFile.damaged("the picture cannot be decoded");
        }
    }

    private static int nearest(int left, int above, int corner) {
        int byLeft = Math.abs(above - corner);
        int byAbove = Math.abs(left - corner);
        int byCorner = Math.abs(left + above - 2 * corner);
        if (byLeft <= byAbove && byLeft <= byCorner) {
            return left;
        }
        return byAbove <= byCorner ? above : corner;
    }
}
