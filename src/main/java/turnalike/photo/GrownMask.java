package turnalike.photo;

import boofcv.struct.image.GrayU8;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/** Masks of 0 and 1 made larger or smaller by a pixel to all eight sides, over and over, as BoofCV does it; eight pixels are taken at once. */
final class GrownMask {
    private static final VarHandle EIGHT = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.nativeOrder());

    private final int width;

    /** Whether all nine pixels must be in, else any of them. */
    private final boolean all;

    private byte[] from;

    private final byte[] to;

    private GrownMask(GrayU8 mask, boolean all) {
        width = mask.width;
        this.all = all;
        from = mask.data;
        to = new byte[from.length];
    }

    /** A mask larger by so many pixels. */
    static GrayU8 dilated(GrayU8 mask, int times) {
        return grown(mask, times, false);
    }

    /** A mask smaller by so many pixels, but not at the picture's rim: what lies outside is taken to be in it. */
    static GrayU8 eroded(GrayU8 mask, int times) {
        return grown(mask, times, true);
    }

    private static GrayU8 grown(GrayU8 mask, int times, boolean all) {
        GrownMask grown = new GrownMask(mask, all);
        byte[] across = new byte[mask.data.length];
        for (int k = 0; k < times; k++) {
            grown.along(across);
            grown.down(across);
            // Each step reads it only until it is written: one array does, and the mask that was given stays as it is.
            grown.from = grown.to;
        }
        GrayU8 result = new GrayU8(mask.width, mask.height);
        result.data = grown.from;
        return result;
    }

    /** Each pixel with those on its left and right. */
    private void along(byte[] across) {
        spread(from, across, 1);
        for (int row = 0; row < from.length; row += width) {
            int last = row + width - 1;
            across[row] = both(from[row], from[Math.min(last, row + 1)]);
            across[last] = both(from[last], from[Math.max(row, last - 1)]);
        }
    }

    /** Each pixel with those above and below. */
    private void down(byte[] across) {
        spread(across, to, width);
        int last = across.length - width;
        for (int x = 0; x < width; x++) {
            to[x] = both(across[x], across[Math.min(last + x, width + x)]);
            to[last + x] = both(across[last + x], across[Math.max(x, last - width + x)]);
        }
    }

    private byte both(byte one, byte other) {
        return (byte) (all ? one & other : one | other);
    }

    /** Each byte with those so far before and after it, where both are. */
    private void spread(byte[] read, byte[] written, int apart) {
        int end = read.length - apart;
        int i = apart;
        for (; i + 8 <= end; i += 8) {
            long before = (long) EIGHT.get(read, i - apart);
            long here = (long) EIGHT.get(read, i);
            long after = (long) EIGHT.get(read, i + apart);
            EIGHT.set(written, i, all ? before & here & after : before | here | after);
        }
        for (; i < end; i++) {
            written[i] = (byte)
                    (all ? read[i - apart] & read[i] & read[i + apart] : read[i - apart] | read[i] | read[i + apart]);
        }
    }
}
