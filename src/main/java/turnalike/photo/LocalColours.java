package turnalike.photo;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.image.GrayF32;
import boofcv.struct.image.GrayU8;

/**
 * How much each pixel near the piece's contour is piece, by the colours just inside and just outside, both taken anew all along. In linear
 * light, where a pixel half covered has half of either colour. Where the two differ in hue, the parting plane goes through black: then neither
 * the piece's dark side nor a shadow on the ground crosses it. Where they do not, it stands between the two brightnesses.
 */
final class LocalColours {
    private final Picture picture;

    private final int block;

    private final int width;

    private final int height;

    private final byte[] inner;

    private final byte[] outer;

    /** Noise of a colour, in linear light, against which hues are told apart. */
    private static final double NOISE = 0.012;

    /** What it costs to part by brightness rather than by hue. */
    private static final double BY_BRIGHTNESS = 0.05;

    /** Of each coarse pixel near the contour: what each colour is multiplied by, and what is added. */
    private final float[][] times = new float[3][];

    private final float[] plus;

    LocalColours(Picture picture, CoarsePicture coarse, byte[] mask) {
        this.picture = picture;
        block = coarse.block();
        width = coarse.width();
        height = coarse.height();
        GrayU8 body = new GrayU8(width, height);
        System.arraycopy(mask, 0, body.data, 0, mask.length);
        GrayU8 within = BinaryImageOps.erode8(body, 2, null);
        GrayU8 thin = BinaryImageOps.erode8(body, 1, null);
        GrayU8 around = BinaryImageOps.dilate8(body, 3, null);
        GrayU8 beyond = new GrayU8(width, height);
        GrayU8 far = BinaryImageOps.dilate8(around, 6, null);
        for (int i = 0; i < mask.length; i++) {
            beyond.data[i] = (byte) (around.data[i] == 0 && far.data[i] > 0 ? 1 : 0);
        }
        inner = within.data;
        outer = around.data;
        float[][] piece = new float[3][];
        float[][] ground = new float[3][];
        for (int c = 0; c < 3; c++) {
            piece[c] = nearby(coarse.planes()[c], within, thin);
            ground[c] = nearby(coarse.planes()[c], beyond, beyond);
            times[c] = new float[mask.length];
        }
        plus = new float[mask.length];
        GrayU8 band = BinaryImageOps.dilate8(around, 1, null);
        for (int i = 0; i < mask.length; i++) {
            if (band.data[i] > 0 && inner[i] == 0) {
                part(i, piece, ground);
            }
        }
    }

    /** The plane that gives 1 in the piece and 0 on the ground as nearly as noise and brightness let it. */
    private void part(int i, float[][] piece, float[][] ground) {
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
        double[] plane = LeastSquares.solve(rows);
        for (int c = 0; c < 3; c++) {
            times[c][i] = (float) (0.5 * plane[c] / scale);
        }
        plus[i] = (float) (0.5 + 0.5 * plane[3]);
    }

    /** The mean linear light of the chosen pixels near each pixel, of the nearest ring that has any. */
    private float[] nearby(float[] roots, GrayU8 chosen, GrayU8 next) {
        float[] mean = new float[roots.length];
        boolean[] known = new boolean[roots.length];
        int[] radii = {4, 9, 20};
        for (int round = 0; round < radii.length; round++) {
            GrayU8 which = round == 0 ? chosen : next;
            GrayF32 sum = new GrayF32(width, height);
            GrayF32 count = new GrayF32(width, height);
            for (int i = 0; i < roots.length; i++) {
                sum.data[i] = which.data[i] > 0 ? roots[i] * roots[i] : 0;
                count.data[i] = which.data[i];
            }
            BlurImageOps.mean(sum, sum, radii[round], null, null);
            BlurImageOps.mean(count, count, radii[round], null, null);
            for (int i = 0; i < roots.length; i++) {
                if (!known[i] && count.data[i] > 0.02) {
                    mean[i] = sum.data[i] / count.data[i];
                    known[i] = true;
                }
            }
        }
        return mean;
    }

    /** About 1 within the piece, about 0 beside it; exactly so away from the contour. At a pixel of the picture. */
    double share(int x, int y, float[] colour) {
        int cx = Math.max(0, Math.min(width - 1, x / block));
        int cy = Math.max(0, Math.min(height - 1, y / block));
        int cell = cy * width + cx;
        if (x < 0 || y < 0 || x >= picture.width() || y >= picture.height() || outer[cell] == 0) {
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
        double cx = Math.max(0, Math.min(width - 1.001, x / block - 0.5));
        double cy = Math.max(0, Math.min(height - 1.001, y / block - 0.5));
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

    /** The linear light between pixels, which is what mixes there; outside the picture that of its rim. */
    void between(double x, double y, float[] colour, float[] mixed) {
        between(x, y, true, colour, mixed);
    }

    /** The codes between pixels, mixed as they are. */
    void codesBetween(double x, double y, float[] colour, float[] mixed) {
        between(x, y, false, colour, mixed);
    }

    private void between(double x, double y, boolean light, float[] colour, float[] mixed) {
        double px = Math.max(0, Math.min(picture.width() - 1.001, x - 0.5));
        double py = Math.max(0, Math.min(picture.height() - 1.001, y - 0.5));
        int ix = (int) px;
        int iy = (int) py;
        float fx = (float) (px - ix);
        float fy = (float) (py - iy);
        mixed[0] = 0;
        mixed[1] = 0;
        mixed[2] = 0;
        for (int j = 0; j < 2; j++) {
            for (int i = 0; i < 2; i++) {
                float weight = (i == 0 ? 1 - fx : fx) * (j == 0 ? 1 - fy : fy);
                if (light) {
                    picture.linear(ix + i, iy + j, colour);
                } else {
                    picture.codes(ix + i, iy + j, colour);
                }
                mixed[0] += weight * colour[0];
                mixed[1] += weight * colour[1];
                mixed[2] += weight * colour[2];
            }
        }
    }
}
