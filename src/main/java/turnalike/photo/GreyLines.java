package turnalike.photo;

import boofcv.struct.image.GrayU8;

/** A picture in shades of grey, each of a block of pixels, made line by line. */
final class GreyLines implements BlockLines {
    /** Larger pictures are looked at in blocks: a sheet's square is large enough to be read so, and little memory is wanted. */
    private static final int LONGEST = 2200;

    private final Picture from;

    private final int block;

    private final GrayU8 grey;

    /** In which the sheet's squares are looked for. */
    GreyLines(Picture picture) {
        this(picture, Math.max(1, (int) Math.ceil((double) Math.max(picture.width(), picture.height()) / LONGEST)));
    }

    GreyLines(Picture picture, int block) {
        from = picture;
        this.block = block;
        grey = new GrayU8(picture.width() / block, picture.height() / block);
    }

    /** Whole once all lines are made. */
    GrayU8 picture() {
        return grey;
    }

    @Override
    public int block() {
        return block;
    }

    @Override
    public int count() {
        return from.turned() ? grey.width : grey.height;
    }

    @Override
    public void make(int first, int end) {
        boolean turned = from.turned();
        int lineStep = turned ? 1 : grey.width;
        int step = turned ? grey.width : 1;
        int whole = 4 * block * block;
        // Dividing by multiplying: exact, as the sums are below 2^24 and so many parts of the whole.
        long share = (1L << 32) / whole + 1;
        int[] sums = new int[turned ? grey.height : grey.width];
        byte[] shades = grey.data;
        for (int line = first; line < end; line++) {
            from.grey(line * block, block, sums);
            int to = line * lineStep;
            for (int sum : sums) {
                shades[to] = (byte) (((sum + whole / 2) * share) >>> 32);
                to += step;
            }
        }
    }
}
