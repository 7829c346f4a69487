package turnalike.photo;

import java.util.Arrays;

/** The coarse picture along an axis, laid straight, and how sharply its light and colour change there, across the axis and along it. */
final class Sharpness {
    /** How far the sharpness at one place is the mean of its neighbours along the edge, in places to each side. */
    private static final int ALONG = 2;

    /** A change of less than this of the root of light says nothing. */
    private static final double LEAST = 0.004;

    private final Strip strip;

    /** Half pixels to each side of the strip's axis. */
    private final int reach;

    private final int beside;

    private final float[][] sharp;

    private final float[][] sharpAlong;

    /**
     * Lays the picture straight.
     *
     * @param picture the coarse picture
     * @param strip where
     * @param half so far from the axis a piece may reach, in coarse pixels: beyond is ground, whose own grain is what sharpness is measured by
     */
    Sharpness(CoarsePicture picture, Strip strip, double half) {
        this.strip = strip;
        reach = 2 * strip.reach();
        beside = 2 * (int) Math.ceil(half + 6);
        sharp = new float[strip.count()][2 * reach + 1];
        sharpAlong = new float[strip.count()][2 * reach + 1];
        look(picture);
    }

    /** The places across the strip: so many half pixels to either side of its axis. */
    int reach() {
        return reach;
    }

    /** At one place the logarithm of how much more the light changes across than the ground's grain does, by half pixels from the strip's rim on. */
    float[] across(int t) {
        return sharp[t];
    }

    /** The same along the strip. */
    float[] along(int t) {
        return sharpAlong[t];
    }

    /** Fills both, each with the most of its neighbours' too, so that half a pixel beside an edge is on it. */
    private void look(CoarsePicture picture) {
        int count = strip.count();
        int wide = 2 * reach + 1;
        float[][] across = new float[count][wide];
        float[][] along = new float[count][wide];
        for (float[] plane : picture.planes()) {
            float[][] light = new float[count][wide];
            for (int t = 0; t < count; t++) {
                for (int k = 0; k < wide; k++) {
                    double aside = (k - reach) / 2.0;
                    double x = strip.pointX(strip.from() + t, aside);
                    double y = strip.pointY(strip.from() + t, aside);
                    light[t][k] = between(picture, plane, x, y);
                }
            }
            addAcross(light, across);
            addAlong(light, along);
        }
        logarithms(across);
        logarithms(along);
        for (int t = 0; t < count; t++) {
            for (int k = 1; k < wide - 1; k++) {
                sharp[t][k] = Math.max(across[t][k], Math.max(across[t][k - 1], across[t][k + 1]));
            }
            for (int k = 0; k < wide; k++) {
                float before = along[Math.max(0, t - 1)][k];
                float after = along[Math.min(count - 1, t + 1)][k];
                sharpAlong[t][k] = Math.max(along[t][k], Math.max(before, after));
            }
        }
    }

    /** Adds how one colour changes across, over a pixel to either side, squared. */
    private static void addAcross(float[][] light, float[][] squares) {
        int count = light.length;
        int wide = light[0].length;
        float[] row = new float[wide];
        for (int t = 0; t < count; t++) {
            int from = Math.max(0, t - ALONG);
            int to = Math.min(count - 1, t + ALONG);
            Arrays.fill(row, 0);
            for (int s = from; s <= to; s++) {
                for (int k = 0; k < wide; k++) {
                    row[k] += light[s][k] / (to - from + 1);
                }
            }
            for (int k = 2; k < wide - 2; k++) {
                float change = (row[k + 1] + row[k + 2] - row[k - 1] - row[k - 2]) / 2;
                squares[t][k] += change * change;
            }
        }
    }

    /** Adds how it changes along, likewise. */
    private static void addAlong(float[][] light, float[][] squares) {
        int wide = light[0].length;
        float[] changes = new float[wide];
        for (int t = 2; t < light.length - 2; t++) {
            for (int k = 0; k < wide; k++) {
                changes[k] = (light[t + 1][k] + light[t + 2][k] - light[t - 1][k] - light[t - 2][k]) / 2;
            }
            for (int k = ALONG; k < wide - ALONG; k++) {
                float change = 0;
                for (int j = -ALONG; j <= ALONG; j++) {
                    change += changes[k + j] / (2 * ALONG + 1);
                }
                squares[t][k] += change * change;
            }
        }
    }

    /** Of how much more the light changes than the ground's own grain does. */
    private void logarithms(float[][] squares) {
        double noise = Math.max(LEAST, noise(squares));
        for (float[] row : squares) {
            for (int k = 0; k < row.length; k++) {
                row[k] = (float) (0.5 * Math.log1p(row[k] / (noise * noise)));
            }
        }
    }

    /** What the light beside the body changes by, in the middle of all places. */
    private double noise(float[][] squares) {
        int end = 2 * reach - 1;
        float[] all = new float[2 * squares.length * Math.max(1, reach - beside)];
        int count = 0;
        for (float[] row : squares) {
            for (int k = reach + beside; k < end; k++) {
                all[count++] = row[k];
                all[count++] = row[2 * reach - k];
            }
        }
        return count == 0 ? 0 : Math.sqrt(Ranked.of(all, count, count / 2));
    }

    private static float between(CoarsePicture picture, float[] plane, double x, double y) {
        int w = picture.width();
        double px = Math.max(0, Math.min(w - 1.001, x - 0.5));
        double py = Math.max(0, Math.min(picture.height() - 1.001, y - 0.5));
        int ix = (int) px;
        int iy = (int) py;
        double fx = px - ix;
        double fy = py - iy;
        int i = iy * w + ix;
        return (float) ((1 - fy) * ((1 - fx) * plane[i] + fx * plane[i + 1])
                + fy * ((1 - fx) * plane[i + w] + fx * plane[i + w + 1]));
    }
}
