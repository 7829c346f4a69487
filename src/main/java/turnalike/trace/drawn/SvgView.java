package turnalike.trace.drawn;

/**
 * How a view box is laid into the size of its element: evenly and in the middle, unless it says otherwise.
 *
 * @param across how many of the outer units are one of its own, across
 * @param down the same downwards
 */
record SvgView(double across, double down, Affine place) {
    /**
     * @param box left, top, width and height, both above zero
     * @param wide the element's size; not a number where it says none
     * @param high the same downwards
     */
    static SvgView of(double[] box, double wide, double high, String aspect) {
        double byWidth = wide > 0 ? wide / box[2] : Double.NaN;
        double byHeight = high > 0 ? high / box[3] : Double.NaN;
        double across = Double.isNaN(byWidth) ? byHeight : byWidth;
        double down = Double.isNaN(byHeight) ? byWidth : byHeight;
        if (!aspect.contains("none")) {
            double even = aspect.contains("slice") ? Math.max(across, down) : Math.min(across, down);
            across = even;
            down = even;
        }
        double spareAcross = wide > 0 ? wide - across * box[2] : 0;
        double spareDown = high > 0 ? high - down * box[3] : 0;
        double left = share(aspect, "xMin", "xMax") * spareAcross - across * box[0];
        double top = share(aspect, "YMin", "YMax") * spareDown - down * box[1];
        return new SvgView(across, down, new Affine(across, 0, 0, down, left, top));
    }

    private static double share(String aspect, String least, String most) {
        return aspect.contains(least) ? 0 : aspect.contains(most) ? 1 : 0.5;
    }

    /** Whether a view box can be one. */
    static boolean isBox(double[] box) {
        return box.length == 4 && box[2] > 0 && box[3] > 0 && Math.abs(box[0]) < 1e9 && Math.abs(box[1]) < 1e9;
    }
}
