package turnalike.photo;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;

/**
 * A decoded picture, upright, in linear light. The pixels stay as the file has them, one byte a colour: 50 megapixels are 150 MB so, and 600
 * as floating numbers.
 */
final class Picture {
    /** Linear light of an sRGB code, from memory of IEC 61966-2-1. Display P3, which phones write, has the same curve. */
    private static final float[] LINEAR = new float[256];

    static {
        for (int code = 0; code < 256; code++) {
            double value = code / 255.0;
            LINEAR[code] = (float) (value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4));
        }
    }

    private final byte[] data;

    /** Where red, green and blue stand from a pixel's first byte on. */
    private final int[] bands;

    private final int width;

    private final int height;

    private final int origin;

    private final int stepX;

    private final int stepY;

    private Picture(byte[] data, int[] bands, int pixelBytes, int storedWidth, int storedHeight, int orientation) {
        this.data = data;
        this.bands = bands;
        boolean swapped = orientation >= 5;
        width = swapped ? storedHeight : storedWidth;
        height = swapped ? storedWidth : storedHeight;
        int row = storedWidth * pixelBytes;
        // In which stored column and row the upright picture begins, and which way it runs; from memory of EXIF 2.3.
        boolean fromRight = orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;
        boolean fromBottom = orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
        int column = fromRight ? -pixelBytes : pixelBytes;
        int line = fromBottom ? -row : row;
        origin = (fromRight ? row - pixelBytes : 0) + (fromBottom ? (storedHeight - 1) * row : 0);
        stepX = swapped ? line : column;
        stepY = swapped ? column : line;
    }

    static Picture decode(byte[] bytes, PictureFile file, int orientation) throws Unsure {
        try {
            if (file.format().equals("png") && PngRows.reads(bytes)) {
                int pixelBytes = PngRows.pixelBytes(bytes);
                int[] bands = pixelBytes == 1 ? new int[] {0, 0, 0} : new int[] {0, 1, 2};
                byte[] rows = PngRows.decode(bytes, file);
                return new Picture(rows, bands, pixelBytes, file.width(), file.height(), orientation);
            }
            return byJava(bytes, file, orientation);
        } catch (OutOfMemoryError tooLarge) {
            throw tooLarge(file);
        }
    }

    private static Unsure tooLarge(PictureFile file) {
        return new Unsure(
                PhotoTrace.Reason.TOO_LARGE,
                "this picture of %d by %d pixels takes more memory to read than the program has"
                        .formatted(file.width(), file.height()),
                "make it smaller, 4000 pixels along the piece are plenty");
    }

    private static Picture byJava(byte[] bytes, PictureFile file, int orientation) throws Unsure {
        BufferedImage image = image(bytes, file);
        if (image.getWidth() != file.width() || image.getHeight() != file.height()) {
            throw PictureFile.damaged("the picture is not of the size that its header says");
        }
        int w = image.getWidth();
        int h = image.getHeight();
        byte[] stored =
                image.getRaster().getDataBuffer() instanceof DataBufferByte buffer ? buffer.getData() : new byte[0];
        return switch (image.getType()) {
            case BufferedImage.TYPE_3BYTE_BGR -> new Picture(stored, new int[] {2, 1, 0}, 3, w, h, orientation);
            case BufferedImage.TYPE_BYTE_GRAY -> new Picture(stored, new int[] {0, 0, 0}, 1, w, h, orientation);
            default -> new Picture(copied(image), new int[] {0, 1, 2}, 3, w, h, orientation);
        };
    }

    private static BufferedImage image(byte[] bytes, PictureFile file) throws Unsure {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(file.format());
        if (!readers.hasNext()) {
            throw new IllegalStateException("this Java has no reader for " + file.format());
        }
        ImageReader reader = readers.next();
        List<String> warnings = new ArrayList<>();
        reader.addIIOReadWarningListener((source, warning) -> warnings.add(warning));
        try (HeldBytes input = new HeldBytes(bytes)) {
            reader.setInput(input, true, true);
            BufferedImage image = reader.read(0);
            if (warnings.stream().anyMatch(text -> text.startsWith("Premature") || text.startsWith("Corrupt"))) {
                throw PictureFile.damaged(
                        "the file's header promises more than the picture holds, or some of it is spoilt");
            }
            return image;
        } catch (IOException | RuntimeException trouble) {
            // Java's readers answer spoilt files with exceptions of many kinds; a picture in printing inks is one they
            // do not know.
            if (trouble.getCause() instanceof OutOfMemoryError) {
                throw tooLarge(file);
            }
            String message = String.valueOf(trouble.getMessage());
            if (message.contains("Unsupported Image Type")) {
                throw new Unsure(
                        PhotoTrace.Reason.NOT_A_PICTURE,
                        "the picture's colours are in printing inks or another kind that is not read",
                        "save it as a usual JPEG or PNG");
            }
            throw PictureFile.damaged("the picture cannot be decoded");
        } finally {
            reader.dispose();
        }
    }

    /** Other kinds as red, green and blue of one byte each; what can be seen through shows white. */
    private static byte[] copied(BufferedImage image) {
        int w = image.getWidth();
        int h = image.getHeight();
        Raster raster = image.getRaster();
        byte[] copy = new byte[w * h * 3];
        int bits = raster.getSampleModel().getSampleSize(0);
        boolean straight = image.getColorModel() instanceof java.awt.image.ComponentColorModel && bits >= 8;
        int samples = raster.getNumBands();
        int[] row = new int[w * samples];
        int to = 0;
        for (int y = 0; y < h; y++) {
            if (straight) {
                raster.getPixels(0, y, w, 1, row);
            }
            for (int x = 0; x < w; x++) {
                for (int band = 0; band < 3; band++) {
                    int code;
                    int alpha;
                    if (straight) {
                        code = row[x * samples + (samples >= 3 ? band : 0)] >> (bits - 8);
                        alpha = samples % 2 == 0 ? row[x * samples + samples - 1] >> (bits - 8) : 255;
                    } else {
                        int colour = image.getRGB(x, y);
                        code = (colour >> (16 - 8 * band)) & 0xFF;
                        alpha = colour >>> 24;
                    }
                    copy[to++] = (byte) (255 + (code - 255) * alpha / 255);
                }
            }
        }
        return copy;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /**
     * Gives a pixel's light.
     *
     * @param x column of the upright picture, within it
     * @param y its row
     * @param colour where linear red, green and blue go, 0 to 1
     */
    void linear(int x, int y, float[] colour) {
        int at = origin + x * stepX + y * stepY;
        colour[0] = LINEAR[data[at + bands[0]] & 0xFF];
        colour[1] = LINEAR[data[at + bands[1]] & 0xFF];
        colour[2] = LINEAR[data[at + bands[2]] & 0xFF];
    }

    /**
     * Adds up the light of some pixels in a row.
     *
     * @param x the first one's column in the upright picture
     * @param y its row
     * @param count how many, all of them within it
     * @param sum where linear red, green and blue are added
     */
    void addLinear(int x, int y, int count, double[] sum) {
        double red = 0;
        double green = 0;
        double blue = 0;
        int at = origin + x * stepX + y * stepY;
        for (int k = 0; k < count; k++) {
            red += LINEAR[data[at + bands[0]] & 0xFF];
            green += LINEAR[data[at + bands[1]] & 0xFF];
            blue += LINEAR[data[at + bands[2]] & 0xFF];
            at += stepX;
        }
        sum[0] += red;
        sum[1] += green;
        sum[2] += blue;
    }

    /** The sum of so many pixels' codes in a row, green's taken twice. */
    int grey(int x, int y, int count) {
        int sum = 0;
        int at = origin + x * stepX + y * stepY;
        for (int k = 0; k < count; k++) {
            sum += (data[at + bands[0]] & 0xFF) + 2 * (data[at + bands[1]] & 0xFF) + (data[at + bands[2]] & 0xFF);
            at += stepX;
        }
        return sum;
    }

    /**
     * Gives a pixel as it was written.
     *
     * @param x column of the upright picture, within it
     * @param y its row
     * @param codes where red, green and blue go, 0 to 255
     */
    void codes(int x, int y, float[] codes) {
        int at = origin + x * stepX + y * stepY;
        codes[0] = data[at + bands[0]] & 0xFF;
        codes[1] = data[at + bands[1]] & 0xFF;
        codes[2] = data[at + bands[2]] & 0xFF;
    }
}
