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
        Lines lines = new Lines(picture);
        lines.makeAll();
        return lines.picture();
    }

    /** One that is made line by line. */
    static final class Lines implements BlockLines {
        private final Picture from;

        private final CoarsePicture made;

        Lines(Picture picture) {
            from = picture;
            int block = Math.max(1, (int) Math.ceil((double) Math.max(picture.width(), picture.height()) / LONGEST));
            int width = picture.width() / block;
            int height = picture.height() / block;
            made = new CoarsePicture(block, width, height, new float[3][width * height]);
        }

        /** Whole once all lines are made. */
        CoarsePicture picture() {
            return made;
        }

        @Override
        public int block() {
            return made.block;
        }

        @Override
        public int count() {
            return from.turned() ? made.width : made.height;
        }

        @Override
        public void make(int first, int end) {
            boolean turned = from.turned();
            int block = made.block;
            double[] sums = new double[3 * (turned ? made.height : made.width)];
            int lineStep = turned ? 1 : made.width;
            int step = turned ? made.width : 1;
            double perPixel = 1.0 / (block * block);
            for (int line = first; line < end; line++) {
                Arrays.fill(sums, 0);
                for (int j = 0; j < block; j++) {
                    from.addLinear(line * block + j, block, sums);
                }
                for (int c = 0; c < 3; c++) {
                    float[] plane = made.planes[c];
                    int to = line * lineStep;
                    for (int k = c; k < sums.length; k += 3) {
                        plane[to] = (float) Math.sqrt(sums[k] * perPixel);
                        to += step;
                    }
                }
            }
        }
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
