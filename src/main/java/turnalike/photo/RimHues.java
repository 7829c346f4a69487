package turnalike.photo;

import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.image.GrayF32;

/**
 * The hues of a ground of many colours, as checked cloth, bricks or a wall above a bench: those that the picture's rim shows. A hue seen within
 * far more often than at the rim is not the ground's; shadow changes no hue.
 */
final class RimHues {
    /** How wide the rim is, as a share of the picture. */
    private static final double RIM = 0.08;

    /** Red's and blue's shares of the light are told apart in hundredths. */
    private static final int BINS_TO_ONE = 100;

    private static final int BINS = BINS_TO_ONE + 1;

    /** What a camera's noise and the blending of neighbours make of one hue, in bins. */
    private static final double SOFT = 1.0;

    /** So many of the rim's pixels, as a share of them, may be strays of any hue. */
    private static final float STRAYS = 0.00002f;

    /** By roots of light: darker than this, a pixel has no hue to go by. */
    private static final double DARK = 0.1;

    private RimHues() {}

    /** How many times as often as at the rim each pixel's hue is seen within. */
    static float[] timesSeen(CoarsePicture picture) {
        int w = picture.width();
        int h = picture.height();
        GrayF32 rim = new GrayF32(BINS, BINS);
        GrayF32 within = new GrayF32(BINS, BINS);
        int[] bins = new int[w * h];
        int atRim = 0;
        int inside = 0;
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int i = y * w + x;
                bins[i] = bin(picture, i);
                boolean isRim = y < RIM * h || y >= h - RIM * h || x < RIM * w || x >= w - RIM * w;
                if (bins[i] >= 0) {
                    (isRim ? rim : within).data[bins[i]]++;
                    atRim += isRim ? 1 : 0;
                    inside += isRim ? 0 : 1;
                }
            }
        }
        BlurImageOps.gaussian(rim, rim, SOFT, 3, null);
        BlurImageOps.gaussian(within, within, SOFT, 3, null);
        float[] times = new float[bins.length];
        for (int i = 0; i < times.length; i++) {
            if (bins[i] >= 0) {
                times[i] = within.data[bins[i]] / inside / (rim.data[bins[i]] / atRim + STRAYS);
            }
        }
        return times;
    }

    private static int bin(CoarsePicture picture, int pixel) {
        double[] light = new double[3];
        picture.addLight(pixel, light);
        double whole = light[0] + light[1] + light[2];
        int red = (int) (BINS_TO_ONE * light[0] / Math.max(1e-9, whole));
        int blue = (int) (BINS_TO_ONE * light[2] / Math.max(1e-9, whole));
        return whole < 3 * DARK * DARK ? -1 : red * BINS + blue;
    }
}
