package turnalike.photo;

import boofcv.struct.image.GrayU8;

/**
 * How much each pixel near the piece's contour is piece, by the colours just inside and just outside, both taken anew all along. In linear
 * light, where a pixel half covered has half of either colour. Where the two differ in hue, the parting plane goes through black: then neither
 * the piece's dark side nor a shadow on the ground crosses it. Where they do not, it stands between the two brightnesses.
 */
final class LocalColours {
    private final Picture picture;

    private final int block;

    private final int wholeWidth;

    private final int wholeHeight;

    /** Where in the coarse picture the part of it stands that matters; what lies outside is not piece. */
    private final int left;

    private final int top;

    private final int width;

    private final int height;

    private final byte[] inner;

    private final byte[] outer;

    /** How far the colours of piece and ground are looked for, coarse pixels, and how far from the piece that may reach in all. */
    private static final int[] RADII = {4, 9, 20};

    private static final int MARGIN = 32;

    /** How far a ground's several hues are looked for. */
    private static final int[] WIDER = {9, 20};

    /** Noise of a colour, in linear light, against which hues are told apart. */
    private static final double NOISE = 0.012;

    /** What it costs to part by brightness rather than by hue. */
    private static final double BY_BRIGHTNESS = 0.05;

    /**
     * By so much nearer to a darker ground's brightness the parting stands than midway, on the scale from 0 to 1: the side of the piece that no lamp
     * reaches is hardly brighter than black card. By trying.
     */
    private static final double SHADE = 0.4;

    /** Of each coarse pixel of the part near the contour: what each colour is multiplied by, and what is added. */
    private final float[][] times = new float[3][];

    private final float[] plus;

    LocalColours(Picture picture, CoarsePicture coarse, byte[] mask) {
        this.picture = picture;
        block = coarse.block();
        wholeWidth = coarse.width();
        wholeHeight = coarse.height();
        int[] box = around(mask);
        left = box[0];
        top = box[1];
        width = box[2] - left;
        height = box[3] - top;
        GrayU8 body = new GrayU8(width, height);
        for (int y = 0; y < height; y++) {
            System.arraycopy(mask, (top + y) * wholeWidth + left, body.data, y * width, width);
        }
        GrayU8 within = GrownMask.eroded(body, 2);
        GrayU8 thin = GrownMask.eroded(body, 1);
        GrayU8 around = GrownMask.dilated(body, 3);
        GrayU8 beyond = new GrayU8(width, height);
        GrayU8 far = GrownMask.dilated(around, 6);
        GrayU8 band = GrownMask.dilated(around, 1);
        inner = within.data;
        outer = around.data;
        int cells = width * height;
        for (int i = 0; i < cells; i++) {
            beyond.data[i] = (byte) (around.data[i] == 0 && far.data[i] > 0 ? 1 : 0);
            band.data[i] = (byte) (band.data[i] > 0 && inner[i] == 0 ? 1 : 0);
        }
        float[][] light = light(coarse);
        float[][][] sides = new float[2][][];
        Cores.each(
                2,
                side -> sides[side] =
                        side == 0 ? nearby(light, band, within, thin) : nearby(light, band, beyond, beyond));
        float[][][] products = new float[2][][];
        Cores.each(
                2, which -> products[which] = nearby(GroundHues.products(light, which), band, beyond, beyond, WIDER));
        GroundHues hues = new GroundHues(sides[1], products, band);
        for (int c = 0; c < 3; c++) {
            times[c] = new float[cells];
        }
        plus = new float[cells];
        Cores.parts(cells, (from, end) -> {
            for (int i = from; i < end; i++) {
                if (band.data[i] > 0) {
                    part(i, sides[0], sides[1], hues);
                }
            }
        });
    }

    /** The part of the coarse picture that matters: the piece and as far beside it as colours are looked for. */
    private int[] around(byte[] mask) {
        int[] box = {wholeWidth, wholeHeight, 0, 0};
        for (int y = 0; y < wholeHeight; y++) {
            for (int x = 0; x < wholeWidth; x++) {
                if (mask[y * wholeWidth + x] > 0) {
                    box[0] = Math.min(box[0], x);
                    box[1] = Math.min(box[1], y);
                    box[2] = Math.max(box[2], x + 1);
                    box[3] = Math.max(box[3], y + 1);
                }
            }
        }
        box[0] = Math.max(0, box[0] - MARGIN);
        box[1] = Math.max(0, box[1] - MARGIN);
        box[2] = Math.min(wholeWidth, box[2] + MARGIN);
        box[3] = Math.min(wholeHeight, box[3] + MARGIN);
        return box;
    }

    /** Linear light of that part. */
    private float[][] light(CoarsePicture coarse) {
        float[][] light = new float[3][width * height];
        for (int c = 0; c < 3; c++) {
            float[] roots = coarse.planes()[c];
            for (int y = 0; y < height; y++) {
                int from = (top + y) * wholeWidth + left;
                for (int x = 0; x < width; x++) {
                    light[c][y * width + x] = roots[from + x] * roots[from + x];
                }
            }
        }
        return light;
    }

