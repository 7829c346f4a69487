package turnalike.photo;

/**
 * A body's cross sections along a strip.
 *
 * @param sides how far each reaches to either side, coarse pixels
 * @param filled how much of what lies between is the body's, as a share
 * @param hue red's and blue's shares of the light of each
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record CrossSections(double[][] sides, double[] filled, double[][] hue) {
    /**
     * Measures them.
     *
     * @param picture the coarse picture
     * @param mask 1 where the body is, row by row
     */
    static CrossSections of(CoarsePicture picture, byte[] mask, Strip strip) {
        int count = strip.count();
        double[][] sides = new double[2][count];
        double[] filled = new double[count];
        double[][] hue = new double[2][count];
        for (int t = 0; t < count; t++) {
            int pixels = 0;
            double[] light = new double[3];
            for (int h = -2 * strip.reach(); h <= 2 * strip.reach(); h++) {
                int pixel = strip.pixel(t, h / 2.0, picture.width(), picture.height());
                if (pixel >= 0 && mask[pixel] > 0) {
                    pixels++;
                    int side = h < 0 ? 1 : 0;
                    sides[side][t] = Math.max(sides[side][t], Math.abs(h) / 2.0);
                    picture.addLight(pixel, light);
                }
            }
            double whole = Math.max(1e-9, light[0] + light[1] + light[2]);
            filled[t] = pixels / Math.max(1, 2 * (sides[0][t] + sides[1][t]) + 1);
            hue[0][t] = light[0] / whole;
            hue[1][t] = light[2] / whole;
        }
        return new CrossSections(sides, filled, hue);
    }
}
