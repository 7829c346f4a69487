package turnalike.photo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import turnalike.units.Length;

/**
 * The grain that a camera's noise makes of a picture in low light. Where there is much of it single pixels tell little: a contour that is walked from pixel to
 * pixel runs astray, and so do the directions across it. Made smaller, each pixel the mean of several, the picture shows the same piece in less grain, and an
 * edge's place is told by lines as much longer.
 */
final class PictureNoise {
    /**
     * By so much, codes of 255, one pixel's brightness strays where a picture is made smaller before it is refused. Of pictures by one who had not seen the
     * program those in low light with much noise have 2.0 and more, those in good light less on all but coarse cloths and some boards.
     */
    private static final double MUCH = 1.9;

    private static final int SQUARE = 16;

    /** By so much more than one pixel's the square of a pixel less those on both sides of it strays, half by half. */
    private static final double OF_SECOND_DIFFERENCE = 6;

    private static final int MOST_SMALLER = 4;

    /**
     * What such a trace is unsure by beside what it says of itself, pixels of the smaller picture: of ten pictures by one who had not seen the program 59 places in 100
     * lay within what was stated without it.
     */
    private static final double IN_GRAIN = 0.25;

    private static final int LEAST_LONG = 400;

    private PictureNoise() {}

    static boolean isMuch(Picture picture) {
        return codes(picture) >= MUCH;
    }

    /**
     * What one pixel's brightness strays by, codes of 255, by how far pixels lie from between their neighbours: in the tenth of the picture that is
     * evenest, for noise is everywhere and the grain of a board or a cloth is not.
     */
    static double codes(Picture picture) {
        int across = (picture.width() - 2) / SQUARE;
        int down = picture.height() / SQUARE;
        float[] strays = new float[across * down];
        float[] codes = new float[3];
        double[][] split = new double[3][SQUARE + 2];
        for (int k = 0; k < strays.length; k++) {
            int left = k % across * SQUARE;
            int top = k / across * SQUARE;
            double squares = 0;
            for (int y = top; y < top + SQUARE; y += 2) {
                for (int x = 0; x < SQUARE + 2; x++) {
                    picture.codes(left + x, y, codes);
                    EdgeModel.split(codes[0], codes[1], codes[2], split, x);
                }
                for (int x = 1; x <= SQUARE; x++) {
                    double off = split[0][x - 1] - 2 * split[0][x] + split[0][x + 1];
                    squares += off * off;
                }
            }
            strays[k] = (float) Math.sqrt(squares / (SQUARE * SQUARE / 2) / OF_SECOND_DIFFERENCE);
        }
        return strays.length == 0 ? 0 : Ranked.of(strays, strays.length, strays.length / 10);
    }

    /** The picture made so many times smaller, each pixel the mean light of a square. */
    static Picture reduced(Picture picture, int factor) {
        int width = picture.width() / factor;
        int height = picture.height() / factor;
        byte[] data = new byte[3 * width * height];
        Cores.parts(height, (first, end) -> {
            double[] sums = new double[3 * width];
            float[] light = new float[3];
            for (int y = first; y < end; y++) {
                Arrays.fill(sums, 0);
                for (int row = y * factor; row < (y + 1) * factor; row++) {
                    for (int x = 0; x < width * factor; x++) {
                        picture.linear(x, row, light);
                        for (int c = 0; c < 3; c++) {
                            sums[3 * (x / factor) + c] += light[c];
                        }
                    }
                }
                for (int i = 0; i < sums.length; i++) {
                    data[y * sums.length + i] = (byte) Math.round(Gamma.code(sums[i] / (factor * factor)));
                }
            }
        });
        return Picture.of(data, width, height);
    }

    /** How many times smaller it is made at most: so that it stays long enough for a piece in it to be told. */
    static int mostSmaller(Picture picture) {
        return Math.min(MOST_SMALLER, Math.max(picture.width(), picture.height()) / LEAST_LONG);
    }

    /** A trace of the picture made so many times smaller, its edges where they lie in the picture itself. */
    static PhotoTrace.Traced ofWhole(PhotoTrace.Traced small, int factor, Picture picture) {
        PhotoTrace.Overlay lies = small.overlay();
        List<String> warnings = new ArrayList<>(small.warnings());
        warnings.add(
                "there is much grain in the picture: it was made %d times smaller, and a pixel stands for as much more of the piece"
                        .formatted(factor));
        return new PhotoTrace.Traced(
                small.profile().lessSureBy(Length.ofMm(IN_GRAIN * small.mmPerPixel())),
                small.fitted(),
                small.squares(),
                small.mmPerPixel(),
                small.scaleFrom(),
                small.viewFrom(),
                new PhotoTrace.Overlay(
                        picture.width(),
                        picture.height(),
                        enlarged(lies.start(), factor),
                        enlarged(lies.end(), factor),
                        enlarged(lies.leftEdge(), factor),
                        enlarged(lies.rightEdge(), factor)),
                warnings);
    }

    private static List<PixelPoint> enlarged(List<PixelPoint> points, int factor) {
        return points.stream().map(each -> enlarged(each, factor)).toList();
    }

    private static PixelPoint enlarged(PixelPoint point, int factor) {
        return new PixelPoint(factor * point.x(), factor * point.y());
    }
}
