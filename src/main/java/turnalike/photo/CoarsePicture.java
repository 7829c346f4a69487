package turnalike.photo;

import java.util.Arrays;

/**
 * The picture made small by averaging whole blocks of pixels in linear light; each colour's square root is kept, near which the noise of a
 * sensor is the same in the dark and in the light.
 */
final class CoarsePicture {
    private static final int LONGEST = 900;

    private final int block;

    private final int width;

    private final int height;

    private final float[][] planes;

    private CoarsePicture(int block, int width, int height, float[][] planes) {
        this.block = block;
        this.width = width;
        this.height = height;
        this.planes = planes;
    }

    static CoarsePicture of(Picture picture) {
        int block = Math.max(1, (int) Math.ceil((double) Math.max(picture.width(), picture.height()) / LONGEST));
        int width = picture.width() / block;
        int height = picture.height() / block;
        float[][] planes = new float[3][width * height];
        boolean turned = picture.turned();
        int lines = turned ? width : height;
        int along = turned ? height : width;
        int lineStep = turned ? 1 : width;
        int step = turned ? width : 1;
        double perPixel = 1.0 / (block * block);
        Cores.parts(lines, (first, end) -> {
            double[] sums = new double[3 * along];
            for (int line = first; line < end; line++) {
                Arrays.fill(sums, 0);
                for (int j = 0; j < block; j++) {
                    picture.addLinear(line * block + j, block, sums);
                }
                for (int c = 0; c < 3; c++) {
                    float[] plane = planes[c];
                    int to = line * lineStep;
                    for (int from = c; from < sums.length; from += 3) {
                        plane[to] = (float) Math.sqrt(sums[from] * perPixel);
                        to += step;
                    }
                }
            }
        });
        return new CoarsePicture(block, width, height, planes);
    }

    /** The same with other colours. */
    CoarsePicture with(float[][] other) {
        return new CoarsePicture(block, width, height, other);
    }

    /** How many pixels of the picture, in each direction, one of these is. */
    int block() {
        return block;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** Adds a pixel's linear red, green and blue. */
    void addLight(int pixel, double[] sums) {
        for (int c = 0; c < sums.length; c++) {
            sums[c] += planes[c][pixel] * planes[c][pixel];
        }
    }

    /** Roots of linear red, green, blue, row by row. */
    float[][] planes() {
        return planes;
    }
}
