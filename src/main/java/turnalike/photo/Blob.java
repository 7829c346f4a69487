package turnalike.photo;

/**
 * A connected patch of the coarse picture that is not ground, by its moments.
 *
 * @param label its number
 * @param area pixels
 * @param x middle
 * @param y middle
 * @param angle of its long axis, radians
 * @param from where it begins along that axis, from the middle
 * @param to where it ends
 * @param deviation across the axis, standard deviation
 * @param atRim pixels of it at the picture's rim
 */
record Blob(
        int label, int area, double x, double y, double angle, double from, double to, double deviation, int atRim) {
    double length() {
        return to - from;
    }

    /** Length over width; the width as if it were an even bar. */
    double slenderness() {
        return length() / Math.max(1, Math.sqrt(12) * deviation);
    }

    /** 1 where it is, row by row, of the labels that it was found by. */
    byte[] mask(int[] labels) {
        byte[] mask = new byte[labels.length];
        for (int i = 0; i < mask.length; i++) {
            mask[i] = (byte) (labels[i] == label ? 1 : 0);
        }
        return mask;
    }

    /** Of what a mask covers as one patch. */
    static Blob of(byte[] mask, int width) {
        int[] labels = new int[mask.length];
        for (int i = 0; i < labels.length; i++) {
            labels[i] = mask[i];
        }
        return of(labels, 1, width, mask.length / width)[0];
    }

    /** Of all patches by their labels, one and more; the rest have label 0. */
    static Blob[] of(int[] labels, int count, int width, int height) {
        double[][] sums = new double[count + 1][6];
        int[] atRim = new int[count + 1];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int label = labels[y * width + x];
                if (label == 0) {
                    continue;
                }
                double[] sum = sums[label];
                sum[0]++;
                sum[1] += x + 0.5;
                sum[2] += y + 0.5;
                sum[3] += (x + 0.5) * (x + 0.5);
                sum[4] += (x + 0.5) * (y + 0.5);
                sum[5] += (y + 0.5) * (y + 0.5);
                if (x == 0 || y == 0 || x == width - 1 || y == height - 1) {
                    atRim[label]++;
                }
            }
        }
        double[][] reach = new double[count + 1][2];
        double[] angles = new double[count + 1];
        double[][] axes = new double[count + 1][3];
        for (int k = 1; k <= count; k++) {
            double[] s = sums[k];
            double n = Math.max(1, s[0]);
            double xx = s[3] / n - s[1] / n * s[1] / n;
            double xy = s[4] / n - s[1] / n * s[2] / n;
            double yy = s[5] / n - s[2] / n * s[2] / n;
            angles[k] = 0.5 * Math.atan2(2 * xy, xx - yy);
            axes[k][0] = Math.cos(angles[k]);
            axes[k][1] = Math.sin(angles[k]);
            axes[k][2] = s[1] / n * axes[k][0] + s[2] / n * axes[k][1];
            reach[k][0] = Double.POSITIVE_INFINITY;
            reach[k][1] = Double.NEGATIVE_INFINITY;
        }
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int k = labels[y * width + x];
                if (k > 0) {
                    double along = (x + 0.5) * axes[k][0] + (y + 0.5) * axes[k][1] - axes[k][2];
                    reach[k][0] = Math.min(reach[k][0], along);
                    reach[k][1] = Math.max(reach[k][1], along);
                }
            }
        }
        Blob[] blobs = new Blob[count];
        for (int k = 1; k <= count; k++) {
            double[] s = sums[k];
            double n = Math.max(1, s[0]);
            double xx = s[3] / n - s[1] / n * s[1] / n;
            double xy = s[4] / n - s[1] / n * s[2] / n;
            double yy = s[5] / n - s[2] / n * s[2] / n;
            double small = (xx + yy) / 2 - Math.sqrt((xx - yy) * (xx - yy) / 4 + xy * xy);
            blobs[k - 1] = new Blob(
                    k,
                    (int) s[0],
                    s[1] / n,
                    s[2] / n,
                    angles[k],
                    reach[k][0],
                    reach[k][1],
                    Math.sqrt(Math.max(0, small)),
                    atRim[k]);
        }
        return blobs;
    }
}
