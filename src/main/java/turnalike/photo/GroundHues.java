package turnalike.photo;

import boofcv.struct.image.GrayU8;

/**
 * The hues of the ground beside the piece where there are several, as of checks or bricks. Each of them is ground: what parts the piece from their
 * mean alone would run across between one and another. Light and shadow of one hue are let be, as is a ground of one.
 */
final class GroundHues {
    /**
     * How far a quarter of a ground's colours lie aside of their mean where it is of one hue, by that and squared, at most. Of the made pictures plain
     * grounds and boards have 0.001 and less, checks and bricks 0.007 and more.
     */
    private static final double ONE_HUE = 0.003;

    /** Linear light of a ground so dark that its hues are mere noise. */
    private static final double DARK = 0.1;

    private final float[][] means;

    private final float[][][] products;

    private final boolean several;

    /**
     * Of what was seen near each pixel of a band along the contour.
     *
     * @param means the ground's linear light there
     * @param products the means of each colour's square, and of its product with the next colour
     * @param band which pixels those are
     */
    GroundHues(float[][] means, float[][][] products, GrayU8 band) {
        this.means = means;
        this.products = products;
        float[] spreads = new float[means[0].length];
        int count = 0;
        for (int i = 0; i < spreads.length; i++) {
            if (band.data[i] > 0) {
                double[][] aside = aside(i);
                double size = Math.pow(means[0][i], 2) + Math.pow(means[1][i], 2) + Math.pow(means[2][i], 2);
                spreads[count++] = (float) ((aside[0][0] + aside[1][1] + aside[2][2]) / Math.max(DARK * DARK, size));
            }
        }
        several = count > 0 && Ranked.of(spreads, count, count * 3 / 4) > ONE_HUE;
    }

    /** Each colour's square, or its product with the next. */
    static float[][] products(float[][] light, int next) {
        float[][] products = new float[3][light[0].length];
        for (int c = 0; c < 3; c++) {
            float[] other = light[(c + next) % 3];
            for (int i = 0; i < other.length; i++) {
                products[c][i] = light[c][i] * other[i];
            }
        }
        return products;
    }

    /** Adds to the rows of a plane through colours, relative to a scale, that it shall be even over the ground's hues, if there are several. */
    void add(int pixel, double scale, double[][] rows) {
        if (several) {
            double[][] aside = aside(pixel);
            for (int a = 0; a < 3; a++) {
                for (int b = 0; b < 3; b++) {
                    rows[a][b] += aside[a][b] / (scale * scale);
                }
            }
        }
    }

    /** The mean products of what of the ground's colours lies square to their mean. */
    private double[][] aside(int pixel) {
        double size = 1e-9;
        for (int c = 0; c < 3; c++) {
            size += means[c][pixel] * means[c][pixel];
        }
        double[][] whole = new double[3][3];
        double[] onMean = new double[3];
        double along = 0;
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                whole[a][b] = a == b ? products[0][a][pixel] : products[1][(a + 1) % 3 == b ? a : b][pixel];
                onMean[a] += whole[a][b] * means[b][pixel] / size;
            }
            along += onMean[a] * means[a][pixel] / size;
        }
        double[][] aside = new double[3][3];
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                aside[a][b] = whole[a][b]
                        - onMean[a] * means[b][pixel]
                        - means[a][pixel] * onMean[b]
                        + along * means[a][pixel] * means[b][pixel];
            }
        }
        return aside;
    }
}