    /** The plane that gives 1 in the piece and 0 on the ground as nearly as noise and brightness let it. */
    private void part(int i, float[][] piece, float[][] ground, GroundHues hues) {
        double[][] rows = new double[4][5];
        // Relative to the brighter of both, so that a dark picture is parted like a light one.
        double scale = 1e-4;
        for (int c = 0; c < 3; c++) {
            scale = Math.max(scale, Math.max(piece[c][i], ground[c][i]));
        }
        for (int side = 0; side < 2; side++) {
            double[] terms = {0, 0, 0, 1};
            for (int c = 0; c < 3; c++) {
                terms[c] = (side == 0 ? piece[c][i] : ground[c][i]) / scale;
            }
            for (int a = 0; a < 4; a++) {
                for (int b = 0; b < 4; b++) {
                    rows[a][b] += terms[a] * terms[b];
                }
                rows[a][4] += terms[a] * (side == 0 ? 1 : -1);
            }
        }
        for (int c = 0; c < 3; c++) {
            rows[c][c] += NOISE * NOISE;
        }
        rows[3][3] += BY_BRIGHTNESS;
        hues.add(i, scale, rows);
        double[] plane = LeastSquares.solve(rows);
        for (int c = 0; c < 3; c++) {
            times[c][i] = (float) (0.5 * plane[c] / scale);
        }
        plus[i] = (float) (0.5 + 0.5 * plane[3] + SHADE * Math.max(0, Math.min(1, -plane[3])));
    }

    /** At each pixel asked for the mean linear light of the chosen pixels near it, of the nearest ring that has any. */
    private float[][] nearby(float[][] light, GrayU8 asked, GrayU8 chosen, GrayU8 next) {
        return nearby(light, asked, chosen, next, RADII);
    }

    private float[][] nearby(float[][] light, GrayU8 asked, GrayU8 chosen, GrayU8 next, int... radii) {
        int cells = width * height;
        float[][] mean = new float[3][cells];
        boolean[] known = new boolean[cells];
        boolean all = false;
        for (int round = 0; round < radii.length && !all; round++) {
            Sums sums = new Sums(light, round == 0 ? chosen : next);
            all = true;
            for (int i = 0; i < cells; i++) {
                if (asked.data[i] > 0 && !known[i]) {
                    known[i] = sums.mean(i, radii[round], mean);
                    all &= known[i];
                }
            }
        }
        return mean;
    }

    /** Light and number of chosen pixels above and on the left of each place, from which those of any rectangle follow. */
    private final class Sums {
        /** The four of a place stand side by side. */
        private final double[] sums = new double[4 * (width + 1) * (height + 1)];

        Sums(float[][] light, GrayU8 chosen) {
            double[] all = sums;
            int above = 4 * (width + 1);
            for (int y = 0; y < height; y++) {
                double red = 0;
                double green = 0;
                double blue = 0;
                double count = 0;
                int to = (y + 1) * above + 4;
                for (int i = y * width; i < (y + 1) * width; i++) {
                    if (chosen.data[i] > 0) {
                        red += light[0][i];
                        green += light[1][i];
                        blue += light[2][i];
                        count++;
                    }
                    all[to] = all[to - above] + red;
                    all[to + 1] = all[to + 1 - above] + green;
                    all[to + 2] = all[to + 2 - above] + blue;
                    all[to + 3] = all[to + 3 - above] + count;
                    to += 4;
                }
            }
        }

        /** Puts the mean of the chosen pixels in the square about a pixel; no where they are too few. */
        boolean mean(int pixel, int reach, float[][] to) {
            int x = pixel % width;
            int y = pixel / width;
            int west = Math.max(0, x - reach);
            int east = Math.min(width, x + reach + 1);
            int north = Math.max(0, y - reach) * (width + 1);
            int south = Math.min(height, y + reach + 1) * (width + 1);
            int area = (east - west) * (south - north) / (width + 1);
            double count = sum(3, west, east, north, south);
            if (count <= 0.02 * area) {
                return false;
            }
            for (int c = 0; c < 3; c++) {
                to[c][pixel] = (float) (sum(c, west, east, north, south) / count);
            }
            return true;
        }

        private double sum(int which, int west, int east, int north, int south) {
            return sums[4 * (south + east) + which]
                    - sums[4 * (south + west) + which]
                    - sums[4 * (north + east) + which]
                    + sums[4 * (north + west) + which];
        }
    }

    /** About 1 within the piece, about 0 beside it; exactly so away from the contour. At a pixel of the picture. */
    double share(int x, int y, float[] colour) {
        if (x < 0 || y < 0 || x >= picture.width() || y >= picture.height()) {
            return 0;
        }
        int cx = Math.min(wholeWidth - 1, x / block) - left;
        int cy = Math.min(wholeHeight - 1, y / block) - top;
        if (cx < 0 || cy < 0 || cx >= width || cy >= height) {
            return 0;
        }
        int cell = cy * width + cx;
        if (outer[cell] == 0) {
            return 0;
        }
        if (inner[cell] > 0) {
            return 1;
        }
        picture.linear(x, y, colour);
        return on(x + 0.5, y + 0.5, colour);
    }

    /** A colour on the scale at a place: the scale runs smoothly from coarse pixel to coarse pixel, among those that have one. */
    private double on(double x, double y, float[] colour) {
        double cx = Math.max(0, Math.min(width - 1.001, x / block - 0.5 - left));
        double cy = Math.max(0, Math.min(height - 1.001, y / block - 0.5 - top));
        int ix = (int) cx;
        int iy = (int) cy;
        double value = 0;
        double weights = 0;
        for (int j = 0; j < 2; j++) {
            for (int i = 0; i < 2; i++) {
                int cell = (iy + j) * width + ix + i;
                double weight = (i == 0 ? 1 - cx + ix : cx - ix) * (j == 0 ? 1 - cy + iy : cy - iy);
                if (plus[cell] != 0 && weight > 0) {
                    value += weight
                            * (colour[0] * times[0][cell]
                                    + colour[1] * times[1][cell]
                                    + colour[2] * times[2][cell]
                                    + plus[cell]);
                    weights += weight;
                }
            }
        }
        return weights > 0 ? value / weights : 0;
    }
}
