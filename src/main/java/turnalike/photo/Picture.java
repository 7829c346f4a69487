package turnalike.photo;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * A decoded picture, upright, in linear light. The pixels stay as the file has them, one byte a colour: 50 megapixels are 150 MB so, and 600
 * as floating numbers.
 */
final class Picture {
    /** Linear light of an sRGB code, from memory of IEC 61966-2-1. Display P3, which phones write, has the same curve. */
    private static final float[] LINEAR = new float[256];

    /** The same, to be added up. */
    private static final double[] LIGHT = new double[256];

    private static final float[] CODES = new float[256];

    static {
        for (int code = 0; code < 256; code++) {
            double value = code / 255.0;
            LINEAR[code] = (float) (value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4));
            LIGHT[code] = LINEAR[code];
            CODES[code] = code;
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

    /**
     * One of bytes that are there, or are still to come.
     *
     * @param bands where red, green and blue stand from a pixel's first byte on
     * @param pixelBytes from pixel to pixel
     * @param storedWidth pixels in a row as it is stored
     * @param storedHeight stored rows
     * @param orientation how it is turned upright, by EXIF
     */
    Picture(byte[] data, int[] bands, int pixelBytes, int storedWidth, int storedHeight, int orientation) {
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
        return new PictureDecoder(bytes, file, orientation).picture();
    }

    /** The same, and tells how far it is where that can be told. */
    static Picture decode(byte[] bytes, PictureFile file, int orientation, PictureDecoder.Watch watch) throws Unsure {
        return new PictureDecoder(bytes, file, orientation).watchedBy(watch).picture();
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
     */
    double lightBetween(double x, double y) {
        double px = Math.max(0, Math.min(width - 1.001, x - 0.5));
        double py = Math.max(0, Math.min(height - 1.001, y - 0.5));
        int ix = (int) px;
        int iy = (int) py;
        double right = px - ix;
        double left = 1 - px + ix;
        double below = py - iy;
        double above = 1 - py + iy;
        int at = origin + ix * stepX + iy * stepY;
        return left * above * light(at)
                + right * above * light(at + stepX)
                + left * below * light(at + stepY)
                + right * below * light(at + stepX + stepY);
    }

    private double light(int at) {
        return 0.25 * LINEAR[data[at + bands[0]] & 0xFF]
                + 0.5 * LINEAR[data[at + bands[1]] & 0xFF]
                + 0.25 * LINEAR[data[at + bands[2]] & 0xFF];
    }

    /**
     * The linear light between pixels, which is what mixes there; outside the picture that of its rim.
     *
     * @param x from its left edge on
     * @param y from its upper edge on
     * @param colour where linear red, green and blue go
     */
    void linearBetween(double x, double y, float[] colour) {
        between(LINEAR, x, y, colour);
    }

    /** The codes between pixels, mixed as they are. */
    void codesBetween(double x, double y, float[] codes) {
        between(CODES, x, y, codes);
    }

    private void between(float[] values, double x, double y, float[] mixed) {
        double px = Math.max(0, Math.min(width - 1.001, x - 0.5));
        double py = Math.max(0, Math.min(height - 1.001, y - 0.5));
        int ix = (int) px;
        int iy = (int) py;
        float right = (float) (px - ix);
        float below = (float) (py - iy);
        float first = (1 - right) * (1 - below);
        float second = right * (1 - below);
        float third = (1 - right) * below;
        float fourth = right * below;
        int at = origin + ix * stepX + iy * stepY;
        for (int c = 0; c < 3; c++) {
            int one = at + bands[c];
            int lower = one + stepY;
            mixed[c] = first * values[data[one] & 0xFF]
                    + second * values[data[one + stepX] & 0xFF]
                    + third * values[data[lower] & 0xFF]
                    + fourth * values[data[lower + stepX] & 0xFF];
        }
    }

    /**
     * Whether the picture was stored lying down: {@link #addLinear} and {@link #grey} then go by columns of the upright one, so that they read
     * along the memory all the same.
     */
    boolean turned() {
        return turned;
    }

    /** Whether the lines that {@link #addLinear} and {@link #grey} go by are stored last to first. */
    boolean fromEnd() {
        return (turned ? stepX : stepY) < 0;
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
        for (int to = 0; to < sums.length; to++) {
            long two = (long) EIGHT.get(data, line + 6 * to);
            long next = (long) EIGHT.get(data, nextLine + 6 * to);
            long even = (two & EVEN) + (next & EVEN);
            long odd = ((two >>> 8) & EVEN) + ((next >>> 8) & EVEN);
            sums[to] = (int) ((even * 0x1_0001_0002L + odd * 0x2_0001_0001L) >>> 32) & 0xFFFF;
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
