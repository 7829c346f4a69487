package turnalike.photo;

import boofcv.abst.filter.binary.InputToBinary;
import boofcv.struct.image.GrayU8;
import boofcv.struct.image.ImageType;
import java.util.Arrays;

/**
 * What is no brighter than a part of the mean of a square around it, the mean taken along the rows and then down the columns, each rounded: what BoofCV asks first
 * where it looks for squares, to the same bit. Sums go on from pixel to pixel, none of them is divided, and the machine's cores share them.
 */
final class LocalMean implements InputToBinary<GrayU8> {
    /** A sum over a count is it times a whole number over 2 to the power of this: exact below 2^13, for counts up to 31. */
    private static final int SHIFT = 20;

    /** The means along rows, used over and over. */
    private byte[] along = new byte[0];

    private final int reach;

    private final int share;

    /** The brightest code that is dark, by the mean around it. */
    private final int[] darkest = new int[256];

    /** By code, the least sum of a whole column of means beside which it is dark. */
    private final int[] leastSums = new int[256];

    /**
     * Makes one.
     *
     * @param width of the square, pixels, at most 31
     * @param part of the mean
     */
    LocalMean(int width, float part) {
        if (width < 3 || width > 31) {
            throw new IllegalArgumentException("no width for a local mean: " + width);
        }
        reach = width / 2;
        share = (1 << SHIFT) / (2 * reach + 1) + 1;
        int code = 0;
        for (int mean = 0; mean < darkest.length; mean++) {
            darkest[mean] = (int) (mean * part);
            for (; code <= darkest[mean]; code++) {
                leastSums[code] = mean * (2 * reach + 1) - reach;
            }
        }
        Arrays.fill(leastSums, code, leastSums.length, Integer.MAX_VALUE);
    }

    @Override
    public void process(GrayU8 picture, GrayU8 dark) {
        int w = picture.width;
        int h = picture.height;
        dark.reshape(w, h);
        if (along.length != w * h) {
            along = new byte[w * h];
        }
        byte[] codes = picture.data;
        byte[] means = along;
        Cores.parts(h, (from, end) -> {
            for (int y = from; y < end; y++) {
                along(codes, y * w, w, means);
            }
        });
        Cores.parts(h, (from, end) -> down(means, codes, w, h, from, end, dark));
    }

    /** The means along a row. */
    private void along(byte[] codes, int first, int w, byte[] means) {
        int sum = 0;
        int count = Math.min(reach, w);
        for (int x = 0; x < count; x++) {
            sum += codes[first + x] & 0xFF;
        }
        int x = 0;
        for (; x <= reach && x < w; x++) {
            if (x + reach < w) {
                sum += codes[first + x + reach] & 0xFF;
                count++;
            }
            means[first + x] = (byte) ((sum + count / 2) / count);
        }
        if (w > 2 * reach) {
            sum = goingOn(codes, sum, first + x, first + w - reach, reach, share, means);
            x = Math.max(x, w - reach);
        }
        for (; x < w; x++) {
            sum -= codes[first + x - reach - 1] & 0xFF;
            count--;
            means[first + x] = (byte) ((sum + count / 2) / count);
        }
    }

    /** The same where the row goes on to both sides; the sum afterwards. */
    private static int goingOn(byte[] codes, int begun, int from, int end, int reach, int share, byte[] means) {
        int sum = begun;
        for (int i = from; i < end; i++) {
            sum += (codes[i + reach] & 0xFF) - (codes[i - reach - 1] & 0xFF);
            means[i] = (byte) (((sum + reach) * share) >>> SHIFT);
        }
        return sum;
    }

    /** Some rows: what is no brighter than the mean of the means above and below. */
    private void down(byte[] means, byte[] codes, int w, int h, int from, int end, GrayU8 dark) {
        int[] sums = new int[w];
        for (int y = Math.max(0, from - reach); y < Math.min(h, from + reach); y++) {
            for (int x = 0; x < w; x++) {
                sums[x] += means[y * w + x] & 0xFF;
            }
        }
        for (int y = from; y < end; y++) {
            // BoofCV has it as a part of a picture with a rim round it.
            int to = dark.startIndex + y * dark.stride;
            int added = (y + reach) * w;
            int left = (y - reach - 1) * w;
            if (y > from && y - reach > 0 && y + reach < h) {
                goingOn(means, added, left, sums, codes, y * w, leastSums, dark.data, to);
                continue;
            }
            int count = Math.min(h, y + reach + 1) - Math.max(0, y - reach);
            for (int x = 0; x < w; x++) {
                sums[x] += y + reach < h ? means[added + x] & 0xFF : 0;
                sums[x] -= y > from && y - reach > 0 ? means[left + x] & 0xFF : 0;
                dark.data[to + x] =
                        (byte) ((codes[y * w + x] & 0xFF) <= darkest[(sums[x] + count / 2) / count] ? 1 : 0);
            }
        }
    }

    /** A row with others enough above and below. */
    private static void goingOn(
            byte[] means, int added, int left, int[] sums, byte[] codes, int row, int[] least, byte[] dark, int to) {
        for (int x = 0; x < sums.length; x++) {
            int sum = sums[x] + (means[added + x] & 0xFF) - (means[left + x] & 0xFF);
            sums[x] = sum;
            // One where the difference is not negative.
            dark[to + x] = (byte) (((sum - least[codes[row + x] & 0xFF]) >>> 31) ^ 1);
        }
    }

    @Override
    public ImageType<GrayU8> getInputType() {
        return ImageType.SB_U8;
    }
}
