package turnalike.photo;

import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.image.GrayF32;

/**
 * Hue and light of a picture made so small that a tree of its patches is quickly had, in numbers of about one size: what red has more of the light
 * than a third, what blue has, and the root of the light.
 */
final class Tints {
    /** Longer than this, in pixels, a picture is made smaller. */
    private static final int LONG = 450;

    /** A hue's share of the light counts so much beside the root of all light: woods and grounds differ by some hundredths of it, and by tenths of that. */
    private static final double HUE = 2.5;

    /** Linear light, all colours together, of which a hue counts half: less of it is mostly noise. */
    private static final double DARK = 0.01;

    private static final double BLUR = 0.7;

    private final int factor;

    private final int width;

    private final int height;

    private final float[][] values = new float[3][];

    private final float[] edges;

    private Tints(int factor, int width, int height) {
        this.factor = factor;
        this.width = width;
        this.height = height;
        edges = new float[width * height];
    }

    static Tints of(CoarsePicture picture) {
        int longest = Math.max(picture.width(), picture.height());
        return of(picture, (int) Math.max(1, Math.round((double) longest / LONG)));
    }

    /** Of the picture made so many times smaller. */
    static Tints of(CoarsePicture picture, int factor) {
        Tints tints = new Tints(factor, picture.width() / factor, picture.height() / factor);
        tints.fill(picture);
        return tints;
    }

    /** How many pixels of the picture, in each direction, one of these is. */
    int factor() {
        return factor;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** Red's hue, blue's, and light. */
    float[][] values() {
        return values;
    }

    /** How steeply the roots of the colours change across each pixel: by how much from the one before it to the one behind. */
    float[] edges() {
        return edges;
    }

    /** Each pixel's value one way through the numbers. */
    float[] along(double[] way) {
        float[] along = new float[width * height];
        for (int i = 0; i < along.length; i++) {
            along[i] = (float) (way[0] * values[0][i] + way[1] * values[1][i] + way[2] * values[2][i]);
        }
        return along;
    }

    private void fill(CoarsePicture picture) {
        float[][] light = new float[3][];
        for (int c = 0; c < 3; c++) {
            GrayF32 soft = reduced(picture, c);
            BlurImageOps.gaussian(soft, soft, BLUR, 2, null);
            light[c] = soft.data;
            values[c] = new float[edges.length];
        }
        for (int i = 0; i < edges.length; i++) {
            double whole = light[0][i] + light[1][i] + light[2][i];
            double told = HUE * whole / (whole + DARK);
            values[0][i] = (float) (told * (light[0][i] / Math.max(1e-9, whole) - 1 / 3.0));
            values[1][i] = (float) (told * (light[2][i] / Math.max(1e-9, whole) - 1 / 3.0));
            values[2][i] = (float) Math.sqrt(whole / 3);
        }
        for (float[] plane : light) {
            for (int i = 0; i < plane.length; i++) {
                plane[i] = (float) Math.sqrt(plane[i]);
            }
        }
        for (int y = 1; y + 1 < height; y++) {
            for (int x = 1; x + 1 < width; x++) {
                edges[y * width + x] = edge(light, y * width + x);
            }
        }
    }

    private float edge(float[][] roots, int i) {
        double sum = 0;
        for (float[] plane : roots) {
            double right = plane[i + 1] - plane[i - 1];
            double down = plane[i + width] - plane[i - width];
            sum += right * right + down * down;
        }
        return (float) Math.sqrt(sum / 3);
    }

    private GrayF32 reduced(CoarsePicture picture, int c) {
        GrayF32 small = new GrayF32(width, height);
        float[] plane = picture.planes()[c];
        float part = 1.0f / (factor * factor);
        for (int y = 0; y < height * factor; y++) {
            for (int x = 0; x < width * factor; x++) {
                float root = plane[y * picture.width() + x];
                small.data[y / factor * width + x / factor] += part * root * root;
            }
        }
        return small;
    }
}
