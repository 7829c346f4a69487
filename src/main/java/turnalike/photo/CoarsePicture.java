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
        double[] sums = new double[3 * width];
        double perPixel = 1.0 / (block * block);
        for (int y = 0; y < height; y++) {
            Arrays.fill(sums, 0);
            for (int j = 0; j < block; j++) {
                picture.addLinear(y * block + j, block, sums);
            }
            for (int x = 0; x < width; x++) {
                for (int c = 0; c < 3; c++) {
                    planes[c][y * width + x] = (float) Math.sqrt(sums[3 * x + c] * perPixel);
                }
            }
        }
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

    /** Roots of linear red, green, blue, row by row. */
    float[][] planes() {
        return planes;
    }
}
