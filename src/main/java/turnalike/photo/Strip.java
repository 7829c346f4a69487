package turnalike.photo;

/**
 * The coarse picture along an axis, laid straight: for every place along it how much each pixel across looks like the piece rather than
 * what lies around it, and from that the half widths that explain it best, both sides together. Adding up over whole cross sections finds
 * edges that no single pixel shows.
 */
final class Strip {
    private static final int LEVELS = 12;

    /** Log likelihoods are cut off here: one odd pixel says no more than this. */
    private static final float MOST = 2.5f;

    private final double x;

    private final double y;

    private final double cos;

    private final double sin;

    /** The first place along, and how many. */
    private final int from;

    private final int count;

    /** How far it reaches to each side. */
    private final int reach;

    /**
     * Lays a strip along an axis.
     *
     * @param x a point of the axis
     * @param y of it
     * @param angle its direction
     * @param from the first place along, from that point
     * @param to the last
     * @param reach how far to each side, at least 4
     */
    Strip(double x, double y, double angle, double from, double to, int reach) {
        this.x = x;
        this.y = y;
        cos = Math.cos(angle);
        sin = Math.sin(angle);
        this.from = (int) Math.floor(from);
        count = (int) Math.ceil(to) - this.from + 1;
        this.reach = reach;
    }

    double angle() {
        return Math.atan2(sin, cos);
    }

    int from() {
        return from;
    }

    int count() {
        return count;
    }

    int reach() {
        return reach;
    }

    /** The coarse pixel at a place, or -1 outside the picture. */
    int pixel(int along, double across, int width, int height) {
        double px = x + (from + along) * cos - across * sin;
        double py = y + (from + along) * sin + across * cos;
        int ix = (int) Math.floor(px);
        int iy = (int) Math.floor(py);
        return ix < 0 || iy < 0 || ix >= width || iy >= height ? -1 : iy * width + ix;
    }

    /**
     * How much more each colour occurs inside than outside, from pixels of which it is thought known.
     *
     * @param picture the colours
     * @param inside above 0 where the piece is for sure, below 0 where it is not, 0 where nobody knows
     * @return the log of the ratio for each pixel, cut off on both sides
     */
    static float[] likelihood(CoarsePicture picture, byte[] inside) {
        int cells = LEVELS * LEVELS * LEVELS;
        double[] in = new double[cells];
        double[] out = new double[cells];
        double ins = 0;
        double outs = 0;
        int[] cell = cells(picture);
        for (int i = 0; i < inside.length; i++) {
            if (inside[i] > 0) {
                in[cell[i]]++;
                ins++;
            } else if (inside[i] < 0) {
                out[cell[i]]++;
                outs++;
            }
        }
        in = smooth(in);
        out = smooth(out);
        float[] ratio = new float[inside.length];
        for (int i = 0; i < ratio.length; i++) {
            double a = (in[cell[i]] + 0.3) / (ins + 1);
            double b = (out[cell[i]] + 0.3) / (outs + 1);
            ratio[i] = (float) Math.max(-MOST, Math.min(MOST, Math.log(a / b)));
        }
        return ratio;
    }

    /** Levels are by the roots of light, stretched over what the picture holds. */
    private static int[] cells(CoarsePicture picture) {
        int n = picture.width() * picture.height();
        int[] cell = new int[n];
        for (int c = 0; c < 3; c++) {
            float[] plane = picture.planes()[c];
            float least = Float.MAX_VALUE;
            float most = 0;
            for (float value : plane) {
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
            float step = Math.max(1e-6f, (most - least) / LEVELS);
            for (int i = 0; i < n; i++) {
                cell[i] = cell[i] * LEVELS + Math.min(LEVELS - 1, (int) ((plane[i] - least) / step));
            }
        }
        return cell;
    }

    private static double[] smooth(double[] histogram) {
        double[] from = histogram;
        for (int step : new int[] {1, LEVELS, LEVELS * LEVELS}) {
            double[] to = new double[from.length];
            for (int i = 0; i < from.length; i++) {
                int level = i / step % LEVELS;
                double below = level > 0 ? from[i - step] : from[i];
                double above = level < LEVELS - 1 ? from[i + step] : from[i];
                to[i] = 0.25 * below + 0.5 * from[i] + 0.25 * above;
            }
            from = to;
        }
        return from;
    }

    /**
     * The half widths that part piece from surroundings best.
     *
     * @param likely the log ratio for each coarse pixel
     * @param width of the coarse picture
     * @param height of it
     * @param unsteady what a change of half width by one pixel from place to place costs
     * @return for each place along, 0 where there is no piece
     */
    int[] halfWidths(float[] likely, int width, int height, double unsteady) {
        double[][] best = new double[count][reach + 1];
        int[][] came = new int[count][reach + 1];
        for (int t = 0; t < count; t++) {
            double[] cost = costs(likely, width, height, t);
            if (t == 0) {
                best[0] = cost;
                continue;
            }
            double[] before = best[t - 1].clone();
            for (int h = 0; h <= reach; h++) {
                came[t][h] = h;
            }
            for (int h = 1; h <= reach; h++) {
                if (before[h - 1] + unsteady < before[h]) {
                    before[h] = before[h - 1] + unsteady;
                    came[t][h] = came[t][h - 1];
                }
            }
            for (int h = reach - 1; h >= 0; h--) {
                if (before[h + 1] + unsteady < before[h]) {
                    before[h] = before[h + 1] + unsteady;
                    came[t][h] = came[t][h + 1];
                }
            }
            for (int h = 0; h <= reach; h++) {
                best[t][h] = before[h] + cost[h];
            }
        }
        int[] half = new int[count];
        int at = 0;
        for (int h = 1; h <= reach; h++) {
            if (best[count - 1][h] < best[count - 1][at]) {
                at = h;
            }
        }
        for (int t = count - 1; t >= 0; t--) {
            half[t] = at;
            at = came[t][at];
        }
        return half;
    }

    private double[] costs(float[] likely, int width, int height, int t) {
        double[] cost = new double[reach + 1];
        double sum = 0;
        for (int h = 0; h < reach; h++) {
            // The pixels between half widths h and h + 1, on both sides.
            int one = pixel(t, h + 0.5, width, height);
            int other = pixel(t, -h - 0.5, width, height);
            sum -= one < 0 ? -MOST : likely[one];
            sum -= other < 0 ? -MOST : likely[other];
            cost[h + 1] = sum;
        }
        return cost;
    }

    double pointX(double along, double across) {
        return x + along * cos - across * sin;
    }

    double pointY(double along, double across) {
        return y + along * sin + across * cos;
    }
}
