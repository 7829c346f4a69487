package turnalike.photo;

/**
 * Where the piece is along a strip: the longest run of places at which there is one.
 *
 * @param strip the strip
 * @param widths half widths at its places, 0 where there is no piece
 * @param first the first place of the run
 * @param last the last one
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record HalfWidths(Strip strip, int[] widths, int first, int last) {
    /** The longest run; its last place comes before its first if there is none. */
    static HalfWidths of(Strip strip, int[] widths) {
        int first = 0;
        int last = -1;
        int start = 0;
        for (int t = 0; t <= widths.length; t++) {
            if (t == widths.length || widths[t] == 0) {
                if (t - 1 - start > last - first) {
                    first = start;
                    last = t - 1;
                }
                start = t + 1;
            }
        }
        return new HalfWidths(strip, widths, first, last);
    }

    /** Where it begins and ends along the strip's axis. */
    double from() {
        return strip.from() + first;
    }

    double to() {
        return strip.from() + last;
    }

    double widest() {
        double most = 0;
        for (int t = first; t <= last; t++) {
            most = Math.max(most, widths[t]);
        }
        return most;
    }

    /** 1 where the piece is in a picture of that size, row by row. */
    byte[] painted(int width, int height) {
        byte[] mask = new byte[width * height];
        for (int t = first; t <= last; t++) {
            for (double h = -widths[t] + 0.25; h < widths[t]; h += 0.5) {
                for (double part = -0.25; part <= 0.25; part += 0.5) {
                    int ix = (int) Math.floor(strip.pointX(strip.from() + t + part, h));
                    int iy = (int) Math.floor(strip.pointY(strip.from() + t + part, h));
                    if (ix >= 0 && iy >= 0 && ix < width && iy < height) {
                        mask[iy * width + ix] = 1;
                    }
                }
            }
        }
        return mask;
    }
}
