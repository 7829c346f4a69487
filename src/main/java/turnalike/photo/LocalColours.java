package turnalike.photo;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.alg.filter.blur.BlurImageOps;
import boofcv.struct.image.GrayF32;
import boofcv.struct.image.GrayU8;

/**
 * How much each pixel near the piece's contour is piece: between the colour of the piece just inside and that of what lies just outside, both
 * taken anew all along, so that a shadow beside it or a darker side of it is reckoned with. In linear light, where a pixel half covered has
 * half of either colour.
 */
final class LocalColours {
    private final Picture picture;

    private final int block;

    private final int width;

    private final int height;

    private final byte[] inner;

    private final byte[] outer;

    /** Of each coarse pixel: what is taken off each colour, then what it is multiplied by. */
    private final float[][] less = new float[3][];

    private final float[][] times = new float[3][];

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
            less[c] = ground[c];
            times[c] = new float[mask.length];
        }
        for (int i = 0; i < mask.length; i++) {
            float size = 1e-7f;
            for (int c = 0; c < 3; c++) {
                size += (piece[c][i] - ground[c][i]) * (piece[c][i] - ground[c][i]);
            }
            for (int c = 0; c < 3; c++) {
                times[c][i] = (piece[c][i] - ground[c][i]) / size;
            }
        }
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
        return inner[cell] > 0 ? 1 : light(x, y, colour);
    }

    /** The same without the cut: the light itself on the scale from ground to piece. Outside the picture the nearest pixel's. */
    double light(int x, int y, float[] colour) {
        int px = Math.max(0, Math.min(picture.width() - 1, x));
        int py = Math.max(0, Math.min(picture.height() - 1, y));
        picture.linear(px, py, colour);
        return on(px + 0.5, py + 0.5, colour);
    }

    /** A colour on the scale at a place: the scale runs smoothly from coarse pixel to coarse pixel. */
    private double on(double x, double y, float[] colour) {
        double cx = Math.max(0, Math.min(width - 1.001, x / block - 0.5));
        double cy = Math.max(0, Math.min(height - 1.001, y / block - 0.5));
        int ix = (int) cx;
        int iy = (int) cy;
        double fx = cx - ix;
        double fy = cy - iy;
        double value = 0;
        for (int j = 0; j < 2; j++) {
            for (int i = 0; i < 2; i++) {
                double weight = (i == 0 ? 1 - fx : fx) * (j == 0 ? 1 - fy : fy);
                int cell = (iy + j) * width + ix + i;
                double sum = 0;
                for (int c = 0; c < 3; c++) {
                    sum += (colour[c] - less[c][cell]) * times[c][cell];
                }
                value += weight * sum;
            }
        }
        return value;
    }

    /** The light between pixels, on the scale at the given place. */
    double between(double x, double y, double scaleX, double scaleY, float[] colour, float[] mixed) {
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
                picture.linear(ix + i, iy + j, colour);
                mixed[0] += weight * colour[0];
                mixed[1] += weight * colour[1];
                mixed[2] += weight * colour[2];
            }
        }
        return on(scaleX, scaleY, mixed);
    }
}
