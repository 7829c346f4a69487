package turnalike.photo;

import java.awt.Point;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Hashtable;
import java.util.Iterator;
import java.util.List;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;

/**
 * A decoded picture, upright, in linear light. The pixels stay as the file has them, one byte a colour: 50 megapixels are 150 MB so, and 600
 * as floating numbers.
 */
final class Picture {
    /** Linear light of an sRGB code, from memory of IEC 61966-2-1. Display P3, which phones write, has the same curve. */
    private static final float[] LINEAR = new float[256];

    /** The same, to be added up. */
    private static final double[] LIGHT = new double[256];

    static {
        for (int code = 0; code < 256; code++) {
            double value = code / 255.0;
            LINEAR[code] = (float) (value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4));
            LIGHT[code] = LINEAR[code];
        }
    }

    private static final int[] RED_FIRST = {0, 1, 2};

    /** Reads eight bytes at once, and leaves every other one of the first six. */
    private static final VarHandle EIGHT = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

    private static final long EVEN = 0x00FF_00FF_00FFL;

    private final byte[] data;

    /** Where red, green and blue stand from a pixel's first byte on. */
    private final int[] bands;

    private final int width;

    private final int height;

    private final int origin;

    private final int stepX;

    private final int stepY;

    private final boolean turned;

    private Picture(byte[] data, int[] bands, int pixelBytes, int storedWidth, int storedHeight, int orientation) {
        this.data = data;
        this.bands = bands;
        turned = orientation >= 5;
        width = turned ? storedHeight : storedWidth;
        height = turned ? storedWidth : storedHeight;
        int row = storedWidth * pixelBytes;
        // In which stored column and row the upright picture begins, and which way it runs; from memory of EXIF 2.3.
        boolean fromRight = orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;
        boolean fromBottom = orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
        int column = fromRight ? -pixelBytes : pixelBytes;
        int line = fromBottom ? -row : row;
        origin = (fromRight ? row - pixelBytes : 0) + (fromBottom ? (storedHeight - 1) * row : 0);
        stepX = turned ? line : column;
        stepY = turned ? column : line;
    }

    /** One of bytes in the order red, green, blue, row by row. */
    static Picture of(byte[] data, int width, int height) {
        return new Picture(data, RED_FIRST, 3, width, height, 1);
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
        if (image.getSampleModel() instanceof PixelInterleavedSampleModel model
                && Arrays.equals(model.getBandOffsets(), RED_FIRST)
                && stored.length == 3 * w * h) {
            return new Picture(stored, RED_FIRST, 3, w, h, orientation);
        }
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
            ImageReadParam wish = reader.getDefaultReadParam();
            ImageTypeSpecifier usual = reader.getImageTypes(0).next();
            if (usual.getBufferedImageType() == BufferedImage.TYPE_3BYTE_BGR) {
                // In the file's own order rows are copied whole, else byte by byte.
                wish.setDestination(redFirst(usual, file));
            }
            BufferedImage image = reader.read(0, wish);
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

    @SuppressWarnings("JdkObsolete") // a BufferedImage is not to be made without a Hashtable
    private static BufferedImage redFirst(ImageTypeSpecifier usual, PictureFile file) {
        int row = 3 * file.width();
        WritableRaster raster = Raster.createInterleavedRaster(
                DataBuffer.TYPE_BYTE, file.width(), file.height(), row, 3, RED_FIRST, new Point());
        return new BufferedImage(usual.getColorModel(), raster, false, new Hashtable<>());
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
     * Gives the light between pixels, all colours in one: green counts for half. Outside the picture that of its rim.
     *
     * @param x from its left edge on
     * @param y from its upper edge on
     * @param colour of length 3, to work in
     */
    double lightBetween(double x, double y, float[] colour) {
        double px = Math.max(0, Math.min(width - 1.001, x - 0.5));
        double py = Math.max(0, Math.min(height - 1.001, y - 0.5));
        int ix = (int) px;
        int iy = (int) py;
        double sum = 0;
        for (int j = 0; j < 2; j++) {
            for (int i = 0; i < 2; i++) {
                linear(ix + i, iy + j, colour);
                double weight = (i == 0 ? 1 - px + ix : px - ix) * (j == 0 ? 1 - py + iy : py - iy);
                sum += weight * (0.25 * colour[0] + 0.5 * colour[1] + 0.25 * colour[2]);
            }
        }
        return sum;
    }

    /**
     * Whether the picture was stored lying down: {@link #addLinear} and {@link #grey} then go by columns of the upright one, so that they read
     * along the memory all the same.
     */
    boolean turned() {
        return turned;
    }

    /**
     * Adds up the light of a line by blocks of pixels, from its beginning. The light of a code has so few digits that sums are exact in any order.
     *
     * @param line the row, or the column of a turned picture
     * @param block how many pixels are one
     * @param sums of each block linear red, green and blue, one after the other, to which this line's are added
     */
    void addLinear(int line, int block, double[] sums) {
        int red = bands[0];
        int green = bands[1];
        int blue = bands[2];
        int at = lineStart(line);
        int step = turned ? stepY : stepX;
        if (step == 3 && Arrays.equals(bands, RED_FIRST)) {
            addLinear(at, block, sums, data);
            return;
        }
        for (int to = 0; to < sums.length; to += 3) {
            double reds = 0;
            double greens = 0;
            double blues = 0;
            for (int k = 0; k < block; k++) {
                reds += LIGHT[data[at + red] & 0xFF];
                greens += LIGHT[data[at + green] & 0xFF];
                blues += LIGHT[data[at + blue] & 0xFF];
                at += step;
            }
            sums[to] += reds;
            sums[to + 1] += greens;
            sums[to + 2] += blues;
        }
    }

    /** The same where the bytes stand in their usual order: known to the compiler, that is a third quicker. */
    private static void addLinear(int from, int block, double[] sums, byte[] data) {
        int at = from;
        for (int to = 0; to < sums.length; to += 3) {
            double reds = 0;
            double greens = 0;
            double blues = 0;
            for (int k = 0; k < block; k++) {
                reds += LIGHT[data[at] & 0xFF];
                greens += LIGHT[data[at + 1] & 0xFF];
                blues += LIGHT[data[at + 2] & 0xFF];
                at += 3;
            }
            sums[to] += reds;
            sums[to + 1] += greens;
            sums[to + 2] += blues;
        }
    }

    /**
     * Sums of codes by blocks of pixels; green's count twice.
     *
     * @param line the blocks' first row, or column of a turned picture
     * @param block how many pixels of how many lines are one
     * @param sums where those of each block go, from the line's beginning on
     */
    void grey(int line, int block, int[] sums) {
        int at = lineStart(line);
        int next = block == 2 ? lineStart(line + 1) : at;
        int step = turned ? stepY : stepX;
        if (block == 2 && step == 3 && bands[1] == 1 && Math.max(at, next) + 6 * sums.length + 2 <= data.length) {
            greyPairs(at, next, sums);
            return;
        }
        Arrays.fill(sums, 0);
        for (int k = 0; k < block; k++) {
            addGrey(lineStart(line + k), step, block, sums);
        }
    }

    private void addGrey(int from, int step, int block, int[] sums) {
        int at = from;
        int red = bands[0];
        int green = bands[1];
        int blue = bands[2];
        for (int to = 0; to < sums.length; to++) {
            int sum = 0;
            for (int k = 0; k < block; k++) {
                sum += (data[at + red] & 0xFF) + 2 * (data[at + green] & 0xFF) + (data[at + blue] & 0xFF);
                at += step;
            }
            sums[to] += sum;
        }
    }

    /**
     * A telephone's usual picture: of two lines the six bytes of two pixels at once, each in a lane of 16 bits; multiplying adds three lanes up in the
     * third.
     */
    private void greyPairs(int line, int nextLine, int[] sums) {
        int at = line;
        int below = nextLine - line;
        for (int to = 0; to < sums.length; to++) {
            long two = (long) EIGHT.get(data, at);
            long next = (long) EIGHT.get(data, at + below);
            long even = (two & EVEN) + (next & EVEN);
            long odd = ((two >>> 8) & EVEN) + ((next >>> 8) & EVEN);
            sums[to] = (int) ((even * 0x1_0001_0002L + odd * 0x2_0001_0001L) >>> 32) & 0xFFFF;
            at += 6;
        }
    }

    private int lineStart(int line) {
        return origin + line * (turned ? stepX : stepY);
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
